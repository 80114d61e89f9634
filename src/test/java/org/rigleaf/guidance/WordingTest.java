package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestData;
import org.rigleaf.figures.Entry;
import org.rigleaf.figures.Register;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.TypicalValue;
import org.rigleaf.rig.TypicalValues;

/** Walks the whole wording and the whole register and names every gap at once. */
class WordingTest {
  private static final Wording WORDING = Wording.english();

  @Test
  void everyFigureHasATitleAMeaningASourceAndAKindOfCheck() {
    List<String> gaps = new ArrayList<>();
    for (Entry entry : Register.ENTRIES) {
      Wording.Entry words = WORDING.figure(entry.pattern());
      boolean told = !words.title().isBlank() && !words.meaning().isBlank();
      if (!told || entry.source().isBlank() || entry.check() == null) {
        gaps.add(entry.pattern());
      }
    }
    assertEquals(List.of(), gaps);
  }

  @Test
  void everyTypicalValueHasASourceATitleAndAPlaceToLook() {
    List<String> gaps =
        TypicalValues.all().stream()
            .filter(
                t ->
                    t.source().isBlank()
                        || WORDING.typical(t.id()).title().isBlank()
                        || WORDING.typical(t.id()).meaning().isBlank())
            .map(TypicalValue::id)
            .toList();
    assertEquals(List.of(), gaps);
  }

  @Test
  void everyKindOfGearHasAName() {
    List<String> gaps =
        Rig.possibleGear().stream().filter(g -> WORDING.gear(g).title().isBlank()).toList();
    assertEquals(List.of(), gaps);
  }

  /** Gear that no procedure and no caution speaks of yet; the list may only shrink. */
  @Test
  void gearWithoutWordingStandsInTheListAndNoOther() {
    String all = WORDING.procedures.values() + " " + WORDING.cautions.values();
    Set<String> silent =
        Rig.possibleGear().stream()
            .filter(g -> !all.contains(g))
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> listed =
        new TreeSet<>(TestData.list(TestData.read("gear-without-wording.yaml"), "gear"));
    assertEquals(listed, silent);
  }

  @Test
  void everyCautionOfTheWordingIsNamedByAStepOrStandsInTheListOfThoseToCome() {
    String steps = WORDING.procedures.values().toString();
    Set<String> unused =
        WORDING.cautions.keySet().stream()
            .filter(id -> !steps.contains(id))
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> listed =
        new TreeSet<>(TestData.list(TestData.read("gear-without-wording.yaml"), "cautions"));
    assertEquals(listed, unused);
  }

  @Test
  void everyHazardBoxSaysWhatItIsWhatHappensAndHowToAvoidIt() {
    List<String> gaps =
        WORDING.cautions.values().stream()
            .filter(
                c ->
                    c.hazard().empty()
                        || c.avoid().isEmpty()
                        || c.defer().empty()
                        || c.consequence().empty() && c.level() != CautionText.Level.NOTICE)
            .map(CautionText::id)
            .toList();
    assertEquals(List.of(), gaps);
  }

  @Test
  void aFigureIdWithAStarMeansAnItem() {
    assertTrue(TextTemplate.figureExists("tank.*.weight"));
    assertEquals(false, TextTemplate.figureExists("tank.*.wait"));
  }
}
