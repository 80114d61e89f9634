package org.rigleaf.drawings;

import java.util.List;
import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;

/** A box under one end of a wall for the gear of which only that end is known: no leaders. */
final class Somewhere {
  private static final double HEAD = 15;
  private static final double ROW = 21;
  private static final double SIDE = 5;
  private static final double GAP = 4;
  private static final double LEAST_NAME = 60;
  private static final int MOST_NAMES = 4;

  private final Rig rig;
  private final List<Gear> gear;
  private final Badges badges;
  private final MapWords words;
  private final double x;
  private final double wide;

  Somewhere(Rig rig, List<Gear> gear, Badges badges, MapWords words, double x, double wide) {
    this.rig = rig;
    this.gear = gear;
    this.badges = badges;
    this.words = words;
    this.x = x;
    this.wide = wide;
  }

  /** Codes side by side where there are many; else one a row with its name. */
  private int columns() {
    boolean names = gear.size() <= MOST_NAMES && nameRoom() >= LEAST_NAME;
    return names ? 1 : (int) ((wide - 2 * SIDE + GAP) / (badges.wide() + GAP));
  }

  private double nameRoom() {
    return wide - 2 * SIDE - badges.wide() - GAP;
  }

  double height() {
    int columns = columns();
    return gear.isEmpty() ? 0 : HEAD + ROW * ((gear.size() + columns - 1) / columns) + 3;
  }

  void draw(Svg svg, double top) {
    if (gear.isEmpty()) {
      return;
    }
    svg.rect(x, top, wide, height(), 3, Look.line(0.6).in(Svg.GRAY).dashed("3 2"));
    svg.text(x + SIDE, top + 11, Sheet.NAME_SIZE, false, "start", words.say("somewhere"));
    int columns = columns();
    for (int i = 0; i < gear.size(); i++) {
      double left = x + SIDE + i % columns * (badges.wide() + GAP);
      double middle = top + HEAD + ROW * (i / columns) + ROW / 2;
      draw(svg, gear.get(i), left, middle, columns == 1);
    }
  }

  private void draw(Svg svg, Gear g, double left, double middle, boolean named) {
    String code = MapWords.code(rig, g);
    svg.openCallOut(g.id(), code);
    badges.draw(svg, left, middle, code);
    if (named) {
      double at = left + badges.wide() + GAP;
      TextFit.wrap(words.name(g), Sheet.NAME_SIZE, nameRoom(), 1)
          .forEach(n -> svg.text(at, middle + 3.6, Sheet.NAME_SIZE, false, "start", n));
    }
    svg.closeCallOut();
  }
}
