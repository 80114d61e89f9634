package org.rigleaf.rig;

import org.rigleaf.source.Picture;
import org.rigleaf.source.Position;

/**
 * The keeper's photo of a thing.
 *
 * @param gear id of the thing; {@code rig} for the rig itself
 * @param file as the profile names it
 * @param at where the profile names it
 */
public record Photo(String gear, String file, Position at, Picture picture) {
  /** Fetches the picture of a name; the only way from a profile to its photos. */
  @FunctionalInterface
  public interface Shelf {
    /**
     * The picture.
     *
     * @throws Picture.Refused if there is none that can be printed
     */
    Picture fetch(String file) throws Picture.Refused;
  }
}
