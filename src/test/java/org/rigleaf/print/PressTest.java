package org.rigleaf.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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
  private static final double BINDING = 18 / 25.4 * 72; // 18 mm for the holes, in points
  private static final int PAPER_WHITE = 250; // of 255; less is ink

  @ParameterizedTest
  @ValueSource(strings = {"bogbean", "bulrush"}) // ArchiveTest looks at the others
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
  @MethodSource("org.rigleaf.TestRigs#all")
  void everyFontIsEmbeddedWithNoMoreSignsThanItPrints(String rig) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      TreeSet<String> fonts = new TreeSet<>();
      for (PDPage page : pdf.getPages()) {
        collect(page.getResources(), fonts);
      }
      assertEquals(2, fonts.size(), "regular and bold: " + fonts);
      for (String font : fonts) {
        assertTrue(font.matches("[A-Z]{6}\\+\\S+ embedded"), font);
      }
    }
  }

  private static void collect(PDResources from, Set<String> fonts) throws IOException {
    for (COSName name : from.getFontNames()) {
      PDFont font = from.getFont(name);
      fonts.add(font.getName() + (font.isEmbedded() ? " embedded" : " outside"));
    }
    for (COSName name : from.getXObjectNames()) {
      if (from.getXObject(name) instanceof PDFormXObject form && form.getResources() != null) {
        collect(form.getResources(), fonts);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
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
  @MethodSource("org.rigleaf.TestRigs#all")
  void theFirstPageOfATopicCarriesItsBandAndItsNumberOne(String rig) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      for (Element topic : Printed.html(rig).select("[data-topic]")) {
        String code = topic.selectFirst(".topic-code").text();
        int page = page(pdf, code + " · 1 of ");
        assertEquals(1, page % 2, code + " starts on page " + page);
        String text = text(pdf, page).replaceAll("\\s+", " ");
        assertTrue(text.contains(topic.selectFirst("h2").text()), code + ": " + text);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void everyEmergencyIsOnePageAndThenAtMostOneToWriteOn(String rig) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      Elements emergencies = Printed.html(rig).select(".emergency[data-topic]");
      assertTrue(emergencies.size() >= 5, rig + " has " + emergencies.size());
      for (Element topic : emergencies) {
        String code = topic.selectFirst(".topic-code").text();
        int page = page(pdf, code + " · 1 of ");
        String first = text(pdf, page).replaceAll("\\s+", " ");
        assertTrue(first.matches(".*" + code + " · 1 of [12](?!\\d).*"), first);
        List<String> steps = topic.select(".action").eachText();
        for (String word : steps.get(steps.size() - 1).split(" ")) { // a link breaks the order
          assertTrue(first.contains(word), code + " lacks '" + word + "': " + first);
        }
        if (first.contains(code + " · 1 of 2")) {
          String behind = text(pdf, page + 1);
          assertTrue(behind.contains(code + " · 2 of 2"), behind);
          assertTrue(behind.strip().lines().count() <= 3, code + " runs over: " + behind);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void pagesAreLetterAndSayWhatTheyBelongTo(String rig) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      for (PDPage page : pdf.getPages()) {
        assertEquals(612, page.getMediaBox().getWidth(), 0.1);
        assertEquals(792, page.getMediaBox().getHeight(), 0.1);
      }
      for (int page = page(pdf, "S-1 · 1 of "); page <= pdf.getNumberOfPages(); page++) {
        String text = text(pdf, page);
        assertTrue(
            text.contains("DRAFT") && text.contains("Edition 1"), "page " + page + ": " + text);
        assertTrue(text.matches("(?s).*[A-Z]-\\d+ · \\d+ of \\d+.*"), "page " + page + ": " + text);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void noSignIsSmallerThanTenPoints(String rig) throws IOException {
    Set<String> faults = new TreeSet<>();
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition p) {
          if (Math.min(p.getFontSizeInPt(), p.getYScale()) < SMALLEST) {
            faults.add("page " + getCurrentPageNo() + ": '" + p + "' " + p.getFontSizeInPt());
          }
        }
      }.writeText(pdf, Writer.nullWriter());
    }
    assertEquals(Set.of(), faults);
  }

  /** Words, rules, tints and drawings: the page is painted and its inner edge looked at. */
  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void nothingIsPrintedWhereTheHolesAreOnEachThirdPage(String rig) throws IOException {
    List<String> faults = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      PDFRenderer painter = new PDFRenderer(pdf);
      for (int page = 0; page < pdf.getNumberOfPages(); page += 3) { // right and left in turn
        BufferedImage paper = painter.renderImage(page, 0.5f, ImageType.GRAY);
        int edge = (int) (BINDING * 0.5);
        int from = page % 2 == 0 ? 0 : paper.getWidth() - edge;
        int dark = 0;
        for (int x = from; x < from + edge; x++) {
          for (int y = 0; y < paper.getHeight(); y++) {
            dark += (paper.getRGB(x, y) & 0xff) < PAPER_WHITE ? 1 : 0;
          }
        }
        if (dark > 0) {
          faults.add("page " + (page + 1) + ": " + dark + " dots");
        }
      }
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

  /** The text of each page by the title of its document, read once. */
  private static final Map<String, String[]> TEXTS = new HashMap<>();

  private static String text(PDDocument pdf, int page) throws IOException {
    String title = pdf.getDocumentInformation().getTitle();
    String[] texts = TEXTS.computeIfAbsent(title, t -> new String[pdf.getNumberOfPages()]);
    if (texts[page - 1] == null) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      texts[page - 1] = stripper.getText(pdf);
    }
    return texts[page - 1];
  }
}
