package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/**
 * A symptom as the wording has it, for all rigs.
 *
 * @param symptom as a newcomer says it
 * @param checks what the reader may look at, the likeliest first
 * @param stops where somebody else takes over
 */
record FaultText(
    String id,
    Condition condition,
    String symptom,
    List<String> cautions,
    List<Item> checks,
    List<StopText> stops) {
  private static final Set<String> HELP = Set.of("technician", "emergency");

  /** A sign at which the reader stops, and who takes over. */
  record StopText(String who, Condition condition, TextTemplate text) {}

  static FaultText read(String id, Fields entry, WordingCheck check) {
    List<StopText> stops = new ArrayList<>();
    for (Node node : entry.list("stop")) {
      entry.group(node, "stop").ifPresent(s -> stops.add(stop(s, check)));
    }
    FaultText fault =
        new FaultText(
            id,
            Condition.read(entry, check.traits, check.problems),
            entry.text("symptom").map(Node.Text::value).orElse(""),
            ProcedureText.cautions(entry, check),
            ProcedureText.items(entry, "checks", check),
            List.copyOf(stops));
    entry.finish();
    if (fault.symptom.isEmpty() || fault.checks.isEmpty() || stops.isEmpty()) {
      check.problem(entry.at(), id, "a fault needs symptom, checks and stop", "write them");
    }
    return fault;
  }

  private static StopText stop(Fields entry, WordingCheck check) {
    String who = entry.text("who").map(Node.Text::value).orElse("");
    if (!HELP.contains(who)) {
      check.problem(entry.at(), entry.pathOf("who"), "nobody is '" + who + "'", "one of " + HELP);
    }
    StopText stop =
        new StopText(
            who,
            Condition.read(entry, check.traits, check.problems),
            TextTemplate.read(entry, "text", check));
    entry.finish();
    return stop;
  }
}
