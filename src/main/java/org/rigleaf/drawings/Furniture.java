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
  private static final int BAR_FT = 5;
  private static final double KEY_GAP = 15;

  private final Svg svg;
  private final Sheet sheet;

  Furniture(Svg svg, Sheet sheet) {
    this.svg = svg;
    this.sheet = sheet;
  }

  void draw(Rig rig, List<Site> sites) {
    Plan plan = sheet.plan();
    double x = plan.middle();
    svg.text(1, 12, HEADING, true, "start", PlanWords.STREET);
    svg.text(Sheet.WIDE - 1, 12, HEADING, true, "end", PlanWords.CURB);
    double front = plan.top() - 8;
    svg.text(x, front, HEADING, true, "middle", PlanWords.FRONT);
    double arrow = x - TextFit.width(PlanWords.FRONT, HEADING, true) / 2 - 10;
    svg.polygon(Look.solid(Svg.BLACK), arrow - 4, front, arrow + 4, front, arrow, front - 8);
    svg.text(x, plan.bottom() + 15, HEADING, true, "middle", PlanWords.REAR);
    marks(sites);
    scale();
    notes(rig);
  }

  private void marks(List<Site> sites) {
    double y = sheet.height() - 22;
    double x = 6;
    for (Mark mark : Arrays.stream(Mark.values()).filter(m -> used(m, sites)).toList()) {
      mark.draw(svg, x, y - 3.5);
      String words = PlanWords.mark(mark);
      svg.text(x + 8, y, SMALL, false, "start", words);
      x += 8 + TextFit.width(words, SMALL, false) + KEY_GAP;
    }
  }

  private static boolean used(Mark mark, List<Site> sites) {
    return sites.stream().anyMatch(s -> s.mark() == mark);
  }

  private void scale() {
    double y = sheet.height() - 5;
    if (!sheet.plan().size().toScale()) {
      svg.text(1, y, SMALL, true, "start", PlanWords.NOT_TO_SCALE);
      return;
    }
    svg.text(1, y, SMALL, false, "start", "0");
    double foot = sheet.plan().scale();
    for (int i = 0; i < BAR_FT; i++) {
      String fill = i % 2 == 0 ? Svg.BLACK : Svg.WHITE;
      svg.rect(10 + i * foot, y - 6, foot, 5, 0, Look.line(0.6).filled(fill));
    }
    svg.text(14 + BAR_FT * foot, y, SMALL, false, "start", BAR_FT + " ft");
  }

  private void notes(Rig rig) {
    List<String> notes = new ArrayList<>();
    if (rig.body().slides().stream()
        .anyMatch(s -> Size.room(s.gear(), List.of(s.width(), s.depth())))) {
      notes.add(PlanWords.SLIDES_OUT);
    }
    if (rig.body().awnings().stream().anyMatch(a -> Size.room(a.gear(), List.of(a.width())))) {
      notes.add(PlanWords.AWNINGS_IN);
    }
    if (rig.identity().axles().stream().anyMatch(Fact::known)) {
      boolean bunk = rig.identity().kind() == RigKind.CLASS_C;
      notes.add(bunk ? PlanWords.WHEELS_AND_BUNK_HIDDEN : PlanWords.WHEELS_HIDDEN);
    }
    String words = String.join(", ", notes);
    if (!words.isEmpty()) {
      svg.text(Sheet.WIDE - 1, sheet.height() - 5, SMALL, false, "end", words);
    }
  }
}
