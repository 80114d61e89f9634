package org.rigleaf.figures;

import org.rigleaf.rig.Choice;

/** How a figure is checked by the tests; the last kind is marked on the page. */
public enum Check implements Choice {
  /** Against a value printed outside this project. */
  PUBLISHED,
  /** Against another program or library that works the same thing out. */
  INDEPENDENT_PROGRAM,
  /** By brute force, a limiting case or a conserved sum. */
  SECOND_DERIVATION,
  /** A rule of this project's own. */
  HOUSE_ASSUMPTION
}
