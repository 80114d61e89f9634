package org.rigleaf.drawings;

import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;
import org.rigleaf.rig.Spot;

/** The front part of a fifth wheel, which is raised to stand over the bed of a truck. */
final class Nose {
  /** How long it usually is. */
  private static final double USUAL = 8.5;

  /** A bed needs this much of it behind the king pin. */
  private static final double LEAST = 5;

  /** The wall begins this far ahead of the foremost gear in it. */
  private static final double AHEAD = 0.7;

  /** The height that clears the side of a truck's bed. */
  static final double OVER_TRUCK = 5.3;

  private Nose() {}

  /**
   * Where it ends, in feet behind the king pin: as usual, or before that where gear low in a side
   * wall tells that the wall begins sooner.
   */
  static double ends(Rig rig) {
    Size size = Size.of(rig);
    double usual = Math.min(USUAL, (size.ends() - size.starts()) * 0.3);
    double foremost =
        rig.gear().stream()
            .flatMap(g -> g.place().spot().stream())
            .filter(Misplaced::onWall)
            .filter(s -> s.up().orElseThrow() < OVER_TRUCK)
            .mapToDouble(s -> s.aft().orElseThrow() - AHEAD - size.starts())
            .min()
            .orElse(usual);
    return size.starts() + Math.min(usual, Math.max(LEAST, foremost));
  }

  /** Whether a spot is in the air below it. */
  static boolean over(Rig rig, Spot spot) {
    return rig.identity().kind() == RigKind.FIFTH_WHEEL
        && spot.aft().orElseThrow() < ends(rig)
        && spot.up().orElseThrow() < OVER_TRUCK;
  }
}
