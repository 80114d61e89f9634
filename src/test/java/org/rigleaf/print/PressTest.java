package org.rigleaf.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.cli.Printed;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * What the printed binder promises: accessible, the same bytes, fonts inside, topics on right-hand
 * pages.
 */
class PressTest {
  private static final double SMALLEST = 9.95; // 10 pt, less the rounding of the file

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail", "bulrush"})
  void everyCheckOfPdfUaPasses(String rig) throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(Printed.pdf(rig)), PDFAFlavour.PDFUA_1);
        PDFAValidator validator =
            Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
      ValidationResult result = validator.validate(parser);
      TreeMap<String, Integer> failures = new TreeMap<>();
      for (TestAssertion a : result.getTestAssertions()) {
        if (a.getStatus() == TestAssertion.Status.FAILED) {
          failures.merge(
              a.getRuleId().getClause()
                  + "-"
                  + a.getRuleId().getTestNumber()
                  + " "
                  + a.getMessage(),
              1,
              Integer::sum);
        }
      }
      assertEquals(new TreeMap<>(), failures);
      assertTrue(result.isCompliant());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail"})
  void twoRunsGiveTheSameBytesWhateverTheLocaleAndTimeZone(String rig) {
    byte[] first = Printed.pdf(rig);
    String html = Printed.text(rig);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      var second = Printed.print(rig);
      assertEquals(
          html, new String(second.get("binder.html"), java.nio.charset.StandardCharsets.UTF_8));
      assertArrayEquals(first, second.get("binder.pdf"));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail", "bulrush"})
  void everyFontIsEmbedded(String rig) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      List<String> outside = new ArrayList<>();
      for (PDPage page : pdf.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          if (!font.isEmbedded()) {
            outside.add(font.getName());
          }
        }
      }
      assertEquals(List.of(), outside);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail", "bulrush"})
  void aBookmarkLeadsToEveryTopicInOrderAndEachStartsOnARightHandPage(String rig)
      throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      List<String> bookmarks = new ArrayList<>();
      List<String> left = new ArrayList<>();
      collect(pdf, pdf.getDocumentCatalog().getDocumentOutline(), bookmarks, left);
      List<String> topics =
          Printed.html(rig).select("[data-topic] h2").stream().map(Element::text).toList();
      assertEquals(topics, bookmarks.stream().filter(b -> b.matches("[A-Z]-\\d+ .*")).toList());
      assertEquals(List.of(), left);
    }
  }

  private static void collect(
      PDDocument pdf, PDOutlineNode node, List<String> titles, List<String> left)
      throws IOException {
    for (PDOutlineItem item : node.children()) {
      titles.add(item.getTitle());
      int page = pdf.getPages().indexOf(item.findDestinationPage(pdf)) + 1;
      if (page % 2 == 0) {
        left.add(item.getTitle() + " on page " + page);
      }
      collect(pdf, item, titles, left);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail", "bulrush"})
  void everyEmergencyStandsOnOnePage(String rig) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      for (Element topic : Printed.html(rig).select(".emergency[data-topic]")) {
        String code = topic.selectFirst(".topic-code").text();
        int page = page(pdf, code + " · 1 of");
        String last = topic.select("[data-blank]").last().parent().text();
        assertTrue(
            text(pdf, page).contains(last), code + " ends with '" + last + "' on its first page");
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail", "bulrush"})
  void pagesAreLetterAndSayWhatTheyBelongTo(String rig) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      for (PDPage page : pdf.getPages()) {
        assertEquals(612, page.getMediaBox().getWidth(), 0.1);
        assertEquals(792, page.getMediaBox().getHeight(), 0.1);
      }
      for (int page = 5; page <= pdf.getNumberOfPages(); page++) {
        String text = text(pdf, page);
        assertTrue(
            text.contains("DRAFT") && text.contains("Edition 1"), "page " + page + ": " + text);
        assertTrue(text.matches("(?s).*[A-Z]-\\d+ · \\d+ of \\d+.*"), "page " + page + ": " + text);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail", "bulrush"})
  void noSignIsSmallerThanTenPointsOrStandsInTheBindingMargin(String rig) throws IOException {
    List<String> faults = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
              TextPosition p = positions.get(0);
              boolean binding =
                  getCurrentPageNo() % 2 == 1
                      ? p.getXDirAdj() < 51
                      : p.getXDirAdj() + p.getWidthDirAdj() > 561;
              if (p.getFontSizeInPt() < SMALLEST || binding) {
                faults.add(
                    "page "
                        + getCurrentPageNo()
                        + ": '"
                        + text
                        + "' "
                        + p.getFontSizeInPt()
                        + " pt at "
                        + p.getXDirAdj());
              }
            }
          };
      stripper.getText(pdf);
    }
    assertEquals(List.of(), faults);
  }

  private static int page(PDDocument pdf, String words) throws IOException {
    for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
      if (text(pdf, page).contains(words)) {
        return page;
      }
    }
    throw new AssertionError("no page says " + words);
  }

  private static String text(PDDocument pdf, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(pdf);
  }
}
