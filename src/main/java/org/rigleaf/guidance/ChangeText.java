package org.rigleaf.guidance;

import java.util.List;
import java.util.Set;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/**
 * What a notice must say when the rig changed in a certain way, as the wording has it.
 *
 * @param added traits that the rig has now and had not before; all of them
 * @param gone traits that the rig had before and has no more; all of them
 * @param changed facts, {@code *} for the item of a list; where some are named, one must differ
 * @param condition of the rig as it is now
 * @param title what changed, in one line
 * @param first what to do before the first use
 * @param now what is different in use
 * @param withdrawn what held before and holds no more; its conditions speak of the rig as it was
 * @param tell who must be told
 */
record ChangeText(
    String id,
    List<String> added,
    List<String> gone,
    List<String> changed,
    Condition condition,
    String title,
    List<ConditionalText> first,
    List<ConditionalText> now,
    List<ConditionalText> withdrawn,
    List<ConditionalText> tell) {

  static ChangeText read(String id, Fields entry, WordingCheck check) {
    ChangeText change =
        new ChangeText(
            id,
            traits(entry, "new", check),
            traits(entry, "gone", check),
            entry.texts("changed").stream().map(Node.Text::value).toList(),
            Condition.read(entry, check.traits, check.problems),
            entry.text("title").map(Node.Text::value).orElse(""),
            ConditionalText.list(entry, "before-first-use", check),
            ConditionalText.list(entry, "now", check),
            ConditionalText.list(entry, "withdrawn", check),
            ConditionalText.list(entry, "tell", check));
    entry
        .texts("changed")
        .forEach(t -> check.fact(t.at(), entry.pathOf("changed"), t.value().replace(".*", "")));
    entry.finish();
    if (change.added.isEmpty() && change.gone.isEmpty() && change.changed.isEmpty()) {
      check.problem(entry.at(), id, "it says not what changed", "name it in new, gone or changed");
    }
    return change;
  }

  private static List<String> traits(Fields entry, String key, WordingCheck check) {
    entry.texts(key).forEach(t -> check.fact(t.at(), entry.pathOf(key), t.value()));
    return entry.texts(key).stream().map(Node.Text::value).toList();
  }

  /** True if the rig changed in this way. */
  boolean happened(Set<String> before, Set<String> now, Set<String> facts) {
    return now.containsAll(added)
        && added.stream().noneMatch(before::contains)
        && before.containsAll(gone)
        && gone.stream().noneMatch(now::contains)
        && (changed.isEmpty()
            || changed.stream()
                .map(ChangeText::pattern)
                .anyMatch(p -> facts.stream().anyMatch(f -> f.matches(p))))
        && condition.holds(now::contains);
  }

  private static String pattern(String fact) {
    return fact.replace(".", "\\.").replace("*", "[^.]+");
  }
}
