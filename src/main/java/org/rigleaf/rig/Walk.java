package org.rigleaf.rig;

import java.util.List;
import java.util.Optional;

/**
 * The way round the rig: front, curb side from front to rear, rear, street side from rear to front,
 * roof, under, inside.
 */
public final class Walk {
  private static final List<Face> FACES =
      List.of(Face.FRONT, Face.CURB, Face.REAR, Face.STREET, Face.ROOF, Face.UNDER, Face.INSIDE);

  private static final double FACE = 1000; // longer than any rig, in feet

  private Walk() {}

  /** How far along the way a place is; what has no spot comes last of all. */
  static double step(Place place) {
    return place.spot().map(Walk::step).orElse(FACE * FACES.size());
  }

  /** How far along the way a place is; what has no spot comes at the end of this face. */
  public static double step(Place place, Face usual) {
    return place.spot().map(Walk::step).orElse(FACE * FACES.indexOf(usual) + FACE - 1);
  }

  /** How far along the way a place is for who stands inside, on whatever wall it is. */
  public static double inside(Place place) {
    return FACE * FACES.indexOf(Face.INSIDE) + place.spot().map(Walk::aft).orElse(FACE - 1);
  }

  /** The third of a rig of this length where a spot is; empty if neither is known. */
  public static Optional<Spot.Zone> third(Spot spot, Fact length) {
    Spot.Zone[] zones = Spot.Zone.values();
    Optional<Double> aft = length.known() ? spot.aft() : Optional.empty();
    return spot.zone()
        .or(() -> aft.map(a -> zones[(int) Math.min(2, zones.length * a / length.value())]));
  }

  private static double step(Spot spot) {
    boolean backward = spot.face() == Face.STREET;
    return FACE * FACES.indexOf(spot.face()) + (backward ? FACE - 1 - aft(spot) : aft(spot));
  }

  private static double aft(Spot spot) {
    return spot.aft().orElse(spot.zone().map(z -> 10.0 + 10 * z.ordinal()).orElse(0.0));
  }
}
