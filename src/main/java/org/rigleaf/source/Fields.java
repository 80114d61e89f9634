package org.rigleaf.source;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The keys of one group, asked for one by one. Each question makes a key known; {@link #finish}
 * then names the keys nobody asked for, with the nearest known one.
 */
public final class Fields {
  private final Node.Mapping map;
  private final String path;
  private final Problems problems;
  private final Set<String> known = new LinkedHashSet<>();

  /** The keys of {@code map}, which stands at {@code path}. */
  public Fields(Node.Mapping map, String path, Problems problems) {
    this.map = map;
    this.path = path;
    this.problems = problems;
  }

  /** An empty group, for one that the file leaves out. */
  public static Fields none(String path, Problems problems) {
    return new Fields(new Node.Mapping(Map.of(), Position.start("")), path, problems);
  }

  /** Dotted path of this group. */
  public String path() {
    return path;
  }

  /** Where the group starts. */
  public Position at() {
    return map.at();
  }

  /** Dotted path of a key in this group. */
  public String pathOf(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** Whatever stands under a key. */
  public Optional<Node> node(String key) {
    known.add(key);
    return Optional.ofNullable(map.entries().get(key)).map(Node.Entry::value);
  }

  /** A single text under a key. */
  public Optional<Node.Text> text(String key) {
    Optional<Node> node = node(key);
    if (node.isPresent() && !(node.get() instanceof Node.Text)) {
      problem(node.get().at(), key, node.get().called() + " stands here", "a single text");
      return Optional.empty();
    }
    return node.map(Node.Text.class::cast);
  }

  /** A group of keys under a key. */
  public Optional<Fields> group(String key) {
    Optional<Node> node = node(key);
    return node.flatMap(n -> group(n, key));
  }

  /** The group that a node of this group's list holds. */
  public Optional<Fields> group(Node node, String key) {
    if (node instanceof Node.Mapping m) {
      return Optional.of(new Fields(m, pathOf(key), problems));
    }
    problem(
        node.at(), key, node.called() + " stands here", "keys with values, such as 'name: ...'");
    return Optional.empty();
  }

  /** A list under a key; a single value where a list may stand is a list of one. */
  public List<Node> list(String key) {
    return node(key)
        .map(n -> n instanceof Node.Sequence s ? s.items() : List.of(n))
        .orElse(List.of());
  }

  /** A list of texts under a key. */
  public List<Node.Text> texts(String key) {
    List<Node> items = list(key);
    items.stream()
        .filter(n -> !(n instanceof Node.Text))
        .forEach(n -> problem(n.at(), key, n.called() + " stands here", "a single text"));
    return items.stream().filter(Node.Text.class::isInstance).map(Node.Text.class::cast).toList();
  }

  /** All keys as written, for maps whose keys are free. */
  public Set<String> keys() {
    known.addAll(map.entries().keySet());
    return map.entries().keySet();
  }

  /** True if the key was written. */
  public boolean has(String key) {
    known.add(key);
    return map.entries().containsKey(key);
  }

  /** Notes a problem about a key of this group. */
  public void problem(Position at, String key, String wrong, String cure) {
    problems.add(at, pathOf(key), wrong, cure);
  }

  /** Names every key that nobody asked for. */
  public void finish() {
    map.entries()
        .forEach(
            (key, entry) -> {
              if (!known.contains(key)) {
                problem(entry.key(), key, "no such key", cureFor(key));
              }
            });
  }

  /** Notes that a key is none of a closed list; the cure names the nearest of it, or the list. */
  public void unknown(String key, Set<String> closed, String list) {
    String cure = Nearest.to(key, closed).map(k -> "did you mean '" + k + "'?").orElse(list);
    problem(map.entries().get(key).key(), key, "no such key", cure);
  }

  private String cureFor(String key) {
    return Nearest.to(key, known)
        .map(k -> "did you mean '" + k + "'?")
        .orElse("known here: " + String.join(", ", known));
  }
}
