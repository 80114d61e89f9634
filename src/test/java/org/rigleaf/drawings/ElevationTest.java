package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.RandomRigs.Profile;
import org.rigleaf.rig.Rig;

/** The rig seen square on: what a reader recognizes it by, and nothing that it lacks. */
class ElevationTest {
  private static final double SCALE = 10;
  private static final double GROUND = 200;
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  private static Document side(Rig rig, boolean street) {
    Size size = Size.of(rig);
    double x0 = street ? 100 : 100 + size.length() * SCALE;
    Svg svg = new Svg().open(700, 250, "a side of the rig, for a test");
    new SideElevation(svg, new Board(x0, GROUND, SCALE, !street), rig, street).draw();
    return Jsoup.parse(svg.close(), Parser.xmlParser());
  }

  private static Document end(Rig rig, boolean rear) {
    Svg svg = new Svg().open(300, 250, "an end of the rig, for a test");
    double x0 = rear ? 100 : 100 + Size.of(rig).width() * SCALE;
    new EndElevation(svg, new Board(x0, GROUND, SCALE, !rear), rig, rear).draw();
    return Jsoup.parse(svg.close(), Parser.xmlParser());
  }

  private static Set<String> parts(Document drawn) {
    return drawn.select("g[data-part]").stream()
        .map(g -> g.attr("data-part"))
        .collect(Collectors.toSet());
  }

  private static Rig rig(String kind, String more) {
    return RandomRigs.rig(
        "rig: {name: Reed, kind: " + kind + ", length: 30 ft, height: 11 ft}\n" + more);
  }

  @ParameterizedTest
  @CsvSource({
    "travel trailer, frame, pin",
    "toy hauler, frame, cab",
    "folding trailer, tent, landing-gear",
    "fifth wheel, landing-gear, frame",
    "truck camper, truck, frame",
    "class a, cab, frame",
    "class b, cab, pin",
    "class c, cab, truck"
  })
  void everyKindIsKnownByItsOwnParts(String kind, String has, String hasNot) {
    for (boolean street : List.of(true, false)) {
      Set<String> parts = parts(side(rig(kind, ""), street));
      assertTrue(parts.contains("body") && parts.contains(has), kind + ": " + parts);
      assertFalse(parts.contains(hasNot), kind + ": " + parts);
    }
  }

  @Test
  void theHeightOfTheProfileIsTheHighestPointDrawn() {
    Document bare = side(rig("travel trailer", ""), true);
    assertEquals(GROUND - 110, highest(bare), 0.01);
    String cooled = "climate: {air-conditioners: [{name: Cooler, at: roof 15 ft across 4 ft}]}";
    Document withCooler = side(rig("travel trailer", cooled), true);
    assertEquals(GROUND - 110, highest(withCooler), 0.01);
    double body = highest(withCooler.select("[data-part=body]").get(0));
    assertTrue(body > GROUND - 110 + 5, "the roof lies under the air conditioner");
  }

  @Test
  void aDoorStandsOnItsOwnSideAtItsPlace() {
    Rig rig = rig("travel trailer", "body: {door: {at: curb 10 ft}, steps: {at: curb 10 ft}}");
    assertFalse(parts(side(rig, true)).contains("body.door"));
    Document curb = side(rig, false);
    Element door = curb.select("[data-part=body.door] rect").get(0);
    double middle = Double.parseDouble(door.attr("x")) + Double.parseDouble(door.attr("width")) / 2;
    assertEquals(100 + (30 - 10) * SCALE, middle, 0.01, "the front is right on the curb side");
    assertTrue(parts(curb).contains("body.steps"));
  }

  @Test
  void roofAndWallShowOnlyWhatTheRigHas() {
    Set<String> bare = parts(side(rig("class a", ""), false));
    assertEquals(Set.of("body", "cab"), bare);
    String more =
        """
        electric: {solar: {at: roof 12 ft across 4 ft}}
        body:
          slides: [{name: Sofa slide, at: street 8 ft, width: 9 ft, depth: 2 ft}]
          awnings: [{name: Patio awning, at: curb 9 ft, width: 12 ft}]
        """;
    Rig rich = rig("class a", more);
    assertTrue(parts(side(rich, true)).containsAll(Set.of("SOLAR", "body.slides.sofa-slide")));
    assertFalse(parts(side(rich, true)).contains("body.awnings.patio-awning"));
    assertTrue(parts(side(rich, false)).contains("body.awnings.patio-awning"));
    assertTrue(parts(end(rich, true)).contains("body.slides.sofa-slide"));
  }

  @Test
  void aWayOutUpInTheWallIsAWindowAndALowOneADoor() {
    String more =
        """
        safety:
          exits: [{name: Bed window, at: street 6 ft up 6 ft}, {name: Garage door, at: street 20 ft}]
        """;
    Document drawn = side(rig("toy hauler", more), true);
    double window = tall(drawn.select("[data-part=safety.exits.bed-window] rect").get(0));
    double door = tall(drawn.select("[data-part=safety.exits.garage-door] rect").get(0));
    assertTrue(window < 2 * SCALE && door > 5 * SCALE, window + ", " + door);
  }

  private static double tall(Element rect) {
    return Double.parseDouble(rect.attr("height"));
  }

  /** Whatever the rig: nothing outside the room that a caller leaves for it. */
  @ParameterizedTest
  @MethodSource("org.rigleaf.RandomRigs#all")
  void everythingStaysWithinTheRig(Profile profile) {
    Rig rig = profile.rig();
    Size size = Size.of(rig);
    for (boolean street : List.of(true, false)) {
      double left = street ? SideElevation.ahead(rig) : SideElevation.behind(rig);
      double right = street ? SideElevation.behind(rig) : SideElevation.ahead(rig);
      Document drawn = side(rig, street);
      inside(drawn, 100 - left * SCALE - 10, 100 + (size.length() + right) * SCALE + 10, rig);
    }
    double slides = Math.max(size.streetSlides(), size.curbSlides());
    for (boolean rear : List.of(true, false)) {
      double out = (slides + 1) * SCALE + 10;
      inside(end(rig, rear), 100 - out, 100 + size.width() * SCALE + out, rig);
    }
  }

  private static void inside(Document drawn, double left, double right, Rig rig) {
    assertFalse(drawn.html().contains("NaN") || drawn.html().contains("Infinity"));
    for (double[] point : points(drawn)) {
      assertTrue(point[0] >= left && point[0] <= right, rig.identity().kind() + ": x " + point[0]);
      assertTrue(point[1] <= GROUND + 0.01, rig.identity().kind() + ": below the ground");
      assertTrue(point[1] >= GROUND - Levels.of(rig).top() * SCALE - 0.01, "above the top");
    }
  }

  private static double highest(Element drawn) {
    return points(drawn).stream().mapToDouble(p -> p[1]).min().orElseThrow();
  }

  /** Corners of every shape, control points of curves included. */
  private static List<double[]> points(Element drawn) {
    return drawn.select("line, rect, circle, polygon, path").stream()
        .flatMap(e -> points(e.normalName(), e).stream())
        .toList();
  }

  private static List<double[]> points(String kind, Element e) {
    return switch (kind) {
      case "line" ->
          List.of(new double[] {of(e, "x1"), of(e, "y1")}, new double[] {of(e, "x2"), of(e, "y2")});
      case "rect" ->
          List.of(
              new double[] {of(e, "x"), of(e, "y")},
              new double[] {of(e, "x") + of(e, "width"), of(e, "y") + of(e, "height")});
      case "circle" ->
          List.of(
              new double[] {of(e, "cx") - of(e, "r"), of(e, "cy") - of(e, "r")},
              new double[] {of(e, "cx") + of(e, "r"), of(e, "cy") + of(e, "r")});
      default -> pairs(e.attr(kind.equals("path") ? "d" : "points"));
    };
  }

  private static double of(Element e, String attribute) {
    return Double.parseDouble(e.attr(attribute));
  }

  private static List<double[]> pairs(String text) {
    List<Double> all =
        NUMBER.matcher(text).results().map(MatchResult::group).map(Double::valueOf).toList();
    return java.util.stream.IntStream.range(0, all.size() / 2)
        .mapToObj(i -> new double[] {all.get(2 * i), all.get(2 * i + 1)})
        .toList();
  }
}
