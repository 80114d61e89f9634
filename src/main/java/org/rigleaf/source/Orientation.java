package org.rigleaf.source;

import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * How a camera was held. Exif keeps it as one number, 1 to 8, in tag 0x0112 of the first directory
 * (TIFF 6.0, p. 36; Exif 2.3, 4.6.4 A). Read by hand: it is the one tag wanted of a file that may
 * come from a stranger.
 *
 * @param number 1 upright; 2 mirrored; 3 half a turn; 4 mirrored half a turn; 5 mirrored, on its
 *     left; 6 to be turned to the right; 7 mirrored, on its right; 8 to be turned to the left
 */
record Orientation(int number) {
  private static final Orientation UPRIGHT = new Orientation(1);
  private static final int TAG = 0x0112;
  private static final int APP1 = 0xe1;
  private static final int SCAN = 0xda;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

  /** Of a JPEG; upright if it is another file, or says nothing that makes sense. */
  static Orientation of(byte[] bytes) {
    try {
      return inJpeg(ByteBuffer.wrap(bytes));
    } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
      return UPRIGHT;
    }
  }

  /** Walks the segments: a marker of two bytes, then a length that counts itself. */
  private static Orientation inJpeg(ByteBuffer file) {
    int at = 2;
    while (file.getShort(0) == (short) 0xffd8 && (file.get(at) & 0xff) == 0xff) {
      int marker = file.get(at + 1) & 0xff;
      int length = file.getShort(at + 2) & 0xffff;
      ByteBuffer body = file.slice(at + 4, length - 2);
      if (marker == APP1 && length > EXIF.length + 2 && isExif(body)) {
        return inTiff(body.slice(EXIF.length, length - 2 - EXIF.length));
      } else if (marker == SCAN) {
        return UPRIGHT;
      }
      at += 2 + length;
    }
    return UPRIGHT;
  }

  private static boolean isExif(ByteBuffer body) {
    return body.slice(0, EXIF.length).equals(ByteBuffer.wrap(EXIF));
  }

  private static Orientation inTiff(ByteBuffer tiff) {
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = tiff.getInt(4);
    int entries = tiff.getShort(directory) & 0xffff;
    for (int i = 0; i < entries; i++) {
      int entry = directory + 2 + 12 * i;
      int value = tiff.getShort(entry + 8) & 0xffff;
      if ((tiff.getShort(entry) & 0xffff) == TAG && value >= 1 && value <= 8) {
        return new Orientation(value);
      }
    }
    return UPRIGHT;
  }

  private boolean lies() {
    return number >= 5;
  }

  /** Width once upright. */
  int width(BufferedImage image) {
    return lies() ? image.getHeight() : image.getWidth();
  }

  /** Height once upright. */
  int height(BufferedImage image) {
    return lies() ? image.getWidth() : image.getHeight();
  }

  /** What turns the image upright: x' = a x + c y + e, y' = b x + d y + f. */
  AffineTransform of(BufferedImage image) {
    double w = image.getWidth();
    double h = image.getHeight();
    return switch (number) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
      default -> new AffineTransform();
    };
  }
}
