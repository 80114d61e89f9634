package org.rigleaf.drawings;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/**
 * A QR code as one path of squares, a unit a square.
 *
 * @param side squares along one side, the quiet zone of four on each edge included
 * @param path data of the SVG path
 */
public record QrCode(int side, String path) {
  private static final int QUIET = 4; // squares, ISO/IEC 18004

  /** The code of an address; a long one has more squares. */
  public static QrCode of(String address) {
    Map<EncodeHintType, Object> hints =
        Map.of(
            EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, QUIET);
    try {
      BitMatrix squares = new QRCodeWriter().encode(address, BarcodeFormat.QR_CODE, 0, 0, hints);
      return new QrCode(squares.getWidth(), path(squares));
    } catch (WriterException e) {
      throw new IllegalArgumentException("no code holds " + address, e);
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
