package org.rigleaf.drawings;

import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.drawings.Svg.Look;

/** The outline of a box: each kind of thing has its own, told apart without color. */
final class BoxShape {
  private static final double BAR = 2.5;
  private static final double INSET = 2;
  private static final double CUT = 5;
  private static final double ROUND = 8;
  private static final double THIN = 0.8;
  private static final double THICK = 1.2;

  private BoxShape() {}

  static void draw(Svg svg, Shape shape, double x, double y, double wide, double high) {
    Look thin = Look.line(THIN).filled(Svg.WHITE);
    Look thick = Look.line(THICK).filled(Svg.WHITE);
    switch (shape) {
      case SOURCE -> {
        svg.rect(x, y, wide, high, 0, thin);
        svg.rect(x, y, BAR, high, 0, Look.solid(Svg.BLACK));
      }
      case STORE -> {
        svg.rect(x, y, wide, high, 0, thick);
        svg.rect(x + INSET, y + INSET, wide - 2 * INSET, high - 2 * INSET, 0, Look.line(0.5));
      }
      case DEVICE -> svg.rect(x, y, wide, high, 0, thick);
      case SWITCH -> octagon(svg, thick, x, y, x + wide, y + high);
      case LOAD -> svg.rect(x, y, wide, high, Math.min(ROUND, high / 2), thin);
    }
  }

  private static void octagon(
      Svg svg, Look look, double left, double top, double right, double bottom) {
    svg.polygon(
        look,
        left + CUT,
        top,
        right - CUT,
        top,
        right,
        top + CUT,
        right,
        bottom - CUT,
        right - CUT,
        bottom,
        left + CUT,
        bottom,
        left,
        bottom - CUT,
        left,
        top + CUT);
  }
}
