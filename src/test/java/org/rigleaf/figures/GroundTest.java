package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class GroundTest {
  private static Figures rig(String kind, String more) {
    return Figures.of(TestRigs.of("rig: {name: Reed, kind: " + kind + more));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void aTrackOf72InchesWantsOneAndAQuarterInchesAtOneDegree() {
    // by trigonometry (CALC, to 0.01): 72 in at 0.5, 1, 2; 96 in at 1.5
    assertEquals(0.63, Ground.liftInches(6, 0.5), 0.005);
    assertEquals(1.26, Ground.liftInches(6, 1), 0.005);
    assertEquals(2.51, Ground.liftInches(6, 2), 0.005);
    assertEquals(2.51, Ground.liftInches(8, 1.5), 0.005);
  }

  @Test
  void aFootRises0Point2095InchesADegreeAndAQuarterInchAt1Point193() {
    assertEquals(0.2095, Ground.liftInches(1, 1), 0.00005);
    assertEquals(0.4190, Ground.liftInches(1, 2), 0.00005);
    assertEquals(0.6289, Ground.liftInches(1, 3), 0.00005);
    assertEquals(0.25, Ground.liftInches(1, 1.193), 0.0002); // 1:48 (SEEN), 1.193 rounded
  }

  @Test
  void theLiftBringsTheSpanBackToTheSlopeItCameFrom() {
    // second derivation: the angle whose rise over run is the lift
    for (double degrees = 0.5; degrees <= 6; degrees += 0.5) {
      double lift = Ground.liftInches(7.5, degrees);
      assertEquals(degrees, Math.toDegrees(Math.atan2(lift, 7.5 * 12)), 1e-9);
    }
    assertThrows(IllegalArgumentException.class, () -> Ground.liftInches(6, 0));
    assertThrows(IllegalArgumentException.class, () -> Ground.liftInches(0, 1));
    assertThrows(IllegalArgumentException.class, () -> Ground.liftInches(6, 45)); // rise is run
  }

  @Test
  void aTrailerLevelsFromTheMiddleOfItsAxlesToItsJackAndToItsCouplerIfNobodySaysWhere() {
    // axles 12 and 15 ft: middle 13.5; jack at 1.5: 12 ft = 144 in; tan 1 = 0.0174551
    Figures jack = rig("travel trailer", ", axles: [12 ft, 15 ft], jack: 1 ft 6 in}\n");
    assertEquals(2.5135, number(jack, "level.nose.1"), 0.0001);
    Figures silent = rig("travel trailer", ", axles: [12 ft, 15 ft]}\n");
    assertEquals(2.8277, number(silent, "level.nose.1"), 0.0001); // 13.5 ft = 162 in
    assertEquals(Set.of("rig.axles"), rig("fifth wheel", "}\n").missing("level.nose.1"));
    assertEquals(Set.of("rig.track"), rig("fifth wheel", "}\n").missing("level.side.1"));
  }

  @Test
  void aMotorhomeLevelsByItsWheelbaseAndACamperOnATruckNotAtAll() {
    assertEquals(2.5135, number(rig("class a", ", wheelbase: 12 ft}\n"), "level.nose.1"), 0.0001);
    assertTrue(rig("truck camper", ", wheelbase: 12 ft}\n").find("level.nose.1").isEmpty());
  }

  @Test
  void theLimitOfAnAbsorptionRefrigeratorIsARowOfItsOwn() {
    String limit =
        "climate: {refrigerator: {kind: absorption, tilt-limit: {side: 2.8 deg, long: 6 deg}}}\n";
    Figures figures = rig("travel trailer", ", track: 6 ft, axles: [12 ft], jack: 0 ft}\n" + limit);
    assertEquals(3.5214, number(figures, "level.side.2-8"), 0.0001); // 72 x tan 2.8 = 72 x 0.048908
    assertEquals(15.135, number(figures, "level.nose.6"), 0.001); // 144 x tan 6 = 144 x 0.105104
    Figures compressor =
        rig("travel trailer", ", track: 6 ft}\n" + limit.replace("absorption", "compressor"));
    assertTrue(compressor.find("level.side.2-8").isEmpty());
    assertTrue(compressor.find("level.side.5").isPresent());
  }

  @Test
  void aRigOfTenFeetNineWantsElevenFeetThreeOfClearHeight() {
    assertEquals(11.25, Ground.clearanceFeet(10.75, 6), 1e-12);
    Figure height =
        rig("travel trailer", ", height: 10 ft 9 in}\n").find("clearance.height").orElseThrow();
    assertEquals(11.25, height.number(), 1e-9);
    assertEquals(Set.of("clearance.margin"), height.assumes());
    assertEquals(Set.of("rig.height"), rig("class b", "}\n").missing("clearance.height"));
  }

  @Test
  void aFoldedTrailerPassesWhereItsCarPasses() {
    String folded = ", height: 4 ft 9 in}\n";
    assertEquals(
        Set.of("road.tow-vehicle.height"),
        rig("folding trailer", folded).missing("clearance.height"));
    String car = folded + "road: {tow-vehicle: {height: 5 ft 6 in}}\n";
    assertEquals(
        6, rig("folding trailer", car).find("clearance.height").orElseThrow().number(), 1e-9);
  }
}
