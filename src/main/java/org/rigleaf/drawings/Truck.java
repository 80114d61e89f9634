package org.rigleaf.drawings;

import org.rigleaf.drawings.Svg.Look;

/** Draws a truck camper from the side, and dashed under it the truck that carries it. */
final class Truck {
  /** How far the truck's front reaches ahead of the camper, in feet. */
  static final double AHEAD = 5.5;

  private static final Look BODY = Outline.WALL.filled("#f4f4f4");
  private static final Look TRUCK = Outline.HIDDEN;
  private static final double OVER_CAB = 6.5;
  private static final double BED = 8.3;
  private static final double RADIUS = 1.3;

  private final Pen pen;
  private final double from;
  private final double to;
  private final Levels at;

  Truck(Pen pen, Size size, Levels at) {
    this.pen = pen;
    this.from = size.starts();
    this.to = size.ends();
    this.at = at;
  }

  void camper() {
    double bed = bed(from, to);
    truck(bed);
    double roof = at.roof();
    pen.open("body");
    pen.path(
        BODY,
        Path.from(bed + 0.2, at.under())
            .to(bed + 0.2, OVER_CAB)
            .to(from + 0.5, OVER_CAB)
            .bend(from, OVER_CAB, from, OVER_CAB + 0.6)
            .to(from + 0.4, roof - 1)
            .bend(from + 0.6, roof, from + 1.6, roof)
            .to(to - 0.35, roof)
            .bend(to, roof, to, roof - 0.35)
            .to(to, at.under())
            .close());
    pen.close();
  }

  /** Where the cab ends and the bed begins. */
  private static double bed(double from, double to) {
    return from + Math.min(7, (to - from) * 0.42);
  }

  /** How far the truck reaches out behind a short camper. */
  static double behind(Size size) {
    return Math.max(0, bed(size.starts(), size.ends()) + BED - size.length());
  }

  private void truck(double bed) {
    double front = from - AHEAD + 0.3;
    pen.open("truck");
    pen.path(
        TRUCK,
        Path.from(bed, 1.7)
            .to(front, 1.7)
            .to(front, 3.6)
            .bend(front + 0.1, 4, front + 0.8, 4.1)
            .to(from + 0.3, 4.4)
            .to(from + 1.8, 6.2)
            .to(bed - 0.3, 6.2)
            .to(bed, 4.5)
            .close());
    pen.path(TRUCK, Path.from(bed, 4.5).to(bed + BED, 4.5).to(bed + BED, 2).to(bed, 1.8));
    wheel(front + 2.8);
    wheel(bed + 4);
    pen.close();
  }

  /** The truck from ahead, under the camper. */
  static void front(Pen pen, double wide) {
    double in = Math.max(0.2, (wide - 6.6) / 2);
    pen.open("truck");
    pen.polygon(TRUCK, in + 0.4, 4.4, in + 0.9, 6.2, wide - in - 0.9, 6.2, wide - in - 0.4, 4.4);
    pen.box(in, wide - in, 1.5, 4.4, 0.3, TRUCK);
    wheels(pen, wide, in);
    pen.close();
  }

  /** Its rear: bumper and wheels; the camper hides the rest. */
  static void rear(Pen pen, double wide) {
    double in = Math.max(0.2, (wide - 6.6) / 2);
    pen.open("truck");
    pen.box(in, wide - in, 1.5, 3.1, 0.2, TRUCK);
    wheels(pen, wide, in);
    pen.close();
  }

  private static void wheels(Pen pen, double wide, double in) {
    pen.box(in + 0.2, in + 0.9, 0, 1.5, 0.1, TRUCK);
    pen.box(wide - in - 0.9, wide - in - 0.2, 0, 1.5, 0.1, TRUCK);
  }

  private void wheel(double along) {
    pen.circle(along, RADIUS, RADIUS, TRUCK.filled(Svg.WHITE));
    pen.circle(along, RADIUS, RADIUS * 0.58, TRUCK);
  }
}
