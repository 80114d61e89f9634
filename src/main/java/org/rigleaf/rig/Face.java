package org.rigleaf.rig;

/**
 * Where on the rig a place is; {@code STREET} is the driver's side where traffic keeps right,
 * {@code CURB} the door side.
 */
public enum Face implements Choice {
  FRONT,
  STREET,
  REAR,
  CURB,
  ROOF,
  UNDER,
  INSIDE
}
