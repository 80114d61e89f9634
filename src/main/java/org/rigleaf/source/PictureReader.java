package org.rigleaf.source;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.event.IIOReadWarningListener;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.rigleaf.source.Picture.Refused;

/**
 * Decodes a PNG or JPEG and encodes it anew. How many pixels it claims is looked at before any is
 * decoded.
 */
final class PictureReader {
  /** 85 mm at 300 dots an inch, the longer side on the page. */
  static final int PRINTED = 1004;

  private static final long MOST_PIXELS = 60_000_000; // the largest common phone photo has 50
  private static final float QUALITY = 0.85f;
  private static final String CUT = "(?s).*(Truncated|Premature end).*"; // what the JDK says of it
  private static final String SAVE = "open it in a photo program and save it as a JPEG";

  private final byte[] bytes;
  private final ImageReader reader;
  private boolean cut; // the decoder came to the end before the picture did

  private PictureReader(byte[] bytes, ImageReader reader) {
    this.bytes = bytes;
    this.reader = reader;
    reader.setInput(new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes)), true, true);
    IIOReadWarningListener warned = (from, warning) -> cut |= warning.matches(CUT);
    reader.addIIOReadWarningListener(warned);
  }

  static Picture read(byte[] bytes) throws Refused {
    ImageReader reader = ImageIO.getImageReadersByFormatName(format(bytes)).next();
    try {
      return new PictureReader(bytes, reader).picture();
    } catch (IOException | RuntimeException e) {
      throw new Refused("the photo is broken", SAVE);
    } finally {
      reader.dispose();
    }
  }

  /** By the first bytes, whatever the name of the file says. */
  private static String format(byte[] bytes) throws Refused {
    if (starts(bytes, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n')) {
      return "png";
    } else if (starts(bytes, 0xff, 0xd8, 0xff)) {
      return "jpeg";
    }
    throw new Refused("the file is neither a PNG nor a JPEG", SAVE);
  }

  private static boolean starts(byte[] bytes, int... head) {
    boolean same = bytes.length >= head.length;
    for (int i = 0; same && i < head.length; i++) {
      same = (bytes[i] & 0xff) == head[i];
    }
    return same;
  }

  private Picture picture() throws IOException, Refused {
    long width = reader.getWidth(0);
    long height = reader.getHeight(0);
    if (width * height > MOST_PIXELS) {
      throw new Refused(
          "the photo has " + width + " x " + height + " pixels, more than 60 million",
          "save it smaller: 2000 pixels wide is enough");
    }
    BufferedImage upright = upright(decoded((int) Math.max(width, height)));
    if (cut) {
      throw new Refused("the photo is broken: its end is missing", "copy it from the camera again");
    }
    byte[] jpeg = encoded(upright);
    return new Picture(
        Base64.getEncoder().encodeToString(jpeg), upright.getWidth(), upright.getHeight());
  }

  /** Of a large photo only every second, third ... pixel is kept, still twice what print needs. */
  private BufferedImage decoded(int longer) throws IOException {
    ImageReadParam param = reader.getDefaultReadParam();
    int step = Math.max(1, longer / (2 * PRINTED));
    param.setSourceSubsampling(step, step, 0, 0);
    return reader.read(0, param);
  }

  /** Turned as the camera was held, on white, halved until it fits. */
  private BufferedImage upright(BufferedImage image) {
    Orientation turn = Orientation.of(bytes);
    BufferedImage now = drawn(image, turn.width(image), turn.height(image), turn.of(image));
    while (longer(now) > PRINTED) {
      double scale = Math.max(0.5, (double) PRINTED / longer(now));
      int width = Math.max(1, (int) Math.round(now.getWidth() * scale));
      int height = Math.max(1, (int) Math.round(now.getHeight() * scale));
      double x = (double) width / now.getWidth();
      double y = (double) height / now.getHeight();
      now = drawn(now, width, height, AffineTransform.getScaleInstance(x, y));
    }
    return now;
  }

  private static int longer(BufferedImage image) {
    return Math.max(image.getWidth(), image.getHeight());
  }

  private static BufferedImage drawn(BufferedImage from, int width, int height, AffineTransform t) {
    BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = to.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(from, t, null);
    g.dispose();
    return to;
  }

  private static byte[] encoded(BufferedImage image) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
      writer.setOutput(stream);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }
}
