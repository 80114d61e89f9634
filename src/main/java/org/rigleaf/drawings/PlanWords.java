package org.rigleaf.drawings;

import org.rigleaf.rig.Identity;
import org.rigleaf.rig.RigKind;

/**
 * Every word that the plan view prints by itself, in one place; names of gear come from outside.
 */
final class PlanWords {
  static final String FRONT = "FRONT";
  static final String REAR = "REAR";
  static final String STREET = "street side (driver's)";
  static final String CURB = "curb side (passenger's)";
  static final String NOT_TO_SCALE = "not to scale";
  static final String SLIDES_OUT = "slides drawn out";
  static final String AWNINGS_IN = "awnings rolled up";
  static final String WHEELS_HIDDEN = "wheels dashed";
  static final String WHEELS_AND_BUNK_HIDDEN = "wheels and bunk over the cab dashed";

  private PlanWords() {}

  static String mark(Mark mark) {
    return switch (mark) {
      case INSIDE -> "inside";
      case WALL -> "outside wall";
      case ROOF -> "roof";
      case UNDER -> "under the floor";
      case COARSE -> "somewhere in this third";
    };
  }

  /** What the drawing shows, for those who cannot see it. */
  static String alt(Identity identity, int placed) {
    String length = identity.length().known() ? ", " + identity.length().written() + " long" : "";
    return "Plan of "
        + name(identity)
        + ", "
        + kind(identity.kind())
        + length
        + ", seen from above with the front at the top: "
        + (placed == 0
            ? "no gear has a place yet."
            : placed + (placed == 1 ? " code marks" : " codes mark") + " where the gear is.");
  }

  /** The same of an outline to mark damage on. */
  static String damage(Identity identity) {
    return "Outline of "
        + name(identity)
        + ", seen from above with the front at the top, to mark damage on by hand.";
  }

  private static String name(Identity identity) {
    String name = identity.name().strip();
    return name.length() > 80 ? name.substring(0, 79) + "…" : name;
  }

  private static String kind(RigKind kind) {
    return switch (kind) {
      case CLASS_A -> "class A motorhome";
      case CLASS_B -> "class B motorhome";
      case CLASS_C -> "class C motorhome";
      default -> kind.text();
    };
  }
}
