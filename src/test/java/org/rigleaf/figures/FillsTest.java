package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class FillsTest {
  private static Figures rig(String sections) {
    return Figures.of(TestRigs.of("rig: {name: Reed, kind: travel trailer}\n" + sections));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void theTankIsFullWhenItsGallonsHaveRun() {
    Figures typical = rig("water: {fresh: {holds: 42 gal}}\n");
    assertEquals(14, number(typical, "fill.time"), 1e-9); // 42 / 3
    assertEquals(Set.of("fill.flow"), typical.find("fill.time").orElseThrow().assumes());
    Figures given = rig("water: {fresh: {holds: 42 gal}, fill: {flow: 2.1 gpm}}\n");
    assertEquals(20, number(given, "fill.time"), 1e-9);
    assertEquals(Set.of(), given.find("fill.time").orElseThrow().assumes());
    assertEquals(
        Set.of("water.fresh.holds"),
        rig("water: {fresh: {at: under 9 ft}}\n").missing("fill.time"));
    assertTrue(rig("water: {fill: {flow: 2 gpm}}\n").find("fill.time").isEmpty());
  }

  @Test
  void inMetricTheTimeIsTheSame() {
    // conservation: 160 L at 8 L/min have run after 20 min
    Figures metric = rig("water: {fresh: {holds: 160 L}, fill: {flow: 8 L/min}}\n");
    assertEquals(20, number(metric, "fill.time"), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> Fills.fillMinutes(40, 0));
  }

  @Test
  void tenGallonsTakeThreeMinutesAndAThird() {
    // 10 gal at 3 gpm are 1/18 h; at 6 A a third of an amp-hour
    Figures figures = rig("water: {pump: {flow: 3 gpm, draws: 6 A}}\n");
    assertEquals(1 / 3.0, number(figures, "pump.ten-gallons"), 1e-9);
    assertEquals(
        Set.of("water.pump.flow"),
        rig("water: {pump: {draws: 6 A}}\n").missing("pump.ten-gallons"));
  }

  @Test
  void aTwentiethOfTheTankStaysBelowThePickUp() {
    Figure left = rig("water: {fresh: {holds: 42 gal}}\n").find("tank.fresh.undrawn").orElseThrow();
    assertEquals(2.1, left.number(), 1e-9); // 42 / 20
    assertEquals(Set.of("fresh.drawn"), left.assumes());
  }

  @Test
  void twentyFeetOfSewerHoseFallFiveInches() {
    // clacs-now.pages.dev, drain page: 20 ft at 1/4 in a foot, 5 in (SEEN); jaspector.com, note to
    // IRC
    // P3005.3: 10 ft, 2.5 in (SEEN)
    assertEquals(5, Fills.fallInches(20, 0.25), 1e-12);
    Figure figure = rig("kit: {sewer-hose: {length: 10 ft}}\n").find("sewer.fall").orElseThrow();
    assertEquals(2.5, figure.number(), 1e-9);
    assertEquals(Set.of("sewer-hose.fall"), figure.assumes());
    assertEquals("0.25 in", Amounts.US.text(0.25, org.rigleaf.source.Unit.INCH));
    assertTrue(rig("kit: {sewer-hose: none}\n").find("sewer.fall").isEmpty());
    assertEquals(
        Set.of("kit.sewer-hose.length"),
        rig("kit: {sewer-hose: {kept: rear}}\n").missing("sewer.fall"));
  }

  @Test
  void aHalfFullBlackTankOverflowsInUnderTheWholeMinutesThatFit() {
    assertEquals(5, Fills.overflowMinutes(30, 3), 0); // 15 / 3, exactly
    assertEquals(4, Fills.overflowMinutes(29.9, 3), 0); // 4.98, never rounded up
    assertEquals(1, Fills.overflowMinutes(11.9, 3), 0); // 1.98
    assertEquals(1, Fills.overflowMinutes(6, 3), 0);
    assertEquals(1, Fills.overflowMinutes(5, 3), 0); // 0.83: 'in under 1 minute' still holds
  }

  @Test
  void onlyARigWithAFlushInletIsWarned() {
    Figures given = rig("waste: {black: {holds: 30 gal, flush-inlet: {flow: 2 gpm}}}\n");
    assertEquals(7, number(given, "flush.overflow"), 0); // 15 / 2 = 7.5
    Figures typical = rig("waste: {black: {holds: 30 gal, flush-inlet: {at: street 20 ft}}}\n");
    assertEquals(5, number(typical, "flush.overflow"), 0);
    assertEquals(Set.of("flush-port.flow"), typical.find("flush.overflow").orElseThrow().assumes());
    Figures none = rig("waste: {black: {holds: 30 gal}}\n");
    assertTrue(none.find("flush.overflow").isEmpty() && none.missing("flush.overflow").isEmpty());
    assertEquals(
        Set.of("waste.black.holds"),
        rig("waste: {black: {flush-inlet: {flow: 2 gpm}}}\n").missing("flush.overflow"));
  }
}
