package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/**
 * What holds on every view of every rig, as JTS sees it: no leaders cross, no labels overlap, none
 * leaves the drawing, all gear is there once. Rigs are made up from one seed; {@code -Drigs=1000}
 * draws more than the usual hundred.
 */
class GeometryTest {
  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final int COUNT = Integer.getInteger("rigs", 100);
  private static final int MOST = 60;
  private static final double HAIR = 0.01;
  private static final double DIGIT_MM = 3.2;

  /** Of the type size: the height of a digit of the printed face. */
  private static final double DIGIT = 1493.0 / 2048;

  @TestFactory
  Stream<DynamicTest> viewsOfRandomRigsAreClean() {
    RandomRigs rigs = new RandomRigs(20260418);
    List<DynamicTest> tests = new ArrayList<>();
    for (int i = 1; i <= COUNT; i++) {
      Rig rig = rigs.next(2 + (i - 1) * (MOST - 2) / Math.max(1, COUNT - 1));
      String kind = rig.identity().kind().text();
      String title = i + ": " + kind + ", " + rig.gear().size() + " places";
      tests.add(DynamicTest.dynamicTest(title, () -> check(rig)));
    }
    return tests.stream();
  }

  @TestFactory
  Stream<DynamicTest> sixtyOnOneFaceAreSplitNotShrunk() {
    return Stream.of(Face.values())
        .map(
            face ->
                DynamicTest.dynamicTest(
                    face.text(),
                    () -> {
                      Rig crowd = new RandomRigs(7).crowd(face, MOST);
                      check(crowd);
                      View own =
                          Stream.of(View.values())
                              .filter(v -> v.lists(last(crowd)))
                              .findFirst()
                              .orElseThrow();
                      assertTrue(draw(crowd, own).size() > 1, "in one drawing");
                    }));
  }

  private static Gear last(Rig rig) {
    return rig.gear().get(rig.gear().size() - 1);
  }

  @Test
  void theTestSeesWhatIsWrong() {
    Geometry line = line(new double[] {0, 0, 10, 10});
    assertTrue(line.crosses(line(new double[] {0, 10, 10, 0})));
    Geometry box = box(new Rectangle2D.Double(0, 0, 10, 10));
    assertTrue(overlap(box, box(new Rectangle2D.Double(9, 9, 10, 10))));
    assertFalse(overlap(box, box(new Rectangle2D.Double(10, 0, 10, 10))));
    assertFalse(box.covers(box(new Rectangle2D.Double(-1, 2, 3, 3))));
  }

  private static List<Drawing> draw(Rig rig, View view) {
    return Views.draw(view, rig, new EnglishWords(RandomRigs.names(rig)));
  }

  private static void check(Rig rig) {
    Map<String, Integer> listed = new TreeMap<>();
    for (View view : View.values()) {
      List<Drawing> drawings = draw(rig, view);
      assertEquals(drawings, draw(rig, view), "same bytes");
      List<String> drawn = new ArrayList<>();
      for (Drawing drawing : drawings) {
        Sketch sketch = new Sketch(drawing);
        List<String> here = sketch.callOuts().stream().map(g -> g.attr("data-gear")).toList();
        List<String> told =
            drawing.callOuts().stream().filter(CallOut::placed).map(CallOut::gear).toList();
        assertEquals(new TreeSet<>(here), new TreeSet<>(told), "what the drawing says of itself");
        drawn.addAll(here);
        leadersKeepApart(view, sketch);
        labelsKeepApart(view, sketch);
        readable(sketch);
      }
      List<String> shown = rig.gear().stream().filter(view::shows).map(Gear::id).sorted().toList();
      assertEquals(shown, drawn.stream().sorted().toList(), view + " shows each once");
      rig.gear().stream().filter(view::lists).forEach(g -> listed.merge(g.id(), 1, Integer::sum));
    }
    List<String> placed =
        rig.gear().stream()
            .filter(g -> g.place().spot().isPresent())
            .map(Gear::id)
            .sorted()
            .toList();
    assertEquals(placed, List.copyOf(listed.keySet()), "each in the legend of a view");
    assertTrue(listed.values().stream().allMatch(n -> n == 1), "of one view");
  }

  private static void leadersKeepApart(View view, Sketch sketch) {
    List<Element> all = sketch.svg.select("g[data-gear]:has(.leader)");
    for (int i = 0; i < all.size(); i++) {
      Geometry leader = leader(all.get(i));
      for (int j = 0; j < all.size(); j++) {
        String both = view + ": " + all.get(i) + " and " + all.get(j);
        if (j > i) {
          assertFalse(leader.intersects(leader(all.get(j))), () -> "leaders cross, " + both);
        }
        if (j != i) {
          Geometry badge = box(Sketch.badge(all.get(j)));
          assertFalse(leader.intersects(badge), () -> "through a badge, " + both);
        }
      }
    }
  }

  private static void labelsKeepApart(View view, Sketch sketch) {
    Geometry page = box(new Rectangle2D.Double(0, 0, sketch.wide(), sketch.high()));
    List<Geometry> labels = sketch.callOuts().stream().map(GeometryTest::label).toList();
    List<Geometry> others =
        sketch.svg.select("svg > text").stream().map(t -> box(Sketch.ink(t))).toList();
    for (int i = 0; i < labels.size(); i++) {
      Geometry label = labels.get(i);
      Element of = sketch.callOuts().get(i);
      assertTrue(page.covers(label), () -> view + ": off the drawing: " + of);
      for (int j = i + 1; j < labels.size(); j++) {
        Element other = sketch.callOuts().get(j);
        assertFalse(overlap(label, labels.get(j)), () -> view + ": " + of + " and " + other);
      }
      assertTrue(
          others.stream().noneMatch(o -> overlap(label, o)), () -> view + ": on words " + of);
    }
    for (int i = 0; i < others.size(); i++) {
      assertTrue(page.covers(others.get(i)), view + ": words off the drawing");
      for (int j = i + 1; j < others.size(); j++) {
        assertFalse(
            overlap(others.get(i), others.get(j)),
            () -> view + ": words on words: " + sketch.words());
      }
    }
    for (double[] xy : sketch.corners()) {
      boolean in = xy[0] >= 0 && xy[1] >= 0 && xy[0] <= sketch.wide() && xy[1] <= sketch.high();
      assertTrue(in, () -> view + ": outside: " + xy[0] + " " + xy[1] + " " + sketch.svg);
    }
  }

  private static void readable(Sketch sketch) {
    assertTrue(sketch.wide() == 488 || sketch.wide() == 240, "as wide as the page or half of it");
    assertTrue(sketch.high() <= 553, () -> "higher than a page: " + sketch.high());
    for (Element callOut : sketch.callOuts()) {
      Element code = callOut.selectFirst("text");
      assertEquals(callOut.attr("data-code"), code.text());
      double mm = Sketch.number(code, "font-size") * DIGIT / 72 * 25.4;
      assertTrue(mm >= DIGIT_MM, () -> "digits " + mm + " mm high");
      assertTrue(Sketch.badge(callOut).contains(Sketch.ink(code)), "a badge holds its code");
    }
    sketch.texts().forEach(t -> assertTrue(Sketch.number(t, "font-size") >= 10, t::outerHtml));
    for (Element e : sketch.svg.select("[fill], [stroke]")) {
      for (String color : List.of(e.attr("fill"), e.attr("stroke"))) {
        boolean gray = color.matches("|none|#(..)\\1\\1");
        assertTrue(gray, () -> "a color: " + color);
      }
    }
  }

  // ---- shapes

  private static Geometry leader(Element callOut) {
    return line(Sketch.numbers(callOut.selectFirst(".leader").attr("points")));
  }

  private static Geometry line(double[] xy) {
    Coordinate[] points = new Coordinate[xy.length / 2];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
    }
    return SHAPES.createLineString(points);
  }

  /** A badge and the name beside it. */
  private static Geometry label(Element callOut) {
    Geometry label = box(Sketch.badge(callOut));
    for (Element text : callOut.select("text")) {
      label = label.union(box(Sketch.ink(text)));
    }
    return label;
  }

  private static Geometry box(Rectangle2D r) {
    return SHAPES.toGeometry(new Envelope(r.getMinX(), r.getMaxX(), r.getMinY(), r.getMaxY()));
  }

  private static boolean overlap(Geometry a, Geometry b) {
    return a.intersects(b) && a.intersection(b).getArea() > HAIR;
  }

  @Test
  void coarsePlacesHaveNoLeaderOnAWall() {
    RandomRigs rigs = new RandomRigs(11);
    int coarse = 0;
    for (int i = 0; i < 10; i++) {
      Rig rig = rigs.next(40);
      for (View view : List.of(View.STREET, View.CURB)) {
        for (Gear gear : rig.gear().stream().filter(view::shows).toList()) {
          boolean third = gear.place().spot().flatMap(Spot::zone).isPresent();
          boolean leader =
              draw(rig, view).stream()
                  .anyMatch(
                      d ->
                          !new Sketch(d)
                              .svg
                              .select("g[data-gear=" + gear.id() + "] .leader")
                              .isEmpty());
          assertEquals(!third, leader, gear.id());
          coarse += third ? 1 : 0;
        }
      }
    }
    assertTrue(coarse > 10, "the rigs have coarse places");
  }
}
