package org.rigleaf.drawings;

import java.util.List;
import org.rigleaf.drawings.Svg.Look;

/**
 * The round badges that hold the codes; one size on one drawing.
 *
 * @param wide width in points
 * @param high height in points
 */
record Badges(double wide, double high) {
  static final double CODE_SIZE = 13;
  static final double HIGH = 19;
  private static final double DIGIT = 0.711; // of the type size
  private static final double SIDES = 8;

  /** Wide enough for the widest of these codes. */
  static Badges of(List<String> codes, double high) {
    double widest =
        codes.stream().mapToDouble(c -> TextFit.width(c, CODE_SIZE, true)).max().orElse(0);
    return new Badges(Math.max(high, widest + SIDES), high);
  }

  /** Draws one; x is its left edge, y its middle. */
  void draw(Svg svg, double x, double y, String code) {
    Look look = Look.line(0.9).filled(Svg.WHITE);
    svg.rect(x, y - high / 2, wide, high, high / 2, look);
    svg.text(x + wide / 2, y + CODE_SIZE * DIGIT / 2, CODE_SIZE, true, "middle", code);
  }
}
