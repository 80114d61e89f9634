package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/** Spots where there is no wall. */
class MisplacedTest {
  private static List<String> found(Rig rig) {
    return Misplaced.of(rig).stream().map(m -> m.gear().id() + " " + m.on()).toList();
  }

  /** By hand: a wheel of 1.1 ft stands at 14 ft, so it covers 12.9 to 15.1 ft, and 2.2 ft up. */
  @ParameterizedTest
  @CsvSource({
    "street 14 ft up 1 ft, WHEEL",
    "street 15 ft up 1 ft, WHEEL",
    "curb 13 ft up 1 ft 3 in, WHEEL",
    "street 14 ft up 2 ft 1 in, WHEEL",
    "street 14 ft up 2 ft 4 in, ''",
    "street 15 ft 2 in up 1 ft, ''",
    "street 15 ft up 2 ft, ''",
    "street 14 ft, ''",
    "under 14 ft across 1 ft, ''",
    "front 0 ft across 1 ft up 1 ft, ''"
  })
  void aWheelIsNoWall(String at, String on) {
    Rig rig =
        RandomRigs.rig(
            "rig: {name: Reed, kind: travel trailer, length: 22 ft, axles: [14 ft]}\n"
                + ("water: {city-inlet: {at: " + at + "}}\n"));
    assertEquals(on.isEmpty() ? List.of() : List.of("water.city-inlet " + on), found(rig));
  }

  /**
   * By hand: 30 ft long, so the raised part is 8 ft 6 in, unless low gear says less; 5 ft least.
   */
  @ParameterizedTest
  @CsvSource({
    "street 3 ft up 3 ft, AIR",
    "street 5 ft up 4 ft, ''",
    "street 7 ft up 3 ft, ''",
    "street 3 ft up 6 ft, ''"
  })
  void underTheNoseOfAFifthWheelIsAir(String at, String on) {
    Rig rig =
        RandomRigs.rig(
            "rig: {name: Reed, kind: fifth wheel, length: 30 ft}\n"
                + ("water: {city-inlet: {at: " + at + "}}\n"));
    assertEquals(on.isEmpty() ? List.of() : List.of("water.city-inlet " + on), found(rig));
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void noDemoRigIsMeasuredWrong(String name) {
    assertEquals(List.of(), found(TestRigs.demo(name)));
  }

  @Test
  void aRigWithoutMeasuresHasNone() {
    assertEquals(List.of(), found(RandomRigs.rig("rig: {name: Reed, kind: fifth wheel}\n")));
  }
}
