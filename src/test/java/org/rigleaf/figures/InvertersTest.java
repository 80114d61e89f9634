package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;

/** What the inverter takes from a low bank. */
class InvertersTest {
  private static Figures rig(String electric) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: T, kind: class b, length: 20 ft}\nelectric: {" + electric + "}\n"));
  }

  private static Figures bank(String type, String volts, int series, String inverter) {
    return rig(
        "batteries: {%s, each: {voltage: %s}, in-series: %d}, inverter: {output: 2000 W%s}"
            .formatted(type, volts, series, inverter));
  }

  // 2000 / (0.90 x low volts), by hand; low 10.5 V lead and 12.0 V lithium for each 12 V
  @ParameterizedTest
  @CsvSource({
    "agm, 12 V, 1, 211.6402", // / 10.5
    "gel, 6 V, 4, 105.8201", // 24 V
    "flooded lead-acid, 12 V, 4, 52.91005", // 48 V
    "lithium, 12.8 V, 1, 185.1852", // / 12
    "lithium, 25.6 V, 1, 92.59259", // 24 V by name
    "lithium, 51.2 V, 1, 46.2963", // 48 V by name
    "agm, 2 V, 1, 423.2804" // less than a six counts as one: 5.25 V
  })
  void fullOutputFromALowBankTakesTheseAmperes(String type, String volts, int series, double amps) {
    Figure current =
        bank("type: " + type, volts, series, "").find("inverter.current").orElseThrow();
    assertEquals(amps, current.number(), amps * 1e-6);
    assertEquals(Set.of("inverter.efficiency"), current.assumes());
  }

  @Test
  void itsOwnEfficiencyWins() {
    Figure current =
        bank("type: lithium", "12 V", 1, ", efficiency: 80 percent")
            .find("inverter.current")
            .orElseThrow();
    assertEquals(208.3333, current.number(), 0.0001); // 2000 / 9.6
    assertEquals(Set.of(), current.assumes());
  }

  @Test
  void whatIsNotKnownIsNamedAndGearThatIsNotThereIsNot() {
    Figures unknown = bank("inside: yes", "12 V", 1, "");
    assertTrue(unknown.find("inverter.current").isEmpty());
    assertEquals(Set.of("electric.batteries.type"), unknown.missing("inverter.current"));
    Figures alone = rig("inverter: {output: 2000 W}");
    assertTrue(alone.find("inverter.current").isEmpty());
    assertEquals(Set.of(), alone.missing("inverter.current"));
    Figures bank = rig("batteries: {type: agm, each: {voltage: 12 V}, in-series: 1}");
    assertEquals(Set.of(), bank.missing("inverter.current"));
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Inverters.bankAmps(100, 0, 12));
    assertThrows(IllegalArgumentException.class, () -> Inverters.bankAmps(100, 1.01, 12));
    assertThrows(IllegalArgumentException.class, () -> Inverters.bankAmps(100, 0.9, 0));
    assertThrows(IllegalArgumentException.class, () -> Batteries.twelves(0));
    assertEquals(10, Inverters.bankAmps(120, 1, 12), 1e-9);
  }
}
