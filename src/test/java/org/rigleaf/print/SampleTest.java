package org.rigleaf.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.rigleaf.sheets.Paper;
import org.rigleaf.sheets.Topic;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** What a printed binder keeps, with every kind of block and a name that looks like markup. */
class SampleTest {
  private static final Pattern FOLIO = Pattern.compile("([A-Z]\\d+) · (\\d+) of (\\d+)");

  @BeforeAll
  static void startTheChecker() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  @Test
  void aReaderWhoCannotSeeGetsAllOfIt() throws Exception {
    assertEquals(List.of(), failures(Sample.PDF));
  }

  @Test
  void onA4TooAReaderWhoCannotSeeGetsAllOfIt() throws Exception {
    byte[] pdf =
        Sample.print(SampleBinder.html(Sample.TEMPLATES, SampleBinder.binder(Paper.A4)), Paper.A4);
    assertEquals(List.of(), failures(pdf));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDRectangle box = document.getPage(0).getMediaBox();
      assertEquals(595.3, box.getWidth(), 0.1);
      assertEquals(841.9, box.getHeight(), 0.1);
    }
  }

  @Test
  void theSameBinderTwiceGivesTheSameBytes() {
    assertArrayEquals(Sample.PDF, Sample.print(Sample.HTML, Paper.LETTER));
  }

  @Test
  void everyTopicStartsOnARightHandPageAndCountsItsOwnPages() {
    List<String> pages = Sample.pages(Sample.PDF);
    for (Topic topic : Sample.BINDER.topics()) {
      int first = 0;
      while (!pages.get(first).contains(topic.code() + " · 1 of ")) {
        first++;
      }
      assertEquals(0, first % 2, topic.code() + " starts on the left-hand page " + (first + 1));
    }
    for (String page : pages.subList(4, pages.size())) {
      Matcher folio = FOLIO.matcher(page);
      assertTrue(folio.find(), "a page without its number: " + page);
    }
  }

  @Test
  void anEmergencyIsOnePageAndThePageBehindIsToWriteOn() {
    List<String> pages = Sample.pages(Sample.PDF);
    String fire = pages.stream().filter(p -> p.contains("S1 · 1 of")).findFirst().orElseThrow();
    String behind = pages.stream().filter(p -> p.contains("S1 · 2 of")).findFirst().orElseThrow();
    assertTrue(fire.contains("S1 · 1 of 2") && fire.contains("Where the phone works"), fire);
    assertTrue(behind.lines().count() < 4, behind);
  }

  @Test
  void aTopicPrintsTheEditionAndDateOfItsOwn() {
    List<String> pages = Sample.pages(Sample.PDF);
    assertTrue(page(pages, "E1 · 1 of").contains("Edition 2 · 2026-05-02"));
    assertTrue(page(pages, "W1 · 1 of").contains("Edition 1 · 2025-04-18"));
    assertTrue(page(pages, "W1 · 1 of").contains("DRAFT"));
  }

  @Test
  void everyFontIsEmbedded() throws Exception {
    try (PDDocument document = Loader.loadPDF(Sample.PDF)) {
      int fonts = 0;
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertTrue(page.getResources().getFont(name).isEmbedded());
          fonts++;
        }
      }
      assertTrue(fonts > 0);
    }
  }

  @Test
  void everyTopicHasABookmark() {
    List<String> bookmarks = Sample.bookmarks(Sample.PDF);
    for (Topic topic : Sample.BINDER.topics()) {
      assertTrue(bookmarks.contains(topic.code() + " " + topic.title()), topic + "\n" + bookmarks);
    }
  }

  @Test
  void aNameThatLooksLikeMarkupPrintsAsItself() {
    String all = String.join("", Sample.pages(Sample.PDF));
    assertTrue(all.contains(SampleBinder.HOSTILE), all);
  }

  @Test
  void theWordsOfADrawingCanBeSearched() {
    String map = page(Sample.pages(Sample.PDF), "R2 · 1 of");
    assertTrue(map.contains("Shore inlet") && map.contains("FRONT"), map);
    assertTrue(map.contains("Gas & valve"), map);
  }

  @Test
  void aReminderNamesTopicAndPage() {
    assertTrue(page(Sample.pages(Sample.PDF), "E1 · 1 of").contains("S3\u00a0·\u00a01"));
  }

  @Test
  void aCharacterThatNoFontHasIsNamed() {
    String html = Sample.HTML.replace("Arrowhead", "Arrowhead 🚐");
    MissingGlyph missing = assertThrows(MissingGlyph.class, () -> Sample.print(html, Paper.LETTER));
    assertEquals("🚐".codePointAt(0), missing.character());
    assertTrue(missing.getMessage().contains("U+1F690, MINIBUS"), missing.getMessage());
  }

  @Test
  void nothingIsFetchedWhilePrinting() {
    for (String outside :
        List.of(
            "<img alt=\"x\" src=\"file:///etc/hostname\"/>",
            "<img alt=\"x\" src=\"data:image/png;base64,AA\"/>",
            "<p style=\"background: url(http://localhost:9/x.png)\">x</p>",
            "<style>@import 'file:///etc/hostname';</style>",
            "<object data=\"x.svg\">x</object>")) {
      String html = Sample.HTML.replace("</h1>", "</h1>" + outside);
      assertThrows(IllegalArgumentException.class, () -> Sample.print(html, Paper.LETTER), outside);
    }
  }

  @Test
  void noEntityReachesAFile() {
    String html =
        Sample.HTML
            .replace(
                "<!DOCTYPE html>", "<!DOCTYPE html [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>")
            .replace("</h1>", "&x;</h1>");
    assertThrows(IllegalArgumentException.class, () -> Sample.print(html, Paper.LETTER));
  }

  @Test
  void onlyTheEditionDateIsInTheFile() throws Exception {
    try (PDDocument document = Loader.loadPDF(Sample.PDF)) {
      assertEquals(
          "2026-05-02T00:00:00Z",
          document.getDocumentInformation().getCreationDate().toInstant().toString());
    }
  }

  private static String page(List<String> pages, String folio) {
    return pages.stream().filter(p -> p.contains(folio)).findFirst().orElseThrow();
  }

  private static List<String> failures(byte[] pdf) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
        PDFAValidator validator =
            Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
      ValidationResult result = validator.validate(parser);
      assertTrue(result.getTotalAssertions() > 1000);
      return result.getTestAssertions().stream()
          .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
          .map(a -> a.getRuleId().getClause() + ": " + a.getMessage())
          .distinct()
          .toList();
    }
  }
}
