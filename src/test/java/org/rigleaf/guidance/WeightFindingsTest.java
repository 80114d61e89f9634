package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Rig;

/** What is said of weights beyond a rating, and what is not said up to it. */
class WeightFindingsTest {
  private static final String KIT =
      "safety.|kit.|road.breakaway|propane"; // findings of other things, always there here

  private static List<Finding> findings(String profile, String log) {
    Rig rig = TestRigs.of(profile, log);
    Figures figures = Figures.of(rig);
    Wording wording = Wording.english();
    Guide guide = new Guide(rig, figures, wording, Map.of());
    return Findings.of(rig, figures, wording, guide).stream()
        .filter(f -> !f.about().matches("(" + KIT + ").*"))
        .toList();
  }

  private static List<String> told(String kind, String road, String weighed) {
    String rig = "rig: {name: Reed, kind: " + kind + ", axles: [12 ft, 15 ft]}\n";
    return findings(rig + "road: {" + road + "}\n", "weighed: {" + weighed + "}\n").stream()
        .map(f -> f.id() + " " + f.severity() + " " + f.text().plain())
        .toList();
  }

  private static void says(List<String> told, String finding, String words) {
    assertEquals(1, told.size(), told.toString());
    assertTrue(told.get(0).startsWith(finding + " "), told.toString());
    assertTrue(told.get(0).contains(words), told.toString());
  }

  @Test
  void aRigWithinItsRatingsIsNotTalkedAbout() {
    String road =
        "weights: {axle-ratings: 2700 lb, cargo-label: 500 lb}, cargo: {what: tools, weight: 500"
            + " lb, at: inside 9 ft}, tires: {axle: both, count: 4, carries: 1350 lb}";
    assertEquals(List.of(), told("travel trailer", road, "axles: 5400 lb, hitch: 600 lb"));
  }

  @Test
  void aPoundTooMuchIsAFindingWithItsFigures() {
    String cargo = "weights: {cargo-label: 499 lb}, cargo: {what: tools, weight: 500 lb}";
    says(
        told("travel trailer", cargo, "axles: 5400 lb, hitch: 600 lb"),
        "cargo-too-heavy safety",
        "The load is 1 lb more than the 499 lb this rig may carry.");
    says(
        told(
            "travel trailer",
            "weights: {axle-ratings: [2700 lb, 2699 lb]}",
            "axles: 5400 lb, hitch: 600 lb"),
        "axle-overloaded safety",
        "Too much on axle 2: it carries 2,700 lb, 1 lb more than it may.");
    says(
        told(
            "travel trailer",
            "tires: [{axle: front, count: 2, carries: 1349 lb}, {axle: rear, count: 2, carries: 1350 lb}]",
            "axles: 5400 lb, hitch: 600 lb"),
        "tires-overloaded safety",
        "Tires, axle 1: the load is 2 lb more than they may carry.");
  }

  @ParameterizedTest
  @CsvSource({
    "travel trailer, 599, true",
    "travel trailer, 600, false",
    "travel trailer, 952, false",
    "travel trailer, 953, true",
    "fifth wheel, 952, true",
    "fifth wheel, 953, false",
    "fifth wheel, 1800, false",
    "fifth wheel, 1801, true"
  })
  void theHitchWants10To15PerCentOnABallAnd15To25OnAPin(String kind, int hitch, boolean told) {
    // axles 5400: 600 of 6000 is 10 %; 952.94 of 6352.94 is 15 %; 1800 of 7200 is 25 %
    List<String> found = told(kind, "cargo: none", "axles: 5400 lb, hitch: " + hitch + " lb");
    if (told) {
      String finding = kind.equals("fifth wheel") ? "hitch-share-pin" : "hitch-share-ball";
      says(found, finding + " attention", " % of the trailer's weight");
    } else {
      assertEquals(List.of(), found);
    }
  }

  @Test
  void aTowVehicleBeyondItsRatingsIsAFinding() {
    String vehicle =
        "tow-vehicle: {payload-label: PAY lb, people: 300 lb, bed-cargo: 0 lb, hitch-hardware: 50"
            + " lb, combined-rating: SUM lb, weighs: 5000 lb, rear-axle: {rating: REAR lb, weighs:"
            + " 2000 lb}, wheelbase: 12 ft, overhang: 6 ft}";
    String weighed = "axles: 5400 lb, hitch: 600 lb";
    // 300 + 50 + 600; 2000 + 650 x 1.5; 5000 + 350 + 6000
    String enough = vehicle.replace("PAY", "950").replace("REAR", "2975").replace("SUM", "11350");
    assertEquals(List.of(), told("travel trailer", enough, weighed));
    says(
        told("travel trailer", enough.replace("label: 950", "label: 949"), weighed),
        "payload-too-small safety",
        "1 lb over the payload label");
    says(
        told("travel trailer", enough.replace("2975", "2970"), weighed),
        "rear-axle-overloaded safety",
        "5 lb too much on the rear axle");
    says(
        told("travel trailer", enough.replace("11350", "11150"), weighed),
        "combined-too-heavy safety",
        "200 lb over the combined rating");
  }

  @Test
  void aLabelThatDisagreesWithTheSumIsAFinding() {
    says(
        told(
            "travel trailer",
            "weights: {gvwr: 6000 lb, unloaded: 5000 lb, cargo-label: 1200 lb}",
            "axles: 5400 lb, hitch: 600 lb"),
        "cargo-label-conflict attention",
        "carry 1,200 lb, but the GVWR less the weight unloaded is 1,000 lb.");
  }

  @Test
  void theWorksheetIsPrintedOnlyWhereTheVehicleIsUnknown() {
    assertTrue(wanted("travel trailer", "cargo: none", "tow-vehicle-wanted"));
    assertTrue(wanted("travel trailer", "tow-vehicle: none", "tow-vehicle-wanted"));
    assertFalse(wanted("travel trailer", "tow-vehicle: {weighs: 5000 lb}", "tow-vehicle-wanted"));
    assertFalse(wanted("truck camper", "cargo: none", "tow-vehicle-wanted"));
    assertTrue(wanted("truck camper", "cargo: none", "truck-wanted"));
    assertFalse(wanted("truck camper", "tow-vehicle: {weighs: 5000 lb}", "truck-wanted"));
    assertFalse(wanted("class c", "cargo: none", "truck-wanted"));
    assertFalse(wanted("class c", "cargo: none", "tow-vehicle-wanted"));
    assertFalse(
        Traits.of(
                TestRigs.of(
                    "rig: {name: Reed, kind: fifth wheel}\nstay: {tow-vehicle: {weighs: 5000 lb}}\n"))
            .contains("tow-vehicle-wanted"));
  }

  private static boolean wanted(String kind, String road, String trait) {
    return Traits.of(TestRigs.of("rig: {name: Reed, kind: " + kind + "}\nroad: {" + road + "}\n"))
        .contains(trait);
  }
}
