package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

/** Days that the stores last, against sums by hand. */
class EnduranceTest {
  private static final String RIG =
      """
      rig: {name: Reed, kind: travel trailer, length: 24 ft}
      stay: {people: 2, nights: 2, month: May, hook-ups: [%s], outside: {low: 66 degF, high: 90 degF}, inside: 66 degF, place: {latitude: 40, elevation: 0 ft}, habits: {drinking-and-cooking: 1 gal, washing: 2 gal, showers-a-day: 0.5, shower: {minutes: 4, flow: 1.5 gpm}, flushes: 5}}
      """;
  private static final String WATER =
      """
      water: {fresh: {holds: 42 gal}, heater: {kind: storage, fuel: lp, burner: 10000 Btu/h}}
      waste:
        toilet: {kind: gravity flush, flush: 0.3 gal}
        black: {holds: 30 gal}
        gray: [{name: galley, holds: 20 gal, drains: kitchen}, {name: bath, holds: 25 gal, drains: bath}]
      """;

  private static Figures of(String hookUps, String rest) {
    return Figures.of(TestRigs.of(RIG.formatted(hookUps) + rest.strip() + "\n"));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow(() -> new AssertionError("no " + id)).number();
  }

  private static String word(Figures figures, String id) {
    return figures.find(id).orElseThrow(() -> new AssertionError("no " + id)).value().data();
  }

  @Test
  void aDayOfTwoPeople() {
    Figures figures = of("", WATER);
    // 2 x (1 + 2 + 0.5 x 6 + 5 x 0.3) = 15; 2 x 2; 2 x 3; 2 x 1.5
    assertEquals(15, number(figures, "use.fresh"), 1e-9);
    assertEquals(4, number(figures, "use.gray.galley"), 1e-9);
    assertEquals(6, number(figures, "use.gray.bath"), 1e-9);
    assertEquals(3, number(figures, "use.black"), 1e-9);
  }

  @Test
  void freshWaterEndsInTheWashingOfTheThirdEvening() {
    // 39.9 gal count. Drinking and flushes: 5 gal a day, 5/24 an hour; washing and showers: 5 gal
    // at 07 and 5 at 18. By 18:00 of the third day 2 x 15 and 3 h of 5/24 are gone: 30.625, then
    // 5.2083 in the hour to 19:00: 35.8333; 4.0667 left are 12 hours to 07:00 (2.5), and then
    // 1.5667 of 5.2083 an hour
    assertEquals(
        (2 * 24 + 16 + 1.566667 / 5.208333) / 24,
        number(of("", WATER), "tank.fresh.endurance"),
        1e-5);
  }

  @Test
  void wasteTanksFillByWhatDrainsToThem() {
    Figures figures = of("", WATER);
    // galley: 2 gal at 18 and 2 at 07; the 20th in the tenth of them: the end of the fifth 07 hour
    assertEquals((4 * 24 + 17) / 24.0, number(figures, "tank.gray.galley.endurance"), 1e-9);
    // bath: 3 gal each; 25 = 8 of them and 1 gal of the ninth, the fifth 18 hour
    assertEquals((4 * 24 + 3 + 1 / 3.0) / 24, number(figures, "tank.gray.bath.endurance"), 1e-9);
    // black: 30 less 3 gal of starter water at 3 a day; two thirds are 20
    assertEquals(9, number(figures, "tank.black.endurance"), 1e-9);
    assertEquals(17 / 3.0, number(figures, "tank.black.two-thirds"), 1e-9);
  }

  @Test
  void theFirstLimitIsTheLeastAndGivingUpShowersGainsTime() {
    Figures figures = of("", WATER);
    assertEquals("fresh", word(figures, "water.first-limit"));
    assertEquals("fresh", word(figures, "stay.first-limit"));
    double before = number(figures, "tank.fresh.endurance");
    assertEquals(before, number(figures, "water.first-limit.after"), 1e-9);
    assertEquals(before, number(figures, "stay.first-limit.after"), 1e-9);
    // without showers 9 a day: four days take 36, three hours 0.625, the hour to 19:00 2.2083;
    // 1.0667 are left of 39.9, which are 5.12 h; gray galley is full later, after 4.708 days
    double without = (4 * 24 + 4 + 1.066667 * 24 / 5) / 24;
    assertEquals(without - before, number(figures, "gain.showers"), 1e-5);
    assertTrue(number(figures, "gain.washing") > 0);
    assertTrue(figures.find("gain.furnace").isEmpty());
  }

  @Test
  void hookUpsTakeTheirStoresOut() {
    assertEquals("keeps-up", word(of("water", WATER), "tank.fresh.endurance"));
    assertEquals("gray.bath", word(of("water", WATER), "water.first-limit"));
    Figures sewer = of("water, sewer", WATER);
    assertEquals("keeps-up", word(sewer, "tank.black.endurance"));
    assertEquals("keeps-up", word(sewer, "tank.gray.bath.endurance"));
    assertEquals("keeps-up", word(sewer, "water.first-limit"));
    assertEquals("keeps-up", word(sewer, "water.first-limit.after"));
  }

  @Test
  void aCassetteFlushesFromItsOwnWater() {
    Figures figures =
        of(
            "",
            "water: {fresh: {holds: 30 gal}}\nwaste: {toilet: {kind: cassette, flush: 0.2 gal, holds: 5 gal}}");
    // no heater, no bath drain: no showers; 2 x (1 + 2)
    assertEquals(6, number(figures, "use.fresh"), 1e-9);
    assertEquals(2, number(figures, "use.toilet"), 1e-9);
    assertEquals(2.5, number(figures, "tank.toilet.endurance"), 1e-9);
    assertTrue(figures.find("use.black").isEmpty());
  }

  @Test
  void aDryToiletTakesNoWater() {
    Figures figures =
        of("", "water: {fresh: {holds: 30 gal}}\nwaste: {toilet: {kind: composting}}");
    assertEquals(6, number(figures, "use.fresh"), 1e-9);
    assertTrue(figures.find("tank.toilet.endurance").isEmpty());
  }

  @Test
  void aSingleGrayTankTakesAllUnlessItSaysWhatDrainsToIt() {
    String both =
        "water: {fresh: {holds: 30 gal}, heater: {kind: storage}}\nwaste: {gray: {holds: 25 gal%s}}";
    assertEquals(10, number(of("", both.formatted("")), "use.gray.gray"), 1e-9);
    assertEquals(4, number(of("", both.formatted(", drains: kitchen")), "use.gray.gray"), 1e-9);
  }

  @Test
  void twoTanksOfOneDrainShareItAndSilenceIsAsked() {
    String two =
        "water: {fresh: {holds: 30 gal}, heater: {kind: storage}}\nwaste: {gray: [{name: one, holds: 25 gal, drains: [kitchen, bath]}, {name: two, holds: 25 gal%s}]}";
    Figures figures = of("", two.formatted(", drains: kitchen"));
    assertEquals(2 + 6, number(figures, "use.gray.one"), 1e-9);
    assertEquals(2, number(figures, "use.gray.two"), 1e-9);
    Figures silent = of("", two.formatted(""));
    assertTrue(silent.find("use.gray.one").isEmpty());
    assertEquals(Set.of("waste.gray.two.drains"), silent.missing("use.gray.one"));
  }

  @Test
  void propaneGoesToFurnaceHeaterRefrigeratorAndRange() {
    String rest =
        """
        water: {fresh: {holds: 42 gal}, heater: {kind: storage, fuel: [lp, electric], burner: 10000 Btu/h, element: 1400 W}}
        waste: {gray: {holds: 25 gal}}
        propane: {cylinders: {size: 20 lb}}
        climate: {refrigerator: {kind: absorption, runs-on: [lp, 120 V], burner: 1000 Btu/h, element: 300 W}, range: {burners: 2}}
        """;
    // warm water: 2 x (2 + 3) = 10 gal x 8.33 x 50 / 0.75 = 5,553.3; 1,000 x 12 h; 7,000: 24,553.3
    double day = 10 * 8.33 * 50 / 0.75 + 12_000 + 7000;
    Figures figures = of("", rest);
    double days = number(figures, "lp.days");
    assertEquals(430_960 / day, days, 0.4); // the last day's hours are not even
    // by the hour: 17 whole days leave 13,553; from 15:00 by 18:00 1,500, in the hour to 19:00
    // 500 + 7,000 + half the water 2,776.7; 1,776.6 are 3.553 h of 500
    assertEquals(17 + (4 + (430_960 - 17 * day - 1500 - 10_276.667) / 500) / 24, days, 1e-4);
    // on the post the element heats and the refrigerator changes over: only the range is left
    assertEquals("keeps-up", word(of("electric", rest), "lp.days"));
  }

  @Test
  void aFurnaceBurnsItsLossOverItsEfficiencyWhateverTheHeight() {
    String rest =
        """
        propane: {cylinders: {size: 30 lb}}
        climate: {furnace: {input: 30000 Btu/h, blower: 5 A}}
        """;
    String rig =
        RIG.formatted("")
            .replace(
                "length: 24 ft",
                "width: 8 ft, inside-height: 6 ft 6 in, body: {starts: 0 ft, length: 20 ft}")
            .replace("low: 66 degF, high: 90 degF", "low: 36 degF, high: 36 degF");
    // 144.16 Btu/h a degree (FurnacesTest), 30 degrees, / 0.8: 5,406 Btu/h; 646,440 Btu
    double hours = 30 * 21_548 / (144.16 * 30 / 0.8);
    assertEquals(hours / 24, number(Figures.of(TestRigs.of(rig + rest)), "lp.days"), 1e-6);
    String high = rig.replace("elevation: 0 ft", "elevation: 6000 ft");
    assertEquals(hours / 24, number(Figures.of(TestRigs.of(high + rest)), "lp.days"), 1e-6);
    // one too weak burns all it can: 3,000 Btu/h, not more
    String weak = rig + rest.replace("30000", "3000");
    assertEquals(30 * 21_548 / 3000.0 / 24, number(Figures.of(TestRigs.of(weak)), "lp.days"), 1e-6);
  }

  @Test
  void aDieselHeaterDrawsOnTheFuelTank() {
    String rig =
        RIG.formatted("")
            .replace(
                "kind: travel trailer, length: 24 ft",
                "kind: class b, width: 8 ft, inside-height: 6 ft 6 in, body: {starts: 0 ft, length: 20 ft}")
            .replace("low: 66 degF, high: 90 degF", "low: 36 degF, high: 36 degF");
    String rest =
        """
        propane: none
        climate: {furnace: {kind: air heater, fuel: diesel, input: 20000 Btu/h, blower: 2 A}}
        road: {fuel: {kind: diesel, holds: 20 gal}}
        """;
    Figures figures = Figures.of(TestRigs.of(rig + rest));
    // 137,381 Btu a gallon (EIA, as quoted): 20 gal over 5,406 Btu/h
    assertEquals(20 * 137_381 / 5406.0 / 24, number(figures, "fuel.days"), 1e-4);
    assertTrue(figures.find("lp.days").isEmpty());
    // a quarter stays for the engine where a generator's pick-up ends
    String generator =
        rig
            + rest.replace("holds: 20 gal", "holds: 20 gal, generator-stops-at: 1/4")
            + "electric: {generator: {rated: 2000 W, fuel: diesel}}\n";
    assertEquals(
        15 * 137_381 / 5406.0 / 24, number(Figures.of(TestRigs.of(generator)), "fuel.days"), 1e-4);
  }

  @Test
  void theTableOfUsualNightsStandsWithoutAStay() {
    String rig =
        """
        rig: {name: Reed, kind: travel trailer, length: 24 ft}
        water: {fresh: {holds: 30 gal}}
        waste: {black: {holds: 30 gal}}
        """;
    Figures figures = Figures.of(TestRigs.of(rig));
    // typical flushes 5 x 0.3 a person: black 27 / 1.5 n
    assertEquals(18, number(figures, "lasts.mild.black.1"), 1e-9);
    assertEquals(9, number(figures, "lasts.cold.black.2"), 1e-9);
    assertEquals(4.5, number(figures, "lasts.cold.black.4"), 1e-9);
    assertFalse(figures.find("lasts.mild.black.3").isPresent());
    // and so do the days, by typical habits of two people
    assertEquals(9, number(figures, "tank.black.endurance"), 1e-9);
  }

  @Test
  void levelsAtMidnight() {
    Figures figures = of("", WATER);
    // black: 3 gal and 9 h of 3 a day; the next night a day more, of 30
    assertEquals(100 * (3 + 9 / 8.0) / 30, number(figures, "ledger.1.black"), 1e-9);
    assertEquals(100 * (6 + 9 / 8.0) / 30, number(figures, "ledger.2.black"), 1e-9);
    assertTrue(figures.find("ledger.3.black").isEmpty());
    // fresh: 42 less 9 h of 5/24 and the evening's 5
    assertEquals(100 * (42 - 5 - 9 * 5 / 24.0) / 42, number(figures, "ledger.1.fresh"), 1e-9);
  }
}
