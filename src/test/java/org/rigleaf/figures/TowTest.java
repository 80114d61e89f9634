package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class TowTest {
  private static final String TRUCK =
      "{combined-rating: 24000 lb, weighs: 7000 lb, payload-label: 3200 lb, people: 400 lb,"
          + " bed-cargo: 150 lb, hitch-hardware: 250 lb, rear-axle: {rating: 6500 lb, weighs: 3500"
          + " lb}, wheelbase: 12 ft, overhang: 4 ft}";

  static final String WEIGHED = "weighed: {axles: 9600 lb, hitch: 2400 lb}\n";

  static final String FIFTH_WHEEL =
      "rig: {name: Rush, kind: fifth wheel, axles: [20 ft, 23 ft]}\nroad: {tow-vehicle: "
          + TRUCK
          + "}\n";

  static final String CAMPER =
      "rig: {name: Teal, kind: truck camper}\n"
          + "water: {fresh: {holds: 30 gal}}\n"
          + "propane: {cylinders: {size: 20 lb}}\n"
          + "road: {weights: {unloaded: 1500 lb, unloaded-includes: nothing}, cargo: {what: tools,"
          + " weight: 100 lb}, tow-vehicle: "
          + TRUCK
          + "}\n";

  private static Figures rig(String yaml) {
    return Figures.of(TestRigs.of(yaml, WEIGHED));
  }

  private static String ball(String vehicle) {
    return "rig: {name: Reed, kind: travel trailer, axles: [12 ft, 15 ft]}\nroad: {tow-vehicle: "
        + vehicle
        + "}\n";
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow(() -> new AssertionError(figures.missing(id))).number();
  }

  @Test
  void aLabelOf1400PoundsLeaves650WithFivePeopleAndTheHitchTakesItsWeightOffThat() {
    // 49 CFR 575.6(a)(5)(i)(4), worked example (seen in a copy): 1400 - 750 = 650 lb; step 6 there:
    // load from a trailer comes off what is left; 650 - 600 = 50
    String vehicle =
        "{payload-label: 1400 lb, people: 750 lb, bed-cargo: 0 lb, hitch-hardware: 0 lb}";
    Figures figures =
        Figures.of(TestRigs.of(ball(vehicle), "weighed: {axles: 5400 lb, hitch: 600 lb}\n"));
    assertEquals(50, number(figures, "tow.payload"), 1e-9);
  }

  @Test
  void theHitchWeighsMoreOnTheRearAxleTheFartherBehindItTheBallIs() {
    assertEquals(4.0 / 3, Tow.lever(12, 4), 1e-12);
    assertEquals(1, Tow.lever(12, 0), 1e-12); // a ball over the axle
    assertThrows(IllegalArgumentException.class, () -> Tow.lever(0, 4));
    // second derivation: about the rear axle the front loses weight x overhang / wheelbase, and the
    // axles together gain the weight
    for (double overhang = 0; overhang < 6; overhang += 0.5) {
      double frontLoses = 900 * overhang / 11.5;
      assertEquals(900, 900 * Tow.lever(11.5, overhang) - frontLoses, 1e-9);
    }
  }

  @Test
  void aBallTrailerTakesItsHitchWeightTimesTheLeverOffTheRearAxle() {
    Figures figures = rig(ball(TRUCK));
    assertEquals(0, number(figures, "tow.payload"), 1e-9); // 3200 - 400 - 150 - 250 - 2400
    // 6500 - 3500 - (2400 + 250) x 16 / 12 = 3000 - 3533.333
    assertEquals(-533.333333, number(figures, "tow.rear-axle"), 1e-6);
    // 24,000 - 7000 - 400 - 150 - 250 - (9600 + 2400)
    assertEquals(4200, number(figures, "tow.combined"), 1e-9);
    assertEquals(Set.of(), figures.find("tow.combined").orElseThrow().assumes());
  }

  @Test
  void thePinOfAFifthWheelRestsOverTheAxle() {
    Figures figures = rig(FIFTH_WHEEL);
    assertEquals(350, number(figures, "tow.rear-axle"), 1e-9); // 3000 - 2650
    Figures noLength = rig(FIFTH_WHEEL.replace(", wheelbase: 12 ft, overhang: 4 ft", ""));
    assertEquals(350, number(noLength, "tow.rear-axle"), 1e-9);
  }

  @Test
  void whatIsUnknownOfTheVehicleIsNamed() {
    String road = "road.tow-vehicle.";
    Figures bare = rig(ball("{name: pickup}"));
    assertEquals(
        Set.of(
            road + "payload-label", road + "people", road + "bed-cargo", road + "hitch-hardware"),
        bare.missing("tow.payload"));
    assertEquals(
        Set.of(
            road + "rear-axle.rating",
            road + "rear-axle.weighs",
            road + "hitch-hardware",
            road + "wheelbase",
            road + "overhang"),
        bare.missing("tow.rear-axle"));
    assertEquals(
        Set.of(
            road + "combined-rating",
            road + "weighs",
            road + "people",
            road + "bed-cargo",
            road + "hitch-hardware"),
        bare.missing("tow.combined"));
    Figures none = rig("rig: {name: Reed, kind: travel trailer}\n");
    assertEquals(Set.of("road.tow-vehicle"), none.missing("tow.payload"));
    assertEquals(Set.of("road.tow-vehicle"), none.missing("tow.rear-axle"));
    assertEquals(Set.of("road.tow-vehicle"), none.missing("tow.combined"));
    Figures said = rig("rig: {name: Reed, kind: travel trailer}\nroad: {tow-vehicle: none}\n");
    assertEquals(Set.of(), said.missing("tow.payload"));
    Figures unweighed = Figures.of(TestRigs.of(ball(TRUCK)));
    assertEquals(Set.of("road.weights.hitch-unloaded"), unweighed.missing("tow.payload"));
  }

  @Test
  void theVehicleOfTheStayWins() {
    String other = TRUCK.replace("payload-label: 3200 lb", "payload-label: 3500 lb");
    Figures figures = rig(ball(TRUCK) + "stay: {tow-vehicle: " + other + "}\n");
    assertEquals(300, number(figures, "tow.payload"), 1e-9);
    Figures only =
        rig(
            "rig: {name: Reed, kind: travel trailer, axles: 12 ft}\nroad: {tow-vehicle: none}\n"
                + "stay: {tow-vehicle: "
                + other
                + "}\n");
    assertEquals(300, number(only, "tow.payload"), 1e-9);
  }

  @Test
  void aTruckCarriesAllOfItsCamperAndTowsNothing() {
    // 3200 - 400 - 150 - 250 - (1500 + 100 + 30 x 8.3 + 20) = 2400 - 1869
    Figures figures = Figures.of(TestRigs.of(CAMPER));
    assertEquals(531, number(figures, "tow.payload"), 1e-9);
    for (String id : List.of("tow.rear-axle", "tow.combined")) {
      assertTrue(figures.find(id).isEmpty(), id);
      assertEquals(Set.of(), figures.missing(id), id);
    }
    Figures noTruck =
        Figures.of(TestRigs.of("rig: {name: Teal, kind: truck camper}\nroad: {cargo: none}\n"));
    assertEquals(Set.of("road.tow-vehicle"), noTruck.missing("tow.payload"));
  }

  @Test
  void aMotorhomeAndWhatItTowsCountTheHitchWeightOnce() {
    // 20,000 - (4237 + 8035) - (3100 - 200); the 200 rest on the axles already (BalanceTest)
    Figures figures = Figures.of(TestRigs.of(BalanceTest.MOTORHOME));
    assertEquals(4828, number(figures, "tow.combined"), 1e-6);
    assertTrue(figures.find("tow.payload").isEmpty());
    assertEquals(Set.of(), figures.missing("tow.payload"));
    assertEquals(Set.of(), figures.missing("tow.rear-axle"));
    String alone =
        BalanceTest.MOTORHOME.replace("  towed: {weighs: 3100 lb, hitch-weight: 200 lb}\n", "");
    assertEquals(Set.of(), Figures.of(TestRigs.of(alone)).missing("tow.combined"));
    assertTrue(Figures.of(TestRigs.of(alone)).find("tow.combined").isEmpty());
    String vague = BalanceTest.MOTORHOME.replace("weighs: 3100 lb, ", "");
    assertEquals(
        Set.of("road.towed.weighs"), Figures.of(TestRigs.of(vague)).missing("tow.combined"));
  }

  @Test
  void aPersonMoreTakesAHundredAndFiftyPoundsOfPayload() {
    Figures figures = rig(ball(TRUCK.replace("people: 400 lb", "people: 550 lb")));
    assertEquals(-150, number(figures, "tow.payload"), 1e-9);
    assertEquals(4050, number(figures, "tow.combined"), 1e-9);
  }

  @Test
  void whatTheCombinedRatingAllowsPutInTheBedUsesItUp() {
    // limiting case: 4,200 lb are left (above), 150 in the bed already
    Figures full = rig(ball(TRUCK.replace("bed-cargo: 150 lb", "bed-cargo: 4350 lb")));
    assertEquals(0, number(full, "tow.combined"), 1e-9);
    Figures more = rig(ball(TRUCK.replace("bed-cargo: 150 lb", "bed-cargo: 4351 lb")));
    assertEquals(-1, number(more, "tow.combined"), 1e-9);
  }
}
