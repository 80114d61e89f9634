package org.rigleaf.guidance;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.Face;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/**
 * A stop of the walk-through as the wording has it, for all rigs.
 *
 * @param first one of the stops that come before the walk
 * @param condition if it is left out, the stop is for rigs with any of its gear
 * @param kit safety kit that is never dropped by silence, one of which is enough
 * @param gear kinds of gear that are shown; the first that the rig has says where the stop is
 * @param inside told inside, on whatever wall the gear is, such as a window
 * @param usual the face where such gear is, for rigs that do not say it
 */
record StopText(
    String id,
    String title,
    boolean first,
    Condition condition,
    List<String> kit,
    List<String> gear,
    boolean inside,
    Face usual,
    int minutes,
    List<ConditionalText> say,
    List<ConditionalText> show,
    TextTemplate ask) {

  static StopText read(String id, Fields entry, WordingCheck check) {
    StopText stop =
        new StopText(
            id,
            word(entry, "title"),
            entry.text("first").isPresent(),
            Condition.read(entry, check.traits, check.problems),
            kit(entry, check),
            gear(entry, check),
            entry.text("inside").isPresent(),
            usual(entry, check),
            minutes(entry, check),
            ConditionalText.list(entry, "say", check),
            ConditionalText.list(entry, "show", check),
            TextTemplate.read(entry, "ask", check));
    entry.finish();
    if (stop.title.isEmpty() || stop.say.isEmpty() || stop.show.isEmpty() || stop.ask.empty()) {
      check.problem(entry.at(), id, "a stop needs title, say, show and ask", "write them");
    }
    return stop;
  }

  private static List<String> kit(Fields entry, WordingCheck check) {
    List<Node.Text> kit = entry.texts("kit");
    kit.forEach(t -> check.fact(t.at(), entry.pathOf("kit"), t.value()));
    return kit.stream().map(Node.Text::value).toList();
  }

  private static List<String> gear(Fields entry, WordingCheck check) {
    List<Node.Text> gear = entry.texts("gear");
    gear.forEach(t -> check.gear(t.at(), entry.pathOf("gear"), t.value()));
    return gear.stream().map(Node.Text::value).toList();
  }

  private static Face usual(Fields entry, WordingCheck check) {
    String word = entry.text("usual").map(Node.Text::value).orElse(Face.INSIDE.text());
    Optional<Face> face =
        Arrays.stream(Face.values()).filter(f -> f.text().equals(word)).findFirst();
    if (face.isEmpty()) {
      String cure = "one of: " + Arrays.stream(Face.values()).map(Face::text).toList();
      check.problem(entry.at(), entry.pathOf("usual"), "no face '" + word + "'", cure);
    }
    return face.orElse(Face.INSIDE);
  }

  private static int minutes(Fields entry, WordingCheck check) {
    String word = word(entry, "minutes");
    if (!word.matches("[1-9]\\d?")) {
      check.problem(entry.at(), entry.pathOf("minutes"), "no minutes: '" + word + "'", "write 2");
      return 1;
    }
    return Integer.parseInt(word);
  }

  private static String word(Fields entry, String key) {
    return entry.text(key).map(Node.Text::value).orElse("");
  }
}
