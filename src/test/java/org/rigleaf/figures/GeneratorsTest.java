package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

/** The generator at its height. */
class GeneratorsTest {
  private static Figures at(String place, String more) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: T, kind: class c, length: 24 ft}\n"
                + place
                + "electric: {generator: {rated: 4000 W"
                + more
                + "}}\n"));
  }

  // 4000 x (1 - 0.035 x 6) = 3160, by hand
  @Test
  void at6000FeetAFourKilowattGeneratorGives3160Watts() {
    Figures figures = at("stay: {place: {elevation: 6000 ft}}\n", "");
    assertEquals(3160, figures.find("generator.steady").orElseThrow().number(), 1e-9);
  }

  // 4000 x (1 - 0.03 x 5) = 3400, by hand
  @Test
  void itsMakersDerateWins() {
    Figures figures =
        at("stay: {place: {elevation: 5000 ft}}\n", ", derate-per-1000-ft: 3 percent");
    Figure steady = figures.find("generator.steady").orElseThrow();
    assertEquals(3400, steady.number(), 1e-9);
    assertEquals(Set.of(), steady.assumes());
  }

  @Test
  void atTheSeaItGivesItsRating() {
    assertEquals(4000, Generators.steadyWatts(4000, 0.035, 0));
  }

  @Test
  void anUnknownHeightIsNeverAssumed() {
    Figures figures = at("", "");
    assertTrue(figures.find("generator.steady").isEmpty());
    assertEquals(Set.of("stay.place.elevation"), figures.missing("generator.steady"));
  }

  // Cattail at 900 ft: 3600 x (1 - 0.035 x 0.9) = 3486.6, by hand
  @Test
  void cattailsGeneratorGives3487WattsAt900Feet() {
    Figures figures = Figures.of(TestRigs.demo("cattail"));
    assertEquals(3486.6, figures.find("generator.steady").orElseThrow().number(), 1e-9);
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Generators.steadyWatts(4000, 0.035, -10));
  }
}
