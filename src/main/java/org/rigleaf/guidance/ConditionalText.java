package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.List;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/** A text of a list that may hold only for some rigs. */
record ConditionalText(Condition condition, TextTemplate text) {

  /** Reads a list whose items are texts or {@code {text: ..., when: [...]}}. */
  static List<ConditionalText> list(Fields entry, String key, WordingCheck check) {
    List<ConditionalText> texts = new ArrayList<>();
    for (Node node : entry.list(key)) {
      if (node instanceof Node.Text t) {
        texts.add(
            new ConditionalText(Condition.ALWAYS, TextTemplate.read(t, entry.pathOf(key), check)));
      } else {
        entry.group(node, key).ifPresent(g -> texts.add(read(g, check)));
      }
    }
    return List.copyOf(texts);
  }

  private static ConditionalText read(Fields entry, WordingCheck check) {
    ConditionalText text =
        new ConditionalText(
            Condition.read(entry, check.traits, check.problems),
            TextTemplate.read(entry, "text", check));
    entry.finish();
    return text;
  }
}
