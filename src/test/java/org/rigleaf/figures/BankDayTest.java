package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

/** What leaves and reaches the bank, each kind of load worked by hand. */
class BankDayTest {
  private static final String BANK =
      """
      rig: {name: Reed, kind: travel trailer, length: 24 ft, width: 8 ft, inside-height: 6 ft 6 in, body: {starts: 4 ft, length: 20 ft}}
      stay: {people: 2, nights: 2, %s month: May, outside: {low: 66 degF, high: 90 degF}, inside: 66 degF, place: {latitude: 40, elevation: 0 ft, sunshine: 0.5}}
      """;
  private static final String BATTERY =
      "batteries: {type: lithium, each: {voltage: 12.5 V, capacity: 100 Ah}, in-series: 1, strings: 2, inside: yes}";

  private static Figures of(String stay, String electric, String rest) {
    String text =
        BANK.formatted(stay) + "electric: {" + BATTERY + electric + "}\n" + rest.strip() + "\n";
    return Figures.of(TestRigs.of(text));
  }

  private static double day(String electric, String rest) {
    return of("", electric, rest).find("day.energy").orElseThrow().number();
  }

  /** Standing loads of half an amp at 12.5 V all day. */
  private static final double STANDING = 0.5 * 12.5 * 24;

  @Test
  void withEverySwitchOffHalfAnAmpFlows() {
    assertEquals(STANDING, day("", ""), 1e-9);
  }

  @Test
  void aListedLoadTakesItsWattsForItsHours() {
    assertEquals(
        STANDING + 30 * 4,
        day(", loads: [{name: Lights, on: 12 V, draws: 30 W, runs: 4 h}]", ""),
        1e-9);
    // amps count at the bank's volts
    assertEquals(
        STANDING + 2 * 12.5 * 3,
        day(", loads: [{name: Fan, on: 12 V, draws: 2 A, runs: 3 h}]", ""),
        1e-9);
    // always, without hours: all day
    assertEquals(
        STANDING + 5 * 24,
        day(", loads: [{name: Router, on: 12 V, draws: 5 W, when: always}]", ""),
        1e-9);
  }

  @Test
  void aLoadWithoutHoursIsNamedAndNotCounted() {
    Figures figures = of("", ", loads: [{name: Lights, on: 12 V, draws: 30 W}]", "");
    assertEquals("lights", figures.find("day.not-counted").orElseThrow().value().data());
    assertEquals(STANDING, figures.find("day.energy").orElseThrow().number(), 1e-9);
  }

  @Test
  void onTheInverterALoadTakesMoreAndTheInverterIdlesAllDay() {
    String inverter = ", inverter: {output: 1000 W, efficiency: 0.8, feeds: [Television]%s}";
    String loads =
        ", loads: [{name: Television, on: 120 V, draws: 80 W, runs: 2 h}, {name: Kettle, on: 120 V, draws: 900 W, runs: 1 h}]";
    // idle 12 W for each 1,000 W; the kettle is not on the inverter
    assertEquals(STANDING + 80 * 2 / 0.8 + 12 * 24, day(inverter.formatted("") + loads, ""), 1e-9);
    assertEquals(
        STANDING + 80 * 2 / 0.8 + 20 * 5,
        day(inverter.formatted(", idle: 20 W, on: 5 h") + loads, ""),
        1e-9);
  }

  @Test
  void thePumpRunsAsLongAsTheWaterTakes() {
    String water =
        "water: {fresh: {holds: 40 gal}, pump: {flow: 3 gpm, draws: 60 W}}\nwaste: {gray: {holds: 30 gal}}";
    // two people: 1 gal drinking, 2 gal washing; no heater and no bath drain, so no showers: 6 gal
    assertEquals(STANDING + 60 * 6 / 180.0, day("", water), 1e-9);
    // hours of a listed pump beat that
    assertEquals(
        STANDING + 60 * 0.5,
        day(", loads: [{name: Pump, on: 12 V, draws: 60 W, runs: 30 min}]", water),
        1e-9);
  }

  @Test
  void aCompressorRefrigeratorRunsFourTenthsOfTheDay() {
    assertEquals(
        STANDING + 60 * 0.4 * 24, day("", "climate: {refrigerator: {kind: compressor}}"), 1e-9);
    assertEquals(
        STANDING + 45 * 0.4 * 24,
        day("", "climate: {refrigerator: {kind: compressor, draws: 45 W}}"),
        1e-9);
    // a household one off the inverter, if it feeds it
    assertEquals(
        STANDING + 120 * 0.4 * 24 / 0.9 + 12 * 24,
        day(
            ", inverter: {output: 1000 W, feeds: [refrigerator]}",
            "climate: {refrigerator: {kind: household, draws: 120 W}}"),
        1e-9);
    // the board of an absorption unit takes half an amp more
    assertEquals(STANDING * 2, day("", "climate: {refrigerator: {kind: absorption}}"), 1e-9);
  }

  @Test
  void theBlowerRunsAsLongAsTheFurnace() {
    // 144.16 Btu/h a degree (FurnacesTest), 18 degrees on the mean of 38 and 58, over 16,000
    String cold =
        BANK.formatted("").replace("low: 66 degF, high: 90 degF", "low: 38 degF, high: 58 degF");
    String text =
        cold
            + "electric: {"
            + BATTERY
            + "}\nclimate: {furnace: {input: 20000 Btu/h, blower: 80 W}}\n";
    assertEquals(
        STANDING + 80 * 24 * 144.16 * 18 / 16_000,
        Figures.of(TestRigs.of(text)).find("day.energy").orElseThrow().number(),
        0.01);
    // a furnace that cannot hold the temperature runs all hours, and no more than all
    String weak = text.replace("20000 Btu/h", "1000 Btu/h");
    assertEquals(
        STANDING + 80 * 24,
        Figures.of(TestRigs.of(weak)).find("day.energy").orElseThrow().number(),
        0.01);
  }

  @Test
  void whoGivesUpHeatingSavesItsBlowerToo() {
    String cold =
        BANK.formatted("").replace("low: 66 degF, high: 90 degF", "low: 38 degF, high: 58 degF");
    String text =
        cold
            + "electric: {"
            + BATTERY
            + "}\nclimate: {furnace: {input: 20000 Btu/h, blower: 80 W}}\n";
    Figures figures = Figures.of(TestRigs.of(text));
    // without the blower only the standing loads are left: 2,000 Wh of 150 a day
    double days = figures.find("bank.days").orElseThrow().number();
    assertEquals(
        2500 * 0.8 / STANDING - days, figures.find("gain.furnace").orElseThrow().number(), 1e-9);
    assertTrue(figures.find("gain.furnace-blower").isEmpty());
  }

  @Test
  void aLoadOfItsOwnBatteryLeavesTheHouseBankAlone() {
    String text =
        ", other-banks: [{name: Winch battery, type: agm, each: {voltage: 12 V, capacity: 50 Ah}, in-series: 1, strings: 1, feeds: [Winch]}]"
            + ", loads: [{name: Winch, on: 12 V, draws: 500 W, runs: 1 h}]";
    assertEquals(STANDING, day(text, ""), 1e-9);
  }

  @Test
  void withoutSunTheBankLastsWhatMayBeUsedOverWhatADayTakes() {
    // 2,500 Wh, 80 % usable, 150 Wh a day: closed form of a constant draw
    Figures figures = of("", "", "");
    assertEquals(2500 * 0.8 / STANDING, figures.find("bank.days").orElseThrow().number(), 1e-9);
    // from 15:00 to 08:00 are 17 hours of 6.25 Wh
    assertEquals(
        100 * (2500 - 17 * 6.25) / 2500, figures.find("bank.night").orElseThrow().number(), 1e-9);
  }

  @Test
  void theDaysEnergyIsThatOffThePlugWhateverTheSiteHas() {
    String inverter =
        ", inverter: {output: 1000 W, idle: 10 W, efficiency: 0.8, feeds: [Television]}, converter: {output: 40 A}"
            + ", loads: [{name: Television, on: 120 V, draws: 80 W, runs: 2 h}]";
    Figures plugged = of("hook-ups: [electric],", inverter, "");
    double day = STANDING + 80 * 2 / 0.8 + 240;
    assertEquals(day, plugged.find("day.energy").orElseThrow().number(), 1e-9);
    assertEquals("keeps-up", plugged.find("stay.first-limit").orElseThrow().value().data());
    double left = 100 * (2500 - day) / 2500;
    assertEquals(left, plugged.find("bank.hour.24").orElseThrow().number(), 1e-9);
    assertEquals(100, plugged.find("bank.hour.0").orElseThrow().number(), 1e-9);
    // the least of the night is at 08:00: 17 h of 6.25 + 10 W, and the television's 200 Wh
    assertEquals(
        100 * (2500 - 17 * 16.25 - 200) / 2500,
        plugged.find("bank.night").orElseThrow().number(),
        1e-9);
  }

  @Test
  void onThePostTheBankKeepsUp() {
    Figures figures =
        of(
            "hook-ups: [electric],",
            ", converter: {output: 40 A}, loads: [{name: Lights, on: 12 V, draws: 200 W, runs: 24 h}]",
            "");
    assertEquals("keeps-up", figures.find("stay.first-limit").orElseThrow().value().data());
    assertEquals("word", figures.find("stay.first-limit.after").orElseThrow().unit().symbol());
    // the days on the battery are those without the post: 2,000 Wh of 4,800 and 150 a day
    assertEquals(2000 / 4950.0, figures.find("bank.days").orElseThrow().number(), 1e-9);
  }

  @Test
  void aGeneratorChargesForTheHoursOfTheStay() {
    // 1 h at 20 A and 12.5 V: 250 Wh a day, 98 % kept of what is beyond the draw of the day hours
    String load =
        ", converter: {output: 20 A}, loads: [{name: Lamp, on: 12 V, draws: 10 W, when: always}]";
    double without = of("", load, "").find("bank.days").orElseThrow().number();
    String generator = load + ", generator: {rated: 2000 W}";
    double with = of("generator: 1 h,", generator, "").find("bank.days").orElseThrow().number();
    assertEquals(2000 / (STANDING + 240), without, 1e-9);
    // from 09 to 17 come 31.25 Wh an hour against 16.25 of draw: 15 x 0.98 = 14.7 more an hour;
    // the other 16 hours take 16.25 each. Full at 17:00, 2,240 at 09:00, then 260 - 117.6 = 142.4
    // less each day: 648.8 at the 14th 17:00, and 148.8 / 16.25 h later 500
    assertEquals((2 + 13 * 24 + 148.8 / 16.25) / 24, with, 1e-6);
  }

  @Test
  void theSunOfADayLiesUnderHalfASine() {
    double[] sun = BankDay.daylight(1000, 12);
    assertEquals(1000, Hours.sum(sun), 1e-9);
    assertEquals(0, sun[5], 1e-12);
    assertEquals(0, sun[18], 1e-12);
    assertEquals(sun[6], sun[17], 1e-9);
    // from 12 to 13 of 6 to 18: (cos 90 - cos 105 degrees) / 2 of the day
    assertEquals(500 * Math.cos(Math.toRadians(75)), sun[12], 1e-6);
    assertEquals(1000, Hours.sum(BankDay.daylight(1000, 24)), 1e-9);
    assertEquals(1000, Hours.sum(BankDay.daylight(1000, 9.3)), 1e-9);
  }

  @Test
  void coldLithiumTakesNoSun() {
    String sunny =
        """
        rig: {name: Reed, kind: travel trailer, length: 24 ft}
        stay: {people: 2, month: May, outside: {low: %s, high: %s}, place: {latitude: 40, sunshine: 0.5}}
        electric:
          batteries: {type: lithium, each: {voltage: 12 V, capacity: 100 Ah}, in-series: 1, strings: 1, inside: no%s}
          solar: {panels: 2 x 200 W, controller: mppt}
          loads: [{name: Lamp, on: 12 V, draws: 20 W, when: always}]
        """;
    assertEquals("keeps-up", days(sunny.formatted("40 degF", "60 degF", "")));
    assertEquals(
        960 / (20 * 24 + 144.0),
        Double.parseDouble(days(sunny.formatted("10 degF", "32 degF", ""))),
        1e-5);
    assertEquals("keeps-up", days(sunny.formatted("10 degF", "32 degF", ", heated: yes")));
  }

  private static String days(String text) {
    return Figures.of(TestRigs.of(text)).find("bank.days").orElseThrow().value().data();
  }

  @Test
  void theBankTakesNoMoreThanItsLimit() {
    // 40 W always; 24 h on a converter of 40 A, but the bank takes 2 A beyond the draw
    String text =
        BANK.formatted("hook-ups: [electric],")
            + "electric: {batteries: {type: agm, each: {voltage: 12 V, capacity: 100 Ah}, in-series: 1, strings: 1, inside: yes, charge-limit: 2 A}, converter: {output: 40 A}}\n";
    var rig = TestRigs.of(text);
    var in = new Rows(DailyUse.ENERGY, Figures.of(rig)).look();
    Store store = new BankDay(Trip.stay(rig), in).store(rig.electric().batteries().orElseThrow());
    assertArrayEquals(Hours.each(h -> 6 + 24), store.in(), 1e-9);
    assertEquals(0.85, store.kept(), 1e-9);
    // 66 F is 18.889 C: 1 - 0.006 x 6.1111 = 0.963333; half of 1,200 Wh
    assertEquals(1200 - 600 * 0.9633333, store.floor(), 1e-3);
    assertEquals(Set.of(), in.missing());
  }

  @Test
  void anEvenDrawLowersTheChargeOnAStraightLine() {
    // closed form: 6.25 of 2,500 Wh an hour, a quarter of a per cent
    Figures figures = of("", "", "");
    for (int hour = 0; hour <= 24; hour++) {
      double charge = figures.find("bank.hour." + hour).orElseThrow().number();
      assertEquals(100 - 0.25 * hour, charge, 1e-9);
    }
    assertEquals(Set.of(), figures.missing("bank.hour.25"));
  }

  @Test
  void whatADayTakesIsWhatTheBankLosesInADay() {
    // conservation: the hours of the first day, with loads of every kind and nothing that charges
    Figures figures =
        of(
            "",
            ", inverter: {output: 1000 W, feeds: [Television]}, loads: [{name: Lights, on: 12 V,"
                + " draws: 30 W, runs: 5 h}, {name: Fan, on: 12 V, draws: 2 A, runs: 3 h, when:"
                + " night}, {name: Television, on: 120 V, draws: 80 W, runs: 2 h}]",
            "climate: {refrigerator: {kind: compressor}}");
    double before = figures.find("bank.hour.0").orElseThrow().number();
    double after = figures.find("bank.hour.24").orElseThrow().number();
    assertEquals(100, before, 1e-9);
    double lost = (before - after) / 100 * 2500;
    assertEquals(lost, figures.find("day.energy").orElseThrow().number(), 1e-9);
  }
}
