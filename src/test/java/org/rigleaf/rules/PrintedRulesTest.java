package org.rigleaf.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of rules names tests that exist, and leaves no rule of the fifty out. */
class PrintedRulesTest {
  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| ([A-Z]\\d+) \\| ([^|]+) \\| ([^|]+) \\|$");
  private static final Pattern TEST = Pattern.compile("`(\\w+Test)\\.(\\w+)`");
  private static final List<String> FIFTY =
      Stream.of(
              of("S", 1, 2, 3, 4, 5, 6, 9, 10),
              of("I", 1, 2, 3, 4, 5, 6, 8, 11, 13),
              of("C", 1, 3, 4, 5, 6, 11, 12, 13),
              of("T", 1, 2, 3, 6, 7, 8, 9, 10, 11, 13),
              of("V", 1, 2, 3, 4, 5, 8),
              of("P", 1, 4),
              of("D", 1, 3),
              of("R", 1, 2, 3),
              of("H", 1, 2))
          .flatMap(s -> s)
          .toList();

  private static Stream<String> of(String letter, int... numbers) {
    return IntStream.of(numbers).mapToObj(n -> letter + n);
  }

  private static List<MatchResult> rows() throws IOException {
    return ROW.matcher(Files.readString(Path.of("docs/printed-rules.md"))).results().toList();
  }

  @Test
  void eachOfTheFiftyHasOneRow() throws IOException {
    assertEquals(50, FIFTY.size());
    assertEquals(FIFTY, rows().stream().map(r -> r.group(1)).toList());
  }

  @Test
  void eachRowNamesATestThatExistsOrSaysWhyNone() throws IOException {
    Map<String, String> classes = sources();
    List<String> wrong = new ArrayList<>();
    for (MatchResult row : rows()) {
      List<MatchResult> tests = TEST.matcher(row.group(3)).results().toList();
      if (tests.isEmpty() && !row.group(3).startsWith("Not by a program: ")) {
        wrong.add(row.group(1) + " names no test");
      }
      for (MatchResult test : tests) {
        if (!classes.getOrDefault(test.group(1), "").contains(" " + test.group(2) + "(")) {
          wrong.add(row.group(1) + ": no test " + test.group());
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(classes.size() > 50);
  }

  private static Map<String, String> sources() throws IOException {
    Map<String, String> sources = new TreeMap<>();
    try (Stream<Path> all = Files.walk(Path.of("src/test/java"))) {
      for (Path file : all.filter(p -> p.toString().endsWith("Test.java")).toList()) {
        sources.put(file.getFileName().toString().replace(".java", ""), Files.readString(file));
      }
    }
    return sources;
  }
}
