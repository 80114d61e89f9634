package org.rigleaf.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The faces that are embedded. Read once for the whole program; only their bytes are shared. */
final class Fonts {
  /** One face of the family that the style names. */
  private record Face(int weight, byte[] bytes, BitSet has) {
    static Face load(int weight, String path) {
      byte[] bytes = withoutSubstitution(read(path));
      return new Face(weight, bytes, characters(bytes));
    }
  }

  /** Name of the family in the styles. */
  static final String FAMILY = "Words";

  private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";
  private static final int REGULAR = 400;
  private static final int BOLD = 700;
  private static final List<Face> FACES =
      List.of(
          Face.load(REGULAR, FOLDER + "DejaVuSansCondensed.ttf"),
          Face.load(BOLD, FOLDER + "DejaVuSansCondensed-Bold.ttf"));

  private Fonts() {}

  /** Hands every face to the renderer. */
  static void register(PdfRendererBuilder builder) {
    for (Face face : FACES) {
      builder.useFont(
          () -> new ByteArrayInputStream(face.bytes()),
          FAMILY,
          face.weight(),
          FontStyle.NORMAL,
          true,
          EnumSet.of(FSFontUseCase.DOCUMENT));
    }
  }

  /** The bytes of the regular face. */
  static InputStream regular() {
    return new ByteArrayInputStream(FACES.get(0).bytes());
  }

  /**
   * Refuses text that would lose a character in either weight.
   *
   * @throws MissingGlyph for the first character that a face lacks
   */
  static void check(String text) {
    text.codePoints()
        .filter(c -> !Character.isWhitespace(c) && !FACES.stream().allMatch(f -> f.has().get(c)))
        .findFirst()
        .ifPresent(
            c -> {
              throw new MissingGlyph(c, text.strip());
            });
  }

  /**
   * Renames the table of glyph substitution, so that no time goes into ligatures that we do not
   * set: a third of a cold run.
   */
  private static byte[] withoutSubstitution(byte[] font) {
    ByteBuffer buffer = ByteBuffer.wrap(font);
    int tables = buffer.getShort(4);
    for (int i = 0; i < tables; i++) {
      int at = 12 + 16 * i;
      if (new String(font, at, 4, StandardCharsets.US_ASCII).equals("GSUB")) {
        font[at] = 'X';
      }
    }
    return font;
  }

  private static BitSet characters(byte[] font) {
    try (TrueTypeFont ttf = new TTFParser().parse(new RandomAccessReadBuffer(font))) {
      CmapLookup glyphs = ttf.getUnicodeCmapLookup(false);
      BitSet has = new BitSet();
      for (int c = ' '; c <= Character.MAX_CODE_POINT; c++) {
        if (glyphs.getGlyphId(c) != 0) {
          has.set(c);
        }
      }
      return has;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] read(String path) {
    try (InputStream in = Fonts.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks the font " + path);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }
}
