package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestData;
import org.rigleaf.source.Fields;

/** A profile can name all gear of the trade's inventory: {@code inventory.yaml}. */
class InventoryTest {
  /** How many kinds the inventory has in each of its groups, counted by hand. */
  private static final Map<String, Integer> GROUPS =
      Map.of(
          "EA", 12, "ED", 10, "EL", 4, "EW", 15, "ET", 12, "EH", 10, "EK", 8, "EB", 17, "EC", 21,
          "ES", 7);

  private static final Map<String, List<String>> TABLE = table();

  private static Map<String, List<String>> table() {
    Fields codes = TestData.read("inventory.yaml").group("inventory").orElseThrow();
    Map<String, List<String>> table = new LinkedHashMap<>();
    codes.keys().forEach(c -> table.put(c, TestData.list(codes, c)));
    return table;
  }

  @Test
  void eachKindOfTheInventoryStandsOnce() {
    Set<String> expected = new TreeSet<>(Set.of("EN01"));
    GROUPS.forEach(
        (group, last) ->
            IntStream.rangeClosed(1, last)
                .forEach(i -> expected.add("%s%02d".formatted(group, i))));
    assertEquals(117, expected.size());
    assertEquals(expected, new TreeSet<>(TABLE.keySet()));
  }

  @Test
  void eachKindHasAKeyThatAProfileMayGive() {
    Set<String> possible = Traits.possible();
    List<String> faults = new ArrayList<>();
    TABLE.forEach(
        (code, keys) -> {
          if (keys.isEmpty()) {
            faults.add(code + " has no key");
          }
          keys.stream()
              .filter(k -> !possible.contains(k))
              .forEach(k -> faults.add(code + ": " + k));
        });
    assertEquals(List.of(), faults);
  }

  @Test
  void noKeyMeansTwoKinds() {
    Map<String, List<String>> codes =
        TABLE.entrySet().stream()
            .flatMap(e -> e.getValue().stream().map(k -> Map.entry(k, e.getKey())))
            .collect(
                Collectors.groupingBy(
                    Map.Entry::getKey,
                    Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    codes.values().removeIf(c -> c.size() == 1);
    assertEquals(Map.of(), codes);
  }
}
