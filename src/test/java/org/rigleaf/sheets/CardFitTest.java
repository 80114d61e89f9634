package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** Cards as they are reckoned, without print. */
class CardFitTest {
  private static final int DRAWN = 30; // random rigs
  private static final Wording WORDING = Wording.english();

  private static void fits(String name, Rig rig, CardSize size) {
    BinderMaker maker = BinderMaker.of(rig, Figures.of(rig), WORDING, Map.of());
    CardFit fit = new CardFit(size);
    for (CardTask task : new CardsMaker(rig, maker, WORDING, size).tasks()) {
      for (CardTask.Card card : task.cards()) {
        double tall =
            fit.head(task) + fit.reminders(card.reminders()) + fit.foot(task, card.done());
        for (CardTask.Part part : card.parts()) {
          tall += fit.part(part.title());
          tall += part.lines().stream().mapToDouble(fit::line).sum();
        }
        String what = name + ", " + size.name() + ", " + task.title() + " " + card.number();
        assertTrue(tall <= size.heightPt(), what + ": " + tall + " of " + size.heightPt());
      }
    }
  }

  @Test
  void everyCardOfRandomRigsFitsInTheUsualSize() {
    List<RandomRigs.Profile> drawn = RandomRigs.all();
    for (RandomRigs.Profile profile : drawn.subList(0, Math.min(DRAWN, drawn.size()))) {
      fits(profile.name(), profile.rig(), CardSize.HALF_LETTER);
    }
  }

  @Test
  void everyCardOfTheFleetFitsInEverySize() {
    TestRigs.fleet().forEach(n -> fits(n, TestRigs.demo(n), CardSize.A6));
    TestRigs.fleet().forEach(n -> fits(n, TestRigs.demo(n), CardSize.FOUR_BY_SIX));
    TestRigs.fleet().forEach(n -> fits(n, TestRigs.demo(n), CardSize.A5));
    TestRigs.fleet().forEach(n -> fits(n, TestRigs.demo(n), CardSize.HALF_LETTER));
  }
}
