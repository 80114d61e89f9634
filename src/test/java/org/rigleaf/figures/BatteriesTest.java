package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class BatteriesTest {
  private static final double EXACT = 1e-9; // plain arithmetic, only rounding of doubles

  private static Figures bank(String batteries, String stay) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: Reed, kind: travel trailer}\n"
                + stay
                + "\nelectric:\n  batteries: {"
                + batteries
                + "}\n"));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void fourSixVoltBatteriesOf225AmpHoursMakeTwelveVoltsAndFivePointFourKilowattHours() {
    // 2S2P gives 12 V, 450 Ah, 5.40 kWh (CALC, by definition)
    Figures figures =
        bank("type: agm, each: {voltage: 6 V, capacity: 225 Ah}, in-series: 2, strings: 2", "");
    assertEquals(12, number(figures, "bank.voltage"), EXACT);
    assertEquals(450, number(figures, "bank.capacity"), EXACT);
    assertEquals(5400, number(figures, "bank.energy"), EXACT);
  }

  @Test
  void atFreezingALeadBatteryHolds85PercentAndAt40CelsiusNoMoreThanAll() {
    // 0.006 a degree C (velapower.com/support, SEEN) gives 85 % at 0 C (CALC on a seen rule); the
    // same rule's
    // 109 % at 40 C is cut at all of it
    assertEquals(0.85, Batteries.coldShare(0), EXACT);
    assertEquals(1, Batteries.coldShare(40), EXACT);
    assertEquals(1, Batteries.coldShare(25), EXACT); // limiting case: the rated temperature
    assertEquals(0.49, Batteries.coldShare(-60), EXACT); // 1 - 0.006 x 85, as cold as it goes
    assertThrows(IllegalArgumentException.class, () -> Batteries.coldShare(-60.1));
  }

  @Test
  void halfOfALeadBankAndEightTenthsOfALithiumBankAreUsableWithoutAStay() {
    // common practice (recharge lead at 50 %); 12 x 100 x 0.5, 12.8 x 300 x 0.8
    Figures lead =
        bank("type: agm, each: {voltage: 12 V, capacity: 100 Ah}, in-series: 1, strings: 1", "");
    Figures lithium =
        bank(
            "type: lithium, each: {voltage: 12.8 V, capacity: 100 Ah}, in-series: 1, strings: 3",
            "");
    assertEquals(600, number(lead, "bank.usable"), EXACT);
    assertEquals(3072, number(lithium, "bank.usable"), EXACT);
    assertEquals(Set.of("usable.lithium"), lithium.find("bank.usable").orElseThrow().assumes());
  }

  private static final String FROST = "stay: {outside: {low: 32 degF}, inside: 77 degF}";
  private static final String FLOODED =
      "type: flooded lead-acid, each: {voltage: 12 V, capacity: 100 Ah}, in-series: 1, strings: 1";

  @Test
  void aFrostyNightTakes15PercentFromALeadBankOutsideAndNothingFromOneInside() {
    // 32 F is 0 C: 1200 x 0.5 x 0.85 = 510; 77 F is 25 C: 1200 x 0.5 = 600
    assertEquals(510, number(bank(FLOODED + ", inside: no", FROST), "bank.usable"), EXACT);
    assertEquals(600, number(bank(FLOODED + ", inside: yes", FROST), "bank.usable"), EXACT);
  }

  @Test
  void aBankOfWhichNobodySaysWhereItIsCountsAsOutsideAndIsMarked() {
    Figure usable = bank(FLOODED, FROST).find("bank.usable").orElseThrow();
    assertEquals(510, usable.number(), EXACT);
    assertTrue(usable.assumes().contains("batteries.outside"));
    Figure outside = bank(FLOODED + ", inside: no", FROST).find("bank.usable").orElseThrow();
    assertEquals(Set.of("usable.lead"), outside.assumes());
  }

  @Test
  void coldTakesNothingFromLithiumNorFromABankWhoseStayNamesNoLow() {
    String lithium =
        "type: lithium, each: {voltage: 12 V, capacity: 100 Ah}, in-series: 1, strings: 1";
    assertEquals(960, number(bank(lithium, FROST), "bank.usable"), EXACT); // 1200 x 0.8
    assertEquals(600, number(bank(FLOODED, "stay: {people: 2}"), "bank.usable"), EXACT);
  }

  @Test
  void theColdRuleReachesDownToMinus60Celsius() {
    assertEquals(0.49, Batteries.coldShare(-60), 1e-9); // 1 - 0.006 x 85
    assertThrows(IllegalArgumentException.class, () -> Batteries.coldShare(-60.5));
  }

  @Test
  void theKeepersOwnUsableShareBeatsTheTypicalOne() {
    Figure usable = bank(FLOODED + ", usable: 60 percent", "").find("bank.usable").orElseThrow();
    assertEquals(720, usable.number(), EXACT);
    assertEquals(Set.of(), usable.assumes());
  }

  @Test
  void withoutItsKindABankHasNoUsableEnergyAndSaysWhatItLacks() {
    Figures figures = bank("each: {voltage: 12 V, capacity: 100 Ah}, in-series: 1, strings: 1", "");
    assertTrue(figures.find("bank.usable").isEmpty());
    assertEquals(Set.of("electric.batteries.type"), figures.missing("bank.usable"));
  }

  @Test
  void aRestedFloodedBankReads12Point65VoltsFullAndTwiceThatIn24Volts() {
    // studylib.net/doc/18054160, table credited to BCI (SEEN-2), as printed
    Figures twelve = bank(FLOODED, "");
    String[] percents = {"100", "75", "50", "25", "0"};
    double[] printed = {12.65, 12.45, 12.24, 12.06, 11.89};
    Figures twentyFour = bank(FLOODED.replace("in-series: 1", "in-series: 2"), "");
    for (int i = 0; i < percents.length; i++) {
      assertEquals(printed[i], number(twelve, "rest." + percents[i]), EXACT);
      assertEquals(2 * printed[i], number(twentyFour, "rest." + percents[i]), EXACT);
    }
  }

  @Test
  void otherBatteriesHaveNoRestedTable() {
    assertTrue(bank(FLOODED.replace("flooded lead-acid", "agm"), "").find("rest.50").isEmpty());
    assertTrue(bank(FLOODED.replace("flooded lead-acid", "gel"), "").find("rest.50").isEmpty());
    assertTrue(bank(FLOODED.replace("flooded lead-acid", "lithium"), "").find("rest.50").isEmpty());
    assertThrows(IllegalArgumentException.class, () -> Batteries.restedVolts(60, 12));
  }

  @Test
  void batteriesCountedOneByOneHoldWhatTheBankHolds() {
    // second derivation: along a string the volts add, string by string the amp-hours, and each
    // battery brings its own watt-hours
    for (int series = 1; series <= 4; series++) {
      for (int strings = 1; strings <= 3; strings++) {
        Figures figures =
            bank(
                "each: {voltage: 6.4 V, capacity: 90 Ah}, in-series: %d, strings: %d"
                    .formatted(series, strings),
                "");
        assertEquals(each(6.4, series), number(figures, "bank.voltage"), EXACT);
        assertEquals(each(90, strings), number(figures, "bank.capacity"), EXACT);
        double wattHours = each(6.4 * 90, series * strings);
        assertEquals(wattHours, number(figures, "bank.energy"), wattHours * EXACT);
      }
    }
  }

  private static double each(double amount, int times) {
    return DoubleStream.generate(() -> amount).limit(times).sum();
  }
}
