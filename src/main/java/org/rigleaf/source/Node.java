package org.rigleaf.source;

import java.util.List;
import java.util.Map;

/** A value of a YAML file with its position. */
public sealed interface Node {
  /** Where the value starts. */
  Position at();

  /** What a reader would call this kind of value, for messages. */
  String called();

  /** A single text or number, as written. */
  record Text(String value, boolean quoted, Position at) implements Node {
    @Override
    public String called() {
      return "a single text";
    }
  }

  /** Keys with values, in the order written. */
  record Mapping(Map<String, Entry> entries, Position at) implements Node {
    @Override
    public String called() {
      return "a group of keys";
    }
  }

  /** A list. */
  record Sequence(List<Node> items, Position at) implements Node {
    @Override
    public String called() {
      return "a list";
    }
  }

  /** A key's own position and its value. */
  record Entry(Position key, Node value) {}
}
