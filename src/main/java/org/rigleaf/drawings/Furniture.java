package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;

/** Draws what stands around the plan: which way it faces, the kinds of dot, the scale. */
final class Furniture {
  private static final double SMALL = 10;
  private static final double HEADING = 11;
  private static final double KEY_GAP = 15;
  private static final double LINE = 15;

  private final Svg svg;
  private final Sheet sheet;
  private final MapWords words;

  Furniture(Svg svg, Sheet sheet, MapWords words) {
    this.svg = svg;
    this.sheet = sheet;
    this.words = words;
  }

  void draw(Rig rig, List<Site> sites, boolean inside) {
    Plan plan = sheet.plan();
    double x = plan.middle();
    String length = sheet.names() ? "-long" : "";
    svg.text(1, 12, HEADING, true, "start", words.say("street" + length));
    svg.text(sheet.wide() - 1, 12, HEADING, true, "end", words.say("curb" + length));
    double front = plan.top() - 8;
    svg.text(x, front, HEADING, true, "middle", words.say("front"));
    double arrow = x - TextFit.width(words.say("front"), HEADING, true) / 2 - 10;
    svg.polygon(Look.solid(Svg.BLACK), arrow - 4, front, arrow + 4, front, arrow, front - 8);
    svg.text(x, plan.bottom() + 15, HEADING, true, "middle", words.say("rear"));
    marks(sites);
    scale();
    notes(rig, inside);
  }

  private void marks(List<Site> sites) {
    double y = line(sheet.names() ? 1 : 2);
    double x = 6;
    for (Mark mark : Arrays.stream(Mark.values()).filter(m -> used(m, sites)).toList()) {
      mark.draw(svg, x, y - 3.5);
      String text = words.mark(mark);
      svg.text(x + 8, y, SMALL, false, "start", text);
      x += 8 + TextFit.width(text, SMALL, false) + KEY_GAP;
    }
  }

  /** A baseline under the plan, counted from the lowest. */
  private double line(int up) {
    return sheet.height() - 5 - LINE * up;
  }

  private static boolean used(Mark mark, List<Site> sites) {
    return sites.stream().anyMatch(s -> s.mark() == mark);
  }

  private void scale() {
    double y = line(sheet.names() ? 0 : 1);
    if (!sheet.plan().size().toScale()) {
      svg.text(1, y, SMALL, true, "start", words.say("not-to-scale"));
      return;
    }
    new ScaleBar(sheet.plan().scale(), words.words().amounts()).draw(svg, 1, y);
  }

  private void notes(Rig rig, boolean inside) {
    List<String> notes = new ArrayList<>();
    if (rig.body().slides().stream()
        .anyMatch(s -> Size.room(s.gear(), List.of(s.width(), s.depth())))) {
      notes.add(words.say("slides-out"));
    }
    if (!inside
        && rig.body().awnings().stream().anyMatch(a -> Size.room(a.gear(), List.of(a.width())))) {
      notes.add(words.say("awnings-in"));
    }
    boolean wheels = !inside && rig.identity().axles().stream().anyMatch(Fact::known);
    boolean bunk = rig.identity().kind() == RigKind.CLASS_C;
    if (wheels || bunk) {
      notes.add(words.say(!wheels ? "bunk-dashed" : bunk ? "both-dashed" : "wheels-dashed"));
    }
    String text = String.join(", ", notes);
    if (!text.isEmpty()) {
      double x = sheet.names() ? sheet.wide() - 1 : 1;
      svg.text(x, line(0), SMALL, false, sheet.names() ? "end" : "start", text);
    }
  }
}
