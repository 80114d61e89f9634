package org.rigleaf.rules;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** A page that breaks the rules: tiny, pale, white on yellow, shouted. */
final class WrongPage {
  private static final PDFont FONT = new PDType1Font(Standard14Fonts.FontName.HELVETICA);

  private WrongPage() {}

  static byte[] pdf() throws IOException {
    try (PDDocument pdf = new PDDocument();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      PDPage page = new PDPage();
      pdf.addPage(page);
      try (PDPageContentStream ink = new PDPageContentStream(pdf, page)) {
        write(ink, "tiny", 8, 700, Color.BLACK);
        write(ink, "pale", 12, 650, new Color(0xaaaaaa));
        ink.setNonStrokingColor(new Color(0xffd100));
        ink.addRect(50, 580, 300, 60);
        ink.fill();
        write(ink, "w", 24, 600, Color.WHITE);
        write(ink, "TURN OFF ALL OF IT", 12, 500, Color.BLACK);
      }
      pdf.save(out);
      return out.toByteArray();
    }
  }

  private static void write(PDPageContentStream ink, String words, int size, int y, Color color)
      throws IOException {
    ink.beginText();
    ink.setNonStrokingColor(color);
    ink.setFont(FONT, size);
    ink.newLineAtOffset(72, y);
    ink.showText(words);
    ink.endText();
  }
}
