package org.rigleaf.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.rigleaf.sheets.Paper;

/** Where pages break, and how large the letters are. */
class PagesTest {
  private static final byte[] LONG =
      Sample.print(SampleBinder.html(Sample.TEMPLATES, LongTopics.binder()), Paper.LETTER);

  @Test
  void noStepIsSplitAndItsReminderStaysWithIt() {
    List<String> pages = Sample.pages(LONG);
    for (int step = 1; step <= LongTopics.STEPS; step++) {
      String page = pageWith(pages, "action" + step + " ");
      assertTrue(page.contains("sign" + step + " "), "step " + step);
      assertTrue(step % 3 != 0 || page.contains("place" + step), "step " + step);
      assertTrue(step % 7 != 0 || page.contains("CAUTION"), "step " + step);
    }
  }

  @Test
  void theClosingLineStaysWithTheLastTwoSteps() {
    String last = pageWith(Sample.pages(LONG), "Doneword");
    assertTrue(last.contains("action26 ") && last.contains("action27 "), last);
  }

  @Test
  void aGroupNeverEndsAPageWithItsTitle() {
    List<String> pages = Sample.pages(LONG);
    assertTrue(pageWith(pages, "Group 2").contains("action11 "));
    assertTrue(pageWith(pages, "Group 3").contains("action20 "));
  }

  @Test
  void aTableRepeatsItsHeadOnEveryPage() {
    List<String> pages = Sample.pages(LONG).stream().filter(p -> p.contains("U9 · ")).toList();
    assertEquals(4, pages.size());
    pages.forEach(p -> assertTrue(p.contains("Job When How Due"), p));
  }

  @Test
  void theLegendIsOnTheFacingPageAtTheLatest() {
    List<String> pages = Sample.pages(LONG);
    assertTrue(pageWith(pages, "R9 · 1 of 2").contains("last corner"));
    String legend = pageWith(pages, "R9 · 2 of 2");
    assertTrue(legend.contains("Thing 1 ") && legend.contains("Thing 31 "), legend);
  }

  @Test
  void noLetterIsSmallerThanTenPointsAndSizesAreFew() throws Exception {
    TreeSet<Float> sizes = new TreeSet<>();
    try (PDDocument document = Loader.loadPDF(Sample.PDF)) {
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition text) {
          sizes.add(Math.round(text.getYScale() * 10) / 10f);
          super.processTextPosition(text);
        }
      }.writeText(document, new StringWriter());
    }
    sizes.remove(12.5f); // of the drawing
    assertEquals(List.of(10f, 12f, 13f, 14f, 17f, 20f, 24f, 48f), new ArrayList<>(sizes));
  }

  @Test
  void aLabelThatPrintCouldNotFollowIsRefused() {
    String html = Sample.HTML.replace("<g data-gear=\"gear.0\"", "<g transform=\"rotate(9)\"");
    assertThrows(IllegalArgumentException.class, () -> Sample.print(html, Paper.LETTER));
  }

  private static String pageWith(List<String> pages, String text) {
    return pages.stream().filter(p -> p.contains(text)).findFirst().orElseThrow();
  }
}
