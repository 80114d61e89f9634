package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.TestRigs;

class WinterTest {
  private static final String FIRST = "winter.antifreeze";
  private static final String SECOND = "winter.antifreeze.not-bypassed";

  private static Figures rig(String water) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: Reed, kind: travel trailer, length: 20 ft}\nwater: {" + water + "}\n"));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void fiftyFourFeetOfHalfInchPipeAndTheFittingsTakeOneGallon() {
    // 54.2 ft of half-inch PEX hold 0.5 gal (64 fl oz at 1.18, IPC E202.1 as the
    // energy department reproduces it); three runs of 18 ft 0.8 in are 54.2 ft; fittings 0.5 gal
    Figures figures =
        Figures.of(
            TestRigs.of(
                "rig: {name: Reed, kind: travel trailer, length: 18.0667 ft}\n"
                    + "water: {heater: {kind: on-demand, fuel: lp}}\n"));
    assertEquals(1.0, number(figures, FIRST), 0.002);
  }

  @Test
  void jugsAreWhole() {
    assertEquals(2, Winter.jugs(1.2), 0);
    assertEquals(3, Winter.jugs(3), 0);
    assertEquals(3, number(rig("lines: 2 gal"), FIRST + ".jugs"), 0); // 2.5 gal
    String tank = "lines: 2 gal, fresh: {holds: 20 gal}"; // 5 % of 20 gal stay in it
    assertEquals(4, number(rig(tank), FIRST + ".jugs"), 0); // 2.5 + 1
    String siphon = tank + ", winterizing: {siphon: yes}";
    assertEquals(3, number(rig(siphon), FIRST + ".jugs"), 0);
    Figures unsure = rig("lines: 2 gal, heater: {kind: storage, holds: 6 gal}");
    assertEquals(9, number(unsure, FIRST + ".jugs"), 0); // 8.5 gal, if there is no bypass
  }

  @Test
  void withoutAHeaterThereIsNoHotPipe() {
    // 0.0092 x 1.5 x 20 = 0.276, and 0.5
    Figure figure = rig("fresh: {holds: 20 gal}").find(FIRST).orElseThrow();
    assertEquals(0.776, figure.number(), 1e-9);
    assertEquals(Set.of("pipe.volume", "pipe.cold", "pipe.fittings"), figure.assumes());
    assertEquals(2.5, number(rig("lines: 2 gal"), FIRST), 1e-9);
  }

  @Test
  void aBypassKeepsTheHeaterOut() {
    Figures figures =
        rig("lines: 2 gal, heater: {kind: storage, holds: 6 gal, bypass: {where: rear}}");
    assertEquals(2.5, number(figures, FIRST), 1e-9);
    assertTrue(figures.find(SECOND).isEmpty());
  }

  @Test
  void withoutABypassTheHeaterFillsToo() {
    Figures figures = rig("lines: 2 gal, heater: {kind: storage, holds: 6 gal, bypass: none}");
    assertEquals(8.5, number(figures, FIRST), 1e-9);
    assertTrue(figures.find(SECOND).isEmpty() && figures.missing(SECOND).isEmpty());
  }

  @Test
  void aBypassThatNobodySpeaksOfGivesBothFigures() {
    Figures figures = rig("lines: 2 gal, heater: {kind: combination, holds: 3 gal}");
    assertEquals(2.5, number(figures, FIRST), 1e-9);
    assertEquals(5.5, number(figures, SECOND), 1e-9);
    Figures gallons = rig("lines: 2 gal, heater: {kind: storage}");
    assertEquals(2.5, number(gallons, FIRST), 1e-9);
    assertEquals(Set.of("water.heater.holds"), gallons.missing(SECOND));
  }

  @ParameterizedTest
  @ValueSource(strings = {"on-demand", "hydronic", "on-demand, bypass: none"})
  void aHeaterThatStoresNothingAddsNothing(String kind) {
    Figures figures = rig("lines: 2 gal, heater: {kind: " + kind + "}");
    assertEquals(2.5, number(figures, FIRST), 1e-9);
    assertTrue(figures.find(SECOND).isEmpty() && figures.missing(SECOND).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "fresh: {holds: 9 gal}",
        "city-inlet: {at: street 9 ft}",
        "pump: {flow: 3 gpm}",
        "heater: {kind: on-demand}",
        "lines: 2 gal"
      })
  void anyWaterGearMeansPipes(String water) {
    assertTrue(rig(water).find(FIRST).isPresent(), water);
  }

  @Test
  void aRigWithoutWaterNeedsNone() {
    Figures dry = rig("fresh: none");
    assertTrue(dry.find(FIRST).isEmpty() && dry.missing(FIRST).isEmpty());
    Figures unmeasured =
        Figures.of(
            TestRigs.of("rig: {name: Reed, kind: class b}\nwater: {fresh: {holds: 9 gal}}\n"));
    assertEquals(Set.of("rig.length"), unmeasured.missing(FIRST));
  }
}
