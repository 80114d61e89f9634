package org.rigleaf.rig;

import java.util.Optional;

/**
 * A piece of gear that the sheets speak of.
 *
 * @param id path with the item's own part: {@code waste.gray.kitchen}
 * @param type path without it: {@code waste.gray}; the key of its wording
 * @param name the keeper's name for it, if given
 * @param letter the system it belongs to
 * @param place where it is
 * @param override the code the keeper wants
 */
public record Gear(
    String id,
    String type,
    Optional<String> name,
    Letter letter,
    Place place,
    Optional<String> override) {
  /** The item's own part of the id, which stands in figure ids. */
  public String part() {
    return Ids.last(id);
  }
}
