package org.rigleaf.drawings;

import org.rigleaf.drawings.Svg.Look;

/** Draws the walls of motorhomes from the side, with the cab and its glass. */
final class Motorhomes {
  private static final Look BODY = Outline.WALL.filled("#f4f4f4");
  private static final Look GLASS = Outline.PART.filled("#dcdcdc");
  private static final Look SEAM = Outline.PART.in(Svg.GRAY);

  /** A windshield seen from the side of a class A: how far back it reaches. */
  private static final double GLASS_BACK = 1.3;

  private final Pen pen;
  private final Size size;
  private final double to;
  private final Levels at;

  Motorhomes(Pen pen, Size size, Levels at) {
    this.pen = pen;
    this.size = size;
    this.to = size.ends();
    this.at = at;
  }

  /** A flat front with glass from the dashboard up. */
  void classA() {
    double roof = at.roof();
    double low = at.under();
    pen.open("body");
    pen.path(
        BODY,
        Path.from(0.9, low)
            .bend(0.1, low, 0, low + 1)
            .to(0.25, roof - 2)
            .bend(0.5, roof, 2.2, roof)
            .to(to - 0.35, roof)
            .bend(to, roof, to, roof - 0.35)
            .to(to, low + 0.7)
            .to(to - 2.4, low)
            .close());
    pen.line(0.05, low + 0.9, to, low + 0.9, SEAM);
    pen.close();
    pen.open("cab");
    double sill = low + 3.4;
    double head = Math.min(roof - 1.6, sill + 4);
    pen.path(
        GLASS,
        Path.from(0.13, sill)
            .to(0.28, head)
            .to(GLASS_BACK, head)
            .to(GLASS_BACK - 0.3, sill)
            .close());
    pen.box(1.7, 3.5, sill + 0.3, head - 0.6, 0.2, GLASS);
    pen.close();
  }

  /** A hood, a cab, and over the cab the nose of the house. */
  void classC() {
    double roof = at.roof();
    double low = at.under();
    double house = Math.min(6.2, size.length() * 0.3);
    double over = Math.min(6.3, roof - 2.2);
    pen.open("cab");
    cab(house, low, over);
    pen.close();
    pen.open("body");
    pen.path(
        BODY,
        Path.from(house, low)
            .to(house, over - 0.5)
            .to(house - 0.4, over)
            .to(house * 0.42, over)
            .bend(house * 0.3, over, house * 0.3, over + 0.6)
            .to(house * 0.36, roof - 1.2)
            .bend(house * 0.4, roof, house * 0.62, roof)
            .to(to - 0.35, roof)
            .bend(to, roof, to, roof - 0.35)
            .to(to, low + 0.6)
            .to(to - 2, low)
            .close());
    pen.line(house, low + 0.6, to, low + 0.6, SEAM);
    pen.close();
  }

  private void cab(double house, double low, double over) {
    double sill = 3.9;
    double pillar = house * 0.52;
    pen.path(
        BODY,
        Path.from(house, low)
            .to(0.3, low - 0.2)
            .bend(0, low - 0.2, 0, low + 0.4)
            .to(0.1, 3)
            .bend(0.2, 3.4, 1, 3.5)
            .to(pillar - 0.9, sill)
            .to(pillar + 0.5, over)
            .to(house, over)
            .close());
    pen.path(
        GLASS,
        Path.from(pillar - 0.2, sill + 0.1)
            .to(pillar + 0.7, over - 0.4)
            .to(house - 0.5, over - 0.4)
            .to(house - 0.5, sill + 0.1)
            .close());
    pen.path(
        SEAM,
        Path.from(pillar - 0.3, sill)
            .to(pillar - 0.3, low + 0.1)
            .to(house - 0.4, low + 0.1)
            .to(house - 0.4, over - 0.3));
    pen.circle(0.35, 2.7, 0.25, GLASS);
  }

  /** One shell from hood to rear. */
  void van() {
    double roof = at.roof();
    double low = at.under();
    double sill = roof * 0.47;
    pen.open("body");
    pen.path(
        BODY,
        Path.from(0.4, low - 0.1)
            .bend(0, low - 0.1, 0, low + 0.5)
            .to(0.1, roof * 0.33)
            .bend(0.2, roof * 0.38, 0.8, roof * 0.4)
            .to(2.6, sill)
            .to(4.9, roof - 0.9)
            .bend(5.4, roof, 6.8, roof)
            .to(to - 0.5, roof)
            .bend(to - 0.1, roof, to - 0.1, roof - 0.5)
            .to(to, low + 0.6)
            .bend(to, low, to - 0.6, low)
            .close());
    pen.close();
    pen.open("cab");
    pen.path(
        GLASS,
        Path.from(3.4, sill + 0.1)
            .to(5.1, roof * 0.78)
            .to(6.3, roof * 0.78)
            .to(6.3, sill + 0.1)
            .close());
    pen.path(SEAM, Path.from(3.3, sill).to(3.3, low + 0.1).to(6.5, low + 0.1).to(6.5, roof * 0.82));
    pen.circle(0.45, roof * 0.31, 0.25, GLASS);
    pen.close();
  }
}
