package org.rigleaf.drawings;

import java.util.List;
import org.rigleaf.rig.Rig;

/** Draws the bare outline of the rig from above, for marks of damage made by hand. */
public final class DamagePlan {
  private static final double HEAD = 24;
  private static final double FOOT = 20;
  private static final double TALLEST = 230;
  private static final double BROADEST = 200;
  private static final double WORDS = 11;

  private DamagePlan() {}

  /** Draws the outline; the same rig gives the same bytes. */
  public static Drawing draw(Rig rig, NetWords phrases) {
    Size size = Size.of(rig);
    double scale = Math.min(TALLEST / size.length(), BROADEST / size.width());
    double left = (Sheet.WIDE - size.width() * scale) / 2;
    Plan plan = new Plan(size, left, HEAD, scale);
    MapWords words = new MapWords(phrases);
    String alt = words.alt("damage", rig);
    Svg svg = new Svg().open(Sheet.WIDE, plan.bottom() + FOOT, alt);
    Outline outline = new Outline(svg, plan);
    outline.draw(rig);
    outline.drawAxles(rig);
    double middle = HEAD + size.length() * scale / 2;
    svg.text(plan.middle(), HEAD - 10, WORDS, true, "middle", words.say("front"));
    svg.text(plan.middle(), plan.bottom() + 15, WORDS, true, "middle", words.say("rear"));
    svg.text(left - 20, middle, WORDS, true, "end", words.say("street-long"));
    svg.text(plan.right() + 20, middle, WORDS, true, "start", words.say("curb-long"));
    return new Drawing(svg.close(), alt, List.of());
  }
}
