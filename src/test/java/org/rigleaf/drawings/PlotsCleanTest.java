package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What holds on every plot, whatever its numbers and words, seen on sixty of each kind. */
class PlotsCleanTest {
  private static final List<String> KINDS = List.of("bank", "sun", "lasts", "together", "level");
  private static final Pattern FORBIDDEN =
      Pattern.compile("transform|<tspan| id=|NaN|Infinity|<b>|<use|<image|<style");

  @TestFactory
  List<DynamicTest> plotsAreClean() {
    RandomPlots plots = new RandomPlots(20260611);
    List<DynamicTest> tests = new ArrayList<>();
    for (int i = 1; i <= 60; i++) {
      List<Drawing> five = plots.next();
      for (int kind = 0; kind < five.size(); kind++) {
        Drawing drawing = five.get(kind);
        tests.add(DynamicTest.dynamicTest(KINDS.get(kind) + " " + i, () -> check(drawing)));
      }
    }
    return tests;
  }

  @TestFactory
  List<DynamicTest> samplesAreCleanToo() {
    List<DynamicTest> tests = new ArrayList<>();
    SamplePlots.all()
        .forEach(
            (name, drawing) ->
                tests.add(
                    DynamicTest.dynamicTest(
                        name,
                        () -> {
                          check(drawing);
                          double high = new Sketch(drawing).high();
                          assertTrue(high >= 200 && high <= 320, "height " + high);
                        })));
    return tests;
  }

  @Test
  void theSameDataGiveTheSameBytes() {
    assertEquals(new RandomPlots(5).next(), new RandomPlots(5).next());
    assertEquals(SamplePlots.all(), SamplePlots.all());
  }

  private static void check(Drawing drawing) {
    Sketch sketch = new Sketch(drawing);
    assertEquals(1, sketch.svg.childrenSize(), "one svg, and nothing behind it");
    assertFalse(FORBIDDEN.matcher(drawing.svg()).find(), drawing.svg());
    assertEquals(453, sketch.wide());
    textsStandAlone(sketch);
    textsKeepApart(sketch);
    allInside(sketch);
  }

  private static void textsStandAlone(Sketch sketch) {
    assertTrue(sketch.texts().size() > 2);
    for (Element text : sketch.texts()) {
      List.of("x", "y", "font-size", "text-anchor").forEach(k -> assertTrue(text.hasAttr(k), k));
      assertTrue(Sketch.number(text, "font-size") >= 10, "nothing under 10 pt");
    }
  }

  private static void textsKeepApart(Sketch sketch) {
    List<Element> texts = sketch.texts();
    for (int i = 0; i < texts.size(); i++) {
      Rectangle2D a = Sketch.ink(texts.get(i));
      for (int j = i + 1; j < texts.size(); j++) {
        String both = texts.get(i) + " and " + texts.get(j);
        assertFalse(a.intersects(Sketch.ink(texts.get(j))), () -> both + " overlap");
      }
    }
  }

  private static void allInside(Sketch sketch) {
    for (double[] xy : sketch.corners()) {
      boolean in = xy[0] >= 0 && xy[1] >= 0 && xy[0] <= sketch.wide() && xy[1] <= sketch.high();
      assertTrue(in, () -> "outside: " + xy[0] + " " + xy[1]);
    }
  }
}
