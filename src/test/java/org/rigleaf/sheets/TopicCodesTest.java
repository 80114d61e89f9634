package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TopicCodesTest {
  private static Map<String, String> codes(Map<String, String> issued, String... topics) {
    return TopicCodes.assign(
        Stream.of(topics).map(t -> new TopicCodes.Wanted(t, t.substring(0, 1))).toList(), issued);
  }

  @Test
  void theFirstEditionCountsEachSectionFromOne() {
    assertEquals(
        Map.of("Efuse", "E-1", "Epost", "E-2", "Wpump", "W-1"),
        codes(Map.of(), "Efuse", "Epost", "Wpump"));
  }

  @Test
  void aNewTopicBetweenTwoTakesALetterAndAtTheEndTheNextNumber() {
    Map<String, String> issued = Map.of("Efuse", "E-1", "Epost", "E-2");
    assertEquals(
        Map.of(
            "Elead", "E-0a", "Efuse", "E-1", "Esun", "E-1a", "Ewind", "E-1b", "Epost", "E-2",
            "Ezap", "E-3"),
        codes(issued, "Elead", "Efuse", "Esun", "Ewind", "Epost", "Ezap"));
  }

  @Test
  void theCodeOfATopicThatIsGoneIsNotGivenAgain() {
    Map<String, String> issued = Map.of("Efuse", "E-1", "Egone", "E-2");
    assertEquals("E-3", codes(issued, "Efuse", "Enew").get("Enew"));
  }

  @Test
  void whenTheLettersRunOutTheNextNumberFollows() {
    Map<String, String> issued = new HashMap<>(Map.of("Efirst", "E-1", "Elast", "E-2"));
    IntStream.range(0, 26).forEach(i -> issued.put("Egone" + i, "E-1" + (char) ('a' + i)));
    Map<String, String> codes = codes(issued, "Efirst", "Enew", "Elast");
    assertEquals("E-3", codes.get("Enew"));
    assertEquals(3, new HashSet<>(List.copyOf(codes.values())).size());
  }
}
