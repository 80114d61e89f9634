package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

  private record Expected(
      String level, List<String> codes, List<String> when, List<String> unless) {
    boolean triggered(Set<String> traits) {
      boolean any =
          codes.stream()
              .flatMap(c -> INVENTORY.getOrDefault(c, List.of()).stream())
              .anyMatch(traits::contains);
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
    assertEquals(
        new TreeSet<>(CAUTIONS.keySet()), new TreeSet<>(Wording.english().cautions.keySet()));
    CAUTIONS.forEach(
        (id, c) -> assertEquals(c.level(), Wording.english().cautions.get(id).level().key(), id));
  }

  @Test
  void bothDemoRigsAndTheSmallestPrintTheTriggeredCautionsAndNoOther() {
    check("Sedge", TestRigs.demo("sedge"));
    check("Cattail", TestRigs.demo("cattail"));
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
    RandomRigs.variations(RandomRigs.all().get(0)).forEach(p -> check(p.name(), p.rig()));
    assertEquals(List.of(), differences.stream().limit(40).toList());
  }

  @Test
  void everyCautionIsShownByOneRandomRigAndHiddenByAnotherUnlessEveryRigHasIt() {
    Map<String, Integer> shown = new LinkedHashMap<>();
    RandomRigs.all().forEach(p -> printed(p.rig()).forEach(id -> shown.merge(id, 1, Integer::sum)));
    List<String> never = CAUTIONS.keySet().stream().filter(id -> !shown.containsKey(id)).toList();
    assertEquals(List.of(), never);
    assertTrue(shown.get("hot-boiler") < RandomRigs.all().size());
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
