package org.rigleaf.print;

import com.openhtmltopdf.pdfboxout.PagePosition;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.rigleaf.sheets.CardSheet;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Cards on their pages: measures what was laid out, and marks where to cut. */
final class CardPages {
  private static final Pattern MEASURED = Pattern.compile("(body|foot)-.*");
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double TRIFLE = 0.5; // points; what rounding moves
  private static final double FROM_MM = 5; // most printers print nothing nearer to the edge
  private static final double LONG_MM = 5; // on the cut itself, so that no card keeps it

  private CardPages() {}

  /**
   * Holds the foot of each card against the end of what stands above it.
   *
   * @throws CardTooTall for the first card whose lines run into its foot
   */
  static void measure(PdfBoxRenderer renderer, Document document, CardSheet sheet) {
    Map<String, PagePosition<?>> found = new HashMap<>();
    renderer.findPagePositionsByID(MEASURED).forEach(p -> found.put(p.getId(), p));
    for (Element card : Dom.ofClass(document, "card")) {
      String id = card.getAttribute("id").substring("card-".length());
      PagePosition<?> body = found.get("body-" + id);
      PagePosition<?> foot = found.get("foot-" + id);
      int pages = body.getPageNo() - foot.getPageNo(); // what runs over goes on on the next
      double end = body.getY() - pages * sheet.heightMm() * POINTS_PER_MM; // up from the bottom
      double over = foot.getY() + foot.getHeight() - end;
      if (over > TRIFLE) {
        throw new CardTooTall(name(card), over / POINTS_PER_MM);
      }
    }
  }

  /** On paper each card is a document of its own, with a first heading of its own. */
  static void headings(Document document) {
    Dom.ofClass(document, "deck-title").forEach(Dom::remove);
    for (String name : List.of("h2", "h3")) {
      String above = name.equals("h2") ? "h1" : "h2";
      Dom.named(document, name).forEach(e -> document.renameNode(e, e.getNamespaceURI(), above));
    }
  }

  private static String name(Element card) {
    String title = Dom.ofClass(card, "card-title").get(0).getTextContent();
    return card.getAttribute("data-code") + " '" + title + "', " + card.getAttribute("data-part");
  }

  /**
   * Draws short lines at the edges of the page, in line with each cut, as artifacts. Where a card
   * ends with the paper nothing is cut.
   */
  static void cropMarks(PDDocument pdf, CardSheet sheet) throws IOException {
    if (sheet.whole() || sheet.folded()) {
      return;
    }
    for (int page = 0; page < pdf.getNumberOfPages(); page++) {
      try (PDPageContentStream ink =
          new PDPageContentStream(pdf, pdf.getPage(page), AppendMode.APPEND, true, true)) {
        ink.beginMarkedContent(COSName.ARTIFACT);
        ink.setLineWidth(0.5f);
        for (int i = 0; i <= sheet.across(); i++) {
          double x = sheet.leftMm() + i * sheet.size().widthMm();
          if (inside(x, sheet.widthMm())) {
            line(ink, x, FROM_MM, x, FROM_MM + LONG_MM);
            line(ink, x, sheet.heightMm() - FROM_MM, x, sheet.heightMm() - FROM_MM - LONG_MM);
          }
        }
        for (int i = 0; i <= sheet.down(); i++) {
          double y = sheet.topMm() + i * sheet.size().heightMm();
          if (inside(y, sheet.heightMm())) {
            line(ink, FROM_MM, y, FROM_MM + LONG_MM, y);
            line(ink, sheet.widthMm() - FROM_MM, y, sheet.widthMm() - FROM_MM - LONG_MM, y);
          }
        }
        ink.stroke();
        ink.endMarkedContent();
      }
    }
  }

  private static boolean inside(double cut, double edge) {
    return cut > TRIFLE && cut < edge - TRIFLE;
  }

  private static void line(PDPageContentStream ink, double x1, double y1, double x2, double y2)
      throws IOException {
    ink.moveTo((float) (x1 * POINTS_PER_MM), (float) (y1 * POINTS_PER_MM));
    ink.lineTo((float) (x2 * POINTS_PER_MM), (float) (y2 * POINTS_PER_MM));
  }
}
