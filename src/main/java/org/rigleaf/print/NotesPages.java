package org.rigleaf.print;

import com.openhtmltopdf.pdfboxout.PagePosition;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.rigleaf.sheets.Paper;

/**
 * Rules the left-hand pages that stay empty before a topic opens on the right. Such a page belongs
 * to the topic before it, which counts it and names it in its foot: it is there to write on.
 */
final class NotesPages {
  private static final Pattern LEAVES = Pattern.compile("leaf-.*");
  private static final float POINTS_PER_MM = 72 / 25.4f;

  /** One and a half lines of text: room for handwriting. */
  private static final int RULE_EVERY = 24;

  private static final float GRAY = 0.45f;

  private NotesPages() {}

  /** Draws the rules, as artifacts that no reader reads aloud. */
  static void rule(PdfBoxRenderer renderer, PDDocument pdf, Paper paper) throws IOException {
    for (int page : empty(renderer.findPagePositionsByID(LEAVES))) {
      rule(pdf, page, paper);
    }
  }

  /**
   * Pages after a topic that ends on a right-hand page; the first page is number 0, on the right.
   */
  private static List<Integer> empty(List<? extends PagePosition<?>> ends) {
    return IntStream.range(0, Math.max(0, ends.size() - 1))
        .map(i -> ends.get(i).getPageNo())
        .filter(last -> last % 2 == 0)
        .mapToObj(last -> last + 1)
        .toList();
  }

  private static void rule(PDDocument pdf, int page, Paper paper) throws IOException {
    float left = (float) paper.outerMm() * POINTS_PER_MM;
    float right = left + (float) paper.textWidthMm() * POINTS_PER_MM;
    float top = (float) (paper.heightMm() - paper.topMm()) * POINTS_PER_MM;
    float bottom = (float) paper.bottomMm() * POINTS_PER_MM;
    try (PDPageContentStream ink =
        new PDPageContentStream(pdf, pdf.getPage(page), AppendMode.APPEND, true, true)) {
      ink.beginMarkedContent(COSName.ARTIFACT);
      ink.setLineWidth(0.5f);
      ink.setStrokingColor(GRAY);
      for (float y = top - RULE_EVERY; y >= bottom; y -= RULE_EVERY) {
        ink.moveTo(left, y);
        ink.lineTo(right, y);
      }
      ink.stroke();
      ink.endMarkedContent();
    }
  }
}
