package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;

/**
 * Hours to charge the bank from its usable floor. No published form was found, so the sums are
 * worked by hand and against a charge followed in small steps.
 */
class RechargeTest {
  private static final double EXACT = 1e-9; // plain arithmetic, only rounding of doubles
  private static final double HAND = 0.00005; // five decimals worked by hand
  private static final String BANK =
      "each: {voltage: 12 V, capacity: 100 Ah}, in-series: 1, strings: 1, type: ";

  private static Figures rig(String batteries, String chargers, String stay) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: T, kind: class c, length: 24 ft}\n"
                + stay
                + "electric: {batteries: {"
                + batteries
                + "}, "
                + chargers
                + "}\n"));
  }

  private static double number(Figures figures, String id) {
    return figures.find("recharge." + id).orElseThrow(() -> new AssertionError(id)).number();
  }

  private static String word(Figures figures, String id) {
    Figure figure = figures.find("recharge." + id).orElseThrow(() -> new AssertionError(id));
    return figure.value().data() + " " + figure.unit().symbol();
  }

  /**
   * The charge followed in steps of a fifth of a second: in the last part the current falls in a
   * straight line with what is missing, from {@code amps} at 80 % to 2 % of the capacity when full.
   */
  private static double followed(double floor, double capacity, double kept, double amps) {
    double step = 0.2 / 3600;
    double tail = 0.02 * capacity;
    double charge = floor;
    long steps = 0;
    while (charge < 1 - 1e-12) {
      double falling = tail + (amps - tail) * (1 - charge) / 0.2;
      double flows = Math.min(amps, falling);
      charge += flows * step * (charge < 0.8 ? kept : 1) / capacity;
      steps++;
    }
    return steps * step;
  }

  // steps of a fifth of a second make an error of under 0.01 % of the whole
  @ParameterizedTest
  @CsvSource({
    "0.5, 100, 0.85, 20",
    "0.565, 215, 0.85, 43",
    "0.5, 450, 0.85, 15",
    "0.7, 100, 1, 2.5",
    "0.9, 100, 0.85, 20", // starts on the falling curve
    "0.84, 225, 0.85, 30"
  })
  void theHoursAgreeWithAChargeFollowedInSmallSteps(
      double floor, double capacity, double kept, double amps) {
    double hours =
        Recharge.bulkHours(floor, 0.8, capacity, kept, amps)
            + Recharge.taperHours(floor, capacity, amps);
    assertEquals(followed(floor, capacity, kept, amps), hours, hours * 1e-4);
  }

  // 45 A less 0.5, at most 0.20 x 100 = 20 A; 0.3 x 100 / 0.85 / 20 = 1.76471; T = 20 / 18 h,
  // x ln(20 / 2) = 2.55843
  @Test
  void aLeadBankTakes20AmperesAnd4Point3HoursFromHalfToFull() {
    Figures figures = rig(BANK + "agm", "converter: {output: 45 A}", "");
    assertEquals(20, number(figures, "converter.current"), EXACT);
    assertEquals(1.76471, number(figures, "converter.to-80"), HAND);
    assertEquals(4.32313, number(figures, "converter.to-full"), HAND);
    assertEquals(
        Set.of("standing-loads", "charge-limit.lead", "usable.lead", "efficiency.charge-lead"),
        figures.find("recharge.converter.to-full").orElseThrow().assumes());
  }

  // 15 - 0.5 = 14.5 A; 30 / 0.85 / 14.5 = 2.43408; T = 20 / 12.5 = 1.6, x ln(7.25) = 3.16960
  @Test
  void aSmallChargerGivesWhatItHasLessTheStandingLoads() {
    Figures figures = rig(BANK + "gel", "converter: {output: 15 A}", "");
    assertEquals(14.5, number(figures, "converter.current"), EXACT);
    assertEquals(2.43408, number(figures, "converter.to-80"), HAND);
    assertEquals(2.43408 + 3.16960, number(figures, "converter.to-full"), HAND);
  }

  // from 20 %, no tail: 60 / 0.98 / 44.5 = 1.37583 and 80 / 0.98 / 44.5 = 1.83444
  @Test
  void lithiumTakesTheFullCurrentToTheEnd() {
    Figures figures = rig(BANK + "lithium", "converter: {output: 45 A}", "");
    assertEquals(44.5, number(figures, "converter.current"), EXACT);
    assertEquals(1.37583, number(figures, "converter.to-80"), HAND);
    assertEquals(1.83444, number(figures, "converter.to-full"), HAND);
  }

  @Test
  void theBanksOwnLimitWinsOverHalfItsAmpHours() {
    Figures typical = rig(BANK + "lithium", "converter: {output: 90 A}", "");
    Figures own = rig(BANK + "lithium, charge-limit: 30 A", "converter: {output: 90 A}", "");
    assertEquals(50, number(typical, "converter.current"), EXACT); // 0.50 x 100
    assertEquals(30, number(own, "converter.current"), EXACT);
    assertFalse(
        own.find("recharge.converter.current")
            .orElseThrow()
            .assumes()
            .contains("charge-limit.lithium"));
  }

  // 2.5 A less 0.5 are exactly 2 % of 100 Ah; 2.6 A are more, and 0.3 x 100 / 0.85 / 2.1 = 16.80672
  @Test
  void aChargerThatGivesTwoPercentNeverFillsTheBank() {
    Figures never = rig(BANK + "agm", "converter: {output: 2.5 A}", "");
    assertEquals("never word", word(never, "converter.to-80"));
    assertEquals("never word", word(never, "converter.to-full"));
    Figures just = rig(BANK + "agm", "converter: {output: 2.6 A}", "");
    assertEquals(16.80672, number(just, "converter.to-80"), HAND);
    Figures standing = rig(BANK + "lithium", "alternator-charging: {output: 0.2 A}", "");
    assertEquals("never word", word(standing, "alternator.to-full"));
  }

  // the share one may use sets the floor: 90 % left after 10 %, and the current is on its way
  // down: 20 - 18 x 0.1 / 0.2 = 11 A; T = 20 / 18, x ln(11 / 2) = 1.89416
  @Test
  void aBankThatStartsAbove80PercentNeedsNoHoursTo80AndOnlyTheEndOfTheTail() {
    Figures figures = rig(BANK + "agm, usable: 10 percent", "converter: {output: 45 A}", "");
    assertEquals(0, number(figures, "converter.to-80"), EXACT);
    assertEquals(1.89416, number(figures, "converter.to-full"), HAND);
  }

  // 32 F takes 15 % of 50 %: floor 0.575; 0.225 x 100 / 0.85 / 20 = 1.32353
  @Test
  void frostRaisesTheFloorOfALeadBank() {
    String frost = "stay: {outside: {low: 32 degF}}\n";
    Figures figures = rig(BANK + "agm, inside: no", "converter: {output: 45 A}", frost);
    assertEquals(1.32353, number(figures, "converter.to-80"), HAND);
  }

  // lithium takes no charge at or below 0 C (seen on several pages)
  @ParameterizedTest
  @CsvSource({
    "'inside: no', 32, never",
    "'inside: no', 33, 1.83444",
    "'inside: no, heated: no', 10, never",
    "'inside: no, heated: yes', 10, 1.83444",
    "'inside: yes', 10, 1.83444",
    "'heated: no', 32, never"
  })
  void frozenLithiumTakesNothing(String place, String low, String hours) {
    String stay = "stay: {outside: {low: " + low + " degF}, inside: 66 degF}\n";
    Figures figures = rig(BANK + "lithium, " + place, "converter: {output: 45 A}", stay);
    Figure full = figures.find("recharge.converter.to-full").orElseThrow();
    Figure most = figures.find("recharge.converter.to-80").orElseThrow();
    boolean never = hours.equals("never");
    assertEquals(never, most.value().data().equals("never"));
    assertEquals(hours, never ? full.value().data() : Amounts.number(full.number(), 5));
    assertEquals(never && !place.contains("inside"), full.assumes().contains("batteries.outside"));
  }

  @Test
  void coldNeverStopsALeadBankNorLithiumWithoutAStay() {
    String frost = "stay: {outside: {low: 0 degF}}\n";
    assertTrue(
        number(rig(BANK + "agm, inside: no", "converter: {output: 45 A}", frost), "converter.to-80")
            > 0);
    String month = "stay: {month: May}\n";
    Figures figures = rig(BANK + "lithium, inside: no", "converter: {output: 45 A}", month);
    assertEquals(1.83444, number(figures, "converter.to-full"), HAND);
  }

  // 45 A x 13.6 V / 0.85 = 720 W wanted, 360 W given: half of 45 A, less 0.5 A
  @Test
  void aGeneratorTooSmallForItsChargerChargesMoreSlowly() {
    String small = "converter: {output: 45 A}, generator: {rated: 360 W}";
    String sea = "stay: {place: {elevation: 0 ft}}\n";
    Figures figures = rig(BANK + "lithium", small, sea);
    assertEquals(22, number(figures, "generator.current"), EXACT);
    assertEquals(44.5, number(figures, "converter.current"), EXACT);
    Figures large = rig(BANK + "lithium", small.replace("360", "800"), sea);
    assertEquals(44.5, number(large, "generator.current"), EXACT);
  }

  // a 24 V bank is charged at 27.2 V: 1,440 W wanted of 720 W; by the nameplate 900 W of 720 W
  @Test
  void aConverterAt24VoltsWantsTwiceTheWatts() {
    String bank = BANK.replace("in-series: 1", "in-series: 2") + "lithium";
    String chargers = "converter: {output: 45 A}, generator: {rated: 720 W}";
    String sea = "stay: {place: {elevation: 0 ft}}\n";
    assertEquals(22, number(rig(bank, chargers, sea), "generator.current"), EXACT);
    String nameplate = chargers.replace("45 A", "45 A, draws: 900 W");
    assertEquals(35.5, number(rig(bank, nameplate, sea), "generator.current"), EXACT);
  }

  // 30 - 0.5 = 29.5 A: 80 / 0.98 / 29.5 = 2.76721
  @Test
  void theEngineChargesWithWhatItsChargerGives() {
    Figures figures = rig(BANK + "lithium", "alternator-charging: {kind: dc-dc, output: 30 A}", "");
    assertEquals(2.76721, number(figures, "alternator.to-full"), HAND);
    assertTrue(figures.find("recharge.converter.to-full").isEmpty());
    assertTrue(figures.find("recharge.generator.to-full").isEmpty());
  }

  @Test
  void whatIsNotKnownIsNamed() {
    Figures figures =
        rig(
            BANK.replace(", type: ", ""),
            "converter: {charging: slow}, generator: {rated: 4000 W}",
            "");
    String output = "electric.converter.output";
    String type = "electric.batteries.type";
    assertEquals(Set.of(output, type), figures.missing("recharge.converter.to-80"));
    assertEquals(
        Set.of(output, type, "stay.place.elevation"),
        figures.missing("recharge.generator.to-full"));
  }

  @Test
  void aGeneratorWithoutAConverterAndAChargerWithoutABankChargeNothing() {
    Figures engine = rig(BANK + "agm", "generator: {rated: 4000 W}", "");
    assertTrue(engine.find("recharge.generator.current").isEmpty());
    assertEquals(Set.of(), engine.missing("recharge.generator.current"));
    Figures bare =
        Figures.of(
            TestRigs.of(
                "rig: {name: T, kind: class c, length: 24 ft}\n"
                    + "electric: {converter: {output: 45 A}}\n"));
    assertEquals(Set.of(), bare.missing("recharge.converter.current"));
    assertTrue(bare.find("recharge.converter.current").isEmpty());
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Recharge.bulkHours(0.5, 0.8, 100, 0.85, 0));
    assertThrows(IllegalArgumentException.class, () -> Recharge.taperHours(0.5, 100, 2));
    assertThrows(IllegalArgumentException.class, () -> Charger.fedAmps(45, 0, 100));
  }
}
