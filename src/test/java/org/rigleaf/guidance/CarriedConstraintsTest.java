package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestData;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Fields;

/**
 * No constraint is forgotten: each is an order of steps, or a caution or step says it wherever its
 * gear is, or the reason stands why nothing can.
 */
class CarriedConstraintsTest {
  private static final Fields DATA = TestData.read("order.yaml");
  private static final Fields CARRIED = DATA.group("carried").orElseThrow();

  @Test
  void allConstraintsOfTheTradeAreOrderedCarriedOrGivenUpWithAReason() {
    String[] ends = TestData.text(DATA, "all").split("\\.\\.");
    Set<String> all =
        IntStream.rangeClosed(number(ends[0]), number(ends[1]))
            .mapToObj("CN-%02d"::formatted)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(89, all.size());
    Set<String> classed = new TreeSet<>();
    for (String way : List.of("order", "carried", "not-printable")) {
      DATA.group(way).orElseThrow().keys().forEach(id -> classed.add(id.substring(0, 5)));
    }
    assertEquals(all, classed);
    Fields given = DATA.group("not-printable").orElseThrow();
    assertTrue(given.keys().stream().allMatch(id -> TestData.text(given, id).length() > 20));
  }

  private static int number(String id) {
    return Integer.parseInt(id.substring("CN-".length()));
  }

  @Test
  void everyRigWithTheGearIsToldWhatItsConstraintAsks() {
    Map<String, Rig> rigs = new LinkedHashMap<>();
    TestRigs.fleet().forEach(name -> rigs.put(name, TestRigs.demo(name)));
    rigs.put("bulrush", TestRigs.smallest());
    RandomRigs.all().forEach(p -> rigs.put(p.name(), p.rig()));
    List<String> faults = new ArrayList<>();
    Set<String> told = new TreeSet<>();
    rigs.forEach((name, rig) -> told.addAll(told(name, rig, faults)));
    assertEquals(List.of(), faults.stream().limit(20).toList());
    assertEquals(new TreeSet<>(CARRIED.keys()), told, "constraints whose gear some rig has");
  }

  /** A trait that no rig can have would let its line pass for nothing. */
  @Test
  void theTraitsOfTheListAreTraitsThatARigCanHave() {
    List<String> unknown =
        CARRIED.keys().stream()
            .map(id -> CARRIED.group(id).orElseThrow())
            .flatMap(
                c -> List.of("when", "any", "unless").stream().flatMap(k -> list(c, k).stream()))
            .filter(t -> !Traits.possible().contains(t))
            .toList();
    assertEquals(List.of(), unknown);
  }

  private static List<String> told(String name, Rig rig, List<String> faults) {
    Guide guide = new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
    Map<String, String> words = words(guide);
    List<String> told = new ArrayList<>();
    for (String id : CARRIED.keys()) {
      Fields c = CARRIED.group(id).orElseThrow();
      if (concerns(guide, c)) {
        told.add(id);
        Pattern says = Pattern.compile(TestData.text(c, "says"), Pattern.CASE_INSENSITIVE);
        list(c, "by").stream()
            .filter(by -> !says.matcher(words.getOrDefault(by, "")).find())
            .forEach(by -> faults.add(name + ": " + id + ": " + by + " does not say " + says));
      }
    }
    return told;
  }

  private static boolean concerns(Guide guide, Fields c) {
    List<String> any = list(c, "any");
    return list(c, "when").stream().allMatch(guide::has)
        && (any.isEmpty() || any.stream().anyMatch(guide::has))
        && list(c, "unless").stream().noneMatch(guide::has);
  }

  private static List<String> list(Fields c, String key) {
    return TestData.list(c, key);
  }

  /** What each caution and step of a rig says, by id. */
  private static Map<String, String> words(Guide guide) {
    Map<String, String> words = new LinkedHashMap<>();
    for (Caution c : guide.cautions()) {
      words.put(
          c.id(), c.hazard().plain() + c.consequence().plain() + Words.joined(c.avoid()).plain());
    }
    for (Procedure p : guide.procedures().values()) {
      p.steps()
          .forEach(
              s ->
                  words.put(
                      s.id(), s.action().plain() + " " + s.see().plain() + s.ifNot().plain()));
    }
    return words;
  }
}
