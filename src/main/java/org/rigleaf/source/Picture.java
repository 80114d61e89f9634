package org.rigleaf.source;

import java.nio.file.Path;

/**
 * A photo as it is printed: upright, no larger than print needs, and nothing in the file but the
 * picture itself; whatever the camera wrote beside it, such as the place, is gone.
 *
 * @param base64 the bytes of a JPEG
 * @param width pixels
 * @param height pixels
 */
public record Picture(String base64, int width, int height) {
  /** Why a file is no picture that can be printed, and what would be right. */
  public static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    private final String cure;

    Refused(String wrong, String cure) {
      super(wrong);
      this.cure = cure;
    }

    /** What would be right. */
    public String cure() {
      return cure;
    }
  }

  /**
   * Reads a picture of a folder.
   *
   * @param name of the file, seen from the folder; nothing outside the folder is opened
   * @throws Refused if it is not there, outside, too large, broken, or neither PNG nor JPEG
   */
  public static Picture read(Path folder, String name) throws Refused {
    return PictureReader.read(PictureFile.bytes(folder, name));
  }
}
