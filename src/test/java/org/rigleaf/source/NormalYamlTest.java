package org.rigleaf.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.RandomRigs;

/** The plain form reads back as the same values, quotes included. */
class NormalYamlTest {
  static Stream<String> profiles() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("rig-profiles"))) {
      Stream<String> random = RandomRigs.all().stream().map(RandomRigs.Profile::yaml);
      Stream<String> demo =
          files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream()
              .map(NormalYamlTest::text);
      return Stream.concat(demo, random);
    }
  }

  @ParameterizedTest
  @MethodSource("profiles")
  void aProfileReadsBackTheSame(String profile) {
    Node.Mapping root = read(profile);
    assertEquals(values(root), values(read(NormalYaml.text(root, Set.of()))));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a: b",
        "#none",
        "ends:",
        "- dash",
        "*alias",
        "'quote'",
        "say \"hi\"",
        "back\\slash",
        "two\nlines",
        "tab\there",
        " blanks ",
        "null",
        "{x}",
        "[x]",
        "!tag",
        "%x",
        "@x",
        "`x`",
        "42",
        "5 #6",
        "\u0007bell",
        "caf\u00e9"
      })
  void oddTextsReadBackTheSame(String odd) {
    Position at = Position.start("odd");
    Node.Text text = new Node.Text(odd, true, at);
    Node.Mapping root = new Node.Mapping(java.util.Map.of("key", new Node.Entry(at, text)), at);
    assertEquals(values(root), values(read(NormalYaml.text(root, Set.of()))));
  }

  @Test
  void aKeyLeftOutIsGoneWithAllUnderIt() {
    Node.Mapping root = read("rig: {name: Rush}\nprivate: {gate: {code: \"4471\"}}\n");
    String text = NormalYaml.text(root, Set.of("private"));
    assertTrue(text.contains("Rush"), text);
    assertFalse(text.contains("4471") || text.contains("private"), text);
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Node.Mapping read(String yaml) {
    Problems problems = new Problems();
    Node root = Yaml.read(yaml.getBytes(StandardCharsets.UTF_8), "profile", problems).orElseThrow();
    assertTrue(problems.none(), () -> problems.sorted() + yaml);
    return (Node.Mapping) root;
  }

  /** Everything but the positions. */
  private static String values(Node node) {
    if (node instanceof Node.Text t) {
      return (t.quoted() ? "'" : "") + t.value();
    } else if (node instanceof Node.Sequence s) {
      return s.items().stream().map(NormalYamlTest::values).toList().toString();
    }
    return ((Node.Mapping) node)
        .entries().entrySet().stream()
            .map(e -> e.getKey() + "=" + values(e.getValue().value()))
            .collect(Collectors.joining("; ", "{", "}"));
  }
}
