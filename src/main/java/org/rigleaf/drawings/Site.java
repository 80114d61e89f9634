package org.rigleaf.drawings;

import org.rigleaf.rig.Gear;

/**
 * A dot on the plan.
 *
 * @param code what its call-out says
 * @param home the side its label belongs to: -1 street, 1 curb, 0 whichever is nearer
 * @param along true if it may slide only along a wall, not off it
 */
record Site(Gear gear, String code, Mark mark, int home, boolean along, double x, double y) {
  Site moved(double newX, double newY) {
    return new Site(gear, code, mark, home, along, newX, newY);
  }
}
