package org.rigleaf.drawings;

import java.util.List;

/**
 * A finished drawing.
 *
 * @param svg one {@code <svg>} element whose viewBox counts points
 * @param alt what it shows, 20 to 250 characters
 * @param callOuts every piece of gear of the rig, drawn or not, in the order of the rig
 */
public record Drawing(String svg, String alt, List<CallOut> callOuts) {
  /** Refuses an alternative text that says too little or too much. */
  public Drawing {
    if (alt.length() < 20 || alt.length() > 250) {
      throw new IllegalArgumentException("alternative text of " + alt.length() + " characters");
    }
    callOuts = List.copyOf(callOuts);
  }
}
