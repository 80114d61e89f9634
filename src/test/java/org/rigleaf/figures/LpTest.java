package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class LpTest {
  private static Figures rig(String yaml) {
    return Figures.of(TestRigs.of("rig: {name: Reed, kind: travel trailer}\n" + yaml));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void aCylinderStamped47Point6TakesTwentyPounds() {
    // 29 CFR 1910.110 table H-27: 42 % by weight (SEEN); engineerfix.com, how to read propane tank
    // markings: 47.6 -> 20.0 (SEEN-2); 95.2 -> 40, 238 -> 100 (CALC)
    assertEquals(20.0, Lp.cylinderPounds(47.6), 0.05);
    assertEquals(40.0, Lp.cylinderPounds(95.2), 0.05);
    assertEquals(100.0, Lp.cylinderPounds(238), 0.05);
    assertThrows(IllegalArgumentException.class, () -> Lp.cylinderPounds(0));
  }

  @Test
  void theTableOfBurnersNamesTheirRateAndAllContainers() {
    Figures figures =
        rig(
            "propane: {cylinders: {count: 2, size: 20 lb}}\n"
                + "climate: {furnace: {input: 20000 Btu/h}, range: {burners: 2}}\n");
    assertEquals(20_000, number(figures, "lp.furnace.input"), 1e-9);
    assertEquals(43.096, number(figures, "lp.furnace.life.all"), 1e-9); // 40 x 21,548 / 20,000
    assertEquals(7_000, number(figures, "lp.range.input"), 1e-9);
    assertEquals(Set.of("range.burner"), figures.find("lp.range.input").orElseThrow().assumes());
    Figures one =
        rig("propane: {cylinders: {size: 20 lb}}\nclimate: {furnace: {input: 20000 Btu/h}}\n");
    assertTrue(one.find("lp.furnace.life.all").isEmpty());
  }

  @Test
  void burnTimesAgreeWithAPrintedSheet() {
    // docstoc.com/docs/119869161, sheet at 131,742 Btu/h prints 3.28, 4.92 and 6.56 h for 20, 30
    // and 40 lb
    // (SEEN). It reckons 21,591 Btu/lb, before vaporizing, 0.2 % more: tolerance 0.02 h
    assertEquals(3.28, Lp.lifeHours(20, 131_742), 0.02);
    assertEquals(4.92, Lp.lifeHours(30, 131_742), 0.02);
    assertEquals(6.56, Lp.lifeHours(40, 131_742), 0.02);
  }

  @Test
  void heatByWeightAndByGallonDifferByLessThanOneAndAHalfPercent() {
    // patioheat.com/lp_gas.htm: 91,502 Btu a gallon (SEEN-2); that row is 1.1 % off itself; 20 lb
    // are 430,960 Btu by weight,
    // 20 / 4.20 x 91,502 = 435,724 by gallon
    assertEquals(430_960, Lp.heatBtu(20), 1e-6);
    assertEquals(1, Lp.gallons(20) * 91_502 / Lp.heatBtu(20), 0.015);
  }

  @Test
  void fortyPoundsAreNineAndAHalfGallons() {
    // engineerfix.com, how many gallons are in a 40 lb propane tank: 9.4 gal (SEEN-2) at 4.24
    // lb/gal; 4.20 gives 1 % more
    assertEquals(9.4, Lp.gallons(40), 0.15);
  }

  @Test
  void theStampedCapacityBeatsTheNominalSizeAndNothingOverfillsIt() {
    assertEquals(
        19.992, // 0.42 x 47.6
        number(
            rig("propane: {cylinders: {size: 20 lb, water-capacity: 47.6 lb}}\n"),
            "lp.cylinder.fill"),
        1e-9);
    assertEquals(
        17,
        number(rig("propane: {cylinders: {size: 20 lb, filled-to: 17 lb}}\n"), "lp.cylinder.fill"));
    assertEquals(
        20,
        number(rig("propane: {cylinders: {size: 20 lb, filled-to: 25 lb}}\n"), "lp.cylinder.fill"));
    assertEquals(15, number(rig("propane: {cylinders: {filled-to: 15 lb}}\n"), "lp.cylinder.fill"));
    Figures unknown = rig("propane: {cylinders: {tare: 17 lb}}\n");
    assertEquals(Set.of("propane.cylinders.cylinder.size"), unknown.missing("lp.cylinder.fill"));
    assertTrue(unknown.find("lp.heat").isEmpty());
  }

  @Test
  void aFixedTankOfTwentyGallonsTakes67Pounds() {
    // 0.80 x 20 gal x 4.20 lb/gal = 67.2 lb; back to 16 gal of liquid
    Figures figures = rig("propane: {tank: {water-gallons: 20 gal}}\n");
    assertEquals(67.2, number(figures, "lp.tank.fill"), 1e-9);
    assertEquals(16, number(figures, "lp.tank.gallons"), 1e-9);
    assertEquals(
        60,
        number(rig("propane: {tank: {holds: 60 lb, water-gallons: 20 gal}}\n"), "lp.tank.fill"));
    assertTrue(figures.find("lp.tank.full-weight").isEmpty());
    assertTrue(figures.find("lp.tank.requalify").isEmpty());
  }

  private static final String KITCHEN =
      "climate:\n"
          + "  furnace: {input: 20000 Btu/h}\n"
          + "  refrigerator: {kind: absorption, runs-on: [lp, 120 V]}\n"
          + "  range: {burners: 2}\n";

  @Test
  void oneContainerIsTheSmallestAndAllOfThemMakeTheHeat() {
    Figures figures =
        rig(
            "propane: {cylinders: [{name: left, size: 20 lb}, {name: right, size: 30 lb}]}\n"
                + KITCHEN);
    assertEquals(1_077_400, number(figures, "lp.heat"), 1e-6); // 50 x 21,548
    assertEquals(21.548, number(figures, "lp.furnace.life"), 1e-9); // 20 x 21,548 / 20,000
    assertEquals(331.508, number(figures, "lp.refrigerator.life"), 0.001); // 430,960 / 1,300
    assertEquals(61.566, number(figures, "lp.range.life"), 0.001); // 430,960 / 7,000
    assertEquals(
        Set.of("refrigerator.absorption-burner"),
        figures.find("lp.refrigerator.life").orElseThrow().assumes());
  }

  @Test
  void whatDoesNotBurnPropaneHasNoLife() {
    Figures figures =
        rig(
            "propane: {cylinders: {size: 20 lb}}\n"
                + "climate: {refrigerator: {kind: compressor, runs-on: [12 V]},"
                + " furnace: {kind: hydronic, fuel: diesel, input: 50000 Btu/h}}\n"
                + "water: {heater: {kind: storage, holds: 6 gal, fuel: [electric], element: 1400 W}}\n"
                + "electric: {generator: {fuel: gasoline, burns: {full-load: 0.5 gal/h}}}\n");
    assertTrue(figures.find("lp.refrigerator.life").isEmpty());
    assertTrue(figures.find("lp.heater.life").isEmpty());
    assertEquals(Set.of(), figures.missing("lp.heater.life")); // no burner is asked for
    assertEquals(Set.of(), figures.missing("lp.refrigerator.life"));
    assertTrue(figures.find("lp.furnace.life").isEmpty());
    assertTrue(figures.find("lp.generator.life").isEmpty());
    assertTrue(rig("propane: none\n" + KITCHEN).find("lp.furnace.life").isEmpty());
  }

  @Test
  void anAbsorptionRefrigeratorHasABurnerUnlessItIsSaidToRunOnOtherThings() {
    String cylinder = "propane: {cylinders: {size: 20 lb}}\nclimate: {refrigerator: {kind: ";
    assertTrue(rig(cylinder + "absorption}}\n").find("lp.refrigerator.life").isPresent());
    assertTrue(rig(cylinder + "compressor}}\n").find("lp.refrigerator.life").isEmpty());
    assertTrue(
        rig(cylinder + "absorption, runs-on: [120 V]}}\n").find("lp.refrigerator.life").isEmpty());
  }

  @Test
  void aPropaneGeneratorRunsByItsGallonsAtFullLoad() {
    // 42 lb / 4.20 = 10 gal; at 0.8 gal/h 12.5 h
    Figures figures =
        rig(
            "propane: {tank: {holds: 42 lb}}\n"
                + "electric: {generator: {fuel: lp, burns: {half-load: 0.4 gal/h, full-load: 0.8 gal/h}}}\n");
    assertEquals(12.5, number(figures, "lp.generator.life"), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> LpLife.hours(10, 0));
  }

  @Test
  void theScaleReadsTheEmptyWeightAtNothingAndGrowsEvenlyToFull() {
    Figures figures = rig("propane: {cylinders: {size: 20 lb, tare: 17 lb}}\n");
    double[] reads = {17, 22, 27, 32, 37};
    for (int i = 0; i < reads.length; i++) {
      assertEquals(reads[i], number(figures, "lp.cylinder.scale." + i * 25), 1e-9);
    }
    assertEquals(37, number(figures, "lp.cylinder.full-weight"), 1e-9);
    Figures noTare = rig("propane: {cylinders: {size: 20 lb}}\n");
    assertTrue(noTare.find("lp.cylinder.scale.50").isEmpty());
    assertTrue(noTare.find("lp.cylinder.full-weight").isEmpty());
    assertThrows(IllegalArgumentException.class, () -> Cylinders.scalePounds(17, 20, 101));
  }

  @Test
  void aCylinderMadeInApril2014IsDueByTheEndOfApril2026() {
    // 12 years as data, end of the month (CALC on date arithmetic, not the law)
    assertEquals(LocalDate.of(2026, 4, 30), Cylinders.requalifyDay(YearMonth.of(2014, 4), 12));
    assertThrows(
        IllegalArgumentException.class, () -> Cylinders.requalifyDay(YearMonth.of(2014, 4), 0));
    Figure due =
        rig("propane: {cylinders: {size: 20 lb, made: 2014-04}}\n")
            .find("lp.cylinder.requalify")
            .orElseThrow();
    assertEquals("2026-04-30", due.value().data());
    assertEquals(Set.of("cylinder.test-interval"), due.assumes());
  }

  @Test
  void afterATestTheYearsMustBeToldAndAnUnknownMonthHasNoDate() {
    Figures told =
        rig(
            "propane: {cylinders: {size: 20 lb, made: 2010-02, tested: 2021-06, test-interval: 5 y}}\n");
    assertEquals("2026-06-30", told.find("lp.cylinder.requalify").orElseThrow().value().data());
    Figures untold = rig("propane: {cylinders: {size: 20 lb, made: 2010-02, tested: 2021-06}}\n");
    assertEquals(
        Set.of("propane.cylinders.cylinder.test-interval"),
        untold.missing("lp.cylinder.requalify"));
    Figures noMonth = rig("propane: {cylinders: {size: 20 lb}}\n");
    assertEquals(
        Set.of("propane.cylinders.cylinder.made"), noMonth.missing("lp.cylinder.requalify"));
    // only a year: its first month, the safe side
    Figures year = rig("propane: {cylinders: {size: 20 lb, made: 2014}}\n");
    assertEquals("2026-01-31", year.find("lp.cylinder.requalify").orElseThrow().value().data());
  }

  @Test
  void allBurnersTogetherTakeWhatEachTakesOutOfACylinder() {
    // second derivation: the heat of 20 lb, 430,960 Btu, over the hours that each appliance alone
    // makes of it, added up
    Figures figures = rig("propane: {cylinders: {size: 20 lb}}\n" + KITCHEN);
    double sum = 430_960 / number(figures, "lp.range.life"); // the range's second burner
    for (String part : new String[] {"furnace", "refrigerator", "range"}) {
      sum += 430_960 / number(figures, "lp." + part + ".life");
    }
    assertEquals(sum, number(figures, "lp.all-burners"), 1e-6);
    assertEquals(20_000 + 1300 + 2 * 7000, number(figures, "lp.all-burners"), 1e-9);
    // a boiler that warms room and taps burns once
    String boiler =
        "water: {heater: {kind: combination, fuel: lp, burner: 20400 Btu/h}}\n"
            + "climate: {furnace: {kind: combination, input: 20400 Btu/h}}\n";
    Figures one = rig("propane: {cylinders: {size: 20 lb}}\n" + boiler);
    assertEquals(20_400, number(one, "lp.all-burners"), 1e-9);
    assertTrue(rig("propane: none\n" + KITCHEN).find("lp.all-burners").isEmpty());
  }
}
