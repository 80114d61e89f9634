package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class ReachTest {
  private static Figures rig(String sections) {
    return Figures.of(TestRigs.of("rig: {name: Reed, kind: travel trailer}\n" + sections));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void aCordAndItsExtensionReachTheirSumLessThePlugsHeight() {
    Figures figures =
        rig(
            "electric: {shore: {cord: {length: 30 ft}, extension: {length: 25 ft},"
                + " at: street 19 ft up 2 ft 6 in}}\n");
    assertEquals(52.5, number(figures, "reach.cord"), 1e-9); // 30 + 25 - 2.5
    Figures cord = rig("electric: {shore: {cord: {length: 9 m}, extension: none}}\n");
    assertEquals(29.5276, number(cord, "reach.cord"), 0.0001); // 9 / 0.3048, no height known
    assertEquals("{length-1}", cord.find("reach.cord").orElseThrow().formula());
  }

  @Test
  void theHeightIsAFactOfThePlaceWithItsOwnLine() {
    Figure figure =
        rig("electric:\n  shore: {cord: {length: 30 ft}, at: street 19 ft up 3 ft}\n")
            .find("reach.cord")
            .orElseThrow();
    Input height = figure.inputs().get(1);
    assertEquals("height", height.name());
    assertEquals(3, height.value(), 1e-9);
    assertEquals("electric.shore.at.up", ((Input.OfFact) height).fact().path());
    assertEquals(Set.of(), figure.assumes());
  }

  @Test
  void aRoughlyKnownPlaceTakesNothingOff() {
    Figures figures =
        rig(
            "water: {city-inlet: {at: street rear}}\nkit: {drinking-hose: {length: 25 ft},"
                + " sewer-hose: {length: 15 ft}}\n");
    assertEquals(25, number(figures, "reach.water"), 1e-9);
    assertEquals(15, number(figures, "reach.sewer"), 1e-9); // an outlet that nobody lists
  }

  @Test
  void hosesHangFromTheirOwnFittings() {
    Figures figures =
        rig(
            "water: {city-inlet: {at: street 5 ft up 3 ft}}\nwaste: {outlet: {at: street 9 ft up 1 ft}}\n"
                + "kit: {drinking-hose: {length: 25 ft}, sewer-hose: {length: 15 ft}}\n");
    assertEquals(22, number(figures, "reach.water"), 1e-9);
    assertEquals(14, number(figures, "reach.sewer"), 1e-9);
  }

  @Test
  void aHoseShorterThanItsFittingIsHighReachesNothing() {
    assertEquals(0, Reach.reachFeet(2, 3), 0);
    assertEquals(0, Reach.reachFeet(3, 3), 0);
    assertEquals(0.5, Reach.reachFeet(3.5, 3), 1e-12);
  }

  @Test
  void aFittingWithoutItsCordOrHoseLeavesTheLengthOpen() {
    Figures figures =
        rig(
            "electric: {shore: {service: 30 A}}\nwater: {city-inlet: {at: street 5 ft}}\n"
                + "waste: {outlet: {at: street 9 ft}}\n");
    assertEquals(Set.of("electric.shore.cord.length"), figures.missing("reach.cord"));
    assertEquals(Set.of("kit.drinking-hose.length"), figures.missing("reach.water"));
    assertEquals(Set.of("kit.sewer-hose.length"), figures.missing("reach.sewer"));
  }

  @Test
  void whatIsNotThereHasNoReach() {
    Figures none =
        rig(
            "electric: {shore: {cord: none, extension: none}}\nwater: {city-inlet: {at: street 5 ft}}\n"
                + "waste: {outlet: {at: street 9 ft}}\nkit: {drinking-hose: none, sewer-hose: none}\n");
    Figures bare = rig("");
    for (String id : new String[] {"reach.cord", "reach.water", "reach.sewer"}) {
      assertTrue(none.find(id).isEmpty() && none.missing(id).isEmpty(), id);
      assertTrue(bare.find(id).isEmpty() && bare.missing(id).isEmpty(), id);
    }
    Figures extension = rig("electric: {shore: {cord: none, extension: {length: 25 ft}}}\n");
    assertEquals(25, number(extension, "reach.cord"), 1e-9);
  }
}
