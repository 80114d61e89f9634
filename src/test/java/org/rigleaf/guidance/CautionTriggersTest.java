package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestData;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Fields;

/**
 * A caution prints if and only if it is triggered. The expected triggers were written down from the
 * trade's register, apart from the wording: {@code caution-triggers.yaml}.
 */
class CautionTriggersTest {
  private static final Fields TABLE = TestData.read("caution-triggers.yaml");
  private static final Map<String, List<String>> INVENTORY = inventory();
  private static final Map<String, Expected> CAUTIONS = cautions();

  /** Cautions that every rig prints, or nearly every one: no random rig need be without them. */
  private static final Set<String> ALWAYS =
      Set.of(
          "engine-exhaust",
          "roll-away",
          "under-the-rig",
          "too-heavy",
          "riding-unbelted",
          "low-bridges",
          "roof-work",
          "fire",
          "blocked-exit",
          "left-up",
          "steps-and-doors",
          "left-out");

  private record Expected(
      String level, List<String> codes, List<String> when, List<String> unless) {
    boolean triggered(Set<String> traits) {
      boolean any = codes.stream().flatMap(c -> traits(c).stream()).anyMatch(traits::contains);
      return any && traits.containsAll(when) && unless.stream().noneMatch(traits::contains);
    }
  }

  private static Map<String, List<String>> inventory() {
    Fields codes = TABLE.group("inventory").orElseThrow();
    return codes.keys().stream().collect(Collectors.toMap(c -> c, c -> TestData.list(codes, c)));
  }

  private static Map<String, Expected> cautions() {
    Fields all = TABLE.group("cautions").orElseThrow();
    Map<String, Expected> expected = new LinkedHashMap<>();
    for (String id : all.keys()) {
      Fields c = all.group(id).orElseThrow();
      expected.put(
          id,
          new Expected(
              TestData.text(c, "level"),
              TestData.list(c, "triggered-by"),
              TestData.list(c, "when"),
              TestData.list(c, "unless")));
    }
    return expected;
  }

  private final List<String> differences = new ArrayList<>();

  @Test
  void theWordingHasTheCautionsOfTheTableAtTheirLevels() {
    Set<String> table = new TreeSet<>();
    CAUTIONS.forEach((id, c) -> table.add(id + " " + c.level()));
    Set<String> wording = new TreeSet<>();
    Wording.english().cautions.forEach((id, c) -> wording.add(id + " " + c.level().key()));
    assertEquals(table, wording);
  }

  @Test
  void theDemoFleetAndTheSmallestPrintTheTriggeredCautionsAndNoOther() {
    TestRigs.fleet().forEach(name -> check(name, TestRigs.demo(name)));
    check("Bulrush", TestRigs.smallest());
    assertEquals(List.of(), differences);
  }

  @Test
  void everyRandomRigPrintsTheTriggeredCautionsAndNoOther() {
    RandomRigs.all().forEach(p -> check(p.name(), p.rig()));
    assertEquals(List.of(), differences.stream().limit(40).toList());
  }

  @Test
  void takingAThingAwayOrAddingItMovesItsCautions() {
    List.of(RandomRigs.barest(), RandomRigs.all().get(0), RandomRigs.all().get(1)).stream()
        .flatMap(base -> RandomRigs.variations(base).stream())
        .forEach(p -> check(p.name(), p.rig()));
    assertEquals(List.of(), differences.stream().limit(40).toList());
  }

  @Test
  void everyCautionIsShownByOneRandomRigAndHiddenByAnotherUnlessEveryRigHasIt() {
    Map<String, Integer> shown = new LinkedHashMap<>();
    RandomRigs.all().forEach(p -> printed(p.rig()).forEach(id -> shown.merge(id, 1, Integer::sum)));
    for (String id : CAUTIONS.keySet()) {
      int rigs = shown.getOrDefault(id, 0);
      if (rigs == 0 || !ALWAYS.contains(id) && rigs == RandomRigs.all().size()) {
        differences.add(id + " printed for " + rigs + " of " + RandomRigs.all().size());
      }
    }
    assertEquals(List.of(), differences);
  }

  @Test
  void everyCodeOfATriggerStandsInTheInventory() {
    List<String> unknown =
        CAUTIONS.values().stream()
            .flatMap(c -> c.codes().stream())
            .filter(code -> !INVENTORY.containsKey(code))
            .toList();
    assertEquals(List.of(), unknown);
  }

  private static List<String> traits(String code) {
    return INVENTORY.getOrDefault(code, List.of());
  }

  private void check(String name, Rig rig) {
    Set<String> traits = Traits.of(rig);
    Set<String> expected = new TreeSet<>();
    CAUTIONS.forEach(
        (id, c) -> {
          if (c.triggered(traits)) {
            expected.add(id);
          }
        });
    Set<String> printed = printed(rig);
    expected.stream()
        .filter(id -> !printed.contains(id))
        .forEach(id -> differences.add(name + " lacks " + id));
    printed.stream()
        .filter(id -> !expected.contains(id))
        .forEach(id -> differences.add(name + " prints " + id));
  }

  private static Set<String> printed(Rig rig) {
    Guide guide = new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
    return guide.cautions().stream()
        .map(Caution::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
