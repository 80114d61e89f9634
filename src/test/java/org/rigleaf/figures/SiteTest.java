package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class SiteTest {
  private static Figures rig(String kind, String sections) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: Reed, kind: " + kind + ", length: 20 ft, width: 8 ft}\n" + sections));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void aTrailerClosedIsAsLongAndWideAsItIs() {
    Figures figures = rig("travel trailer", "body: {slides: none, awnings: none}\n");
    assertEquals(20, number(figures, "site.length"), 1e-9);
    assertEquals(8, number(figures, "site.width"), 1e-9);
    Figures unknown = Figures.of(TestRigs.of("rig: {name: Reed, kind: class a}\n"));
    assertEquals(Set.of("rig.length"), unknown.missing("site.length"));
    assertEquals(Set.of("rig.width"), unknown.missing("site.width"));
  }

  @Test
  void theBedsOfAFoldingTrailerAddAtBothEnds() {
    String told = "[{name: Front bed, reach: 4 ft, at: front 0 ft}, {name: Rear bed, reach: 5 ft}]";
    assertEquals(
        29,
        number(rig("folding trailer", "body: {bed-ends: " + told + "}\n"), "site.length"),
        1e-9);
    String silent = "[{name: Front bed, reach: 4 ft}, {name: Rear bed, reach: 5 ft}]";
    assertEquals(
        29,
        number(rig("folding trailer", "body: {bed-ends: " + silent + "}\n"), "site.length"),
        1e-9);
    assertEquals(
        20, number(rig("folding trailer", "body: {bed-ends: none}\n"), "site.length"), 1e-9);
    assertEquals(
        Set.of("body.bed-ends.rear-bed.reach"),
        rig("folding trailer", "body: {bed-ends: [{name: Rear bed}]}\n").missing("site.length"));
  }

  @Test
  void whatOpensOverTheTongueAddsOnlyWhatGoesPastTheCoupler() {
    String closed =
        "rig: {name: Reed, kind: folding trailer, length: 20 ft, body: {starts: 4 ft}}\n";
    String rear = ", {name: Rear bed, reach: 5 ft, at: rear 0 ft}]}\n";
    String beds = "body: {bed-ends: [{name: Front bed, at: front 4 ft, reach: ";
    assertEquals(
        25, number(Figures.of(TestRigs.of(closed + beds + "4 ft}" + rear)), "site.length"), 1e-9);
    assertEquals(
        27, number(Figures.of(TestRigs.of(closed + beds + "6 ft}" + rear)), "site.length"), 1e-9);
  }

  @Test
  void aCamperHasNoLengthOfItsOwnOnASite() {
    Figures camper = rig("truck camper", "body: {slides: none}\n");
    assertTrue(camper.find("site.length").isEmpty());
    assertEquals(8, number(camper, "site.width"), 1e-9);
  }

  @Test
  void aSlideUnderAnAwningDoesNotAddToIt() {
    String slides =
        "slides: [{name: Sofa, at: curb 8 ft, depth: 2 ft}, {name: Table, at: street 8 ft, depth: 3 ft},"
            + " {name: Bed, at: street 15 ft, depth: 1 ft 6 in}]";
    Figures short1 =
        rig("fifth wheel", "body: {" + slides + ", awnings: {at: curb 5 ft, reach: 1 ft}}\n");
    assertEquals(13, number(short1, "site.width"), 1e-9); // 3 + 8 + 2
    Figures deep = rig("fifth wheel", "body: {" + slides + ", awnings: {reach: 9 ft}}\n");
    assertEquals(20, number(deep, "site.width"), 1e-9); // 3 + 8 + 9, an awning at the curb
    Figures street =
        rig("fifth wheel", "body: {" + slides + ", awnings: {at: street 5 ft, reach: 9 ft}}\n");
    assertEquals(19, number(street, "site.width"), 1e-9); // 9 + 8 + 2
    Figures roof =
        rig("fifth wheel", "body: {" + slides + ", awnings: {at: roof 5 ft, reach: 9 ft}}\n");
    assertEquals(20, number(roof, "site.width"), 1e-9); // rolled up on the roof, over the door
  }

  @Test
  void aSlideOnAnUnknownWallLeavesTheWidthOpen() {
    Figures figures =
        rig(
            "class a",
            "body: {slides: [{name: Bed slide, depth: 2 ft}, {name: Sofa, at: roof 3 ft, depth: 2 ft}]}\n");
    assertEquals(
        Set.of("body.slides.bed-slide.at", "body.slides.sofa.at"), figures.missing("site.width"));
    assertEquals(20, number(figures, "site.length"), 1e-9);
    assertEquals(
        Set.of("body.awnings.awning.reach"),
        rig("class a", "body: {awnings: {drive: power}}\n").missing("site.width"));
  }

  /** Second derivation: the outermost points of everything drawn on a plan, x to the curb. */
  @Test
  void theRoomIsTheBoxAroundAllThatIsOut() {
    Random random = new Random(7);
    for (int turn = 0; turn < 40; turn++) {
      List<String> slides = new ArrayList<>();
      double left = 0;
      double right = 8;
      double front = 0;
      double rear = 20;
      for (int i = random.nextInt(4); i > 0; i--) {
        double deep = 1 + random.nextInt(30) / 10.0;
        String wall = List.of("street", "curb", "front", "rear").get(random.nextInt(4));
        slides.add("{name: s" + i + ", at: " + wall + " 2 ft, depth: " + deep + " ft}");
        left = wall.equals("street") ? Math.min(left, -deep) : left;
        right = wall.equals("curb") ? Math.max(right, 8 + deep) : right;
        front = wall.equals("front") ? Math.min(front, -deep) : front;
        rear = wall.equals("rear") ? Math.max(rear, 20 + deep) : rear;
      }
      Figures figures = rig("toy hauler", "body: {slides: " + slides + "}\n");
      assertEquals(right - left, number(figures, "site.width"), 1e-9, slides.toString());
      assertEquals(rear - front, number(figures, "site.length"), 1e-9, slides.toString());
    }
  }

  private static final String TRUCK = "road: {tow-vehicle: {length: 19 ft}}\n";

  @Test
  void aHitchedTrailerIsAsLongAsBothAndClosed() {
    String beds = "body: {bed-ends: {name: Rear bed, reach: 5 ft}}\n";
    assertEquals(39, number(rig("folding trailer", TRUCK + beds), "site.length.hitched"), 1e-9);
    assertEquals(39, number(rig("fifth wheel", TRUCK), "site.length.hitched"), 1e-9);
    Figures trip = rig("travel trailer", TRUCK + "stay: {tow-vehicle: {length: 16 ft}}\n");
    assertEquals(36, number(trip, "site.length.hitched"), 1e-9);
    Figures open = rig("travel trailer", TRUCK + "stay: {tow-vehicle: {name: van}}\n");
    assertEquals(Set.of("stay.tow-vehicle.length"), open.missing("site.length.hitched"));
  }

  @Test
  void aMotorhomeIsHitchedToWhatItTowsAndACamperToNothing() {
    Figures car = rig("class c", "road: {towed: {length: 14 ft}}\n");
    assertEquals(34, number(car, "site.length.hitched"), 1e-9);
    for (Figures figures :
        List.of(
            rig("class c", TRUCK),
            rig("truck camper", TRUCK),
            rig("travel trailer", "road: {towed: {length: 14 ft}}\n"))) {
      assertTrue(figures.find("site.length.hitched").isEmpty());
      assertEquals(Set.of(), figures.missing("site.length.hitched"));
    }
  }
}
