package org.rigleaf.drawings;

import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Identity;
import org.rigleaf.rig.Rig;

/** Draws the wheels from the side and from an end. */
final class Wheels {
  static final double TIRE_WIDE = 0.7;
  private static final String RUBBER = "#6a6a6a";
  private static final double DUAL_APART = 0.9;

  private final Pen pen;
  private final double radius;

  Wheels(Pen pen, double radius) {
    this.pen = pen;
    this.radius = radius;
  }

  /** Every axle whose place is known. */
  void beside(Rig rig) {
    rig.identity().axles().stream()
        .filter(Fact::known)
        .forEach(a -> wheel(a.value(), Outline.PART));
  }

  /** A wheel with its arch cut out of the body above it. */
  void wheel(double aft, Look look) {
    pen.open("wheel");
    pen.path(
        look.filled(Svg.WHITE),
        Path.from(aft - radius * 1.25, radius)
            .bend(aft - radius * 1.2, radius * 2.3, aft, radius * 2.3)
            .bend(aft + radius * 1.2, radius * 2.3, aft + radius * 1.25, radius));
    pen.circle(aft, radius, radius, look.filled(RUBBER));
    pen.circle(aft, radius, radius * 0.58, look.filled(Svg.WHITE));
    pen.circle(aft, radius, radius * 0.16, look.filled(Svg.WHITE));
    pen.close();
  }

  /** Two wheels, or two pairs, under an end. */
  void under(Rig rig, int axle) {
    Identity id = rig.identity();
    double width = Size.of(rig).width();
    double track = id.track().known() ? id.track().value() : width - 1.8;
    boolean dual = Outline.dual(rig, axle);
    pen.open("wheel");
    for (double side : new double[] {-1, 1}) {
      double center = width / 2 + side * track / 2;
      for (double off : dual ? new double[] {-DUAL_APART / 2, DUAL_APART / 2} : new double[] {0}) {
        double left = center + off - TIRE_WIDE / 2;
        pen.box(left, left + TIRE_WIDE, 0, 2 * radius, 0.2, Outline.PART.filled(RUBBER));
      }
    }
    pen.close();
  }
}
