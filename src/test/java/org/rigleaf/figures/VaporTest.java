package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;

class VaporTest {
  private static Figures rig(String propane) {
    return Figures.of(
        TestRigs.of("rig: {name: Reed, kind: class a}\npropane: {" + propane + "}\n"));
  }

  // D x L x K at 0 F, K 100 90 80 70 60 45 (SEEN: a standby-generator maker's
  // manual, TP-6727, figure 1, page 63); 12 in x 40 in = 480
  @ParameterizedTest
  @CsvSource({"60, 48000", "50, 43200", "40, 38400", "30, 33600", "20, 28800", "10, 21600"})
  void aTankOf12By40InchesGivesLessTheEmptierItIs(int percent, double btuPerHour) {
    Figures figures = rig("tank: {holds: 41 lb, diameter: 12 in, length: 40 in}");
    Figure figure = figures.find("lp.vapor." + percent).orElseThrow();
    assertEquals(btuPerHour, figure.number(), 1e-9);
    assertEquals(Set.of(), figure.assumes());
  }

  @Test
  void theFigureHasSixRowsAndNoOther() {
    Figures figures = rig("tank: {diameter: 1 ft, length: 40 in}");
    assertEquals(6, figures.all().stream().filter(f -> f.id().startsWith("lp.vapor.")).count());
  }

  @Test
  void cylindersAndUnmeasuredTanksHaveNone() {
    Figures cylinder = rig("cylinders: {size: 20 lb}");
    assertTrue(cylinder.find("lp.vapor.60").isEmpty() && cylinder.missing("lp.vapor.60").isEmpty());
    assertEquals(
        Set.of("propane.tank.diameter", "propane.tank.length"),
        rig("tank: {holds: 41 lb}").missing("lp.vapor.60"));
    assertThrows(IllegalArgumentException.class, () -> Vapor.vaporBtuPerHour(0, 40, 100));
    assertThrows(IllegalArgumentException.class, () -> Vapor.vaporBtuPerHour(12, 0, 100));
  }
}
