package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;

/** Posts, adapters and cords, against the electrical code's tables. */
class ShoreTest {
  private static final String RIG = "rig: {name: T, kind: travel trailer, length: 20 ft}\n";

  private static Figures rig(String electric) {
    return Figures.of(TestRigs.of(RIG + "electric: {" + electric + "}\n"));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow(() -> new AssertionError("no " + id)).number();
  }

  // receptacle ratings times 120 V (CALC; receptacles of NEC 551.71, SEEN-2);
  // exact, since it is a product of whole numbers
  @ParameterizedTest(name = "a {0} A service gives {1} W, {2} W for hours")
  @CsvSource({"15,1800,1440", "20,2400,1920", "30,3600,2880", "50,12000,9600"})
  void aServiceGivesItsRatingAndEightyPercentForHours(int amps, double watts, double steady) {
    Figures figures = rig("shore: {service: " + amps + " A}");
    assertEquals(watts, number(figures, "shore." + amps + ".power"));
    assertEquals(steady, number(figures, "shore." + amps + ".steady"), 1e-9);
  }

  // one leg feeds both (CALC): 3,600 VA and not 7,200
  @Test
  void aFiftyAmpRigOnAThirtyAmpAdapterHas3600Watts() {
    Figures figures = rig("shore: {service: 50 A}, adapters: [{from-post: 30 A, to-rig: 50 A}]");
    assertEquals(3600, number(figures, "shore.30.power"));
    assertEquals(12000, number(figures, "shore.50.power"));
  }

  // an adapter changes the shape, never the capacity: 30 A x 120 V behind a 50 A post
  @Test
  void aThirtyAmpRigOnAFiftyAmpPostStillHas3600Watts() {
    Figures figures = rig("shore: {service: 30 A}, adapters: [{from-post: 50 A, to-rig: 30 A}]");
    assertEquals(3600, number(figures, "shore.50.power"));
  }

  @Test
  void anAdapterThatDoesNotFitTheInletGivesNoFigure() {
    Figures figures = rig("shore: {service: 30 A}, adapters: [{from-post: 15 A, to-rig: 50 A}]");
    assertTrue(figures.find("shore.15.power").isEmpty());
  }

  @Test
  void anUnknownServiceIsMissingNotZero() {
    Figures figures = rig("shore: {inlet: twist lock}");
    assertTrue(figures.all().stream().noneMatch(f -> f.id().startsWith("shore.")));
    assertTrue(figures.wanted().containsKey("electric.shore.service"));
  }

  // NEC Chapter 9 Table 8, solid, 75 degC (SEEN-2); 0.3 % covers the
  // rounding of the printed table
  @ParameterizedTest(name = "{0} AWG solid has {1} ohms a 1,000 ft")
  @CsvSource({"16,4.89", "14,3.07", "12,1.93", "8,0.764"})
  void solidWireHasTheOhmsOfTheCodesTable(int gauge, double ohms) {
    assertEquals(ohms, Shore.solidOhmsPer1000Ft(gauge), 0.003 * ohms);
  }

  // the same table, stranded; 2.5 %: its ratio to solid is 1.020 to 1.023
  @ParameterizedTest(name = "{0} AWG stranded has {1} ohms a 1,000 ft")
  @CsvSource({
    "16,4.99",
    "14,3.14",
    "12,1.98",
    "8,0.778",
    "6,0.491",
    "4,0.308",
    "2,0.194",
    "0,0.122",
    "-1,0.0967",
    "-3,0.0608"
  })
  void strandedWireHasTheOhmsOfTheCodesTable(int gauge, double ohms) {
    assertEquals(ohms, Shore.strandedOhmsPer1000Ft(gauge), 0.025 * ohms);
  }

  // voltdropcalc.com, k-factor-vs-table-8: 12 AWG solid, 20 A, 100 ft: 7.72 V (SEEN);
  // 0.3 % as for the table it uses
  @Test
  void aHundredFeetOfTwelveGaugeLose772VoltsAtTwentyAmps() {
    assertEquals(7.72, Shore.dropVolts(20, 100, Shore.solidOhmsPer1000Ft(12)), 0.003 * 7.72);
  }

  // 8 AWG stranded, 30 A, 50 ft: 2.33 V = 1.95 % (CALC on Table 8);
  // 0.5 %: the ratio 1.02 against the table's 0.778/0.764 = 1.018, and its rounding
  @Test
  void fiftyFeetOfEightGaugeLose195PercentAtThirtyAmps() {
    Figures figures = rig("shore: {service: 30 A, cord: {length: 50 ft, gauge: 8 AWG}}");
    assertEquals(1.95, number(figures, "cord.30.drop"), 0.005 * 1.95);
    assertEquals(120 - 2.33, number(figures, "cord.30.left-120"), 0.01);
    assertEquals(114 - 2.33, number(figures, "cord.30.left-114"), 0.01);
  }

  // worked from Table 8 stranded: 2 x 30 A x (25 x 0.778 + 25 x 3.14... gauge 14) / 1000
  // = 60 x (19.45 + 78.5) / 1000 = 5.877 V = 4.8975 %; 1 %: two rows of the table, each rounded
  @Test
  void anExtensionCountsWithItsOwnGaugeAndLength() {
    Figures figures =
        rig(
            "shore: {service: 30 A, cord: {length: 25 ft, gauge: 8 AWG},"
                + " extension: {length: 25 ft, gauge: 14 AWG}}");
    assertEquals(4.8975, number(figures, "cord.30.drop"), 0.01 * 4.8975);
  }

  @Test
  void aFiftyAmpCordIsReckonedWithOneLegAloneLoaded() {
    // Table 8 stranded, 6 AWG: 2 x 50 A x 30 ft x 0.491 / 1000 = 1.473 V = 1.2275 % of 120 V
    Figures figures = rig("shore: {service: 50 A, cord: {length: 30 ft, gauge: 6 AWG}}");
    assertEquals(1.2275, number(figures, "cord.50.drop"), 0.025 * 1.2275);
  }

  @Test
  void aCordWithoutLengthHasNoDropAndSaysWhatItLacks() {
    Figures figures = rig("shore: {service: 30 A, cord: {gauge: 10 AWG}}");
    assertTrue(figures.find("cord.30.drop").isEmpty());
    assertEquals(Set.of("electric.shore.cord.length"), figures.missing("cord.30.drop"));
    assertEquals(Set.of("electric.shore.cord.length"), figures.missing("cord.30.left-120"));
  }

  // 40 AWG, where ASTM B258 ends: 0.005 in x 92^(-4/39) = 0.0031445 in across, 5.0104e-9 m2;
  // 1.7241e-8 x 304.8 / 5.0104e-9 = 1048.8 ohm at 20 degC (tables print 1049, from memory),
  // x (1 + 0.00393 x 55) = 1275.5
  @Test
  void theFinestWireOfTheStandardHas1275Ohms() {
    assertEquals(1275.5, Shore.solidOhmsPer1000Ft(40), 0.3);
  }

  @Test
  void noCurrentOrNoLengthLosesNothing() {
    assertEquals(0, Shore.dropVolts(0, 100, 1));
    assertEquals(0, Shore.dropVolts(30, 0, 1));
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Shore.dropVolts(-1, 10, 1));
    assertThrows(IllegalArgumentException.class, () -> Shore.dropVolts(1, -10, 1));
    assertThrows(IllegalArgumentException.class, () -> Shore.solidOhmsPer1000Ft(41));
  }

  // Sedge: 30 ft of 10 AWG. Cross-section by GNU units' AWG function: 10 AWG = 2.588 mm, so
  // A = 5.2612 mm2; R = 1.7241e-8 x 1.21615 x 304.8 / 5.2612e-6 = 1.2147 ohm; stranded x 1.02 =
  // 1.2390; drop = 2 x 30 x 30 x 1.2390 / 1000 = 2.2302 V = 1.8585 %. Half of it at 15 A.
  // Cattail: 28 ft: 28/30 of Sedge's, 1.7346 %. 0.01 %: rounding of the working.
  @ParameterizedTest(name = "{0}: {1} = {2}")
  @CsvSource({
    "sedge,shore.30.power,3600", "sedge,shore.30.steady,2880",
    "sedge,shore.15.power,1800", "sedge,shore.15.steady,1440",
    "sedge,cord.30.drop,1.8585", "sedge,cord.15.drop,0.92927",
    "sedge,cord.30.left-120,117.7698", "sedge,cord.30.left-114,111.7698",
    "cattail,shore.30.power,3600", "cattail,cord.30.drop,1.7346",
    "cattail,cord.15.left-114,112.9592"
  })
  void theDemoRigsHaveTheseFigures(String name, String id, double value) {
    assertEquals(value, number(Figures.of(TestRigs.demo(name)), id), 1e-4 * value);
  }

  // A code question with its answer (ecmweb.com, code-calculations-2, as quoted): a park of 3 sites
  // of 50 A, 30 of 30 A and 9 of 20 A has 158,400 VA connected, by NEC 551.73(A) at 9,600, 3,600
  // and
  // 2,400 VA a site. A 50 A site counts there with 80 % of its 12,000.
  @Test
  void aParkOf42SitesHasTheLoadThatACodeQuestionPrints() {
    double steady = number(rig("shore: {service: 50 A}"), "shore.50.steady");
    double thirty = number(rig("shore: {service: 30 A}"), "shore.30.power");
    double twenty = number(rig("shore: {service: 20 A}"), "shore.20.power");
    assertEquals(158_400, 3 * steady + 30 * thirty + 9 * twenty, 1e-6);
    assertEquals(9600, steady, 1e-9);
  }
}
