package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/** Banks beside the house bank. */
class OtherBanksTest {
  private static final double EXACT = 1e-9; // plain arithmetic, only rounding of doubles
  private static final String TWO_BANKS =
      """
      rig: {name: T, kind: class a, length: 34 ft}
      stay: {outside: {low: 32 degF}}
      electric:
        batteries: {type: lithium, each: {voltage: 25.6 V, capacity: 100 Ah}, in-series: 1, strings: 1}
        other-banks:
          - {name: Engine battery, type: flooded lead-acid, each: {voltage: 12 V, capacity: 95 Ah}, in-series: 1, strings: 2, inside: no, feeds: [Radio, pump]}
          - {name: Winch battery, each: {voltage: 6 V, capacity: 200 Ah}, in-series: 2, strings: 1}
        loads: [{name: Radio, on: 12 V, draws: 24 W}, {name: Lights, on: 12 V, draws: 64 W}, {name: Kettle, on: 120 V, draws: 900 W}, {name: Box, draws: 5 W}]
      water: {pump: {draws: 72 W}}
      """;

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow(() -> new AssertionError(id)).number();
  }

  @Test
  void eachBankHasItsOwnVoltsAmpHoursAndEnergy() {
    Figures figures = Figures.of(TestRigs.of(TWO_BANKS));
    assertEquals(12, number(figures, "bank.engine-battery.voltage"), EXACT);
    assertEquals(190, number(figures, "bank.engine-battery.capacity"), EXACT); // 2 x 95
    assertEquals(2280, number(figures, "bank.engine-battery.energy"), EXACT); // 12 x 190
    assertEquals(969, number(figures, "bank.engine-battery.usable"), EXACT); // x 0.5 x 0.85 at 0 C
    assertEquals(12, number(figures, "bank.winch-battery.voltage"), EXACT); // 2 x 6
    assertEquals(2400, number(figures, "bank.winch-battery.energy"), EXACT);
    assertEquals(2560, number(figures, "bank.energy"), EXACT); // the house bank, 25.6 x 100
    assertEquals(
        Set.of("electric.other-banks.winch-battery.type"),
        figures.missing("bank.winch-battery.usable"));
  }

  @Test
  void aLoadRunsOnTheVoltsOfTheBankThatFeedsIt() {
    Figures figures = Figures.of(TestRigs.of(TWO_BANKS));
    assertEquals(2, number(figures, "load.radio.current"), EXACT); // 24 W / 12 V
    assertEquals(6, number(figures, "load.pump.current"), EXACT); // 72 W / 12 V
    assertEquals(2.5, number(figures, "load.lights.current"), EXACT); // 64 W / 25.6 V
  }

  @Test
  void onlyA12VoltLoadThatNoOtherBankFeedsIsOnTheHouseBank() {
    Rig rig = TestRigs.of(TWO_BANKS);
    Set<String> house =
        Loads.of(rig).stream()
            .filter(i -> Loads.onHouseBank(i, rig))
            .map(LoadItem::id)
            .collect(java.util.stream.Collectors.toSet());
    assertEquals(Set.of("lights"), house);
  }

  @Test
  void aRigWithOtherBanksAloneStillReckonsTheirLoadsByTheirVolts() {
    String engine =
        "rig: {name: T, kind: class b, length: 20 ft}\nelectric: {other-banks: {name: Engine"
            + " battery, each: {voltage: 12.8 V}, in-series: 1, feeds: Fan}, loads: {name: Fan, on:"
            + " 12 V, draws: 32 W}}\n";
    Figures figures = Figures.of(TestRigs.of(engine));
    Figure fan = figures.find("load.fan.current").orElseThrow();
    assertEquals(2.5, fan.number(), EXACT);
    assertTrue(fan.formula().contains("{volts}"), fan.formula());
    assertFalse(figures.find("bank.voltage").isPresent());
  }
}
