package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class FurnacesTest {
  private static final String RIG =
      """
      rig: {name: Reed, kind: travel trailer, width: 8 ft, inside-height: 6 ft 6 in, body: {starts: 3 ft, length: 20 ft}}
      stay: {outside: {low: %s, high: %s}, inside: 66 degF, place: {latitude: 44, elevation: %s}}
      climate: {furnace: {input: 20000 Btu/h, blower: 5 A}}
      """;

  private static double number(String id, String low, String high, String elevation) {
    Figures figures = Figures.of(TestRigs.of(RIG.formatted(low, high, elevation)));
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void aFurnaceHoldsDownToWhereTheLossIsAllItGives() {
    assertEquals(16, Furnaces.heldFahrenheit(66, 10_000, 200), 1e-9); // 50 degrees at 200 Btu/h
    String rig =
        "rig: {name: Reed, kind: class b, length: 20 ft, width: 7 ft}\n"
            + "stay: {inside: 66 degF, place: {elevation: 0 ft}}\n"
            + "climate: {furnace: {input: 9000 Btu/h}}\n";
    Figures figures = Figures.of(TestRigs.of(rig));
    double outside = figures.find("furnace.holds").orElseThrow().number();
    double loss = figures.find("shell.loss").orElseThrow().number();
    double output = figures.find("furnace.output").orElseThrow().number();
    assertEquals(output, loss * (66 - outside), 1e-6); // in balance there
    assertTrue(outside > 0 && outside < 32, "a cold that no limit cuts: " + outside);
    Figures strong = Figures.of(TestRigs.of(rig.replace("9000", "60000")));
    assertEquals(0, strong.find("furnace.holds").orElseThrow().number(), 1e-9); // no limit given
    String limit = "limits: {lowest-temperature: 20 degF}\n";
    Figures limited = Figures.of(TestRigs.of(rig.replace("9000", "60000") + limit));
    assertEquals(20, limited.find("furnace.holds").orElseThrow().number(), 1e-9);
  }

  @Test
  void wallsAndWindowsLoseWhatAHeatLossSheetPrints() {
    // popularenergy.org/figuring_heat_loss.html: 420 ft2 of wall at U 0.055, 50 F: 1,155 Btu/h;
    // 60 ft2 of windows at U 0.251: 753 Btu/h (SEEN)
    assertEquals(1155, 50 * Furnaces.wallLoss(420, 0, 1, 1 / 0.055), 0.5);
    assertEquals(753, 50 * Furnaces.wallLoss(60, 1, 1 / 0.251, 7), 0.5);
    // both in one wall of 480 ft2 with 12.5 % of windows
    assertEquals(1155 + 753, 50 * Furnaces.wallLoss(480, 0.125, 1 / 0.251, 1 / 0.055), 0.5);
    // studylib.net/doc/8966346: 6 ft2 of R 0.90 at 40 F: 266.7 Btu/h unrounded (SEEN)
    assertEquals(266.7, 40 * Furnaces.wallLoss(6, 1, 0.90, 7), 0.05);
  }

  @Test
  void airTakes0Point018BtuACubicFootAndDegree() {
    // density 0.075 lb/ft3 times 0.24 Btu/lb F is 0.018: from memory, the usual sheet's factor
    assertEquals(0.075 * 0.24 * 1040 * 1.5, Furnaces.airLoss(1040, 1.5), 1e-9);
  }

  @Test
  void aRigOf20By8By6AndAHalfFeetLosesByHand() {
    // walls 2 x 28 x 6.5 = 364 ft2: 43.68 of windows at R 1, 320.32 at R 7 = 45.76;
    // roof 160 / 10 = 16, floor 160 / 8 = 20, air 0.018 x 1040 = 18.72: 144.16 Btu/h a degree
    assertEquals(144.16, number("shell.loss", "38 degF", "70 degF", "0 ft"), 0.005);
  }

  @Test
  void theDutyIsTheMeanLossOverTheOutput() {
    // never warmer than inside: mean of low and high 48, 18 below 66: 144.16 x 18 / 16,000
    assertEquals(
        100 * 144.16 * 18 / 16_000, number("furnace.duty", "38 degF", "58 degF", "0 ft"), 0.001);
    assertEquals(
        100 * 144.16 * 28 / 16_000,
        number("furnace.duty.worst", "38 degF", "58 degF", "0 ft"),
        0.001);
  }

  @Test
  void anAfternoonWarmerThanInsideGivesNothingBack() {
    double mean = number("furnace.duty", "38 degF", "94 degF", "0 ft"); // mean of the day is 66
    assertTrue(mean > 0, "the nights are cold all the same");
    assertEquals(0, number("furnace.duty", "66 degF", "94 degF", "0 ft"), 1e-9);
    assertEquals(0, number("furnace.duty.worst", "70 degF", "94 degF", "0 ft"), 1e-9);
  }

  @Test
  void at7000FeetAGasBurnerGives72PerCentByTheReadingNamed() {
    // thefurnaceoutlet.com, choose the right BTU for mountain homes, quick reference (SEEN): 88 %
    // of
    // the rating at 3,000 ft, 84 at 4,000, 80 at 5,000, 70 at 7,500, 60 at 10,000
    double[][] printed = {{3000, 88}, {4000, 84}, {5000, 80}, {7500, 70}, {10_000, 60}};
    for (double[] row : printed) {
      assertEquals(row[1], 100 * Furnaces.thinAirShare(row[0]), 1e-9);
    }
    // NFPA 54 11.1.2, 4 % for each 1,000 ft above sea level: 72 % (the other reading: 80 %)
    assertEquals(0.72, Furnaces.thinAirShare(7000), 1e-9);
    assertEquals(1, Furnaces.thinAirShare(2000), 1e-9);
    assertEquals(0.91996, Furnaces.thinAirShare(2001), 1e-9);
    assertEquals(0, Furnaces.thinAirShare(30_000), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> Furnaces.thinAirShare(-1));
    assertEquals(16_000 * 0.72, number("furnace.output", "38 degF", "58 degF", "7000 ft"), 0.01);
    assertEquals(16_000, number("furnace.output", "38 degF", "58 degF", "2000 ft"), 0.01);
  }

  @Test
  void aDieselHeaterKnowsNoSuchRuleAndAGivenOutputWins() {
    String diesel =
        RIG.formatted("38 degF", "58 degF", "7000 ft")
            .replace("input: 20000 Btu/h", "fuel: diesel, input: 9000 Btu/h, output: 7500 Btu/h");
    Figures figures = Figures.of(TestRigs.of(diesel));
    assertEquals(7500, figures.find("furnace.output").orElseThrow().number(), 1e-9);
    assertEquals(
        100 * 144.16 * 28 / 7500, figures.find("furnace.duty.worst").orElseThrow().number(), 0.01);
  }

  @Test
  void betterWallsLoseLess() {
    String good =
        RIG.formatted("38 degF", "58 degF", "0 ft")
            + "body: {shell: {walls: 14, roof: 20, floor: 16, windows: 2, window-share: 0, air-changes: 0}}\n";
    // walls 364 / 14 = 26, roof 8, floor 10
    assertEquals(44, Figures.of(TestRigs.of(good)).find("shell.loss").orElseThrow().number(), 1e-9);
  }
}
