package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.rigleaf.figures.Entry;
import org.rigleaf.figures.Register;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/**
 * A sentence of the wording with its placeholders, such as {@code {figure:bank.usable}} or {@code
 * {place-of:water.pump}}.
 *
 * @param parts literal text and slots in order
 */
public record TextTemplate(List<Part> parts) {
  /** No words. */
  public static final TextTemplate NONE = new TextTemplate(List.of());

  private static final Pattern SLOT = Pattern.compile("\\{([a-z-]+)(?::([^{}]*))?\\}");
  private static final Set<String> ITEM = Set.of("name", "code", "place");
  private static final Set<String> SUBJECTS = Set.of("place-of", "name-of", "code-of", "fact");
  private static final Set<String> KINDS =
      Set.of(
          "figure",
          "place-of",
          "name-of",
          "code-of",
          "count-of",
          "breaker-of",
          "fuse-of",
          "topic",
          "fact",
          "contact",
          "blank",
          "name",
          "code",
          "place");

  /** A literal (kind empty) or a slot. */
  public record Part(String kind, String text) {}

  /** Reads the text under a key; none if the key is not there. */
  static TextTemplate read(Fields entry, String key, WordingCheck check) {
    return entry.text(key).map(t -> read(t, entry.pathOf(key), check)).orElse(NONE);
  }

  /** Reads a text and checks that every placeholder can mean something. */
  static TextTemplate read(Node.Text text, String path, WordingCheck check) {
    List<Part> parts = new ArrayList<>();
    Matcher m = SLOT.matcher(text.value());
    int end = 0;
    while (m.find()) {
      literal(parts, text.value().substring(end, m.start()));
      Part slot = new Part(m.group(1), m.group(2) == null ? "" : m.group(2));
      parts.add(slot);
      check(slot, text, path, check);
      end = m.end();
    }
    literal(parts, text.value().substring(end));
    return new TextTemplate(List.copyOf(parts));
  }

  private static void literal(List<Part> parts, String text) {
    if (!text.isEmpty()) {
      parts.add(new Part("", text));
    }
  }

  private static void check(Part slot, Node.Text text, String path, WordingCheck check) {
    if (!KINDS.contains(slot.kind()) || slot.text().isEmpty() != ITEM.contains(slot.kind())) {
      check.problem(
          text.at(),
          path,
          "no placeholder {" + slot.kind() + ":" + slot.text() + "}",
          "one of: " + KINDS);
      return;
    }
    switch (slot.kind()) {
      case "figure" -> check.figure(text.at(), path, slot.text());
      case "place-of", "name-of", "code-of", "count-of", "breaker-of", "fuse-of" ->
          check.gear(text.at(), path, slot.text());
      case "topic" -> check.topic(text.at(), path, slot.text());
      case "fact" -> check.fact(text.at(), path, slot.text());
      default -> {
        // the rest needs no table
      }
    }
  }

  /** What the slots speak of: gear and facts, by path; inside a list, of the item with this id. */
  List<String> subjects(String item) {
    return parts.stream()
        .filter(p -> SUBJECTS.contains(p.kind()))
        .map(p -> p.text().startsWith(".") ? item + p.text() : p.text())
        .toList();
  }

  /** True if there is nothing to say. */
  public boolean empty() {
    return parts.isEmpty();
  }

  /** The text with every placeholder as one word, for tests of the language. */
  public String plain() {
    return parts.stream()
        .map(p -> p.kind().isEmpty() ? p.text() : "X")
        .collect(Collectors.joining());
  }

  /** Turns an id pattern such as {@code tank.<id>.weight} into a regular expression. */
  static Pattern idPattern(Entry entry) {
    String regex =
        Pattern.compile("<[^>]*>")
            .splitAsStream(entry.pattern())
            .map(Pattern::quote)
            .collect(Collectors.joining("[^.]+"));
    return Pattern.compile(entry.pattern().endsWith(">") ? regex + "[^.]+" : regex);
  }

  /** True if some rig can have a figure with this id; {@code *} stands for an item. */
  static boolean figureExists(String id) {
    String sample = id.replace("*", "x");
    return Register.ENTRIES.stream().anyMatch(e -> idPattern(e).matcher(sample).matches());
  }
}
