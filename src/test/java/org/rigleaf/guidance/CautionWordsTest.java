package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestData;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Fields;

/** A caution says what to do, with the command first, and stands where its danger is met. */
class CautionWordsTest {
  private static final Fields VERBS = TestData.read("verbs.yaml");
  private static final Set<String> CONDITIONS = Set.of("If", "When", "Before");
  private static final Set<String> REFUSALS = Set.of("Never", "Do");

  private final List<String> faults = new ArrayList<>();
  private final Set<String> used = new TreeSet<>();

  @Test
  void everyAvoidanceStartsWithACommandOrWithItsCondition() {
    Set<String> commands = new TreeSet<>(TestData.list(VERBS, "verbs"));
    commands.addAll(TestData.list(VERBS, "cautions"));
    Wording.english()
        .cautions
        .values()
        .forEach(
            c ->
                Stream.concat(c.avoid().stream().map(ConditionalText::text), Stream.of(c.command()))
                    .forEach(t -> starts(c.id(), t.plain(), commands)));
    assertEquals(List.of(), faults);
    List<String> idle =
        TestData.list(VERBS, "cautions").stream().filter(v -> !used.contains(v)).toList();
    assertEquals(List.of(), idle, "verbs that start no caution");
  }

  private void starts(String id, String text, Set<String> commands) {
    String first = text.split("[ ,.]")[0];
    used.add(first);
    boolean refusal = REFUSALS.contains(first) && text.matches("(Never|Do not) .*");
    if (!commands.contains(first) && !CONDITIONS.contains(first) && !refusal) {
      faults.add(id + ": starts with '" + first + "': " + text);
    }
  }

  /** Each caution that a rig prints is called to mind by some step or page head of that rig. */
  @Test
  void everyCautionIsCalledToMindWhereItsDangerIsMet() {
    TestRigs.fleet().forEach(name -> unmet(name, TestRigs.demo(name)));
    unmet("bulrush", TestRigs.smallest());
    assertEquals(List.of(), faults);
  }

  private void unmet(String name, Rig rig) {
    Guide guide = new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
    Set<String> met = new TreeSet<>();
    guide
        .procedures()
        .values()
        .forEach(
            p ->
                Stream.concat(
                        p.reminders().stream(),
                        p.steps().stream().flatMap(s -> s.reminders().stream()))
                    .forEach(r -> met.add(r.caution())));
    guide.cautions().stream()
        .map(Caution::id)
        .filter(id -> !met.contains(id))
        .forEach(id -> faults.add(name + ": no step calls " + id + " to mind"));
  }
}
