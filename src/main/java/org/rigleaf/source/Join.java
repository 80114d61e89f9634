package org.rigleaf.source;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Puts pieces of YAML together into one document. */
public final class Join {
  private Join() {}

  /** True if a single text already stands where the piece would write. */
  public static boolean taken(Node.Mapping root, Node.Mapping piece) {
    return piece.entries().entrySet().stream()
        .filter(e -> root.entries().containsKey(e.getKey()))
        .anyMatch(e -> taken(root.entries().get(e.getKey()).value(), e.getValue().value()));
  }

  private static boolean taken(Node there, Node piece) {
    boolean maps = there instanceof Node.Mapping && piece instanceof Node.Mapping;
    return maps
        ? taken((Node.Mapping) there, (Node.Mapping) piece)
        : there instanceof Node.Text || piece instanceof Node.Text;
  }

  /** Groups of keys are merged, lists follow one another; nothing may be {@link #taken}. */
  public static Node.Mapping of(Node.Mapping root, Node.Mapping piece) {
    Map<String, Node.Entry> entries = new LinkedHashMap<>(root.entries());
    piece.entries().forEach((key, entry) -> entries.merge(key, entry, Join::entries));
    return new Node.Mapping(entries, root.at());
  }

  private static Node.Entry entries(Node.Entry there, Node.Entry piece) {
    boolean maps = there.value() instanceof Node.Mapping && piece.value() instanceof Node.Mapping;
    Node value =
        maps
            ? of((Node.Mapping) there.value(), (Node.Mapping) piece.value())
            : new Node.Sequence(
                Stream.of(there.value(), piece.value()).flatMap(Join::items).toList(),
                there.value().at());
    return new Node.Entry(there.key(), value);
  }

  private static Stream<Node> items(Node node) {
    return node instanceof Node.Sequence list ? list.items().stream() : List.of(node).stream();
  }
}
