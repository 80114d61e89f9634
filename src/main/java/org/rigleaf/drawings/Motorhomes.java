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
        "M",
        0.9,
        low,
        "Q",
        0.1,
        low,
        0,
        low + 1,
        "L",
        0.25,
        roof - 2,
        "Q",
        0.5,
        roof,
        2.2,
        roof,
        "L",
        to - 0.35,
        roof,
        "Q",
        to,
        roof,
        to,
        roof - 0.35,
        "L",
        to,
        low + 0.7,
        "L",
        to - 2.4,
        low,
        "Z");
    pen.line(0.05, low + 0.9, to, low + 0.9, SEAM);
    pen.close();
    pen.open("cab");
    double sill = low + 3.4;
    double head = Math.min(roof - 1.6, sill + 4);
    pen.path(
        GLASS,
        "M",
        0.13,
        sill,
        "L",
        0.28,
        head,
        "L",
        GLASS_BACK,
        head,
        "L",
        GLASS_BACK - 0.3,
        sill,
        "Z");
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
        "M",
        house,
        low,
        "L",
        house,
        over - 0.5,
        "L",
        house - 0.4,
        over,
        "L",
        house * 0.42,
        over,
        "Q",
        house * 0.3,
        over,
        house * 0.3,
        over + 0.6,
        "L",
        house * 0.36,
        roof - 1.2,
        "Q",
        house * 0.4,
        roof,
        house * 0.62,
        roof,
        "L",
        to - 0.35,
        roof,
        "Q",
        to,
        roof,
        to,
        roof - 0.35,
        "L",
        to,
        low + 0.6,
        "L",
        to - 2,
        low,
        "Z");
    pen.line(house, low + 0.6, to, low + 0.6, SEAM);
    pen.close();
  }

  private void cab(double house, double low, double over) {
    double sill = 3.9;
    double pillar = house * 0.52;
    pen.path(
        BODY,
        "M",
        house,
        low,
        "L",
        0.3,
        low - 0.2,
        "Q",
        0,
        low - 0.2,
        0,
        low + 0.4,
        "L",
        0.1,
        3,
        "Q",
        0.2,
        3.4,
        1,
        3.5,
        "L",
        pillar - 0.9,
        sill,
        "L",
        pillar + 0.5,
        over,
        "L",
        house,
        over,
        "Z");
    pen.path(
        GLASS,
        "M",
        pillar - 0.2,
        sill + 0.1,
        "L",
        pillar + 0.7,
        over - 0.4,
        "L",
        house - 0.5,
        over - 0.4,
        "L",
        house - 0.5,
        sill + 0.1,
        "Z");
    pen.path(
        SEAM,
        "M",
        pillar - 0.3,
        sill,
        "L",
        pillar - 0.3,
        low + 0.1,
        "L",
        house - 0.4,
        low + 0.1,
        "L",
        house - 0.4,
        over - 0.3);
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
        "M",
        0.4,
        low - 0.1,
        "Q",
        0,
        low - 0.1,
        0,
        low + 0.5,
        "L",
        0.1,
        roof * 0.33,
        "Q",
        0.2,
        roof * 0.38,
        0.8,
        roof * 0.4,
        "L",
        2.6,
        sill,
        "L",
        4.9,
        roof - 0.9,
        "Q",
        5.4,
        roof,
        6.8,
        roof,
        "L",
        to - 0.5,
        roof,
        "Q",
        to - 0.1,
        roof,
        to - 0.1,
        roof - 0.5,
        "L",
        to,
        low + 0.6,
        "Q",
        to,
        low,
        to - 0.6,
        low,
        "Z");
    pen.close();
    pen.open("cab");
    pen.path(
        GLASS,
        "M",
        3.4,
        sill + 0.1,
        "L",
        5.1,
        roof * 0.78,
        "L",
        6.3,
        roof * 0.78,
        "L",
        6.3,
        sill + 0.1,
        "Z");
    pen.path(SEAM, "M", 3.3, sill, "L", 3.3, low + 0.1, "L", 6.5, low + 0.1, "L", 6.5, roof * 0.82);
    pen.circle(0.45, roof * 0.31, 0.25, GLASS);
    pen.close();
  }
}
