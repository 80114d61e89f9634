package org.rigleaf.drawings;

import org.rigleaf.rig.RigKind;

/**
 * Feet on the rig to points on the page; front at the top, street side left.
 *
 * @param left x of the street-side wall
 * @param top y of the coupler, king pin or front bumper
 * @param scale points a foot
 */
record Plan(Size size, double left, double top, double scale) {
  private static final double CAB_SHARE_OF_WIDTH = 0.8;
  private static final double CAB_FT = 6.2;
  private static final double FRAME_SHARE_OF_WIDTH = 0.64;

  static double clamp(double value, double least, double most) {
    return Math.max(least, Math.min(most, value));
  }

  double x(double across) {
    return left + clamp(across, 0, size.width()) * scale;
  }

  double y(double aft) {
    return top + clamp(aft, 0, size.length()) * scale;
  }

  double middle() {
    return left + size.width() * scale / 2;
  }

  double right() {
    return left + size.width() * scale;
  }

  double bodyTop() {
    return y(size.starts());
  }

  double bodyBottom() {
    return y(size.ends());
  }

  double bottom() {
    return y(size.length());
  }

  /** Where the cab of a class C ends and its house begins, in feet. */
  double cabEnds() {
    return size.kind() == RigKind.CLASS_C ? Math.min(CAB_FT, size.length() * 0.3) : 0;
  }

  double cabHalf() {
    return size.width() * scale * CAB_SHARE_OF_WIDTH / 2;
  }

  /** Half the width of the A-frame where it meets the body. */
  double frameHalf() {
    return size.width() * scale * FRAME_SHARE_OF_WIDTH / 2;
  }

  /** Half the width in points of whatever stands there: house, cab or A-frame. */
  double half(double aft) {
    if (aft < size.starts() && size.kind().ballCoupled()) {
      return frameHalf() * aft / size.starts();
    }
    return aft < cabEnds() ? cabHalf() : size.width() * scale / 2;
  }

  /** X of the outside wall at this distance back. */
  double wall(boolean street, double aft) {
    return middle() + (street ? -half(aft) : half(aft));
  }
}
