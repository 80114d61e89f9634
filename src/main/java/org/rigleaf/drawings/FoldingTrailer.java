package org.rigleaf.drawings;

import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/** Draws a folding trailer from the side, as it stands in camp: roof lifted, beds pulled out. */
final class FoldingTrailer {
  static final double BOX = 3.4;
  private static final double BED = 3.1;
  private static final Look WALL = Outline.WALL.filled("#f4f4f4");
  private static final Look CLOTH = Outline.PART.filled(Svg.WHITE);

  private final Pen pen;
  private final Rig rig;
  private final Size size;
  private final Levels at;

  FoldingTrailer(Pen pen, Rig rig, Size size, Levels at) {
    this.pen = pen;
    this.rig = rig;
    this.size = size;
    this.at = at;
  }

  void draw() {
    double from = size.starts();
    double to = size.ends();
    double roof = at.roof();
    pen.open("tent");
    pen.box(from + 0.2, to - 0.2, BOX, roof - 0.5, 0, CLOTH);
    pen.close();
    bed(from, -reach(rig, true));
    bed(to, reach(rig, false));
    pen.open("body");
    pen.path(
        WALL,
        Path.from(from, at.under() + 0.4)
            .to(from, BOX)
            .to(to, BOX)
            .to(to, at.under() + 0.4)
            .to(to - 0.8, at.under())
            .to(from + 0.4, at.under())
            .close());
    pen.path(
        WALL,
        Path.from(from, roof - 0.5)
            .to(from, roof - 0.2)
            .bend(from + 0.1, roof, from + 0.8, roof)
            .to(to - 0.8, roof)
            .bend(to - 0.1, roof, to, roof - 0.2)
            .to(to, roof - 0.5)
            .close());
    pen.close();
  }

  /** A bed pulled out at one end, under its tent. */
  private void bed(double wall, double out) {
    if (out == 0) {
      return;
    }
    double roof = at.roof() - 0.5;
    double middle = wall + out * 0.55;
    pen.open("body.bed-ends");
    pen.polygon(CLOTH, wall, roof, middle, roof - 0.35, wall + out, BED + 0.3, wall, BED + 0.3);
    pen.line(middle, roof - 0.35, middle, BED + 0.3, Look.line(0.5).in(Svg.GRAY));
    double left = Math.min(wall, wall + out);
    pen.box(left, left + Math.abs(out), BED, BED + 0.3, 0, WALL);
    pen.line(wall + out * 0.85, BED, wall, at.under() + 0.3, Outline.PART);
    pen.close();
  }

  /** How far a bed is pulled out ahead of the body or behind it, in feet; 0 where there is none. */
  static double reach(Rig rig, boolean front) {
    Size size = Size.of(rig);
    double middle = (size.starts() + size.ends()) / 2;
    return rig.body().bedEnds().stream()
        .filter(b -> b.reach().known())
        .filter(b -> b.gear().place().spot().filter(s -> at(s, middle, front)).isPresent())
        .mapToDouble(b -> b.reach().value())
        .max()
        .orElse(0);
  }

  private static boolean at(Spot spot, double middle, boolean front) {
    Face end = front ? Face.FRONT : Face.REAR;
    boolean beside = spot.face() != Face.FRONT && spot.face() != Face.REAR;
    return spot.face() == end
        || beside && spot.aft().filter(a -> front == (a < middle)).isPresent();
  }
}
