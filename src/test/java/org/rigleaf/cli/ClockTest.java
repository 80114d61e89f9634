package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No class of the program reads the clock: every date is one of the files. */
class ClockTest {
  private static final Pattern CLOCK =
      Pattern.compile(
          "\\b(Clock|Instant|Local\\w+|Zoned\\w+|Offset\\w+|Year\\w*)\\.(now|system\\w*)\\("
              + "|currentTimeMillis|nanoTime|new (Date|GregorianCalendar)\\(\\)|getInstance\\(\\)");

  @Test
  void noClassOfTheProgramReadsTheClock() throws IOException {
    List<String> readers = new ArrayList<>();
    try (Stream<Path> all = Files.walk(Path.of("src/main/java"))) {
      for (Path file : all.filter(p -> p.toString().endsWith(".java")).toList()) {
        if (CLOCK.matcher(Files.readString(file)).find()) {
          readers.add(file.toString());
        }
      }
    }
    assertEquals(List.of(), readers);
  }

  @Test
  void readersOfTheClockAreKnown() {
    Stream.of(
            "LocalDate.now()", "System.nanoTime()", "new Date()", "Clock.systemUTC()", "Year.now()")
        .forEach(call -> assertTrue(CLOCK.matcher("x = " + call + ";").find(), call));
    assertFalse(CLOCK.matcher("issuing.now().orElseThrow()").find());
  }
}
