package org.rigleaf.guidance;

import java.util.Map;
import java.util.Optional;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/** What stands of a step on the card of its task. */
public enum OnCard {
  /** Nothing: the binder alone tells it. */
  NO,
  /** Its action; what one should see only where that names an amount or something of the rig. */
  YES,
  /** What one should see too, since the action alone does not tell how. */
  SEE;

  private static final Map<String, OnCard> SAID = Map.of("yes", YES, "see", SEE);
  private static final String CURE = "write yes, or see: what one should see is printed too";

  /** What the wording says under {@code card}. */
  static OnCard read(Fields entry, WordingCheck check) {
    Optional<Node.Text> said = entry.text("card");
    said.filter(t -> !SAID.containsKey(t.value()))
        .ifPresent(
            t -> check.problem(t.at(), entry.pathOf("card"), "no '" + t.value() + "'", CURE));
    return said.map(t -> SAID.getOrDefault(t.value(), NO)).orElse(NO);
  }
}
