package org.rigleaf;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;

/** Photos drawn by code, with what a camera writes beside the picture. */
public final class SamplePhotos {
  /** The camera's name as it stands in the file. */
  public static final String CAMERA = "SEDGECAM";

  /** The date at the GPS receiver as it stands in the file. */
  public static final String GPS_DATE = "2025:07:19";

  private SamplePhotos() {}

  /** Four fields: red, green above, blue, yellow below. */
  public static BufferedImage fields(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    List<Color> colors = List.of(Color.RED, Color.GREEN, Color.BLUE, Color.YELLOW);
    for (int i = 0; i < 4; i++) {
      g.setColor(colors.get(i));
      g.fillRect(i % 2 * width / 2, i / 2 * height / 2, width / 2 + 1, height / 2 + 1);
    }
    g.dispose();
    return image;
  }

  /** The file of an image. */
  public static byte[] file(BufferedImage image, String format) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(image, format, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A JPEG of the four fields with Exif: camera, orientation and a GPS directory. */
  public static byte[] photo(int width, int height, int orientation) {
    byte[] plain = file(fields(width, height), "jpeg");
    byte[] exif = exif(orientation);
    ByteBuffer out = ByteBuffer.allocate(plain.length + exif.length + 4);
    out.put(plain, 0, 2).putShort((short) 0xffe1).putShort((short) (exif.length + 2)).put(exif);
    return out.put(plain, 2, plain.length - 2).array();
  }

  /** TIFF 6.0: header, first directory of three entries, GPS directory of one, the texts. */
  private static byte[] exif(int orientation) {
    byte[] camera = (CAMERA + "\0").getBytes(StandardCharsets.US_ASCII);
    byte[] date = (GPS_DATE + "\0").getBytes(StandardCharsets.US_ASCII);
    int gps = 8 + 2 + 3 * 12 + 4;
    int texts = gps + 2 + 12 + 4;
    ByteBuffer b = ByteBuffer.allocate(6 + texts + camera.length + date.length);
    b.put("Exif\0\0MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8).putShort((short) 3);
    entry(b, 0x0110, 2, camera.length, texts); // model
    entry(b, 0x0112, 3, 1, orientation << 16); // orientation, a short in the first two bytes
    entry(b, 0x8825, 4, 1, gps); // where the GPS directory stands
    b.putInt(0).putShort((short) 1);
    entry(b, 0x001d, 2, date.length, texts + camera.length); // GPS date
    return b.putInt(0).put(camera).put(date).array();
  }

  private static void entry(ByteBuffer b, int tag, int type, int count, int value) {
    b.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
  }

  /** The first bytes of a PNG that claims to be so large, and nothing behind them. */
  public static byte[] claims(int width, int height) {
    ByteBuffer b = ByteBuffer.allocate(33);
    b.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'}).putInt(13);
    int from = b.position();
    b.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height);
    b.put(new byte[] {8, 2, 0, 0, 0});
    java.util.zip.CRC32 crc = new java.util.zip.CRC32();
    crc.update(b.array(), from, 17);
    return b.putInt((int) crc.getValue()).array();
  }
}
