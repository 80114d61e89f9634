package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.rigleaf.figures.Figures;

/**
 * What nobody has said about a rig yet: facts that keep figures back and lines that the pages leave
 * to fill in by hand.
 *
 * @param uses how many figures and lines wait for each fact, most first; safety facts before all
 *     others
 * @param safety the facts among them that an emergency may turn on
 */
public record Unknowns(Map<String, Integer> uses, Set<String> safety) {
  private static final List<String> SAFETY =
      List.of(
          "safety.",
          "propane.shut-off",
          "propane.tank.valve",
          "propane.cylinders",
          "electric.panel",
          "electric.disconnect.where",
          "contacts.");

  /** Everything unknown that this rig's binder would use. */
  public static Unknowns of(Guide guide, Figures figures) {
    Map<String, Integer> uses = new LinkedHashMap<>(figures.wanted());
    uses.keySet().removeIf(path -> path.startsWith("last-done.")); // the calendar asks for those
    Traits.safetyKitPaths().stream()
        .filter(p -> guide.has(p + ".unlisted"))
        .forEach(p -> uses.merge(p, 1, Integer::sum));
    guide.procedures().values().forEach(p -> p.steps().forEach(s -> blanks(s, uses)));
    Set<String> safety = new TreeSet<>(uses.keySet());
    safety.removeIf(path -> !isSafety(path));
    List<Map.Entry<String, Integer>> order = new ArrayList<>(uses.entrySet());
    order.sort(
        Comparator.comparing((Map.Entry<String, Integer> e) -> !safety.contains(e.getKey()))
            .thenComparing(e -> -e.getValue()));
    Map<String, Integer> sorted = new LinkedHashMap<>();
    order.forEach(e -> sorted.put(e.getKey(), e.getValue()));
    return new Unknowns(sorted, safety);
  }

  private static boolean isSafety(String path) {
    return Traits.safetyKitPaths().contains(path) || SAFETY.stream().anyMatch(path::startsWith);
  }

  private static void blanks(Step step, Map<String, Integer> uses) {
    for (Words words : List.of(step.action(), step.see(), step.ifNot(), step.place())) {
      words.runs().stream()
          .filter(r -> r.kind() == Run.Kind.BLANK && r.key().contains("."))
          .forEach(r -> uses.merge(r.key(), 1, Integer::sum));
    }
  }
}
