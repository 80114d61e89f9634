package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Rig;

/** What hangs on which supply, read off a few lines by hand. */
class FeedsTest {
  private static final Rig REED =
      TestRigs.of(
          """
          rig: {name: Reed, kind: travel trailer}
          electric:
            inverter: {output: 1000 W, feeds: [Television]}
            breakers:
              - {name: Heater, rating: 15 A, feeds: ["water heater element"]}
              - {name: Inverter, rating: 30 A, feeds: ["inverter"]}
              - {name: Somewhere, rating: 15 A, feeds: ["the shed"]}
              - {name: Spare, rating: 15 A, feeds: [Water pump, Water heater, furnace, cooler]}
            loads:
              - {name: Television, on: 120 V, draws: 60 W}
              - {name: Lights, on: 12 V, draws: 20 W}
          climate:
            furnace: {kind: ducted, fuel: lp}
            air-conditioners: [{name: Cooler}, {name: Rear cooler}]
          water:
            pump: {flow: 3 gpm, draws: 6 A}
            heater: {kind: storage, holds: 6 gal, fuel: [lp, electric], element: 1440 W}
          """);

  @Test
  void aLoadHangsOnTheVoltsItIsToldToTake() {
    assertTrue(Feeds.onMains(REED).contains("electric.loads.television"));
    assertFalse(Feeds.onBattery(REED).contains("electric.loads.television"));
    assertTrue(Feeds.onBattery(REED).contains("electric.loads.lights"));
    assertTrue(Feeds.onBattery(REED).contains("water.pump"));
    assertFalse(Feeds.onMains(REED).contains("water.pump"));
  }

  @Test
  void aHeaterWithAnElementTakesMainsToo() {
    assertTrue(Feeds.onMains(REED).contains("water.heater"));
  }

  @Test
  void aBreakersWordsMeanTheGearTheyName() {
    assertEquals(Optional.of("water.heater"), meant(0));
    assertEquals(Optional.of("electric.inverter"), meant(1));
    assertEquals(Optional.empty(), meant(2));
  }

  /** As its page calls it, where there is one of its kind; by its own name where there are two. */
  @Test
  void aMentionMayCallGearAsItsPageDoes() {
    assertEquals(Optional.of("water.pump"), meant(3));
    assertEquals(Optional.of("water.heater"), meant(3, 1));
    assertEquals(Optional.of("climate.furnace"), meant(3, 2));
    assertEquals(Optional.of("climate.air-conditioners.cooler"), meant(3, 3));
    assertEquals(Optional.empty(), REED.meant("Air conditioner"));
  }

  private static Optional<String> meant(int breaker) {
    return meant(breaker, 0);
  }

  private static Optional<String> meant(int breaker, int mention) {
    Electric.Breaker circuit = REED.electric().breakers().get(breaker);
    return Feeds.meant(circuit.feeds().get(mention), REED);
  }
}
