package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;

/** Any profile that is right becomes a binder, and the binder speaks of this rig alone. */
class RandomBindersTest {
  private static final Set<String> OPEN = Set.of("contacts.keeper");

  private final List<String> faults = new ArrayList<>();

  @Test
  void everyRandomRigBecomesABinderWithoutHolesInItsSentences() {
    for (RandomRigs.Profile profile : RandomRigs.all()) {
      try {
        check(profile.name(), profile.rig());
      } catch (RuntimeException e) {
        faults.add(profile.name() + ": " + e + " at " + e.getStackTrace()[0]);
      }
    }
    assertEquals(List.of(), faults.stream().distinct().limit(40).toList());
  }

  private void check(String name, Rig rig) {
    Figures figures = Figures.of(rig);
    Binder binder = BinderMaker.of(rig, figures, Wording.english()).binder(Paper.LETTER, true);
    for (Topic topic : binder.topics()) {
      Texts.of(topic).forEach(run -> check(name + ", " + topic.id(), rig, figures, run));
    }
  }

  private void check(String where, Rig rig, Figures figures, Run run) {
    if (run.text().contains("{") || run.text().matches("(?s).*\\bnull\\b.*")) {
      faults.add(where + ": prints '" + run.text() + "'");
    }
    if (run.kind() == Run.Kind.BLANK && known(rig, figures, run.key())) {
      faults.add(where + ": a line to fill in for " + run.key() + ", which is known");
    }
  }

  private static boolean known(Rig rig, Figures figures, String key) {
    Fact fact = rig.facts().get(key);
    boolean given = fact != null && fact.known();
    boolean said = rig.texts().containsKey(key);
    return !OPEN.contains(key) && (given || said || figures.find(key).isPresent());
  }
}
