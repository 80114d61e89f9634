package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.TestData;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;
import org.rigleaf.source.Problems;
import org.rigleaf.source.Yaml;

/** One name for one thing, in every entry of the wording; failures name file and entry. */
class TermsTest {
  private static final Fields DATA = TestData.read("terms.yaml");
  private static final Path WORDING = Path.of("templates/wording/en");

  /** Keys whose values are ids, conditions or numbers, not words that a reader sees. */
  private static final Set<String> NOT_WORDS =
      Set.of(
          ("when any unless does cautions at kit id by level group mode each minutes card section"
                  + " procedure gear ids columns row across pattern plot of drawing emergency"
                  + " severity topic letter writes none choices needed")
              .split(" "));

  private final List<String> faults = new ArrayList<>();

  @Test
  void noEntryUsesASecondNameForAThing() throws IOException {
    Fields terms = DATA.group("terms").orElseThrow();
    for (String name : terms.keys()) {
      for (String refused : TestData.list(terms, name)) {
        Pattern other =
            Pattern.compile("(?<![\\w-])(" + refused + ")(?![\\w-])", Pattern.CASE_INSENSITIVE);
        assertTrue(!other.matcher(name).find(), name + " refuses itself by " + refused);
        entries(
            (entry, text) -> {
              if (other.matcher(text).find()) {
                faults.add(entry + ": say '" + name + "', not '" + refused + "': " + text);
              }
            });
      }
    }
    assertEquals(List.of(), faults);
  }

  /** A word in capitals stands on the gear, or is an abbreviation that is explained. */
  @Test
  void capitalsAreSignsOrExplainedAbbreviations() throws IOException {
    Set<String> known = new TreeSet<>(TestData.list(DATA, "signs"));
    known.addAll(DATA.group("abbreviations").orElseThrow().keys());
    entries(
        (entry, text) ->
            Pattern.compile("\\b[A-Z]{2,}\\b")
                .matcher(text)
                .results()
                .filter(m -> !known.contains(m.group()))
                .forEach(m -> faults.add(entry + ": " + m.group() + " in: " + text)));
    assertEquals(List.of(), faults);
  }

  /** The whole word stands within forty letters of the first use. */
  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void anAbbreviationIsExplainedWhereABinderFirstUsesIt(String rig) {
    Fields abbreviations = DATA.group("abbreviations").orElseThrow();
    Document html = Printed.html(rig);
    String text = html.body().text();
    for (String abbreviation : abbreviations.keys()) {
      Matcher first = Pattern.compile("\\b" + abbreviation + "\\b").matcher(text);
      if (first.find()) {
        String around = text.substring(Math.max(0, first.start() - 40), first.end());
        assertTrue(
            around.toLowerCase(Locale.ROOT).contains(TestData.text(abbreviations, abbreviation)),
            rig + ", " + abbreviation + ": " + around);
      }
    }
  }

  /** Every text of the wording with its file and the way to it. */
  private static void entries(BiConsumer<String, String> each) throws IOException {
    try (Stream<Path> files = Files.walk(WORDING)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        String name = WORDING.relativize(file).toString();
        Problems problems = new Problems();
        Node root = Yaml.read(Files.readAllBytes(file), name, problems).orElseThrow();
        if (!name.equals("index.yaml") && !name.equals("sections.yaml")) {
          walk(name + ": ", root, each);
        }
      }
    }
  }

  private static void walk(String way, Node node, BiConsumer<String, String> each) {
    if (node instanceof Node.Text t) {
      each.accept(way, t.value().replaceAll("\\{[^}]*}", "…"));
    } else if (node instanceof Node.Sequence s) {
      s.items().forEach(i -> walk(way, i, each));
    } else if (node instanceof Node.Mapping m) {
      String id = m.entries().get("id") == null ? "" : text(m.entries().get("id").value()) + ".";
      m.entries()
          .forEach(
              (key, entry) -> {
                if (!NOT_WORDS.contains(key)) {
                  walk(way + id + key + " ", entry.value(), each);
                }
              });
    }
  }

  private static String text(Node node) {
    return node instanceof Node.Text t ? t.value() : "";
  }
}
