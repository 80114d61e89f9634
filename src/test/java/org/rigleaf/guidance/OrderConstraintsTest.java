package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
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
          "slides-out",
          "stabilise",
          "propane-on",
          "start-water-heater",
          "awning-out");

  /** Steps that send the reader to another page, and the page. */
  private static final Map<String, String> SENDS =
      Map.of(
          "leave-site.dump", "dump-tanks",
          "leave-site.propane-off", "propane-off",
          "leave-site.propane-off-unless-ruled", "propane-off",
          "leave-site.power-off", "disconnect-shore-power",
          "leave-site.hitch", "hitch",
          "leave-site.hook-up-car", "tow-car",
          "level-front.unhitch", "unhitch");

  private static final Set<String> STRENGTHS = Set.of("must", "should", "normal", "maker");
  private static final Fields DATA = TestData.read("order.yaml");
  private static final List<Constraint> CONSTRAINTS = constraints();

  /**
   * One line of the data.
   *
   * @param first the first 'before' is enough
   * @param trait the rigs it is meant for; empty for all
   */
  private record Constraint(
      String id,
      String before,
      String after,
      List<String> in,
      boolean first,
      String trait,
      String strength) {}

  /** A step and the events it completes. */
  private record Done(String step, List<String> events) {}

  private static List<Constraint> constraints() {
    Fields order = DATA.group("order").orElseThrow();
    List<Constraint> all = new ArrayList<>();
    for (String id : order.keys()) {
      Fields c = order.group(id).orElseThrow();
      all.add(
          new Constraint(
              id,
              TestData.text(c, "before"),
              TestData.text(c, "after"),
              TestData.list(c, "in"),
              c.has("first"),
              TestData.text(c, "for"),
              TestData.text(c, "strength")));
    }
    return all;
  }

  private final List<String> broken = new ArrayList<>();
  private final Set<String> met = new HashSet<>();

  @Test
  void allHoldOnTheDemoRigsAndTheSmallest() {
    TestRigs.fleet().forEach(name -> check(name, TestRigs.demo(name)));
    check("Bulrush", TestRigs.smallest());
    assertEquals(List.of(), broken);
  }

  @Test
  void allHoldOnRandomRigsAndEachConcernsSomeRig() {
    RandomRigs.all().forEach(p -> check(p.name(), p.rig()));
    assertEquals(List.of(), broken.stream().limit(30).toList());
    List<String> idle =
        CONSTRAINTS.stream()
            .flatMap(c -> c.in().stream().map(list -> c.id() + " in " + list))
            .filter(line -> !met.contains(line))
            .toList();
    assertEquals(List.of(), idle, "constraints that no rig ever met in that list");
  }

  @Test
  void everyConstraintHasAStrengthAndEveryEventIsCompletedBySomeStep() {
    String steps = Wording.english().procedures.values().toString();
    List<String> faults = new ArrayList<>();
    for (Constraint c : CONSTRAINTS) {
      if (!STRENGTHS.contains(c.strength())) {
        faults.add(c.id() + ": strength '" + c.strength() + "'");
      }
      List.of(c.before(), c.after()).stream()
          .filter(e -> !steps.matches("(?s).*[\\[ ]" + Pattern.quote(e) + "[,\\]].*"))
          .forEach(e -> faults.add(c.id() + ": no step completes " + e));
    }
    assertEquals(List.of(), faults);
  }

  @Test
  void aMovedStepIsNamedTogetherWithTheOneItPassed() {
    Constraint c =
        new Constraint("CN-04", "chock.on", "unhitch.first_step", List.of(), false, "", "must");
    List<Done> wrong =
        List.of(
            new Done("level.unhitch", List.of("unhitch.first_step")),
            new Done("chock.push", List.of("chock.on")));
    assertEquals("CN-04: level.unhitch stands before chock.push", broken(c, wrong));
  }

  /** For every constraint that a demo rig meets, the later step is moved ahead of the earlier. */
  @Test
  void movingTheLaterStepOfAnyConstraintAheadOfTheEarlierIsFound() {
    List<String> missed = new ArrayList<>();
    for (String rig : List.of("sedge", "cattail")) {
      Guide guide = guide(TestRigs.demo(rig));
      for (Constraint c : CONSTRAINTS) {
        lists(guide, c).values().stream()
            .filter(steps -> meets(steps, c))
            .filter(steps -> places(steps, c.before())[0] != places(steps, c.after())[0])
            .map(steps -> broken(c, moved(steps, c)))
            .filter(fault -> !fault.matches(Pattern.quote(c.id()) + ": .+ stands before .+"))
            .forEach(fault -> missed.add(rig + " " + c.id() + " '" + fault + "'"));
      }
    }
    assertEquals(List.of(), missed);
  }

  private static List<Done> moved(List<Done> steps, Constraint c) {
    List<Done> moved = new ArrayList<>(steps);
    Done later = moved.remove(places(steps, c.after())[0]);
    moved.add(places(moved, c.before())[0], later);
    return moved;
  }

  private static Guide guide(Rig rig) {
    return new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
  }

  private void check(String name, Rig rig) {
    Guide guide = guide(rig);
    for (Constraint c : CONSTRAINTS) {
      lists(guide, c)
          .forEach(
              (list, steps) -> {
                if (meets(steps, c)) {
                  met.add(c.id() + " in " + list);
                  String fault = broken(c, steps);
                  broken.addAll(
                      fault.isEmpty() ? List.of() : List.of(name + ", " + list + ": " + fault));
                }
              });
    }
  }

  /** The steps of each list that the constraint speaks of; none if it is not for this rig. */
  private static Map<String, List<Done>> lists(Guide guide, Constraint c) {
    Map<String, List<Done>> lists = new LinkedHashMap<>();
    if (c.trait().isEmpty() || guide.has(c.trait())) {
      c.in().forEach(list -> lists.put(list, list(guide, list)));
    }
    return lists;
  }

  private static List<Done> list(Guide guide, String list) {
    return switch (list) {
      case "arrival" ->
          ARRIVAL.stream()
              .flatMap(p -> steps(guide, p).stream())
              .flatMap(s -> sent(guide, s).stream())
              .toList();
      case "departure" ->
          steps(guide, "leave-site").stream().flatMap(s -> sent(guide, s).stream()).toList();
      default -> steps(guide, list);
    };
  }

  private static List<Done> sent(Guide guide, Done step) {
    List<Done> page = steps(guide, SENDS.getOrDefault(step.step(), ""));
    return page.isEmpty() ? List.of(step) : page;
  }

  private static boolean meets(List<Done> steps, Constraint c) {
    return places(steps, c.before()).length > 0 && places(steps, c.after()).length > 0;
  }

  private static String broken(Constraint c, List<Done> steps) {
    int[] before = places(steps, c.before());
    int after = places(steps, c.after())[0];
    int last = c.first() ? before[0] : before[before.length - 1];
    return last < after || last == after && same(steps.get(last), c)
        ? ""
        : c.id() + ": " + steps.get(after).step() + " stands before " + steps.get(last).step();
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

  private static List<Done> steps(Guide guide, String procedure) {
    return Optional.ofNullable(guide.procedures().get(procedure)).stream()
        .flatMap(p -> p.steps().stream())
        .map(s -> new Done(s.id(), guide.events().get(s.id())))
        .toList();
  }
}
