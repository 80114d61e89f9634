package org.rigleaf.sheets;

import java.util.List;

/**
 * The keeper's photos, each with what it shows.
 *
 * @param title heading; may be empty
 */
public record PhotosBlock(String title, List<Shot> shots) implements Block {
  /** Copies the list. */
  public PhotosBlock {
    shots = List.copyOf(shots);
  }

  /**
   * One photo.
   *
   * @param base64 the bytes of a JPEG
   * @param tall higher than wide
   * @param alt what it shows, for a reader who cannot see it
   * @param shown the things in it
   */
  public record Shot(String base64, boolean tall, String alt, List<Legend> shown) {
    /** Copies the list. */
    public Shot {
      shown = List.copyOf(shown);
    }
  }

  @Override
  public String kind() {
    return "photos";
  }
}
