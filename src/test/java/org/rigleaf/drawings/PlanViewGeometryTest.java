package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;

/** What holds on the map of every rig, seen on forty rigs made up from one seed, and two crowds. */
class PlanViewGeometryTest {
  private static final double PEN = 0.5;

  @TestFactory
  List<DynamicTest> mapsAreClean() {
    RandomRigs rigs = new RandomRigs(20260418);
    List<DynamicTest> tests = new ArrayList<>();
    for (int i = 1; i <= 42; i++) {
      int gear = i <= 40 ? 2 + i * 38 / 40 : i == 41 ? 62 : 110;
      Rig rig = rigs.next(gear);
      String title = i + ": " + rig.identity().kind().text() + ", " + rig.gear().size() + " places";
      tests.add(DynamicTest.dynamicTest(title, () -> check(rig)));
    }
    return tests;
  }

  private static void check(Rig rig) {
    Drawing drawing = PlanView.draw(rig, RandomRigs.names(rig));
    Sketch sketch = new Sketch(drawing);
    everyPlaceOnce(rig, drawing, sketch);
    leadersKeepApart(sketch);
    labelsKeepApart(sketch);
    allInside(sketch);
    assertEquals(drawing, PlanView.draw(rig, RandomRigs.names(rig)), "same bytes");
  }

  private static void everyPlaceOnce(Rig rig, Drawing drawing, Sketch sketch) {
    List<String> placed =
        rig.gear().stream().filter(g -> g.place().spot().isPresent()).map(Gear::id).toList();
    List<String> drawn = sketch.callOuts().stream().map(g -> g.attr("data-gear")).toList();
    assertEquals(placed.size(), drawn.size());
    assertEquals(new HashSet<>(placed), new HashSet<>(drawn));
    assertEquals(
        placed, drawing.callOuts().stream().filter(CallOut::placed).map(CallOut::gear).toList());
  }

  private static void leadersKeepApart(Sketch sketch) {
    List<Element> all = sketch.callOuts();
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < all.size(); j++) {
        if (i == j) {
          continue;
        }
        for (Line2D a : Sketch.leader(all.get(i))) {
          for (Line2D b : Sketch.leader(all.get(j))) {
            String both = all.get(i) + " and " + all.get(j);
            assertFalse(a.intersectsLine(b), () -> both + " have leaders that cross");
          }
          assertFalse(a.intersects(Sketch.badge(all.get(j))), "a leader runs through a badge");
        }
      }
    }
  }

  private static void labelsKeepApart(Sketch sketch) {
    List<Element> texts = sketch.texts();
    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        Rectangle2D a = Sketch.ink(texts.get(i));
        boolean overlap = a.intersects(Sketch.ink(texts.get(j)));
        String both = texts.get(i) + " and " + texts.get(j);
        assertFalse(overlap, () -> both + " overlap");
      }
    }
    List<Element> all = sketch.callOuts();
    for (int i = 0; i < all.size(); i++) {
      Rectangle2D badge = Sketch.badge(all.get(i));
      assertTrue(badge.getHeight() >= 0.72 * Sheet.CODE_SIZE, "a badge holds its digits");
      for (int j = i + 1; j < all.size(); j++) {
        assertFalse(badge.intersects(Sketch.badge(all.get(j))), "badges overlap");
      }
      for (Element text : texts) {
        boolean own = text.parent() == all.get(i);
        assertTrue(own || !badge.intersects(Sketch.ink(text)), "a badge covers a text");
      }
    }
  }

  private static void allInside(Sketch sketch) {
    assertEquals(488, sketch.wide());
    assertTrue(sketch.high() <= 553, "higher than a page");
    for (double[] xy : sketch.corners()) {
      boolean in =
          xy[0] >= PEN && xy[1] >= PEN && xy[0] <= sketch.wide() - PEN && xy[1] <= sketch.high();
      assertTrue(in, () -> "outside: " + xy[0] + " " + xy[1]);
    }
  }
}
