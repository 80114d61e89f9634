package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestData;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Fields;

/**
 * A task of upkeep prints if and only if its gear is there. What a rig must have was written down
 * from the trade's inventory, apart from the wording: {@code upkeep.yaml}.
 */
class UpkeepTest {
  private static final Fields TABLE = TestData.read("upkeep.yaml");
  private static final Fields INVENTORY =
      TestData.read("caution-triggers.yaml").group("inventory").orElseThrow();
  private static final Map<String, Expected> TASKS = tasks();

  private final List<String> differences = new ArrayList<>();

  private record Expected(
      List<String> codes, List<String> when, List<String> any, List<String> unless) {
    boolean wanted(Set<String> traits) {
      boolean gear =
          codes.stream()
              .flatMap(c -> TestData.list(INVENTORY, c).stream())
              .anyMatch(traits::contains);
      return gear
          && traits.containsAll(when)
          && (any.isEmpty() || any.stream().anyMatch(traits::contains))
          && unless.stream().noneMatch(traits::contains);
    }

    /** Its codes stand for what every rig has, and nothing more is asked. */
    boolean onEveryRig() {
      return wanted(Set.of("always")) && unless.isEmpty();
    }
  }

  private static Map<String, Expected> tasks() {
    Fields all = TABLE.group("tasks").orElseThrow();
    Map<String, Expected> expected = new LinkedHashMap<>();
    for (String id : all.keys()) {
      Fields t = all.group(id).orElseThrow();
      expected.put(
          id,
          new Expected(
              TestData.list(t, "codes"),
              TestData.list(t, "when"),
              TestData.list(t, "any"),
              TestData.list(t, "unless")));
    }
    return expected;
  }

  @Test
  void theWordingHasTheTasksOfTheTableAndNoOther() {
    assertEquals(
        new TreeSet<>(TASKS.keySet()), new TreeSet<>(Wording.english().vocabulary().tasks()));
  }

  /** Every code of the inventory has a task, or is known to need none. */
  @Test
  void noCodeOfTheInventoryIsForgotten() {
    Set<String> told = new TreeSet<>(TestData.list(TABLE, "none"));
    TASKS.values().forEach(t -> told.addAll(t.codes()));
    List<String> forgotten =
        INVENTORY.keys().stream()
            .filter(c -> !c.startsWith("every-") && !told.contains(c))
            .toList();
    assertEquals(List.of(), forgotten);
  }

  @Test
  void theDemoFleetAndTheSmallestHaveTheTasksOfTheirGearAndNoOther() {
    TestRigs.fleet().forEach(name -> check(name, TestRigs.demo(name)));
    check("Bulrush", TestRigs.smallest());
    assertEquals(List.of(), differences);
  }

  @Test
  void everyRandomRigHasTheTasksOfItsGearAndNoOther() {
    RandomRigs.all().forEach(p -> check(p.name(), p.rig()));
    assertEquals(List.of(), differences.stream().limit(40).toList());
  }

  @Test
  void takingAThingAwayOrAddingItMovesItsTasks() {
    List.of(RandomRigs.barest(), RandomRigs.all().get(0)).stream()
        .flatMap(base -> RandomRigs.variations(base).stream())
        .forEach(p -> check(p.name(), p.rig()));
    assertEquals(List.of(), differences.stream().limit(40).toList());
  }

  @Test
  void everyTaskIsOnOneRigAndMissingOnAnotherUnlessEveryRigHasIt() {
    List<Rig> rigs =
        new ArrayList<>(RandomRigs.all().stream().map(RandomRigs.Profile::rig).toList());
    TestRigs.fleet().forEach(name -> rigs.add(TestRigs.demo(name)));
    Map<String, Integer> shown = new TreeMap<>();
    rigs.forEach(rig -> printed(rig).forEach(id -> shown.merge(id, 1, Integer::sum)));
    for (String id : TASKS.keySet()) {
      int count = shown.getOrDefault(id, 0);
      if (count == 0 || !TASKS.get(id).onEveryRig() && count == rigs.size()) {
        differences.add(id + " printed for " + count + " of " + rigs.size());
      }
    }
    assertEquals(List.of(), differences);
  }

  /** Every task stands in one topic's calendar, and in one only. */
  @Test
  void everyTaskStandsInOnePartOfTheCalendar() {
    for (RandomRigs.Profile p : RandomRigs.all()) {
      for (Task task : guide(p.rig()).upkeep()) {
        long topics =
            Wording.english().topics().stream()
                .flatMap(t -> t.shows().stream())
                .filter(s -> s instanceof Show.Calendar c && c.holds(task))
                .count();
        assertEquals(1, topics, task.id());
      }
    }
  }

  /** The page for keepers lists the tasks that a log may name, each with its title. */
  @Test
  void thePageForKeepersListsTheTasks() throws IOException {
    String page = Files.readString(Path.of("docs/profile.md"));
    String section = page.substring(page.indexOf("### Tasks of upkeep"));
    String table = section.substring(section.indexOf("|---|"));
    Map<String, String> listed =
        Pattern.compile("`([a-z-]+)` ([^;|]+)")
            .matcher(table)
            .results()
            .collect(
                Collectors.toMap(
                    (MatchResult m) -> m.group(1),
                    m -> m.group(2).strip(),
                    (a, b) -> a + " and " + b,
                    TreeMap::new));
    Map<String, String> worded = new TreeMap<>();
    Wording.english().tasks.values().forEach(t -> worded.put(t.id(), t.title()));
    assertEquals(worded, listed);
  }

  @Test
  void aTaskThatTheLogTellsOfMustBeKnown() {
    AssertionError error =
        org.junit.jupiter.api.Assertions.assertThrows(
            AssertionError.class,
            () ->
                TestRigs.of(
                    "rig: {name: Rush, kind: travel trailer}",
                    "last-done: {wheel-bearing: 2026-04, polish: 2026}"));
    assertTrue(
        error
            .getMessage()
            .contains(
                "test.log.yaml:1:13: last-done.wheel-bearing: no such key: did you mean"
                    + " 'wheel-bearings'?"),
        error.getMessage());
    assertTrue(
        error
            .getMessage()
            .contains("last-done.polish: no such key: docs/profile.md lists the tasks"),
        error.getMessage());
  }

  private static Guide guide(Rig rig) {
    return new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
  }

  private void check(String name, Rig rig) {
    Set<String> traits = Traits.of(rig);
    Set<String> printed = printed(rig);
    TASKS.forEach(
        (id, t) -> {
          if (t.wanted(traits) != printed.contains(id)) {
            differences.add(name + (t.wanted(traits) ? " lacks " : " prints ") + id);
          }
        });
  }

  private static Set<String> printed(Rig rig) {
    return guide(rig).upkeep().stream()
        .map(Task::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
