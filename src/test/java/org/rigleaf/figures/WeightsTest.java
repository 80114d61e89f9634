package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class WeightsTest {
  private static final String TRAILER =
      """
      rig: {name: Reed, kind: travel trailer}
      water: {fresh: {holds: 42 gal}, heater: {kind: storage, holds: 6 gal}}
      waste: {black: {holds: 30 gal}, gray: {holds: 40 gal}}
      """;

  private static Figures rig(String yaml) {
    return Figures.of(TestRigs.of(yaml));
  }

  private static Figures trailer(String road) {
    return rig(TRAILER + "road: {" + road + "}\n");
  }

  private static Figures motorhome(String more) {
    return rig("rig: {name: Rush, kind: class c}\n" + more);
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow(() -> new AssertionError(figures.missing(id))).number();
  }

  @Test
  void aLabelOf1400PoundsLeaves650WithFivePeople() {
    // 49 CFR 575.6(a)(5)(i)(4), its worked example (seen in a copy): 1400 - 750 (5 x 150) = 650 lb
    assertEquals(650, Weights.marginPounds(1400, 5 * 150), 1e-9);
    Figures figures =
        motorhome("stay: {people: 5}\nroad: {weights: {cargo-label: 1400 lb}, cargo: none}\n");
    assertEquals(650, number(figures, "weight.margin"), 1e-9);
    assertEquals(Set.of("person.weight"), figures.find("weight.margin").orElseThrow().assumes());
  }

  @Test
  void fiftyGallonsWeigh415PoundsAsOnALabel() {
    // 49 CFR 571.110 S9.3.4(e): 8.3 lb a gallon; 50 x 8.3 = 415 (check value of the label sum)
    Figures figures =
        rig("rig: {name: Reed, kind: fifth wheel}\nwater: {fresh: {holds: 50 gal}}\n");
    assertEquals(415, number(figures, "weight.water"), 1e-9);
    // its other column, 1 kg a liter: 50 x 3.785411784 L / 0.45359237 kg = 417.27 lb; the two
    // columns are half a per cent apart by what the rule prints
    assertEquals(417.27, number(figures, "weight.water"), 0.0055 * 417.27);
  }

  @Test
  void allTanksAreCountedFullACassetteToo() {
    String tanks =
        "rig: {name: Reed, kind: folding trailer}\n"
            + "water: {fresh: {holds: 20 gal}, heater: {kind: storage, holds: 6 gal}}\n"
            + "waste: {gray: [{name: a, holds: 10 gal}, {name: b, holds: 14 gal}], toilet: ";
    // 20 + 6 + 10 + 14 + 5 = 55 gal x 8.3 = 456.5; without the toilet's 5 gal 415
    assertEquals(
        456.5, number(rig(tanks + "{kind: cassette, holds: 5 gal}}\n"), "weight.water"), 1e-9);
    assertEquals(
        415, number(rig(tanks + "{kind: portable, holds: 5 gal}}\n"), "weight.water"), 1e-9);
    assertEquals(415, number(rig(tanks + "{kind: vacuum, holds: 5 gal}}\n"), "weight.water"), 1e-9);
    Figures unknown = rig(tanks + "{kind: cassette}}\n");
    assertEquals(Set.of("waste.toilet.holds"), unknown.missing("weight.water"));
    Figures dry = rig("rig: {name: Reed, kind: folding trailer}\n");
    assertTrue(dry.find("weight.water").isEmpty());
    assertEquals(Set.of(), dry.missing("weight.water"));
  }

  @Test
  void theLabelWinsOverGvwrLessUnloaded() {
    assertEquals(
        1900, number(trailer("weights: {gvwr: 7000 lb, unloaded: 5100 lb}"), "weight.cargo"), 1e-9);
    assertEquals(
        1850,
        number(
            trailer("weights: {gvwr: 7000 lb, unloaded: 5100 lb, cargo-label: 1850 lb}"),
            "weight.cargo"),
        1e-9);
    assertEquals(
        Set.of("road.weights.unloaded"),
        trailer("weights: {gvwr: 7000 lb}").missing("weight.cargo"));
    assertEquals(
        Set.of("road.weights.gvwr", "road.weights.unloaded"), rig(TRAILER).missing("weight.cargo"));
  }

  @Test
  void propaneComesOffOnlyIfTheUnloadedWeightLeavesItOut() {
    String gas = TRAILER + "propane: {cylinders: {count: 2, size: 20 lb}}\nroad:\n  weights: ";
    String weights = "{gvwr: 7000 lb, unloaded: 5100 lb";
    // 7000 - 5100 = 1900; two full cylinders of 20 lb make 1860
    assertEquals(1900, number(rig(gas + weights + "}\n"), "weight.cargo"), 1e-9);
    assertEquals(
        1900, number(rig(gas + weights + ", unloaded-includes: [lp]}\n"), "weight.cargo"), 1e-9);
    String nothing = ", unloaded-includes: nothing";
    assertEquals(1860, number(rig(gas + weights + nothing + "}\n"), "weight.cargo"), 1e-9);
    Figures label = rig(gas + weights + nothing + ", cargo-label: 1800 lb}\n  cargo: none\n");
    assertEquals(1800, number(label, "weight.cargo"), 1e-9);
    // and is no load a second time: 1800 - 42 x 8.3 - 6 x 8.3 = 1401.6
    assertEquals(1401.6, number(label, "weight.margin"), 1e-9);
    String tank = gas.replace("cylinders: {count: 2, size: 20 lb}", "tank: {holds: 41 lb}");
    assertEquals(1859, number(rig(tank + weights + nothing + "}\n"), "weight.cargo"), 1e-9);
  }

  @Test
  void theTwoAxlesOfAMotorhomeMakeItsUnloadedWeightUnlessItIsTold() {
    String axles = "front: {unloaded: 3900 lb}, rear: {unloaded: 7600 lb}";
    String weights = "road: {weights: {gvwr: 14500 lb, ";
    assertEquals(
        3000, number(motorhome(weights + axles + "}}\n"), "weight.cargo"), 1e-9); // less 11,500
    assertEquals(
        3100,
        number(motorhome(weights + axles + ", unloaded: 11400 lb}}\n"), "weight.cargo"),
        1e-9);
    assertEquals(
        Set.of("road.weights.unloaded"),
        motorhome(weights + "front: {unloaded: 3900 lb}}}\n").missing("weight.cargo"));
    assertEquals(
        Set.of("road.weights.unloaded"),
        motorhome(weights + "rear: {unloaded: 7600 lb}}}\n").missing("weight.cargo"));
  }

  @Test
  void listedCargoAndTheWaterThatTravelsComeOffTheRating() {
    String cargo =
        "weights: {cargo-label: 1500 lb}, cargo: [{what: bedding, weight: 240 lb},"
            + " {what: tools, weight: 90 lb}]";
    // unsaid: fresh and heater full, waste empty: 1500 - 330 - (42 + 6) x 8.3 = 771.6
    assertEquals(771.6, number(trailer(cargo), "weight.margin"), 1e-9);
    // a third of the fresh water: 1500 - 330 - 14 x 8.3 - 49.8 = 1004
    String third = cargo + ", travels-with: {fresh: 1/3, black: empty, gray: empty}";
    assertEquals(1004, number(trailer(third), "weight.margin"), 1e-9);
    // half of black, all of gray: 1500 - 330 - (21 x 0 + 15 + 40 + 6) x 8.3 = 663.7
    String waste = cargo + ", travels-with: {fresh: empty, black: 0.5, gray: full}";
    assertEquals(663.7, number(trailer(waste), "weight.margin"), 1e-9);
    assertFalse(
        trailer(waste).find("weight.margin").orElseThrow().formula().contains("fresh"),
        "an empty tank is no load");
    assertEquals(Set.of(), trailer(waste).find("weight.margin").orElseThrow().assumes());
  }

  @Test
  void aCassetteTravelsWithTheBlackShareAndAPortableToiletNot() {
    String full =
        "water: {fresh: none}\nroad: {weights: {cargo-label: 1000 lb}, cargo: none,"
            + " travels-with: {black: full}}\nwaste: {toilet: {kind: KIND, holds: 10 gal}}\n";
    String rig = "rig: {name: Reed, kind: folding trailer}\n" + full;
    assertEquals(917, number(rig(rig.replace("KIND", "cassette")), "weight.margin"), 1e-9);
    assertEquals(1000, number(rig(rig.replace("KIND", "portable")), "weight.margin"), 1e-9);
  }

  @Test
  void withoutACargoListThereIsNoMarginUnlessTheListIsSaidToBeEmpty() {
    assertEquals(
        Set.of("road.cargo"), trailer("weights: {cargo-label: 1500 lb}").missing("weight.margin"));
    // 1500 - 48 x 8.3
    assertEquals(
        1101.6,
        number(trailer("weights: {cargo-label: 1500 lb}, cargo: none"), "weight.margin"),
        1e-9);
    assertEquals(
        Set.of("road.cargo.tools.weight"),
        trailer("weights: {cargo-label: 1500 lb}, cargo: {what: tools}").missing("weight.margin"));
  }

  @Test
  void aMotorhomeCountsPeopleAndTheWeightOnItsHitch() {
    String road = "road: {weights: {cargo-label: 2000 lb}, cargo: none, towed: ";
    // two people unless told: 2000 - 300 - 250
    Figures two = motorhome(road + "{hitch-weight: 250 lb}}\n");
    assertEquals(1450, number(two, "weight.margin"), 1e-9);
    assertEquals(
        Set.of("stay.people", "person.weight"), two.find("weight.margin").orElseThrow().assumes());
    Figures four = motorhome("stay: {people: 4}\n" + road + "{hitch-weight: 0 lb}}\n");
    assertEquals(1400, number(four, "weight.margin"), 1e-9);
    assertEquals(
        Set.of("road.towed.hitch-weight"),
        motorhome(road + "{weighs: 3000 lb}}\n").missing("weight.margin"));
    // what a trailer's people weigh is the tow vehicle's load: 1500 - 48 x 8.3
    Figures towed =
        rig(TRAILER + "stay: {people: 4}\nroad: {weights: {cargo-label: 1500 lb}, cargo: none}\n");
    assertEquals(1101.6, number(towed, "weight.margin"), 1e-9);
  }

  @Test
  void aProfileInKilogramsAndLitersGivesTheSame() {
    // 680 kg = 680 / 0.45359237 lb; 159 L = 159 / 3.785411784 gal (exact definitions)
    Figures metric =
        rig(
            "rig: {name: Reed, kind: travel trailer}\nwater: {fresh: {holds: 159 L}}\n"
                + "road: {weights: {gvwr: 3000 kg, unloaded: 2320 kg}, cargo: {what: tools, weight:"
                + " 100 kg}}\n");
    assertEquals(680 / 0.45359237, number(metric, "weight.cargo"), 1e-6);
    assertEquals(159 / 3.785411784 * 8.3, number(metric, "weight.water"), 1e-6);
    assertEquals(580 / 0.45359237 - 159 / 3.785411784 * 8.3, number(metric, "weight.margin"), 1e-6);
  }

  @Test
  void labelAndSumAreInConflictBeyondBothBoundsOfTheLabelRule() {
    // 72 FR 68442 (seen): 100 lb, or 1.5 % of GVWR: 90 lb of 6000, 300 lb of 20,000
    assertFalse(Weights.inConflict(1100, 1000, 6000));
    assertTrue(Weights.inConflict(1101, 1000, 6000));
    assertTrue(Weights.inConflict(899, 1000, 6000));
    assertFalse(Weights.inConflict(3300, 3000, 20_000));
    assertTrue(Weights.inConflict(3301, 3000, 20_000));
    assertFalse(Weights.inConflict(Double.NaN, 3000, 20_000));
    assertFalse(Weights.inConflict(2000, 3000, Double.NaN));
  }

  @Test
  void theConflictTellsTheSum() {
    String weights = "rig: {name: Reed, kind: fifth wheel}\nroad: {weights: {gvwr: 6000 lb, ";
    assertEquals(
        1000,
        Weights.conflictingSum(TestRigs.of(weights + "unloaded: 5000 lb, cargo-label: 1200 lb}}\n"))
            .orElseThrow(),
        1e-9);
    assertTrue(
        Weights.conflictingSum(TestRigs.of(weights + "unloaded: 5000 lb, cargo-label: 1050 lb}}\n"))
            .isEmpty());
    assertTrue(Weights.conflictingSum(TestRigs.of(weights + "cargo-label: 1200 lb}}\n")).isEmpty());
  }
}
