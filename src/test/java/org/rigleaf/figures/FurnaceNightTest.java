package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class FurnaceNightTest {
  private static final String START = "rig: {name: Reed, kind: travel trailer}\n";
  private static final String BANK =
      "electric: {batteries: {each: {voltage: 12 V, capacity: 100 Ah}}}\n";

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void aNightTakesSixHoursOfFlameAtHalfDuty() {
    Figures figures =
        Figures.of(
            TestRigs.of(
                START
                    + BANK
                    + "propane: {cylinders: {size: 20 lb}}\n"
                    + "climate: {furnace: {input: 20000 Btu/h, blower: 5 A}}\n"));
    assertEquals(5.569, number(figures, "furnace.night.50.gas"), 0.001); // 6 h x 20,000 / 21,548
    assertEquals(3.342, number(figures, "furnace.night.30.gas"), 0.001); // 3.6 h
    assertEquals(8.911, number(figures, "furnace.night.80.gas"), 0.001); // 9.6 h
    assertEquals(30, number(figures, "furnace.night.50.bank"), 1e-9); // 6 h x 5 A
    assertEquals(48, number(figures, "furnace.night.80.bank"), 1e-9);
  }

  @Test
  void aDieselHeaterTakesNoPropane() {
    String diesel = "climate: {furnace: {fuel: diesel, input: 14000 Btu/h, blower: 2 A}}\n";
    Figures figures = Figures.of(TestRigs.of(START + BANK + diesel));
    assertTrue(figures.find("furnace.night.50.gas").isEmpty());
    assertEquals(12, number(figures, "furnace.night.50.bank"), 1e-9);
  }
}
