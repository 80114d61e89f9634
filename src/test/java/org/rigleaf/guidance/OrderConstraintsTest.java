package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
 * Order is safety: the constraints of {@code order.yaml} over the printed steps of demo and random
 * rigs, within every procedure and along the whole arrival and departure.
 */
class OrderConstraintsTest {
  private static final Map<String, String> LONG_LISTS =
      Map.of("arrival", "arrive", "departure", "leave-site");
  private static final Set<String> STRENGTHS = Set.of("must", "should", "normal", "maker");
  private static final Fields DATA = TestData.read("order.yaml");
  private static final Map<String, List<String>> SENDS = sends();
  private static final List<Constraint> CONSTRAINTS = constraints();

  /**
   * One line of the data.
   *
   * @param in lists in which some rig must meet it
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

  private static Map<String, List<String>> sends() {
    Fields sends = DATA.group("sends").orElseThrow();
    return sends.keys().stream()
        .collect(Collectors.toMap(step -> step, step -> TestData.list(sends, step)));
  }

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
    check("bulrush", TestRigs.smallest());
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

  /** No step of the two long lists sends to a page that they do not take in. */
  @Test
  void everyPageThatTheLongListsSendToIsTakenIn() {
    Map<String, TopicText> pages =
        Wording.english().topics().stream().collect(Collectors.toMap(TopicText::title, t -> t));
    List<String> faults = new ArrayList<>();
    for (Rig rig : rigs().values()) {
      Guide guide = guide(rig);
      for (String start : List.of("arrive", "park", "level-front", "leave-site")) {
        Procedure p = guide.procedures().get(start);
        for (Step step : p == null ? List.<Step>of() : p.steps()) {
          Pattern.compile("page '([^']+)'")
              .matcher(step.action().plain())
              .results()
              .map(m -> pages.get(m.group(1)).shows().toString())
              .filter(
                  page ->
                      SENDS.getOrDefault(step.id(), List.of()).stream()
                          .noneMatch(id -> page.contains("OfProcedure[id=" + id + "]")))
              .forEach(page -> faults.add(step.id() + " sends to " + page));
        }
      }
    }
    assertEquals(List.of(), faults.stream().distinct().toList());
  }

  /** A towed rig unhitches on arrival and hitches on leaving; a motorhome brings its jacks up. */
  @Test
  void theLongListsReachTheLastStepsOfTheirPages() {
    assertTrue(names("sedge", "arrival").contains("unhitch.clear-ball"), "sedge unhitches");
    assertTrue(names("sedge", "departure").stream().anyMatch(s -> s.startsWith("hitch.")));
    assertTrue(names("pickerelweed", "arrival").stream().anyMatch(s -> s.startsWith("unhitch.")));
    assertTrue(names("cattail", "arrival").stream().noneMatch(s -> s.startsWith("unhitch.")));
    assertTrue(names("cattail", "departure").contains("disconnect-shore-power.plug-out"));
    assertTrue(names("spikerush", "departure").contains("leave-site.ride-height"));
    assertTrue(names("duckweed", "departure").stream().anyMatch(s -> s.startsWith("lower-roof.")));
  }

  private static List<String> names(String rig, String list) {
    return list(guide(TestRigs.demo(rig)), list).stream().map(Done::step).toList();
  }

  /** Two steps of Sedge change places; the message names the rig, the list and both. */
  @Test
  void twoStepsThatChangePlacesAreNamed() {
    Constraint c = CONSTRAINTS.stream().filter(o -> o.id().equals("CN-62b")).findFirst().get();
    List<Done> steps = list(guide(TestRigs.demo("sedge")), "dump-tanks");
    assertEquals("", broken("sedge, dump-tanks", c, steps));
    int earlier = lastOfFirstPage(steps, c);
    int later = places(steps, c.after())[0];
    List<Done> swapped = new ArrayList<>(steps);
    swapped.set(earlier, steps.get(later));
    swapped.set(later, steps.get(earlier));
    assertEquals(
        "sedge, dump-tanks: CN-62b wants dump-tanks.handles-shut-again (handles.closed) before"
            + " dump-tanks.hose-off-rig (hose.off), which now stands first",
        broken("sedge, dump-tanks", c, swapped));
  }

  /** For every constraint that a demo rig meets, the later step is moved ahead of the earlier. */
  @Test
  void movingTheLaterStepOfAnyConstraintAheadOfTheEarlierIsFound() {
    List<String> missed = new ArrayList<>();
    Set<String> moved = new HashSet<>();
    TestRigs.fleet()
        .forEach(
            rig ->
                lists(guide(TestRigs.demo(rig)))
                    .forEach((list, steps) -> moved(rig + ", " + list, steps, missed, moved)));
    assertEquals(List.of(), missed);
    assertTrue(moved.size() > 0.9 * CONSTRAINTS.size(), "moved " + moved.size());
  }

  private static void moved(String where, List<Done> steps, List<String> missed, Set<String> ids) {
    for (Constraint c : CONSTRAINTS) {
      if (meets(steps, c) && places(steps, c.before())[0] != places(steps, c.after())[0]) {
        List<Done> wrong = new ArrayList<>(steps);
        Done later = wrong.remove(places(steps, c.after())[0]);
        Done earlier = wrong.get(places(wrong, c.before())[0]);
        wrong.add(wrong.indexOf(earlier), later);
        String fault = broken(where, c, wrong);
        ids.add(c.id());
        if (!fault.startsWith(where + ": " + c.id()) || !fault.contains(later.step())) {
          missed.add(where + " " + c.id() + " '" + fault + "'");
        }
      }
    }
  }

  private static Map<String, Rig> rigs() {
    Map<String, Rig> rigs = new LinkedHashMap<>();
    TestRigs.fleet().forEach(name -> rigs.put(name, TestRigs.demo(name)));
    rigs.put("bulrush", TestRigs.smallest());
    RandomRigs.all().forEach(p -> rigs.put(p.name(), p.rig()));
    return rigs;
  }

  private static Guide guide(Rig rig) {
    return new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
  }

  private void check(String name, Rig rig) {
    Guide guide = guide(rig);
    Map<String, List<Done>> lists = lists(guide);
    for (Constraint c : CONSTRAINTS) {
      if (c.trait().isEmpty() || guide.has(c.trait())) {
        lists.forEach((list, steps) -> check(name + ", " + list, list, c, steps));
      }
    }
  }

  private void check(String where, String list, Constraint c, List<Done> steps) {
    if (meets(steps, c)) {
      met.add(c.id() + " in " + list);
      String fault = broken(where, c, steps);
      if (!fault.isEmpty()) {
        broken.add(fault);
      }
    }
  }

  /** Every procedure of the rig, and the two long lists. */
  private static Map<String, List<Done>> lists(Guide guide) {
    Map<String, List<Done>> lists = new LinkedHashMap<>();
    guide.procedures().keySet().forEach(id -> lists.put(id, steps(guide, id)));
    LONG_LISTS.keySet().forEach(id -> lists.put(id, list(guide, id)));
    return lists;
  }

  private static List<Done> list(Guide guide, String list) {
    return LONG_LISTS.containsKey(list)
        ? steps(guide, LONG_LISTS.get(list)).stream().flatMap(s -> sent(guide, s).stream()).toList()
        : steps(guide, list);
  }

  /** The steps of the pages that a step sends to, and of those that these send to. */
  private static List<Done> sent(Guide guide, Done step) {
    List<Done> pages =
        SENDS.getOrDefault(step.step(), List.of()).stream()
            .flatMap(p -> steps(guide, p).stream())
            .flatMap(s -> sent(guide, s).stream())
            .toList();
    return pages.isEmpty() ? List.of(step) : pages;
  }

  private static boolean meets(List<Done> steps, Constraint c) {
    return places(steps, c.before()).length > 0 && places(steps, c.after()).length > 0;
  }

  private static String broken(String where, Constraint c, List<Done> steps) {
    int after = places(steps, c.after())[0];
    int last = lastOfFirstPage(steps, c);
    return last < after || last == after && same(steps.get(last), c)
        ? ""
        : "%s: %s wants %s (%s) before %s (%s), which now stands first"
            .formatted(
                where,
                c.id(),
                steps.get(last).step(),
                c.before(),
                steps.get(after).step(),
                c.after());
  }

  /**
   * The last 'before' of the first page that has one: later pages look at a thing once more, such
   * as the chocks, and need not all stand ahead.
   */
  private static int lastOfFirstPage(List<Done> steps, Constraint c) {
    int[] before = places(steps, c.before());
    String page = page(steps.get(before[0]));
    return c.first()
        ? before[0]
        : IntStream.of(before).filter(i -> page(steps.get(i)).equals(page)).max().getAsInt();
  }

  private static String page(Done step) {
    return step.step().substring(0, step.step().indexOf('.'));
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
    Procedure p = guide.procedures().get(procedure);
    return p == null
        ? List.of()
        : p.steps().stream().map(s -> new Done(s.id(), guide.events().get(s.id()))).toList();
  }
}
