package org.rigleaf.figures;

import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Identity;
import org.rigleaf.rig.Rig;

/** The water in the pipes of a rig: what the keeper says, else half-inch PEX along the body. */
final class Pipes {
  private Pipes() {}

  /** The working of {@link #gallons}. */
  static String formula(Rig rig) {
    String hot = rig.water().heater().isPresent() ? "({cold-run} + {hot-run})" : "{cold-run}";
    return rig.water().lines().known() ? "{lines}" : "{pipe} ÷ 100 × " + hot + " × {body}";
  }

  /** Gallons in the lines; without a heater there is no hot pipe. */
  static double gallons(Rig rig, Inputs in) {
    if (rig.water().lines().known()) {
      return in.of("lines", rig.water().lines());
    }
    double gallonsPer100Feet = in.typical("pipe", "pipe.volume");
    double runs = in.typical("cold-run", "pipe.cold");
    if (rig.water().heater().isPresent()) {
      runs += in.typical("hot-run", "pipe.hot");
    }
    return pipeGallons(runs * in.of("body", bodyLength(rig.identity())), gallonsPer100Feet);
  }

  /** The length of the body, else of the rig. */
  static Fact bodyLength(Identity identity) {
    return identity.bodyLength().or(identity.length());
  }

  /**
   * Gallons in a length of pipe. Tables print 0.92 gal in 100 ft of half-inch PEX; the inside width
   * often printed beside it, 0.485 in, does not give that, the mean one of 0.475 in does.
   *
   * @throws IllegalArgumentException for less than no pipe
   */
  static double pipeGallons(double feet, double gallonsPer100Feet) {
    if (feet < 0) {
      throw new IllegalArgumentException("a pipe cannot be " + feet + " ft long");
    }
    return feet * gallonsPer100Feet / 100;
  }
}
