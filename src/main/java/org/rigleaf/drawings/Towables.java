package org.rigleaf.drawings;

import org.rigleaf.drawings.Svg.Look;

/** Draws the walls of trailers from the side. */
final class Towables {
  private static final Look BODY = Outline.WALL.filled("#f4f4f4");
  private static final Look SEAM = Outline.PART.in(Svg.GRAY);

  private final Pen pen;
  private final double from;
  private final double to;
  private final Levels at;

  Towables(Pen pen, Size size, Levels at) {
    this.pen = pen;
    this.from = size.starts();
    this.to = size.ends();
    this.at = at;
  }

  /** A box with a raked front and a lifted rear edge. */
  void trailer() {
    double roof = at.roof();
    double low = at.under();
    double rake = Math.min(1.5, (to - from) * 0.12);
    pen.open("body");
    pen.path(
        BODY,
        Path.from(from + 0.5, low)
            .bend(from, low, from, low + 0.9)
            .to(from, roof * 0.48)
            .to(from + rake * 0.8, roof - 0.7)
            .bend(from + rake, roof, from + rake + 0.9, roof)
            .to(to - 0.35, roof)
            .bend(to, roof, to, roof - 0.35)
            .to(to, low + 0.5)
            .to(to - 1.6, low)
            .close());
    pen.line(from + 0.2, low + 0.5, to, low + 0.5, SEAM);
    pen.close();
  }

  /**
   * A box whose front part is raised to stand over the bed of a truck, on its landing gear.
   *
   * @param nose where that part ends
   */
  void fifthWheel(double nose) {
    double roof = at.roof();
    double low = at.under();
    pen.open("pin");
    pen.polygon(
        Outline.PART.filled(Svg.WHITE),
        from + 0.3,
        Nose.OVER_TRUCK,
        from + 2.6,
        Nose.OVER_TRUCK,
        from + 1.5,
        Nose.OVER_TRUCK - 0.9,
        from + 0.3,
        Nose.OVER_TRUCK - 0.9);
    pen.box(
        from + 0.5,
        from + 0.8,
        Nose.OVER_TRUCK - 1.3,
        Nose.OVER_TRUCK - 0.9,
        0,
        Outline.PART.filled(Svg.WHITE));
    pen.close();
    pen.open("landing-gear");
    pen.box(nose + 0.9, nose + 1.2, 0.14, low, 0, Outline.PART.filled(Svg.WHITE));
    pen.box(nose + 0.6, nose + 1.5, 0, 0.14, 0, Outline.PART.filled(Svg.WHITE));
    pen.close();
    pen.open("body");
    pen.path(
        BODY,
        Path.from(from + 0.5, Nose.OVER_TRUCK)
            .bend(from, Nose.OVER_TRUCK, from, Nose.OVER_TRUCK + 0.8)
            .to(from + 0.35, roof - 1.4)
            .bend(from + 0.6, roof, from + 2, roof)
            .to(to - 0.35, roof)
            .bend(to, roof, to, roof - 0.35)
            .to(to, low + 0.5)
            .to(to - 1.6, low)
            .to(nose + 0.4, low)
            .to(nose + 0.2, Nose.OVER_TRUCK - 0.4)
            .bend(nose + 0.1, Nose.OVER_TRUCK, nose - 0.4, Nose.OVER_TRUCK)
            .close());
    pen.line(nose + 0.4, low + 0.5, to, low + 0.5, SEAM);
    pen.close();
  }
}
