package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/**
 * Gear on a long wall whose spot cannot be right, because there is no wall: it falls on a wheel, or
 * into the air where a fifth wheel stands over its truck. Somebody measured from the wrong end, or
 * guessed.
 *
 * @param gear what is placed there
 * @param on what is there instead
 */
public record Misplaced(Gear gear, On on) {
  /** What is at such a spot. */
  public enum On {
    WHEEL,
    AIR
  }

  /** All of them. */
  public static List<Misplaced> of(Rig rig) {
    List<Misplaced> found = new ArrayList<>();
    for (Gear gear : rig.gear()) {
      gear.place()
          .spot()
          .filter(Misplaced::onWall)
          .flatMap(s -> there(rig, s))
          .ifPresent(on -> found.add(new Misplaced(gear, on)));
    }
    return found;
  }

  /** Whether a spot on a long wall has both its distances. */
  static boolean onWall(Spot spot) {
    return (spot.face() == Face.STREET || spot.face() == Face.CURB)
        && spot.aft().isPresent()
        && spot.up().isPresent();
  }

  private static Optional<On> there(Rig rig, Spot spot) {
    if (Nose.over(rig, spot)) {
      return Optional.of(On.AIR);
    }
    double tire = Levels.of(rig).tire();
    return rig.identity().axles().stream()
            .filter(Fact::known)
            .mapToDouble(a -> spot.aft().orElseThrow() - a.value())
            .anyMatch(away -> Math.hypot(away, spot.up().orElseThrow() - tire) < tire)
        ? Optional.of(On.WHEEL)
        : Optional.empty();
  }
}
