package org.rigleaf.rules;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColorN;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColorSpace;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceGrayColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceRGBColor;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.rigleaf.cli.EverySheet;

/** What stands on the pages of a PDF: signs with size, color and place, and the lines they make. */
record Pages(int count, List<Glyph> glyphs, Map<Integer, List<String>> lines) {
  private static final Map<String, Pages> READ = new ConcurrentHashMap<>();

  /** Those of a document of a rig, read once. */
  static Pages of(String rig, String file) {
    return READ.computeIfAbsent(rig + "/" + file, k -> read(EverySheet.file(rig, file)));
  }

  static Pages read(byte[] bytes) {
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      Reader reader = new Reader();
      reader.writeText(pdf, Writer.nullWriter());
      return new Pages(pdf.getNumberOfPages(), reader.glyphs, reader.lines);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A page as a picture of one dot a point. */
  static BufferedImage picture(PDDocument pdf, int page) throws IOException {
    return new PDFRenderer(pdf).renderImageWithDPI(page - 1, 72);
  }

  String text(int page) {
    return String.join("\n", lines.getOrDefault(page, List.of()));
  }

  private static final class Reader extends PDFTextStripper {
    private final List<Glyph> glyphs = new ArrayList<>();
    private final Map<Integer, List<String>> lines = new TreeMap<>();

    Reader() {
      setSortByPosition(true);
      addOperator(new SetNonStrokingColorSpace(this));
      addOperator(new SetNonStrokingColor(this));
      addOperator(new SetNonStrokingColorN(this));
      addOperator(new SetNonStrokingDeviceGrayColor(this));
      addOperator(new SetNonStrokingDeviceRGBColor(this));
    }

    @Override
    protected void processTextPosition(TextPosition p) {
      super.processTextPosition(p);
      if (!p.getUnicode().isBlank()) {
        glyphs.add(
            new Glyph(
                getCurrentPageNo(),
                p.getUnicode(),
                p.getYScale(),
                color(),
                p.getFont().getName(),
                p.getX(),
                p.getY()));
      }
    }

    private int color() {
      try {
        return getGraphicsState().getNonStrokingColor().toRGB();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    protected void writeString(String text, List<TextPosition> positions) {
      lines.computeIfAbsent(getCurrentPageNo(), k -> new ArrayList<>()).add(text);
    }
  }
}
