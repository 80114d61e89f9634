package org.rigleaf.drawings;

import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Answer;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;
import org.rigleaf.rig.Road;

/** Draws the rig from above: A-frame or king pin, cab, walls; wheels apart. */
final class Outline {
  static final Look WALL = Look.line(1.4);
  static final Look PART = Look.line(0.8);
  static final Look HIDDEN = Look.line(0.6).in(Svg.GRAY).dashed("3 2");
  private static final String FLOOR = "#f4f4f4";

  /** Width of a rail of the A-frame, in points. */
  private static final double RAIL = 6;

  private static final double TIRE_LONG_FT = 2.2;
  private static final double TIRE_WIDE_FT = 0.65;
  private static final double DUAL_APART_FT = 0.9;

  private final Svg svg;
  private final Plan plan;

  Outline(Svg svg, Plan plan) {
    this.svg = svg;
    this.plan = plan;
  }

  void draw(Rig rig) {
    RigKind kind = rig.identity().kind();
    if (kind.ballCoupled()) {
      frame();
    }
    switch (kind) {
      case CLASS_C -> classC();
      case CLASS_B -> van();
      case CLASS_A ->
          box(1.2).windshield(0.4, 1.5, plan.half(1) * 0.9).wheel(plan.half(1) * 0.5, 3.2);
      case TRUCK_CAMPER, FOLDING_TRAILER -> box(0.2);
      default -> box(0.7);
    }
    if (kind == RigKind.FIFTH_WHEEL) {
      svg.circle(plan.middle(), plan.bodyTop() + 7, 5, PART);
    }
  }

  /** The wheels, seen through the floor. */
  void drawAxles(Rig rig) {
    for (int i = 0; i < rig.identity().axles().size(); i++) {
      axle(rig, i);
    }
  }

  /** Two rails from the coupler to the body, a cross rail, the coupler. */
  private void frame() {
    double x = plan.middle();
    double top = plan.top();
    double low = plan.bodyTop();
    double out = plan.frameHalf();
    svg.polygon(PART.filled(FLOOR), x, top, x + out, low, x - out, low);
    double rail = RAIL * Math.hypot(out, low - top);
    double in = out - rail / (low - top);
    double high = top + rail / out;
    if (in > 0 && high < low) {
      svg.polygon(PART.filled(Svg.WHITE), x, high, x + in, low, x - in, low);
    }
    svg.rect(x - 4, top - 3, 8, 13, 3, PART.filled(Svg.WHITE));
  }

  private Outline box(double frontRoundFt) {
    double left = plan.left();
    double right = plan.right();
    double top = plan.bodyTop();
    double low = plan.bodyBottom();
    double r = frontRoundFt * plan.scale();
    double q = Math.min(3, r);
    svg.path(
        WALL.filled(FLOOR),
        Path.from(left, top + r)
            .bend(left, top, left + r, top)
            .to(right - r, top)
            .bend(right, top, right, top + r)
            .to(right, low - q)
            .bend(right, low, right - q, low)
            .to(left + q, low)
            .bend(left, low, left, low - q)
            .close());
    return this;
  }

  /** Glass seen from above: two lines bowed forward. */
  private Outline windshield(double crownFt, double footFt, double half) {
    double x = plan.middle();
    double crown = plan.bodyTop() + crownFt * plan.scale();
    double foot = plan.bodyTop() + footFt * plan.scale();
    double band = 0.7 * plan.scale();
    svg.path(PART, Path.from(x - half, foot).bend(x, 2 * crown - foot, x + half, foot));
    double in = half * 0.9;
    svg.path(
        PART, Path.from(x - in, foot + band).bend(x, 2 * crown - foot + band, x + in, foot + band));
    svg.line(x - half, foot, x - in, foot + band, PART)
        .line(x + half, foot, x + in, foot + band, PART);
    return this;
  }

  /** The steering wheel, which shows the driver's side. */
  private void wheel(double street, double aftFt) {
    double r = 0.5 * plan.scale();
    double x = plan.middle() - street;
    Look thin = PART.in(Svg.GRAY);
    svg.circle(x, plan.y(aftFt), r, thin).line(x - r, plan.y(aftFt), x + r, plan.y(aftFt), thin);
  }

  private void van() {
    box(1.6).windshield(2.6, 3.2, plan.half(3) * 0.88).wheel(plan.half(3) * 0.45, 4.9);
  }

  /** A cab narrower than the house, and over it, dashed, the bunk. */
  private void classC() {
    double x = plan.middle();
    double top = plan.bodyTop();
    double house = plan.y(plan.cabEnds());
    double half = plan.cabHalf();
    double r = 1.3 * plan.scale();
    double low = plan.bodyBottom();
    svg.path(
        WALL.filled(FLOOR),
        Path.from(x - half, house)
            .to(x - half, top + r)
            .bend(x - half, top, x - half + r, top)
            .to(x + half - r, top)
            .bend(x + half, top, x + half, top + r)
            .to(x + half, house));
    svg.rect(plan.left(), house, plan.right() - plan.left(), low - house, 3, WALL.filled(FLOOR));
    svg.line(x - half + 1, house, x + half - 1, house, new Look(FLOOR, 2, "", "none"));
    windshield(2.7, 3.3, half * 0.9);
    wheel(half * 0.45, 5);
    double crown = plan.y(2.2);
    svg.path(
        HIDDEN,
        Path.from(plan.left(), house)
            .to(plan.left(), crown + 2 * r)
            .bend(plan.left(), crown, x, crown)
            .bend(plan.right(), crown, plan.right(), crown + 2 * r)
            .to(plan.right(), house));
  }

  private void axle(Rig rig, int index) {
    Fact axle = rig.identity().axles().get(index);
    if (!axle.known()) {
      return;
    }
    Fact track = rig.identity().track();
    double width = plan.size().width();
    double trackFt = track.known() ? track.value() : width - 1.8;
    boolean dual = dual(rig, index);
    for (double side : new double[] {-1, 1}) {
      double center = width / 2 + side * trackFt / 2;
      if (dual) {
        tire(center - DUAL_APART_FT / 2, axle.value());
        tire(center + DUAL_APART_FT / 2, axle.value());
      } else {
        tire(center, axle.value());
      }
    }
  }

  private void tire(double acrossFt, double aftFt) {
    double s = plan.scale();
    double x = plan.x(acrossFt - TIRE_WIDE_FT / 2);
    double y = plan.y(aftFt) - TIRE_LONG_FT / 2 * s;
    svg.rect(x, y, TIRE_WIDE_FT * s, TIRE_LONG_FT * s, 2.5, HIDDEN);
  }

  /** Tires stand by axle, front to rear; one entry named otherwise speaks for all axles. */
  static boolean dual(Rig rig, int index) {
    var tires = rig.road().tires();
    if (tires.isEmpty()) {
      return false;
    }
    Road.Tires entry = tires.get(Math.min(index, tires.size() - 1));
    return entry.dual() == Answer.YES;
  }
}
