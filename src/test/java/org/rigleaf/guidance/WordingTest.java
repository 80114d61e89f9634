package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.rigleaf.figures.Entry;
import org.rigleaf.figures.Register;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.TypicalValue;
import org.rigleaf.rig.TypicalValues;

/** Walks the whole wording and the whole register and names every gap at once. */
class WordingTest {
  private static final Wording WORDING = Wording.english();
  private static final Set<String> GEAR = Rig.possibleGear();

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

  /** A name that starts with a dot is checked by its end: some item of some rig must have it. */
  @Test
  void aConditionOnAnItemMustBePossibleForSomeItem() {
    Set<String> possible = Set.of("electric.outlets.gfci", "waste.black.handle.opens.pull");
    assertTrue(Condition.known(".gfci", possible));
    assertTrue(Condition.known(".opens.pull", possible));
    assertFalse(Condition.known(".gcfi", possible));
    assertFalse(Condition.known("gfci", possible));
  }

  @Test
  void someProcedureSpeaksOfEachKindOfGear() {
    Set<String> spoken = spoken();
    assertEquals(List.of(), GEAR.stream().filter(g -> !spoken.contains(g)).toList());
  }

  /** Gear that a place, a placeholder or a condition names; a part does not speak for its whole. */
  private static Set<String> spoken() {
    Set<String> spoken = new TreeSet<>();
    for (ProcedureText p : WORDING.procedures.values()) {
      name("", p.condition() + " " + p.need() + p.stopIf() + p.done(), spoken);
      p.groups().forEach(g -> name("", g.condition() + " ", spoken));
      p.groups().forEach(g -> items("", g.items(), spoken));
    }
    for (FaultText f : WORDING.faults.values()) {
      name("", f.condition() + " " + f.stops(), spoken);
      items("", f.checks(), spoken);
    }
    return spoken;
  }

  private static void items(String list, List<Item> items, Set<String> spoken) {
    for (Item item : items) {
      if (item instanceof Item.EachText each) {
        name("", each.list() + " " + each.condition(), spoken);
        items(each.list(), each.steps(), spoken);
      } else if (item instanceof Item.ByText by) {
        name(list, by.path(), spoken);
        by.cases().values().forEach(c -> items(list, c, spoken));
        items(list, by.otherwise(), spoken);
        items(list, by.unknown(), spoken);
      } else if (item instanceof Item.StepText step) {
        name(list, step.toString(), spoken);
      }
    }
  }

  /** Adds the gear that the text names; a path that starts with a dot belongs to the list. */
  private static void name(String list, String text, Set<String> spoken) {
    for (String word : text.split("[^a-z0-9.-]+")) {
      String path = word.startsWith(".") ? list + word : word;
      GEAR.stream()
          .filter(g -> path.equals(g) || path.startsWith(g + "."))
          .max(java.util.Comparator.comparingInt(String::length))
          .ifPresent(spoken::add);
    }
  }

  @Test
  void everyCautionOfTheWordingIsNamedByAStepOrATask() {
    String steps = WORDING.procedures.values().toString() + WORDING.tasks.values();
    Set<String> unused =
        WORDING.cautions.keySet().stream()
            .filter(id -> !steps.contains(id))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), unused);
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
