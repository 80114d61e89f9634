package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/** What a reader of the sides and ends relies on. */
class ViewsTest {
  private static final String TRAILER =
      """
      rig: {name: Reed, kind: travel trailer, length: 24 ft, width: 8 ft, height: 10 ft, body: {starts: 4 ft, length: 20 ft}}
      """;

  private static Sketch draw(View view, String yaml) {
    List<Drawing> drawings =
        Views.draw(view, RandomRigs.rig(TRAILER + yaml), new EnglishWords(Map.of()));
    assertEquals(1, drawings.size());
    return new Sketch(drawings.get(0));
  }

  private static double[] dot(Sketch sketch, String gear) {
    return Sketch.dot(sketch.callOut(gear));
  }

  @Test
  void onTheStreetSideTheFrontIsLeftAndFeetAreFeetInBothDirections() {
    Sketch sketch =
        draw(
            View.STREET,
            """
            electric: {shore: {service: 30 A, at: street 18 ft up 3 ft}}
            water: {city-inlet: {at: street 6 ft up 7 ft}}
            """);
    double[] shore = dot(sketch, "electric.shore");
    double[] inlet = dot(sketch, "water.city-inlet");
    double foot = (shore[0] - inlet[0]) / 12;
    assertTrue(foot > 0, "front at the left");
    assertEquals(4 * foot, shore[1] - inlet[1], 0.05, "7 ft up is 4 ft over 3 ft up");
  }

  @Test
  void onTheCurbSideTheFrontIsRight() {
    Sketch sketch =
        draw(
            View.CURB,
            """
            climate: {furnace: {at: curb 18 ft up 3 ft}}
            water: {heater: {at: curb 6 ft up 3 ft}}
            """);
    assertTrue(dot(sketch, "climate.furnace")[0] < dot(sketch, "water.heater")[0]);
    assertTrue(sketch.words().stream().anyMatch(w -> w.startsWith("Front")));
  }

  @Test
  void endsAreSeenAsOneStandsFacingThem() {
    String ends =
        """
        climate: {furnace: {at: %1$s 0 ft across 1 ft up 3 ft}}
        water: {heater: {at: %1$s 0 ft across 7 ft up 3 ft}}
        """;
    Sketch front = draw(View.FRONT, ends.formatted("front"));
    Sketch rear = draw(View.REAR, ends.formatted("rear"));
    assertTrue(dot(front, "climate.furnace")[0] > dot(front, "water.heater")[0], "street right");
    assertTrue(dot(rear, "climate.furnace")[0] < dot(rear, "water.heater")[0], "street left");
  }

  @Test
  void aThirdIsABoxUnderThatEnd() {
    String thirds =
        """
        electric: {shore: {service: 30 A, at: %1$s rear}}
        water: {city-inlet: {at: %1$s front}}
        """;
    for (View view : List.of(View.STREET, View.CURB)) {
      Sketch sketch = draw(view, thirds.formatted(view == View.STREET ? "street" : "curb"));
      assertEquals(0, sketch.svg.select(".leader").size());
      assertEquals(2, sketch.words().stream().filter("somewhere here:"::equals).count());
      double shore = Sketch.badge(sketch.callOut("electric.shore")).getCenterX();
      double inlet = Sketch.badge(sketch.callOut("water.city-inlet")).getCenterX();
      assertEquals(view == View.STREET, inlet < shore, "the front third under the front");
    }
  }

  @Test
  void aHeightThatNobodyToldIsNotMadeUp() {
    Sketch unknown = draw(View.STREET, "climate: {furnace: {at: street 12 ft}}\n");
    assertTrue(unknown.words().contains("height not told"));
    Sketch known = draw(View.STREET, "climate: {furnace: {at: street 12 ft up 2 ft}}\n");
    assertFalse(known.words().contains("height not told"));
    Sketch end = draw(View.REAR, "climate: {furnace: {at: rear 0 ft}}\n");
    assertTrue(end.words().contains("somewhere here:"));
    assertEquals(0, end.svg.select(".leader").size());
  }

  @Test
  void gearInsideIsOnTheInsidePlanAlone() {
    String gear =
        """
        climate: {furnace: {at: inside 12 ft across 2 ft}}
        electric: {shore: {service: 30 A, at: street 18 ft up 3 ft}}
        """;
    assertEquals(
        List.of("electric.shore"),
        draw(View.PLAN, gear).callOuts().stream().map(g -> g.attr("data-gear")).toList());
    assertEquals(
        List.of("climate.furnace"),
        draw(View.INSIDE, gear).callOuts().stream().map(g -> g.attr("data-gear")).toList());
  }

  @Test
  void withoutAHeightASideSaysThatItIsNotToScale() {
    Rig rig = RandomRigs.rig("rig: {name: Reed, kind: class b, length: 20 ft, width: 7 ft}\n");
    Drawing side = Views.draw(View.STREET, rig, new EnglishWords(Map.of())).get(0);
    assertTrue(new Sketch(side).words().contains("not to scale"));
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void alternativeTextsNameTheCodesInOrder(String name) {
    Rig rig = TestRigs.demo(name);
    for (View view : View.values()) {
      for (Drawing drawing : Views.draw(view, rig, new EnglishWords(Map.of()))) {
        assertTrue(drawing.alt().contains(rig.identity().name()), drawing.alt());
        List<String> codes =
            new Sketch(drawing).callOuts().stream().map(g -> g.attr("data-code")).toList();
        long named =
            codes.stream().filter(c -> drawing.alt().matches(".*\\b" + c + "\\b.*")).count();
        assertTrue(named == codes.size() || drawing.alt().contains(" more"), drawing.alt());
      }
    }
  }

  @Test
  void everyTextStandsAloneForPrintToLayOver() {
    for (View view : View.values()) {
      Sketch sketch = draw(view, "climate: {furnace: {at: curb 9 ft}, range: {at: rear middle}}\n");
      for (Element text : sketch.texts()) {
        List.of("x", "y", "font-size", "text-anchor").forEach(k -> assertTrue(text.hasAttr(k), k));
      }
      assertEquals(0, sketch.svg.select("[transform], [id], tspan").size());
    }
  }
}
