package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestData;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Traits;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;
import org.rigleaf.sheets.Binder;
import org.rigleaf.sheets.BinderMaker;
import org.rigleaf.sheets.CardSheet;
import org.rigleaf.sheets.CardSize;
import org.rigleaf.sheets.CardsMaker;
import org.rigleaf.sheets.LabelMaker;
import org.rigleaf.sheets.Paper;
import org.rigleaf.sheets.WalkThroughMaker;
import org.rigleaf.source.Fields;

/** No page speaks of gear that the rig lacks: {@code gear-words.yaml}. */
class RigOnlyTest {
  private static final Map<Pattern, List<String>> WORDS = words();

  /** At most so many random rigs: each prints a whole binder. */
  private static final int RIGS = 60;

  private final Set<String> found = new TreeSet<>();
  private final Set<Pattern> unused = new LinkedHashSet<>(WORDS.keySet());

  private static Map<Pattern, List<String>> words() {
    Fields all = TestData.read("gear-words.yaml").group("words").orElseThrow();
    Map<Pattern, List<String>> words = new LinkedHashMap<>();
    for (String word : all.keys()) {
      String whole = "(?<![\\w-])(" + word + ")(?![\\w-])";
      words.put(Pattern.compile(whole, Pattern.CASE_INSENSITIVE), TestData.list(all, word));
    }
    return words;
  }

  @Test
  void noPageSpeaksOfGearThatTheRigLacks() {
    TestRigs.fleet().forEach(name -> look(name, TestRigs.demo(name)));
    RandomRigs.all().stream().limit(RIGS).forEach(p -> look(p.name(), p.rig()));
    assertEquals(List.of(), new ArrayList<>(found));
    assertEquals(List.of(), new ArrayList<>(unused), "words that no page uses");
  }

  private void look(String name, Rig rig) {
    Set<String> traits = Traits.of(rig);
    Document page = Jsoup.parse(pages(rig));
    String text = page.text();
    unused.removeIf(word -> word.matcher(text).find());
    WORDS.forEach(
        (word, allowed) -> {
          if (allowed.stream().noneMatch(traits::contains) && word.matcher(text).find()) {
            page.getElementsMatchingOwnText(word)
                .forEach(e -> found.add(word + " in " + name + ": " + e.ownText()));
          }
        });
  }

  /**
   * Binder, walk-through, cards and labels; but for the pages that tell where numbers come from,
   * whose formulas name all that may be part of them.
   */
  private static String pages(Rig rig) {
    BinderMaker maker = BinderMaker.of(rig, Figures.of(rig), Wording.english(), Map.of());
    Binder binder = maker.binder(Paper.LETTER, true);
    StringBuilder text = new StringBuilder();
    binder.topics().stream()
        .filter(t -> !t.section().equals("numbers"))
        .forEach(t -> text.append(Output.TEMPLATES.topic(t, binder)));
    WalkThroughMaker walk = new WalkThroughMaker(rig, maker, Wording.english());
    text.append(Output.TEMPLATES.sheet("walk-through", walk.walk(Paper.LETTER, true)));
    new LabelMaker(rig, maker, Wording.english())
        .labels()
        .forEach(l -> text.append(Output.TEMPLATES.sheet("label", l)));
    CardSheet sheet = CardSheet.on(Paper.LETTER, CardSize.HALF_LETTER);
    CardsMaker cards = new CardsMaker(rig, maker, Wording.english(), sheet.size());
    return text + Output.TEMPLATES.sheet("cards", cards.cards(sheet, true, List.of()));
  }
}
