package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

/** The generator as a charger, by sums by hand. */
class GeneratorOnStayTest {
  private static final String RIG =
      """
      rig: {name: Reed, kind: class c, length: 24 ft}
      stay: {people: 2, %s outside: {low: 66 degF, high: 90 degF}, place: {elevation: 0 ft}}
      electric:
        batteries: {type: agm, each: {voltage: 12 V, capacity: 200 Ah}, in-series: 1, strings: 1, inside: yes}
        converter: {output: %s, draws: %s}
        generator: {rated: 2000 W, fuel: %s, burns: {half-load: 0.3 gal/h, full-load: 0.5 gal/h}}
        loads: [{name: Lamp, on: 12 V, draws: 50 W, when: always}]
      road: {fuel: {kind: gasoline, holds: 40 gal, generator-stops-at: 1/4}}
      propane: {cylinders: {size: 20 lb}}
      """;

  private static Figures of(String stay, String amps, String watts, String fuel) {
    return Figures.of(TestRigs.of(RIG.formatted(stay, amps, watts, fuel)));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow(() -> new AssertionError("no " + id)).number();
  }

  @Test
  void theDayIsPutBackAtTheConvertersCurrent() {
    // a day: 0.5 A x 12 V standing and 50 W: 56 x 24 = 1,344 Wh; 40 - 0.5 A, 85 % kept, 12 V
    Figures figures = of("", "40 A", "600 W", "gasoline");
    assertEquals(1344 / (0.85 * 39.5 * 12), number(figures, "generator.recharge"), 1e-9);
    // 600 of 2,000 W is under half load: 0.3 gal an hour
    assertEquals(0.3 * 1344 / (0.85 * 39.5 * 12), number(figures, "generator.fuel"), 1e-9);
    // at 1,500 W, three quarters, the middle of the line: 0.4
    Figures big = of("", "40 A", "1500 W", "gasoline");
    assertEquals(0.4 * 1344 / (0.85 * 39.5 * 12), number(big, "generator.fuel"), 1e-9);
  }

  @Test
  void aConverterThatOnlyCarriesTheStandingLoadsNeverPutsItBack() {
    Figures figures = of("", "0.5 A", "20 W", "gasoline");
    assertEquals("never", figures.find("generator.recharge").orElseThrow().value().data());
    assertTrue(figures.find("generator.fuel").isEmpty());
    assertThrows(
        IllegalArgumentException.class, () -> GeneratorDay.rechargeHours(1000, 0.85, 0, 12));
    assertThrows(
        IllegalArgumentException.class, () -> GeneratorDay.rechargeHours(1000, 0.85, -1, 12));
  }

  @Test
  void itsHoursOfTheStayDrawOnTheFuelTank() {
    // 4 h a day of 0.3 gal in the hours from 09 to 17: 1.2 a day of 30 above the pick-up is 25
    // days; the stay begins at 15:00, so that the last of it goes by 15:00 of the 26th day
    Figures figures = of("generator: 4 h,", "40 A", "600 W", "gasoline");
    assertEquals(25, number(figures, "fuel.days"), 1e-6);
    // without hours in the stay it does not run
    assertEquals(
        "keeps-up",
        of("", "40 A", "600 W", "gasoline").find("fuel.days").orElseThrow().value().data());
  }

  @Test
  void aPropaneGeneratorDrawsOnTheCylinder() {
    // 20 lb are 4.7619 gal; 4 h of 0.3 gal a day: 3.968 days by rounds of the day
    Figures figures = of("generator: 4 h,", "40 A", "600 W", "lp");
    // by 15:00 of the fourth day 3.6 gal; 1.1619 of the next 1.2: 0.15 an hour from 09 on, but two
    // hours of the first day's afternoon come first: 0.3, then 0.8619 / 0.15 h after 09:00
    assertEquals((3 * 24 + 18 + 0.861905 / 0.15) / 24, number(figures, "lp.days"), 1e-4);
    assertTrue(figures.find("fuel.days").isEmpty());
  }
}
