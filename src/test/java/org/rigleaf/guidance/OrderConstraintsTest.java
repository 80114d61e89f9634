package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestData;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Fields;

/**
 * Order is safety: the constraints of {@code order.yaml} over the printed steps of demo and random
 * rigs.
 */
class OrderConstraintsTest {
  private static final List<String> ARRIVAL =
      List.of(
          "park",
          "level-side",
          "chock",
          "level-front",
          "connect-shore-power",
          "stabilise",
          "propane-on",
          "start-water-heater");
  private static final List<Constraint> CONSTRAINTS = constraints();

  private record Constraint(
      String id, String before, String after, List<String> in, boolean every, boolean towables) {}

  /** A step and the events it completes. */
  private record Done(String step, List<String> events) {}

  private static List<Constraint> constraints() {
    Fields order = TestData.read("order.yaml").group("order").orElseThrow();
    List<Constraint> all = new ArrayList<>();
    for (String id : order.keys()) {
      Fields c = order.group(id).orElseThrow();
      all.add(
          new Constraint(
              id,
              TestData.text(c, "before"),
              TestData.text(c, "after"),
              TestData.list(c, "in"),
              c.has("every"),
              c.has("towables")));
    }
    return all;
  }

  private final List<String> broken = new ArrayList<>();
  private final Set<String> met = new HashSet<>();

  @Test
  void allHoldOnTheDemoRigsAndTheSmallest() {
    check("Sedge", TestRigs.demo("sedge"));
    check("Cattail", TestRigs.demo("cattail"));
    check("Bulrush", TestRigs.smallest());
    assertEquals(List.of(), broken);
  }

  @Test
  void allHoldOnRandomRigsAndEachConcernsSomeRig() {
    RandomRigs.all().forEach(p -> check(p.name(), p.rig()));
    assertEquals(List.of(), broken.stream().limit(30).toList());
    List<String> idle =
        CONSTRAINTS.stream().map(Constraint::id).filter(id -> !met.contains(id)).toList();
    assertEquals(List.of(), idle, "constraints that no rig ever met");
  }

  @Test
  void aMovedStepIsNamedTogetherWithTheOneItPassed() {
    Constraint c =
        new Constraint("CN-04", "chock.on", "unhitch.first_step", List.of(), false, false);
    List<Done> wrong =
        List.of(
            new Done("level.unhitch", List.of("unhitch.first_step")),
            new Done("chock.push", List.of("chock.on")));
    assertTrue(broken(c, wrong).startsWith("CN-04: level.unhitch stands before chock.push"));
  }

  private void check(String name, Rig rig) {
    Guide guide = new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
    for (Constraint c : CONSTRAINTS) {
      if (!c.towables() || guide.has("towable")) {
        c.in()
            .forEach(
                p ->
                    check(
                        name + ", " + p,
                        c,
                        steps(guide, p.equals("arrival") ? ARRIVAL : List.of(p))));
      }
    }
  }

  private void check(String where, Constraint c, List<Done> steps) {
    if (places(steps, c.before()).length > 0 && places(steps, c.after()).length > 0) {
      met.add(c.id());
      String fault = broken(c, steps);
      if (!fault.isEmpty()) {
        broken.add(where + ": " + fault);
      }
    }
  }

  private static String broken(Constraint c, List<Done> steps) {
    int[] before = places(steps, c.before());
    int after = places(steps, c.after())[0];
    int first = c.every() ? before[before.length - 1] : before[0];
    return first <= after && (first < after || before.length > 0 && same(steps.get(first), c))
        ? ""
        : c.id() + ": " + steps.get(after).step() + " stands before " + steps.get(first).step();
  }

  /** One step may complete both events, the first before the second. */
  private static boolean same(Done step, Constraint c) {
    return step.events().indexOf(c.before()) < step.events().indexOf(c.after());
  }

  private static int[] places(List<Done> steps, String event) {
    return IntStream.range(0, steps.size())
        .filter(i -> steps.get(i).events().contains(event))
        .toArray();
  }

  private static List<Done> steps(Guide guide, List<String> procedures) {
    return procedures.stream()
        .filter(guide.procedures()::containsKey)
        .flatMap(p -> guide.procedures().get(p).steps().stream())
        .map(s -> new Done(s.id(), guide.events().get(s.id())))
        .toList();
  }
}
