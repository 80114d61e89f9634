package org.rigleaf.drawings;

import org.rigleaf.rig.Face;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Spot;

/** From where the rig is seen on a page of the system map. */
public enum View {
  PLAN,
  STREET,
  CURB,
  FRONT,
  REAR,
  INSIDE;

  private static View of(Face face) {
    return switch (face) {
      case STREET -> STREET;
      case CURB -> CURB;
      case FRONT -> FRONT;
      case REAR -> REAR;
      case INSIDE -> INSIDE;
      case ROOF, UNDER -> PLAN;
    };
  }

  /** True for the one view whose legend lists this gear. */
  public boolean lists(Gear gear) {
    return gear.place().spot().map(Spot::face).filter(f -> of(f) == this).isPresent();
  }

  /** True if this view draws it: the plan is also an overview of all walls. */
  boolean shows(Gear gear) {
    return lists(gear) || this == PLAN && gear.place().spot().isPresent() && !INSIDE.lists(gear);
  }
}
