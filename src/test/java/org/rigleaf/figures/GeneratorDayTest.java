package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

/** How long the generator runs for a day's energy, and on how much fuel: house rules, by hand. */
class GeneratorDayTest {
  /** A day of 0.5 A and 10 W, 12.5 V: 150 + 240 = 390 Wh. */
  private static final String RIG =
      """
      rig: {name: T, kind: class c, length: 24 ft}
      stay: {people: 2, outside: {low: 66 degF, high: 90 degF}, inside: 66 degF, place: {elevation: 0 ft}}
      electric:
        batteries: {type: lithium, each: {voltage: 12.5 V, capacity: 100 Ah}, in-series: 1, strings: 2, inside: yes}
        converter: {output: %s, draws: %s}
        generator: {rated: 2000 W, fuel: gasoline, burns: {half-load: 0.2 gal/h, full-load: 0.4 gal/h}}
        loads: [{name: Lamp, on: 12 V, draws: 10 W, when: always}]
      """;

  private static Figures rig(String output, String draws) {
    return Figures.of(TestRigs.of(RIG.formatted(output, draws)));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow(() -> new AssertionError(figures.missing(id))).number();
  }

  // 40.5 - 0.5 = 40 A at 12.5 V bring 500 W, 98 % of it kept: 390 / 490 h; 600 W are less than half
  // of 2,000 W: 0.2 gal/h
  @Test
  void aDayOf390WattHoursTakes48MinutesAtFortyAmperes() {
    Figures figures = rig("40.5 A", "600 W");
    assertEquals(390, number(figures, "day.energy"), 1e-9);
    assertEquals(390 / 490.0, number(figures, "generator.recharge"), 1e-9);
    assertEquals(0.2 * 390 / 490, number(figures, "generator.fuel"), 1e-9);
  }

  // 1,500 W of 2,000 W: half-way from 0.2 to 0.4 gal/h
  @Test
  void aHungryConverterBurnsMore() {
    assertEquals(0.3 * 390 / 490, number(rig("40.5 A", "1500 W"), "generator.fuel"), 1e-9);
  }

  @Test
  void aChargerThatFeedsTheStandingLoadsAloneNeverRecharges() {
    Figures figures = rig("0.5 A", "600 W");
    assertEquals("never", figures.find("generator.recharge").orElseThrow().value().data());
    assertTrue(figures.find("generator.fuel").isEmpty());
  }

  @Test
  void withoutAGeneratorOrAConverterThereIsNothingToSay() {
    String bare = RIG.replaceAll("(?m)^  (generator|converter): .*\n", "");
    Figures figures = Figures.of(TestRigs.of(bare));
    assertTrue(figures.find("generator.recharge").isEmpty());
    assertEquals(Set.of(), figures.missing("generator.recharge"));
    assertThrows(IllegalArgumentException.class, () -> GeneratorDay.rechargeHours(1, 1, 0, 12));
  }
}
