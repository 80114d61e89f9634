package org.rigleaf.drawings;

import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.figures.Amounts;
import org.rigleaf.source.Unit;

/** A bar that shows how long a few feet, or two meters, are on a drawing. */
final class ScaleBar {
  private static final double SMALL = 10;
  private static final double ZERO = 9; // how far the bar stands right of its left end

  private final int parts;
  private final double part; // in points
  private final String end;

  /**
   * @param scale points a foot
   */
  ScaleBar(double scale, Amounts amounts) {
    boolean metric = amounts == Amounts.METRIC;
    double feet = metric ? Unit.METRE.convert(2, Unit.FOOT) : 5;
    parts = metric ? 4 : 5;
    part = scale * feet / parts;
    end = amounts.text(feet, Unit.FOOT);
  }

  double width() {
    return ZERO + parts * part + 5 + TextFit.width(end, SMALL, true);
  }

  /** Draws it with its left end and the baseline of its words here. */
  void draw(Svg svg, double x, double y) {
    svg.text(x, y, SMALL, false, "start", "0");
    for (int i = 0; i < parts; i++) {
      Look look = Look.line(0.6).filled(i % 2 == 0 ? Svg.BLACK : Svg.WHITE);
      svg.rect(x + ZERO + i * part, y - 6, part, 5, 0, look);
    }
    svg.text(x + ZERO + parts * part + 4, y, SMALL, false, "start", end);
  }
}
