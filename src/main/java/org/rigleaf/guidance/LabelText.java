package org.rigleaf.guidance;

import java.util.List;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Unit;

/**
 * What the wording puts on a label.
 *
 * @param gear the kind of gear, for each piece of which there is such a label; empty for a label of
 *     its own
 * @param title of a label of its own
 * @param word what stands there in large type; may be none
 * @param feet from how far it is read
 */
record LabelText(
    String id,
    String gear,
    String title,
    Condition condition,
    TextTemplate word,
    List<ConditionalText> lines,
    int feet) {
  private static final int ARMS_LENGTH_FT = 2;

  static LabelText read(String id, Fields entry, WordingCheck check) {
    entry.text("gear").ifPresent(t -> check.gear(t.at(), entry.pathOf("gear"), t.value()));
    LabelText text =
        new LabelText(
            id,
            word(entry, "gear"),
            word(entry, "title"),
            Condition.read(entry, check.traits, check.problems),
            TextTemplate.read(entry, "word", check),
            ConditionalText.list(entry, "lines", check),
            feet(entry));
    entry.finish();
    if (text.gear.isEmpty() == text.title.isEmpty()) {
      check.problem(entry.at(), id, "a label has gear or a title, one of the two", "write it");
    }
    return text;
  }

  private static int feet(Fields entry) {
    return entry
        .text("read-from")
        .flatMap(t -> Quantity.parse(t.value()))
        .map(q -> (int) Math.rint(q.in(Unit.FOOT)))
        .orElse(ARMS_LENGTH_FT);
  }

  private static String word(Fields entry, String key) {
    return entry.text(key).map(Node.Text::value).orElse("");
  }
}
