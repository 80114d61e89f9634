package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Rig;

/** What a reader of the map relies on. */
class PlanViewTest {
  private static final String TRAILER =
      """
      rig: {name: Reed, kind: travel trailer, length: 24 ft, width: 8 ft, body: {starts: 4 ft, length: 20 ft}, axles: [15 ft]}
      """;

  private static Drawing draw(String yaml) {
    return plan(RandomRigs.rig(yaml), Map.of());
  }

  private static Drawing plan(Rig rig, Map<String, String> names) {
    return Views.draw(View.PLAN, rig, new EnglishWords(names)).get(0);
  }

  private static double[] dot(Sketch sketch, String gear) {
    return Sketch.dot(sketch.callOut(gear));
  }

  @Test
  void streetSideIsLeftAndFrontIsUp() {
    Sketch sketch =
        new Sketch(
            draw(
                TRAILER
                    + """
                    electric: {shore: {service: 30 A, at: street 18 ft up 3 ft}}
                    climate: {furnace: {at: curb 12 ft up 1 ft}}
                    water: {city-inlet: {at: street 6 ft}}
                    """));
    double[] shore = dot(sketch, "electric.shore");
    double[] furnace = dot(sketch, "climate.furnace");
    double[] inlet = dot(sketch, "water.city-inlet");
    double foot = (furnace[0] - shore[0]) / 8;
    assertEquals(shore[0], inlet[0], 0.01, "both on the street wall");
    assertEquals(6 * foot, shore[1] - furnace[1], 0.05, "18 ft is 6 ft behind 12 ft");
    assertEquals(12 * foot, shore[1] - inlet[1], 0.05);
  }

  @Test
  void theRearFaceCountsForwardFromTheRearBumper() {
    Sketch sketch =
        new Sketch(
            draw(
                TRAILER
                    + """
                    climate: {furnace: {at: curb 24 ft}, range: {at: rear 0 ft across 2 ft}}
                    electric: {shore: {service: 30 A, at: street 24 ft}}
                    """));
    double[] corner = dot(sketch, "climate.furnace");
    double[] street = dot(sketch, "electric.shore");
    double[] rear = dot(sketch, "climate.range");
    assertEquals(corner[1], rear[1], 0.01);
    assertEquals((corner[0] - street[0]) / 4, rear[0] - street[0], 0.05, "2 of 8 ft across");
  }

  @Test
  void twoCylindersAtOneSpotGetNeighboringDots() {
    Sketch sketch =
        new Sketch(
            draw(TRAILER + "propane: {cylinders: {count: 2, at: front 1 ft across 4 ft}}\n"));
    double[] one = dot(sketch, "propane.cylinders.cylinder-1");
    double[] two = dot(sketch, "propane.cylinders.cylinder-2");
    double apart = Math.hypot(one[0] - two[0], one[1] - two[1]);
    assertTrue(apart > 2 * Mark.REACH - 0.01 && apart < 20, "apart " + apart);
  }

  @Test
  void aThirdIsAnOpenSquareInItsMiddle() {
    Sketch sketch =
        new Sketch(
            draw(
                TRAILER
                    + """
                    electric: {shore: {service: 30 A, at: street rear}}
                    climate: {furnace: {at: street 20 ft}}
                    """));
    assertEquals(
        dot(sketch, "climate.furnace")[1], dot(sketch, "electric.shore")[1], 10, "20 of 24 ft");
    assertTrue(sketch.words().contains("somewhere in this third"));
    assertFalse(sketch.words().contains("roof"), "only the kinds of dot in use are explained");
  }

  @Test
  void gearThatNobodyPlacedIsNamedButNotDrawn() {
    Drawing drawing = draw(TRAILER + "climate: {furnace: {where: under the bed}}\n");
    assertEquals(List.of(new CallOut("climate.furnace", "C1", false)), drawing.callOuts());
    assertFalse(drawing.svg().contains("climate.furnace"));
    assertTrue(drawing.alt().contains("no gear with a known place"));
  }

  @Test
  void withoutAWidthTheMapSaysThatItIsNotToScale() {
    String text = "rig: {name: Reed, kind: class b, length: 20 ft}\n";
    assertTrue(new Sketch(draw(text)).words().contains("not to scale"));
    assertFalse(new Sketch(draw(TRAILER)).words().contains("not to scale"));
    assertTrue(new Sketch(draw(TRAILER)).words().contains("5 ft"));
  }

  @Test
  void dualTiresAreFourAtTheirAxle() {
    String rig =
        """
        rig: {name: Reed, kind: class c, length: 26 ft, width: 8 ft, axles: [3 ft, 19 ft], track: 6 ft}
        road: {tires: [{axle: front, count: 2}, {axle: rear, count: 4, dual: yes}]}
        """;
    assertEquals(6, new Sketch(draw(rig)).svg.select("rect[stroke=" + Svg.GRAY + "]").size());
    assertEquals(2, new Sketch(draw(TRAILER)).svg.select("rect[stroke=" + Svg.GRAY + "]").size());
  }

  @Test
  void namesCannotBecomeMarkup() {
    Rig rig = RandomRigs.rig(TRAILER + "climate: {furnace: {at: curb 9 ft}}\n");
    Drawing drawing = plan(rig, Map.of("climate.furnace", "<b>A</b></svg>&\"'\u0000"));
    Sketch sketch = new Sketch(drawing);
    assertEquals(0, sketch.svg.select("b").size());
    assertEquals(drawing.svg().length() - 7, drawing.svg().indexOf("</svg>"));
    String words = sketch.callOut("climate.furnace").text();
    assertTrue(words.contains("<b>A</b></svg>&\"'"), words);
  }

  @Test
  void everyTextStandsAloneForPrintToLayOver() {
    Drawing drawing = draw(TRAILER + "climate: {furnace: {at: curb 9 ft}}\n");
    for (Element text : new Sketch(drawing).texts()) {
      List.of("x", "y", "font-size", "text-anchor").forEach(k -> assertTrue(text.hasAttr(k), k));
      assertTrue(Sketch.number(text, "font-size") >= 10, "nothing under 10 pt");
    }
    assertFalse(Pattern.compile("transform|<tspan|id=").matcher(drawing.svg()).find());
    double digit = Badges.CODE_SIZE * 0.711;
    assertTrue(digit >= 3.2 / 25.4 * 72, "digits of a code are at least 3.2 mm high");
  }

  @Test
  void aCrowdIsSplitOverTwoPlansAndKeepsItsNames() {
    Rig crowd = new RandomRigs(7).next(90);
    List<Drawing> plans = Views.draw(View.PLAN, crowd, new EnglishWords(RandomRigs.names(crowd)));
    assertEquals(2, plans.size());
    for (Drawing plan : plans) {
      new Sketch(plan)
          .callOuts()
          .forEach(g -> assertTrue(g.select("text").size() > 1, g.outerHtml()));
    }
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void theDemoRigsHaveAWholeMap(String name) throws IOException {
    Rig rig = RandomRigs.rig(Files.readString(Path.of("rig-profiles", name + ".yaml")));
    Drawing drawing = plan(rig, RandomRigs.names(rig));
    long measured =
        rig.gear().stream()
            .flatMap(g -> g.place().spot().stream())
            .filter(s -> s.face() != Face.INSIDE)
            .count();
    assertEquals(measured, drawing.callOuts().stream().filter(CallOut::placed).count());
    assertTrue(drawing.alt().startsWith("Plan of " + rig.identity().name()), drawing.alt());
  }
}
