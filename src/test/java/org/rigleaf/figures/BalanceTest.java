package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class BalanceTest {
  /** Axles at 12 and 16 ft, so their middle is 14 ft behind the coupler. */
  static final String TRAILER =
      """
      rig: {name: Reed, kind: travel trailer, length: 24 ft, axles: [12 ft, 16 ft]}
      propane: {cylinders: {size: 20 lb, at: front 1 ft}}
      water: {fresh: {holds: 50 gal, at: under 7 ft}}
      waste: {gray: {name: main, holds: 40 gal, at: under 20 ft}}
      road:
        weights: {unloaded: 5000 lb, unloaded-includes: nothing, hitch-unloaded: 600 lb, axle-ratings: 3500 lb}
        cargo: [{what: bikes, weight: 140 lb, at: rear 3 ft}, {what: tools, weight: 70 lb, at: street 4 ft}]
        travels-with: {fresh: full, gray: 0.5}
        tires: {axle: both, count: 4, carries: 1800 lb}
      """;

  /** Axles at 3 and 15 ft; the wheelbase of 12 ft is not told. */
  static final String MOTORHOME =
      """
      rig: {name: Rush, kind: class c, length: 24 ft, axles: [3 ft, 15 ft], seats: {at: inside 6 ft}}
      stay: {people: 4}
      water: {fresh: {holds: 40 gal, at: under 18 ft}}
      road:
        weights: {gcwr: 20000 lb, front: {rating: 4500 lb, unloaded: 3900 lb}, rear: {rating: 9000 lb, unloaded: 7000 lb}}
        cargo: {what: tools, weight: 240 lb, at: street 9 ft}
        towed: {weighs: 3100 lb, hitch-weight: 200 lb}
        tires: [{axle: rear, count: 4, carries: 2400 lb}, {axle: front, count: 2, carries: 2600 lb}]
      """;

  private static Figures rig(String yaml) {
    return Figures.of(TestRigs.of(yaml));
  }

  private static Figures weighed(String yaml, String reading) {
    return Figures.of(TestRigs.of(yaml, "weighed: {" + reading + "}\n"));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow(() -> new AssertionError(figures.missing(id))).number();
  }

  @Test
  void theLeversOfTwoSchoolbooksBalance() {
    // 30 lb on the end of a beam of 20 lb and 6 ft: 1.2 ft from the load (jiskha.com display
    // 1303587139, seen); moments about the load: 20 lb x 3 ft over 50 lb
    assertEquals(1.2, Beam.rearPounds(20 * 3, 50), 1e-9);
    // 100 and 60 lb on 33 ft: 12.375 ft from the 100 (thomastedwards.com/wordprob/lever4.txt, seen)
    assertEquals(12.375, Beam.rearPounds(60 * 33, 160), 1e-9);
    // so a support there carries all, and one at each end 100 and 60
    assertEquals(60, Beam.rearPounds(160 * 12.375, 33), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> Beam.rearPounds(60, 0));
    assertThrows(IllegalArgumentException.class, () -> Beam.rearPounds(60, -1));
  }

  @Test
  void weightAheadOfTheAxlesLoadsTheHitchAndBehindThemLightensIt() {
    // middle of the axles 14 ft; 600 + 140 x (14 - 21)/14 + 70 x 10/14 + 415 x 7/14
    // + 166 x (14 - 20)/14 + 20 x 13/14 = 600 - 70 + 50 + 207.5 - 71.142857 + 18.571429
    Figures figures = rig(TRAILER);
    assertEquals(734.928571, number(figures, "hitch.weight"), 1e-6);
    // 5000 + 140 + 70 + 415 + 166 + 20 = 5811; less the hitch, over two
    assertEquals(2538.035714, number(figures, "axle.1.load"), 1e-6);
    assertEquals(2538.035714, number(figures, "axle.2.load"), 1e-6);
    assertEquals(12.647196, number(figures, "hitch.share"), 1e-6); // 73,492.8571 / 5811
    assertEquals(961.964286, number(figures, "axle.2.margin"), 1e-6); // 3500 - 2538.035714
    assertEquals(1061.964286, number(figures, "tire.2.margin"), 1e-6); // 2 x 1800 - 2538.035714
    assertTrue(figures.find("axle.3.load").isEmpty());
    assertEquals(Set.of(), figures.find("hitch.share").orElseThrow().assumes());
  }

  @Test
  void theAxlesOfAMotorhomeCarryPeopleAndHitchWeightByTheWheelbase() {
    // behind the front axle: tools 240 at 6, fresh 332 at 15, four people 600 at 3, hitch 200 at 21
    // moments 1440 + 4980 + 1800 + 4200 = 12,420; over 12 ft 1035 on the rear axle
    Figures figures = rig(MOTORHOME);
    assertEquals(8035, number(figures, "axle.2.load"), 1e-6); // 7000 + 1035
    assertEquals(4237, number(figures, "axle.1.load"), 1e-6); // 3900 + 1372 - 1035
    assertEquals(965, number(figures, "axle.2.margin"), 1e-6); // 9000 - 8035
    assertEquals(263, number(figures, "axle.1.margin"), 1e-6); // 4500 - 4237
    assertEquals(1565, number(figures, "tire.2.margin"), 1e-6); // 4 x 2400 - 8035
    assertEquals(963, number(figures, "tire.1.margin"), 1e-6); // 2 x 2600 - 4237
    assertTrue(figures.find("hitch.weight").isEmpty());
    assertTrue(figures.find("hitch.share").isEmpty());
    assertEquals(Set.of(), figures.missing("hitch.share"));
    Figures third = rig(MOTORHOME.replace("carries: 2600 lb}", "carries: 2600 lb}, {axle: tag}"));
    assertTrue(third.find("tire.1.margin").isPresent());
    assertEquals(Set.of(), third.missing("tire.3.margin")); // of its load nothing is known
    assertTrue(third.find("tire.3.margin").isEmpty());
    assertEquals(Set.of("person.weight"), figures.find("axle.1.load").orElseThrow().assumes());
  }

  @Test
  void aToldWheelbaseWinsOverThePlacesOfTheAxles() {
    // 12,420 ft-lb over 10 ft: 1242 on the rear axle
    Figures told = rig(MOTORHOME.replace("length: 24 ft", "length: 24 ft, wheelbase: 10 ft"));
    assertEquals(8242, number(told, "axle.2.load"), 1e-6);
    String one = MOTORHOME.replace("[3 ft, 15 ft]", "[3 ft]");
    assertEquals(Set.of("rig.wheelbase"), rig(one).missing("axle.1.load"));
    String turned = MOTORHOME.replace("[3 ft, 15 ft]", "[15 ft, 3 ft]");
    assertEquals(Set.of("rig.wheelbase"), rig(turned).missing("axle.2.load"));
    String same = MOTORHOME.replace("[3 ft, 15 ft]", "[3 ft, 3 ft]");
    assertEquals(Set.of("rig.wheelbase"), rig(same).missing("axle.2.load"));
    String none = MOTORHOME.replace(", axles: [3 ft, 15 ft]", "");
    assertEquals(Set.of("rig.axles", "rig.wheelbase"), rig(none).missing("axle.1.load"));
  }

  @Test
  void everyWeightNeedsAMeasuredPlace() {
    String bare = TRAILER.replace("at: under 7 ft", "at: under front");
    assertEquals(Set.of("water.fresh.at"), rig(bare).missing("hitch.weight"));
    assertEquals(Set.of("water.fresh.at"), rig(bare).missing("hitch.share"));
    String words = TRAILER.replace("at: under 20 ft", "where: below the bed");
    assertEquals(Set.of("waste.gray.main.at"), rig(words).missing("axle.1.load"));
    String both =
        TRAILER
            .replace("size: 20 lb, at: front 1 ft", "size: 20 lb")
            .replace("140 lb, at: rear 3 ft", "140 lb");
    assertEquals(
        Set.of("propane.cylinders.cylinder.at", "road.cargo.bikes.at"),
        rig(both).missing("hitch.weight"));
    assertEquals(
        Set.of("rig.length"), rig(TRAILER.replace(" length: 24 ft,", "")).missing("hitch.weight"));
    assertEquals(
        Set.of("rig.axles"),
        rig(TRAILER.replace(", axles: [12 ft, 16 ft]", "")).missing("hitch.weight"));
    assertEquals(
        Set.of("road.weights.hitch-unloaded"),
        rig(TRAILER.replace(" hitch-unloaded: 600 lb,", "")).missing("hitch.weight"));
    assertEquals(
        Set.of("rig.seats.at"),
        rig(MOTORHOME.replace(", seats: {at: inside 6 ft}", "")).missing("axle.2.load"));
    assertEquals(
        Set.of("rig.length"), rig(MOTORHOME.replace(" length: 24 ft,", "")).missing("axle.2.load"));
  }

  @Test
  void anEmptyTankNeedsNoPlace() {
    String empty =
        TRAILER
            .replace("{fresh: full, gray: 0.5}", "{fresh: empty, gray: empty}")
            .replace(", at: under 7 ft", "")
            .replace(", at: under 20 ft", "");
    // 600 - 70 + 50 + 18.571429
    assertEquals(598.571429, number(rig(empty), "hitch.weight"), 1e-6);
  }

  @Test
  void aTrailerWithNothingAboardHasItsUnloadedHitchWeight() {
    Figures figures =
        rig(
            "rig: {name: Reed, kind: fifth wheel, axles: 13 ft}\n"
                + "road: {weights: {unloaded: 5000 lb, hitch-unloaded: 1000 lb}}\n");
    assertEquals(1000, number(figures, "hitch.weight"), 1e-9);
    assertEquals(4000, number(figures, "axle.1.load"), 1e-9);
    assertEquals(20, number(figures, "hitch.share"), 1e-9);
  }

  @Test
  void aFifthWheelOf12000PoundsWith20To25PerCentHas2400To3000OnItsPin() {
    // trailer-trade manual text (seen): 20-25 % of 12,000 lb is 2,400-3,000 lb
    assertEquals(20, Balance.sharePercent(2400, 12_000 - 2400), 1e-9);
    assertEquals(25, Balance.sharePercent(3000, 12_000 - 3000), 1e-9);
  }

  @Test
  void axlesOf5600AndATongueOf600AreTooWeakFor7000Pounds() {
    // 49 CFR 571.110 S9.2: axle ratings and tongue weight must reach GVWR; 5600 + 600 is 800 short
    Figures figures =
        weighed(
            "rig: {name: Reed, kind: travel trailer, axles: [12 ft, 15 ft]}\n"
                + "road: {weights: {axle-ratings: [2800 lb, 2800 lb]}}\n",
            "axles: 6400 lb, hitch: 600 lb");
    double short1 = number(figures, "axle.1.margin");
    assertEquals(-800, short1 + number(figures, "axle.2.margin"), 1e-9);
    assertEquals(-400, short1, 1e-9);
  }

  @Test
  void aScaleOverrulesTheMoments() {
    Figures together = weighed(TRAILER, "date: 2026-05-01, axles: 4980 lb, hitch: 640 lb");
    assertEquals(640, number(together, "hitch.weight"), 1e-9);
    assertEquals(2490, number(together, "axle.1.load"), 1e-9);
    assertEquals(2490, number(together, "axle.2.load"), 1e-9);
    Figures each = weighed(TRAILER, "axles: [2300 lb, 2700 lb]");
    assertEquals(734.928571, number(each, "hitch.weight"), 1e-6);
    assertEquals(2300, number(each, "axle.1.load"), 1e-9);
    assertEquals(2700, number(each, "axle.2.load"), 1e-9);
    // the hitch alone: 5811 - 640 over two
    assertEquals(2585.5, number(weighed(TRAILER, "hitch: 640 lb"), "axle.1.load"), 1e-6);
    Figures motor = weighed(MOTORHOME, "axles: [4100 lb, 8200 lb]");
    assertEquals(4100, number(motor, "axle.1.load"), 1e-9);
    assertEquals(8200, number(motor, "axle.2.load"), 1e-9);
  }

  @Test
  void aScaleOfAnotherNumberOfAxlesDoesNotStandForThem() {
    String unknown = TRAILER.replace(", axles: [12 ft, 16 ft]", "");
    assertEquals(Set.of("rig.axles"), weighed(unknown, "axles: 4980 lb").missing("axle.1.load"));
    assertEquals(Set.of("rig.axles"), weighed(unknown, "hitch: 640 lb").missing("axle.1.load"));
    assertEquals(2700, number(weighed(unknown, "axles: [2300 lb, 2700 lb]"), "axle.2.load"), 1e-9);
    String three = TRAILER.replace("[12 ft, 16 ft]", "[12 ft, 14 ft, 16 ft]");
    Figures two = weighed(three, "axles: [2300 lb, 2700 lb]");
    assertEquals(2700, number(two, "axle.2.load"), 1e-9);
    assertEquals(Set.of("weighed.axles"), two.missing("axle.3.load"));
    assertEquals(8035, number(weighed(MOTORHOME, "axles: 12000 lb"), "axle.2.load"), 1e-6);
    assertEquals(
        8035, number(weighed(MOTORHOME, "axles: [1 lb, 2 lb, 3 lb]"), "axle.2.load"), 1e-6);
  }

  @Test
  void oneRatingStandsForAllAxlesAndAListForEach() {
    assertEquals(961.964286, number(rig(TRAILER), "axle.1.margin"), 1e-6);
    Figures each =
        rig(TRAILER.replace("axle-ratings: 3500 lb", "axle-ratings: [3000 lb, 3600 lb]"));
    assertEquals(461.964286, number(each, "axle.1.margin"), 1e-6);
    assertEquals(1061.964286, number(each, "axle.2.margin"), 1e-6);
    String three = TRAILER.replace("[12 ft, 16 ft]", "[12 ft, 14 ft, 16 ft]");
    Figures third = rig(three.replace("axle-ratings: 3500 lb", "axle-ratings: [3000 lb, 3600 lb]"));
    assertEquals(Set.of("road.weights.axle-ratings"), third.missing("axle.3.margin"));
    assertEquals(
        Set.of("road.weights.rear.rating"),
        rig(MOTORHOME.replace("rating: 9000 lb, ", "")).missing("axle.2.margin"));
  }

  @Test
  void tiresToldByAxleAreCountedByAxle() {
    String front =
        TRAILER.replace("tires: {axle: both, count: 4,", "tires: {axle: front, count: 2,");
    assertEquals(1061.964286, number(rig(front), "tire.1.margin"), 1e-6);
    assertTrue(rig(front).find("tire.2.margin").isEmpty());
    assertEquals(
        Set.of("road.tires.both.carries"),
        rig(TRAILER.replace(", carries: 1800 lb", "")).missing("tire.1.margin"));
  }

  @Test
  void aTruckCamperHasNeitherHitchNorAxles() {
    Figures camper =
        rig(
            "rig: {name: Teal, kind: truck camper}\n"
                + "road: {weights: {unloaded: 2000 lb}, tires: {count: 4, carries: 2000 lb}}\n");
    for (String id :
        List.of("hitch.weight", "hitch.share", "axle.1.load", "axle.1.margin", "tire.1.margin")) {
      assertTrue(camper.find(id).isEmpty(), id);
      assertEquals(Set.of(), camper.missing(id), id);
    }
  }

  @Test
  void aProfileInKilogramsAndMetersGivesTheSame() {
    String metric =
        """
        rig: {name: Reed, kind: travel trailer, length: 7.3152 m, axles: [365.76 cm, 4.8768 m]}
        water: {fresh: {holds: 189.2705892 L, at: under 2.1336 m}}
        road:
          weights: {unloaded: 2267.96185 kg, hitch-unloaded: 272.155422 kg}
          cargo: {what: bikes, weight: 63.5029318 kg, at: rear 914.4 mm}
        """;
    // 600 + 415 x 7/14 - 140 x 7/14 = 737.5; 5000 + 415 + 140 = 5555
    assertEquals(737.5, number(rig(metric), "hitch.weight"), 1e-6);
    assertEquals(2408.75, number(rig(metric), "axle.1.load"), 1e-6);
  }

  @Test
  void noPoundIsLostAndTheMomentsBalanceWhateverTheTrailer() {
    // conservation, with its own sums: hitch + axles = unloaded + load, and about the coupler the
    // axles gain what the load's moments are
    Random random = new Random(20261125);
    for (int i = 0; i < 200; i++) {
      double middle = 8 + random.nextInt(120) / 10.0;
      List<int[]> loads = new ArrayList<>();
      for (int n = random.nextInt(4); n >= 0; n--) {
        loads.add(new int[] {1 + random.nextInt(400), random.nextInt(25)});
      }
      int gallons = 1 + random.nextInt(60);
      int tank = random.nextInt(25);
      Figures figures =
          rig(
              String.format(
                  Locale.ROOT,
                  "rig: {name: R, kind: fifth wheel, length: 25 ft, axles: [%.1f ft, %.1f ft]}%n"
                      + "water: {fresh: {holds: %d gal, at: under %d ft}}%n"
                      + "road: {weights: {unloaded: 6000 lb, hitch-unloaded: 1100 lb}, cargo: %s}%n",
                  middle - 1.5,
                  middle + 1.5,
                  gallons,
                  tank,
                  cargo(loads)));
      double pounds = gallons * 8.3 + loads.stream().mapToInt(l -> l[0]).sum();
      double moment = gallons * 8.3 * tank + loads.stream().mapToInt(l -> l[0] * l[1]).sum();
      double axles = number(figures, "axle.1.load") + number(figures, "axle.2.load");
      double hitch = number(figures, "hitch.weight");
      assertEquals(6000 + pounds, axles + hitch, 1e-6);
      assertEquals(moment, (axles - (6000 - 1100)) * middle, 1e-6);
    }
  }

  private static String cargo(List<int[]> loads) {
    return "["
        + String.join(
            ", ",
            IntStream.range(0, loads.size())
                .mapToObj(
                    i ->
                        "{what: load %d, weight: %d lb, at: inside %d ft}"
                            .formatted(i, loads.get(i)[0], loads.get(i)[1]))
                .toList())
        + "]";
  }

  @Test
  void noPoundIsLostAndTheMomentsBalanceWhateverTheMotorhome() {
    Random random = new Random(20261126);
    for (int i = 0; i < 100; i++) {
      double front = 2 + random.nextInt(30) / 10.0;
      double wheelbase = 10 + random.nextInt(80) / 10.0;
      int seats = random.nextInt(8);
      int people = 1 + random.nextInt(6);
      int weight = 1 + random.nextInt(500);
      int place = random.nextInt(28);
      Figures figures =
          rig(
              String.format(
                  Locale.ROOT,
                  "rig: {name: R, kind: class a, axles: [%.1f ft], wheelbase: %.1f ft, seats: {at:"
                      + " inside %d ft}}%nstay: {people: %d}%nroad: {weights: {front: {unloaded:"
                      + " 5000 lb}, rear: {unloaded: 9000 lb}}, cargo: {what: a, weight: %d lb, at:"
                      + " inside %d ft}}%n",
                  front,
                  wheelbase,
                  seats,
                  people,
                  weight,
                  place));
      double first = number(figures, "axle.1.load") - 5000;
      double second = number(figures, "axle.2.load") - 9000;
      assertEquals(people * 150 + weight, first + second, 1e-6);
      // about the front bumper, not about the axle that the program takes
      assertEquals(
          people * 150 * seats + weight * place,
          first * front + second * (front + wheelbase),
          1e-6);
    }
  }

  @Test
  void whatTheMarginsAllowPutOverTheAxlesUsesThemUp() {
    // limiting case: the axles are 961.964286 lb each below their rating (worked above), the load
    // right over their middle is shared by both and leaves the hitch alone
    String full = more(2 * 961.964286);
    assertEquals(0, number(rig(full), "axle.1.margin"), 1e-5);
    assertEquals(0, number(rig(full), "axle.2.margin"), 1e-5);
    assertEquals(734.928571, number(rig(full), "hitch.weight"), 1e-6);
    String tires = more(2 * 1061.964286);
    assertEquals(0, number(rig(tires), "tire.1.margin"), 1e-5);
    assertEquals(0, number(rig(tires), "tire.2.margin"), 1e-5);
  }

  private static String more(double pounds) {
    String sand = "cargo: [{what: sand, weight: " + pounds + " lb, at: inside 14 ft}, ";
    return TRAILER.replace("cargo: [", sand);
  }

  @Test
  void aTrailerLoadedWithItsCargoWeighsItsRating() {
    // second derivation, over the axles: with all its cargo aboard, water part of it, hitch and
    // axles together carry the 7,000 lb of the rating
    String rated = TRAILER.replace("weights: {", "weights: {gvwr: 7000 lb, ");
    double cargo = number(rig(rated), "weight.cargo");
    double aboard = 140 + 70 + 415 + 166; // bikes, tools, 50 gal and half of 40 gal
    String sand = "cargo: [{what: sand, weight: " + (cargo - aboard) + " lb, at: inside 9 ft}, ";
    Figures figures = rig(rated.replace("cargo: [", sand));
    double all =
        number(figures, "hitch.weight")
            + number(figures, "axle.1.load")
            + number(figures, "axle.2.load");
    assertEquals(7000, all, 1e-6);
    assertEquals(0, number(figures, "weight.margin"), 1e-6);
  }
}
