package org.rigleaf.source;

import java.util.Map;
import java.util.Set;

/**
 * Writes a document in one plain form: block style, two spaces a level, no comments. What stood in
 * quotes stands in quotes again, because quotes say that a mention is only words.
 */
public final class NormalYaml {
  private final StringBuilder out = new StringBuilder();

  private NormalYaml() {}

  /** The document without the keys named in {@code without} at its top; ends with a line break. */
  public static String text(Node.Mapping root, Set<String> without) {
    NormalYaml yaml = new NormalYaml();
    root.entries().entrySet().stream()
        .filter(e -> !without.contains(e.getKey()))
        .forEach(e -> yaml.entry(e, ""));
    return yaml.out.toString();
  }

  private void entry(Map.Entry<String, Node.Entry> entry, String indent) {
    out.append(indent).append(scalar(entry.getKey(), false)).append(':');
    value(entry.getValue().value(), indent);
  }

  private void value(Node node, String indent) {
    if (node instanceof Node.Text text) {
      out.append(' ').append(scalar(text.value(), text.quoted())).append('\n');
    } else if (node instanceof Node.Mapping map) {
      out.append(map.entries().isEmpty() ? " {}\n" : "\n");
      map.entries().entrySet().forEach(e -> entry(e, indent + "  "));
    } else if (node instanceof Node.Sequence list) {
      out.append(list.items().isEmpty() ? " []\n" : "\n");
      for (Node item : list.items()) {
        out.append(indent).append("  -");
        value(item, indent + "  ");
      }
    }
  }

  /** Plain where that reads back as the same text, else in double quotes. */
  private static String scalar(String text, boolean quoted) {
    boolean plain =
        !quoted
            && text.matches("[\\p{L}\\p{N}/+.][^\\p{C}]*")
            && !text.contains(": ")
            && !text.contains(" #")
            && !text.endsWith(":")
            && text.equals(text.strip());
    return plain ? text : '"' + escaped(text) + '"';
  }

  /** What YAML wants escaped: controls, halves of characters, characters that are none. */
  private static boolean unprintable(int c) {
    return Character.isISOControl(c)
        || Character.getType(c) == Character.SURROGATE
        || c == 0xFEFF
        || c == 0xFFFE
        || c == 0xFFFF;
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                escaped.append('\\').appendCodePoint(c);
              } else if (c == '\n') {
                escaped.append("\\n");
              } else if (unprintable(c)) {
                escaped.append(String.format("\\u%04X", c));
              } else {
                escaped.appendCodePoint(c);
              }
            });
    return escaped.toString();
  }
}
