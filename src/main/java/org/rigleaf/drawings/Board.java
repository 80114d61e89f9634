package org.rigleaf.drawings;

/**
 * Feet on a wall that is seen square on to points on the page.
 *
 * @param x0 x of the coupler, king pin or front bumper; of the street-side wall on an end
 * @param ground y of the ground
 * @param scale points a foot
 * @param mirrored true if feet run to the left
 */
record Board(double x0, double ground, double scale, boolean mirrored) {
  double x(double alongFt) {
    return x0 + (mirrored ? -alongFt : alongFt) * scale;
  }

  double y(double upFt) {
    return ground - upFt * scale;
  }
}
