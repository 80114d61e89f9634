package org.rigleaf.rig;

import java.util.Optional;

/**
 * Where a piece of gear is.
 *
 * @param words the keeper's own words, which always win on the page
 * @param spot the measured or coarse place, for map and moments
 */
public record Place(Optional<String> words, Optional<Spot> spot) {
  /** Nobody said. */
  public static final Place UNKNOWN = new Place(Optional.empty(), Optional.empty());

  /** True if words or a spot are there. */
  public boolean known() {
    return words.isPresent() || spot.isPresent();
  }
}
