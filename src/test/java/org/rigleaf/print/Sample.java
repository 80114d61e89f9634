package org.rigleaf.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.rigleaf.sheets.Binder;
import org.rigleaf.sheets.Paper;

/** The sample binder, printed once for all tests. */
final class Sample {
  static final Templates TEMPLATES = new Templates();
  static final LocalDate DATE = LocalDate.of(2026, 5, 2);
  static final Binder BINDER = SampleBinder.binder();
  static final String HTML = SampleBinder.html(TEMPLATES, BINDER);
  static final byte[] PDF = print(HTML, Paper.LETTER);

  private Sample() {}

  static byte[] print(String html, Paper paper) {
    return new Press(TEMPLATES).pdf(html, paper, new Imprint(DATE, 42, "test.yaml", "rig: {}"));
  }

  /** The words of each page, furniture included. */
  static List<String> pages(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<String> pages = new ArrayList<>();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(stripper.getText(document));
      }
      return pages;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The titles of all bookmarks, in order. */
  static List<String> bookmarks(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<String> titles = new ArrayList<>();
      collect(document.getDocumentCatalog().getDocumentOutline(), titles);
      return titles;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void collect(PDOutlineNode node, List<String> titles) {
    for (PDOutlineItem item : node.children()) {
      titles.add(item.getTitle());
      collect(item, titles);
    }
  }
}
