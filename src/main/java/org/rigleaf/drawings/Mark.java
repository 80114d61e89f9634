package org.rigleaf.drawings;

import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Spot;

/** The kinds of dot; the shape says where the gear is, so that no color is needed. */
enum Mark {
  INSIDE,
  WALL,
  ROOF,
  UNDER,
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
      case COARSE -> svg.rect(x - 3.8, y - 3.8, 7.6, 7.6, 0, line);
    }
  }

  private static Look dot() {
    return Look.solid(Svg.BLACK);
  }
}
