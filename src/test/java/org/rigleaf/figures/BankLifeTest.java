package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;

/** How long a full bank runs one load. */
class BankLifeTest {
  private static final double EXACT = 1e-9; // plain arithmetic, only rounding of doubles

  private static final String BANK =
      "each: {voltage: 12 V, capacity: 100 Ah}, in-series: 1, strings: 1, type: ";

  private static Figures rig(String batteries, String electric, String more) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: T, kind: travel trailer, length: 20 ft}\n"
                + more
                + "electric: {batteries: {"
                + batteries
                + "}, "
                + electric
                + "}\n"));
  }

  private static double life(Figures figures, String load) {
    return figures.find("bank.life." + load).orElseThrow().number();
  }

  // The 20-hour form of a general encyclopaedia's example (example from memory, number by
  // calculation: 20 x (100 / 200)^1.2): 10 A out of 100 Ah last 8.71 h, not 10.
  @Test
  void tenAmperesOutOf100AmpHoursLast8Point71Hours() {
    assertEquals(8.71, BankLife.dischargeHours(100, 20, 10, 1.2), 0.005);
  }

  // easycalculation.com, learn-battery-capacity-discharge-time, as printed: 250 Ah, 20 A, n = 1.3
  // last 5.0886 h, effective 101.77 Ah. Its amp-hours are those at 1 A, which is the 250-hour rate.
  @Test
  void aPublishedExampleHoldsForABatteryRatedAtOneAmpere() {
    assertEquals(5.0886, BankLife.dischargeHours(250, 250, 20, 1.3), 0.00005);
    assertEquals(101.77, 20 * BankLife.dischargeHours(250, 250, 20, 1.3), 0.005);
  }

  // 20 x (250 / 400)^1.3 = 10.856: the label's amp-hours are those of the 20-hour rate
  @Test
  void theOneHourFormIsNotUsedForABatteryRatedAt20Hours() {
    assertEquals(10.856, BankLife.dischargeHours(250, 20, 20, 1.3), 0.0005);
  }

  // identity: at the rated current the rated hours pass, whatever the exponent
  @ParameterizedTest
  @CsvSource({"100, 20, 1", "100, 20, 1.2", "215, 10, 1.35", "300, 5, 1.05"})
  void atTheRatedCurrentABatteryLastsItsRatedHours(double ampHours, double hours, double k) {
    assertEquals(hours, BankLife.dischargeHours(ampHours, hours, ampHours / hours, k), EXACT);
  }

  // Peukert's law would give 20 x 2^1.2 = 45.9 h at 2.5 A; more than 100 / 2.5 is not in the bank
  @Test
  void aSmallLoadNeverTakesOutMoreThanTheAmpHours() {
    assertEquals(40, BankLife.dischargeHours(100, 20, 2.5, 1.2), EXACT);
  }

  // the exponent from two ratings, n = (log t2 - log t1) / (log I1 - log I2), comes back
  @Test
  void twoDischargesGiveTheExponentBack() {
    double slow = BankLife.dischargeHours(100, 20, 10, 1.23);
    double fast = BankLife.dischargeHours(100, 20, 40, 1.23);
    assertEquals(1.23, (Math.log(slow) - Math.log(fast)) / Math.log(4), EXACT);
  }

  private static final String FAN = "loads: {name: Fan, on: 12 V, draws: 120 W}";

  // 120 W / 12 V = 10 A: 20 x 0.5^k x usable share; k 1.2, 1.1, 1.1, 1.05 by kind
  @ParameterizedTest
  @CsvSource({
    "flooded lead-acid, 4.3528, peukert.flooded", // 8.70551 x 0.5
    "agm, 4.6652, peukert.agm-gel", // 9.33033 x 0.5
    "gel, 4.6652, peukert.agm-gel",
    "lithium, 7.7275, peukert.lithium" // 9.65936 x 0.8
  })
  void theKindOfBatterySetsTheTypicalExponent(String kind, double hours, String typical) {
    Figure life = rig(BANK + kind, FAN, "").find("bank.life.fan").orElseThrow();
    assertEquals(hours, life.number(), 0.00005);
    assertTrue(life.assumes().contains(typical), life.assumes().toString());
    assertTrue(life.assumes().contains("batteries.rated-hours"));
  }

  // 10 x (100 / 100)^1.3 = 10 h at the 10-hour rate, x 0.6
  @Test
  void theMakersExponentRatedHoursAndTheKeepersShareWin() {
    String own = BANK.replace("Ah}", "Ah, rated-hours: 10}") + "agm, usable: 0.6, peukert: 1.3";
    Figure life = rig(own, FAN, "").find("bank.life.fan").orElseThrow();
    assertEquals(6, life.number(), EXACT);
    assertEquals(Set.of(), life.assumes());
  }

  // 32 F is 0 C, 85 %: 100 / 1 x 0.5 x 0.85
  @Test
  void coldShortensTheLifeOfALeadBankOutside() {
    String radio = "loads: {name: Radio, on: 12 V, draws: 12 W}";
    String frost = "stay: {outside: {low: 32 degF}}\n";
    assertEquals(42.5, life(rig(BANK + "agm, inside: no", radio, frost), "radio"), EXACT);
    assertEquals(80, life(rig(BANK + "lithium, inside: no", radio, frost), "radio"), EXACT);
  }

  // twice the volts and half the amperes: 5 A out of 100 Ah are the rated current, 20 h x 0.5
  @Test
  void a24VoltBankGivesHalfTheCurrent() {
    Figures twice = rig(BANK.replace("in-series: 1", "in-series: 2") + "agm", FAN, "");
    assertEquals(10, life(twice, "fan"), EXACT);
  }

  // 1,080 W through 0.9 are 1,200 W: 100 A of 12 V; 100 Ah at 20 h: 20 x 0.05^1.05 x 0.8 = 0.68871
  @Test
  void aLoadOnTheInverterCountsWhatTheInverterLoses() {
    String inverter =
        "inverter: {output: 2000 W, feeds: Kettle}, "
            + "loads: [{name: Kettle, on: 120 V, draws: 9 A}, {name: Oven, on: 120 V, draws: 900 W}]";
    Figures figures = rig(BANK + "lithium", inverter, "");
    assertEquals(0.68871, life(figures, "kettle"), 0.000005);
    assertTrue(figures.find("bank.life.oven").isEmpty(), "the inverter does not feed it");
    Figures better = rig(BANK + "lithium", inverter.replace("W, f", "W, efficiency: 1, f"), "");
    assertEquals(0.76928, life(better, "kettle"), 0.000005); // 90 A: 20 x (5 / 90)^1.05 x 0.8
  }

  @Test
  void everyLoadOfTheHouseBankHasALifeAndNoLoadOfAPlug() {
    Figures figures =
        rig(
            BANK + "agm",
            "loads: [{name: Toaster, on: 120 V, draws: 900 W}]",
            "water: {pump: {draws: 5 A}}\n"
                + "climate: {furnace: {blower: 4 A}, refrigerator: {kind: compressor}}\n");
    assertEquals(10, life(figures, "pump"), EXACT); // 5 A is the rated current
    assertEquals(12.5, life(figures, "furnace-blower"), EXACT); // 100 / 4 x 0.5
    assertEquals(10, life(figures, "refrigerator"), EXACT); // 60 W, a typical one
    assertTrue(figures.find("bank.life.toaster").isEmpty());
    assertEquals(Set.of(), figures.missing("bank.life.toaster"));
  }

  @Test
  void aLoadOfAnotherBankDoesNotCountOnTheHouseBank() {
    String winch =
        "loads: [{name: Winch, on: 12 V, draws: 600 W}], "
            + "other-banks: {name: Winch battery, each: {voltage: 12 V}, in-series: 1, feeds: Winch}";
    Figures figures = rig(BANK + "agm", winch, "");
    assertTrue(figures.find("bank.life.winch").isEmpty());
    assertEquals(Set.of(), figures.missing("bank.life.winch"));
  }

  @Test
  void whatIsNotKnownIsNamed() {
    Figures figures = rig(BANK.replace(", type: ", ""), "loads: [{name: Fan, draws: 12 W}]", "");
    assertEquals(
        Set.of("electric.loads.fan.on", "electric.batteries.type"),
        figures.missing("bank.life.fan"));
  }

  @Test
  void withoutABankThereIsNothingToSay() {
    Figures figures =
        Figures.of(
            TestRigs.of("rig: {name: T, kind: class b, length: 20 ft}\nelectric: {" + FAN + "}\n"));
    assertTrue(figures.find("bank.life.fan").isEmpty());
    assertEquals(Set.of(), figures.missing("bank.life.fan"));
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> BankLife.dischargeHours(0, 20, 5, 1.2));
    assertThrows(IllegalArgumentException.class, () -> BankLife.dischargeHours(100, 0, 5, 1.2));
    assertThrows(IllegalArgumentException.class, () -> BankLife.dischargeHours(100, 20, 0, 1.2));
  }
}
