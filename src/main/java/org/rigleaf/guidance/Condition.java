package org.rigleaf.guidance;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;
import org.rigleaf.source.Problems;

/**
 * When an entry of the wording holds: all of {@code when}, at least one of {@code any}, none of
 * {@code unless}. There is no nesting and there are no operators; anything else is a named trait in
 * {@link Traits}.
 */
public record Condition(List<String> when, List<String> any, List<String> unless) {
  /** Always. */
  public static final Condition ALWAYS = new Condition(List.of(), List.of(), List.of());

  /** Reads the three lists; a trait that no rig can have is a problem. */
  static Condition read(Fields entry, Set<String> possible, Problems problems) {
    return new Condition(
        traits(entry, "when", possible, problems),
        traits(entry, "any", possible, problems),
        traits(entry, "unless", possible, problems));
  }

  private static List<String> traits(
      Fields entry, String key, Set<String> possible, Problems problems) {
    List<Node.Text> names = entry.texts(key);
    for (Node.Text name : names) {
      if (!known(name.value(), possible)) {
        String cure =
            org.rigleaf.source.Nearest.to(name.value(), possible)
                .map(n -> "did you mean '" + n + "'?")
                .orElse("use a path of the profile or a trait of Traits");
        problems.add(name.at(), entry.pathOf(key), "no rig can have '" + name.value() + "'", cure);
      }
    }
    return names.stream().map(Node.Text::value).toList();
  }

  /** A name that starts with a dot is a path below the item that the entry speaks of. */
  static boolean known(String name, Set<String> possible) {
    return name.startsWith(".")
        ? possible.stream().anyMatch(p -> p.endsWith(name))
        : possible.contains(name);
  }

  /** True if it holds for what {@code has} says. */
  public boolean holds(Predicate<String> has) {
    return when.stream().allMatch(has)
        && (any.isEmpty() || any.stream().anyMatch(has))
        && unless.stream().noneMatch(has);
  }
}
