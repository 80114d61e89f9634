package org.rigleaf.drawings;

import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Spot;

/** The kinds of dot; the shape says where the gear is, so that no color is needed. */
enum Mark {
  INSIDE,
  WALL,
  ROOF,
  UNDER,
  /** On a wall seen square on: this far along it, at a height that nobody told. */
  UPRIGHT,
  /** The same: at this height, how far across nobody told. */
  LEVEL,
  COARSE;

  /** Half the width of the largest of them, in points. */
  static final double REACH = 4.2;

  static Mark of(Spot spot) {
    if (spot.zone().isPresent()) {
      return COARSE;
    }
    return switch (spot.face()) {
      case INSIDE -> INSIDE;
      case ROOF -> ROOF;
      case UNDER -> UNDER;
      default -> WALL;
    };
  }

  void draw(Svg svg, double x, double y) {
    Look line = Look.line(0.9).filled(Svg.WHITE);
    switch (this) {
      case INSIDE -> svg.circle(x, y, 2.6, Look.solid(Svg.BLACK));
      case WALL -> svg.circle(x, y, 4, Look.line(0.9).filled(Svg.WHITE)).circle(x, y, 2.2, dot());
      case ROOF -> svg.rect(x - 4, y - 4, 8, 8, 0, line.dashed("2 1.2")).circle(x, y, 1.8, dot());
      case UNDER -> svg.circle(x, y, 3.2, Look.line(1.1).filled(Svg.WHITE));
      case UPRIGHT -> arrow(svg, x, y, 0, 1);
      case LEVEL -> arrow(svg, x, y, 1, 0);
      case COARSE -> svg.rect(x - 3.8, y - 3.8, 7.6, 7.6, 0, line);
    }
  }

  /** A dot with a double arrow along which the gear may be. */
  private static void arrow(Svg svg, double x, double y, double dx, double dy) {
    Look black = dot();
    svg.rect(
        x - 3.4 * dy - 4 * dx,
        y - 3.4 * dx - 4 * dy,
        6.8 * dy + 8 * dx,
        6.8 * dx + 8 * dy,
        0,
        Look.solid(Svg.WHITE));
    for (int end : new int[] {-1, 1}) {
      double tipX = x + 4.2 * end * dx;
      double tipY = y + 4.2 * end * dy;
      double backX = x + 1.2 * end * dx;
      double backY = y + 1.2 * end * dy;
      svg.polygon(
          black, tipX, tipY, backX + 3 * dy, backY + 3 * dx, backX - 3 * dy, backY - 3 * dx);
    }
  }

  private static Look dot() {
    return Look.solid(Svg.BLACK);
  }
}
