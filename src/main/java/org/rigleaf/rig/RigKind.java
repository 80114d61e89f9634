package org.rigleaf.rig;

/** The kinds of recreational vehicle. */
public enum RigKind implements Choice {
  TRAVEL_TRAILER,
  FIFTH_WHEEL,
  FOLDING_TRAILER,
  TRUCK_CAMPER,
  TOY_HAULER,
  CLASS_A,
  CLASS_B,
  CLASS_C;

  /** Drives by itself. */
  public boolean motorized() {
    return this == CLASS_A || this == CLASS_B || this == CLASS_C;
  }

  /** Is towed: coupler or king pin, no engine; a truck camper is neither towed nor motorized. */
  public boolean towable() {
    return !motorized() && this != TRUCK_CAMPER;
  }

  /** Rides on a ball. */
  public boolean ballCoupled() {
    return this == TRAVEL_TRAILER || this == FOLDING_TRAILER || this == TOY_HAULER;
  }
}
