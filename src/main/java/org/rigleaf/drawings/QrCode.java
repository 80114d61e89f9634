package org.rigleaf.drawings;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;

/**
 * A QR code as one path of squares, a unit a square.
 *
 * @param side squares along one side, the quiet zone of four on each edge included
 * @param path data of the SVG path
 */
public record QrCode(int side, String path) {
  private static final int QUIET = 4; // squares, ISO/IEC 18004
  private static final int MOST = 57 + 2 * QUIET; // version 10: smaller squares do not scan here

  /** The code of a text; empty if so long a text would print too fine to scan. */
  public static Optional<QrCode> of(String text) {
    Map<EncodeHintType, Object> hints =
        Map.of(
            EncodeHintType.ERROR_CORRECTION,
            ErrorCorrectionLevel.M,
            EncodeHintType.MARGIN,
            QUIET,
            EncodeHintType.CHARACTER_SET,
            StandardCharsets.UTF_8.name());
    try {
      BitMatrix squares =
          new QRCodeWriter().encode(text, com.google.zxing.BarcodeFormat.QR_CODE, 0, 0, hints);
      int side = squares.getWidth();
      return side > MOST ? Optional.empty() : Optional.of(new QrCode(side, path(squares)));
    } catch (WriterException | IllegalArgumentException tooLong) {
      return Optional.empty();
    }
  }

  /** A rectangle for each run of dark squares in a row. */
  private static String path(BitMatrix squares) {
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < squares.getHeight(); y++) {
      int from = -1;
      for (int x = 0; x <= squares.getWidth(); x++) {
        boolean dark = x < squares.getWidth() && squares.get(x, y);
        if (dark && from < 0) {
          from = x;
        } else if (!dark && from >= 0) {
          path.append("M" + from + " " + y + "h" + (x - from) + "v1h-" + (x - from) + "z");
          from = -1;
        }
      }
    }
    return path.toString();
  }
}
