package org.rigleaf.drawings;

import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;

/**
 * How high the rig stands, in feet above the ground.
 *
 * @param measured false if a typical height stands in for one that nobody measured
 */
record Tall(double top, boolean measured) {
  /** Where the house begins; house assumption. */
  static final double FLOOR = 2;

  static Tall of(Rig rig) {
    Fact height = rig.identity().height();
    return height.known() ? new Tall(height.value(), true) : new Tall(typical(rig), false);
  }

  private static double typical(Rig rig) {
    return switch (rig.identity().kind()) {
      case CLASS_A -> 12.5;
      case FIFTH_WHEEL, TOY_HAULER -> 13;
      case CLASS_B -> 9.5;
      case FOLDING_TRAILER -> 5;
      default -> 11;
    };
  }
}
