package org.rigleaf.rig;

/** Yes, no, or nobody said. */
public enum Answer {
  YES,
  NO,
  UNKNOWN
}
