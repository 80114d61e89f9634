package org.rigleaf.rig;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/** List items written once for several of a kind: {@code count: 2} stands for two of them. */
final class Copies {
  private Copies() {}

  /**
   * The items of a list, each as often as it counts; copies are named 'cylinder 1', 'cylinder 2'.
   *
   * @param singular what an item without a name is called
   */
  static List<Node> of(Fields fields, String key, String singular) {
    List<Node> all = new ArrayList<>();
    for (Node node : fields.list(key)) {
      boolean several = node instanceof Node.Mapping m && m.entries().containsKey("count");
      all.addAll(several ? copies(fields, key, singular, (Node.Mapping) node) : List.of(node));
    }
    return all;
  }

  private static List<Node> copies(Fields fields, String key, String singular, Node.Mapping node) {
    Node value = node.entries().get("count").value();
    String written = value instanceof Node.Text t ? t.value() : "";
    if (!written.matches("[1-9]")) {
      fields.problem(
          value.at(), key + ".count", "'" + written + "' is not a count", "write 1 to 9");
      return List.of();
    }
    int count = Integer.parseInt(written);
    Node.Entry name = node.entries().get("name");
    String stem = name != null && name.value() instanceof Node.Text t ? t.value() : singular;
    List<Node> copies = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      copies.add(named(node, count == 1 ? stem : stem + " " + i));
    }
    return copies;
  }

  private static Node named(Node.Mapping node, String name) {
    Map<String, Node.Entry> entries = new LinkedHashMap<>(node.entries());
    entries.remove("count");
    entries.put("name", new Node.Entry(node.at(), new Node.Text(name, false, node.at())));
    return new Node.Mapping(entries, node.at());
  }
}
