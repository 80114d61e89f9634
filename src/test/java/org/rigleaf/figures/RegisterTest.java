package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.rigleaf.TestData;
import org.rigleaf.source.Fields;

/** Every figure of the register is checked as it says: {@code checks.yaml} names the test. */
class RegisterTest {
  private static final Fields CHECKS = TestData.read("checks.yaml");
  private static final Path TESTS = Path.of("src/test/java/org/rigleaf/figures");

  /** What is wrong with the line of each entry, all at once. */
  @Test
  void everyEntryHasTheCheckThatItDeclares() {
    List<String> wrong = new ArrayList<>();
    for (Entry entry : Register.ENTRIES) {
      String what =
          CHECKS.group(entry.pattern()).map(line -> wrong(entry, line)).orElse("has no line");
      if (!what.isEmpty()) {
        wrong.add(entry.pattern() + ": " + what);
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void everyLineHasItsEntry() {
    Set<String> lines = new TreeSet<>(CHECKS.keys());
    Register.ENTRIES.forEach(e -> lines.remove(e.pattern()));
    assertEquals(Set.of(), lines);
  }

  private static String wrong(Entry entry, Fields line) {
    String declared = entry.check().text();
    String listed = TestData.text(line, "check");
    if (!listed.equals(declared)) {
      return "the entry says '" + declared + "', the line '" + listed + "'";
    }
    String[] test = TestData.text(line, "test").split("\\.");
    if (test.length != 2 || !isTest(test[0], test[1])) {
      return "there is no test " + TestData.text(line, "test");
    }
    boolean outside =
        entry.check() == Check.PUBLISHED || entry.check() == Check.INDEPENDENT_PROGRAM;
    String source = TestData.text(line, "source");
    if (outside == source.isEmpty()) {
      return outside ? "no source" : "a source, though nothing from outside is said to be used";
    }
    return beside(test[0], test[1]).contains(source) ? "" : "beside its test stands no " + source;
  }

  private static boolean isTest(String name, String method) {
    try {
      return Arrays.stream(Class.forName("org.rigleaf.figures." + name).getDeclaredMethods())
          .filter(m -> m.getName().equals(method))
          .anyMatch(
              m ->
                  m.isAnnotationPresent(Test.class)
                      || m.isAnnotationPresent(ParameterizedTest.class));
    } catch (ClassNotFoundException e) {
      return false;
    }
  }

  /** The text of a test and the comment above it, its lines joined. */
  private static String beside(String name, String method) {
    String end = "\n  }\n";
    String text = read(TESTS.resolve(name + ".java"));
    int at = text.indexOf("void " + method + "(");
    int from = Math.max(0, text.lastIndexOf(end, at));
    return text.substring(from, text.indexOf(end, at))
        .lines()
        .map(line -> line.strip().replaceFirst("^// ", ""))
        .collect(Collectors.joining(" "));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
