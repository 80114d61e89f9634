package org.rigleaf.print;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.rigleaf.sheets.CardSheet;
import org.rigleaf.sheets.Paper;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Finished HTML to PDF/UA-1 and PDF/A-3 on a given paper.
 *
 * <p>Same HTML, paper and imprint: same bytes. Nothing is fetched, from the network or from disk.
 * May be shared by threads.
 */
public final class Press {
  private static final String BASE = "about:blank";
  private static final double POINTS_PER_MM = 72 / 25.4;

  private final Templates templates;

  /** Takes the style for paper from these templates. */
  public Press(Templates templates) {
    this.templates = templates;
    XRLog.setLoggingEnabled(false);
  }

  /**
   * Prints.
   *
   * @param html what {@link Templates} made
   * @param imprint what the file says of itself
   * @throws MissingGlyph if no font has a character
   * @throws IllegalArgumentException if the HTML is not well-formed, or asks for anything outside
   *     it
   */
  public byte[] pdf(String html, Paper paper, Imprint imprint) {
    Document document = checked(html);
    Element root = document.getDocumentElement();
    int tabs = Integer.parseInt(root.getAttribute("data-tabs"));
    SvgLabels.lay(document, paper.textWidthMm() * POINTS_PER_MM);
    Furniture.fit(document, templates.printStyle(root.getAttribute("data-look"), paper, tabs));
    return render(document, imprint, (made, pdf) -> NotesPages.rule(made, pdf, paper));
  }

  /**
   * Prints cards.
   *
   * @param sheet how many stand on a page; the pages of a booklet are put in the order in which
   *     they lie on its sheets
   * @throws CardTooTall if one does not hold what stands on it
   */
  public byte[] cards(String html, CardSheet sheet, Imprint imprint) {
    Document document = checked(html);
    CardPages.headings(document);
    if (sheet.folded()) {
      Signature.order(document);
    }
    SvgLabels.lay(document, sheet.size().roomPt());
    Furniture.fit(document, templates.cardStyle(sheet));
    return render(
        document,
        imprint,
        (made, pdf) -> {
          CardPages.measure(made, document, sheet);
          CardPages.cropMarks(pdf, sheet);
        });
  }

  private static Document checked(String html) {
    html.codePoints().filter(Press::noSign).findFirst().ifPresent(Press::missing);
    Document document = Dom.parse(html);
    Outside.refuse(document);
    checkGlyphs(document.getDocumentElement());
    return document;
  }

  /** What is looked at and drawn once the pages are laid out. */
  private interface Finish {
    void on(PdfBoxRenderer renderer, PDDocument pdf) throws IOException;
  }

  private static byte[] render(Document document, Imprint imprint, Finish finish) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.withW3cDocument(document, BASE);
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.usePdfUaAccessibility(true);
    builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_3_A);
    builder.useColorProfile(Archive.colors());
    builder.withProducer("Rigleaf");
    Fonts.register(builder);
    Outside.close(builder);
    builder.toStream(OutputStream.nullOutputStream());
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.createPDFWithoutClosing();
      try (PDDocument pdf = renderer.getPdfDocument()) {
        finish.on(renderer, pdf);
        Archive.finish(pdf, imprint);
        return save(pdf);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] save(PDDocument pdf) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    pdf.save(out, CompressParameters.DEFAULT_COMPRESSION);
    return out.toByteArray();
  }

  /** Half a character, none at all, or one that steers a terminal: XML cannot hold it. */
  private static boolean noSign(int c) {
    return c < ' ' && "\t\n\r".indexOf(c) < 0
        || Character.getType(c) == Character.SURROGATE
        || c == 0xFFFE
        || c == 0xFFFF;
  }

  private static void missing(int c) {
    throw new MissingGlyph(c, "");
  }

  private static void checkGlyphs(Node root) {
    Dom.walk(
        root,
        n -> {
          if (n.getNodeType() == Node.TEXT_NODE
              && !n.getParentNode().getNodeName().equals("style")) {
            Fonts.check(n.getTextContent());
          }
        });
  }
}
