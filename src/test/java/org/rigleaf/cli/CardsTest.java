package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Wording;
import org.rigleaf.print.CardTooTall;
import org.rigleaf.print.Imprint;
import org.rigleaf.print.Press;
import org.rigleaf.rig.Rig;
import org.rigleaf.sheets.BinderMaker;
import org.rigleaf.sheets.CardSheet;
import org.rigleaf.sheets.CardSize;
import org.rigleaf.sheets.CardsMaker;
import org.rigleaf.sheets.Paper;

/** The cards, as somebody meets them who cuts them out and hangs them up. */
class CardsTest {
  private static final int MOST_STEPS = 9; // a list longer than nine is not kept in mind
  private static final double SMALLEST = 9.95; // 10 pt, less the rounding of the file
  private static final Pattern SENT = Pattern.compile("(page|card) '([^']*)' \\(([^)]*)\\)");
  private static final Set<String> NO_CARD = // topics to read at home, or too long for a card
      Set.of(
          "A freezing night",
          "Alarm test and exit drill",
          "How much propane, how long",
          "The garage",
          "Vehicle limits",
          "What runs together");
  private static final Map<String, byte[]> PRINTED = new ConcurrentHashMap<>();
  private static final Map<String, String> MADE = new ConcurrentHashMap<>(); // usual, by rig

  @TempDir private Path folder;
  private final StringWriter err = new StringWriter();

  private static String html(Rig rig, CardSheet sheet) {
    Wording wording = Wording.english();
    BinderMaker maker = BinderMaker.of(rig, Figures.of(rig), wording, Map.of());
    CardsMaker cards = new CardsMaker(rig, maker, wording, sheet.size());
    return Output.TEMPLATES.sheet("cards", cards.cards(sheet, true, List.of()));
  }

  private static String usual(String name) {
    return MADE.computeIfAbsent(name, n -> html(rig(n), usual()));
  }

  private static byte[] print(String name) {
    return PRINTED.computeIfAbsent(name, n -> pdf(usual(n), usual()));
  }

  private static CardSheet usual() {
    return CardSheet.on(Paper.LETTER, CardSize.HALF_LETTER);
  }

  private static byte[] pdf(String html, CardSheet sheet) {
    return new Press(Output.TEMPLATES)
        .cards(html, sheet, new Imprint(LocalDate.of(2026, 5, 2), 7, "test.yaml", "rig: {}"));
  }

  static List<String> rigs() {
    return TestRigs.all().toList();
  }

  private static Rig rig(String name) {
    return name.equals("bulrush") ? TestRigs.smallest() : TestRigs.demo(name);
  }

  @ParameterizedTest
  @MethodSource("rigs")
  void everyCardSaysWhatItIsAndHoldsNoMoreThanNineSteps(String name) {
    Document cards = Jsoup.parse(usual(name));
    for (Element card : cards.select("[data-card]")) {
      String what = name + " " + card.id();
      assertTrue(card.select("li[data-step], .fact").size() <= MOST_STEPS, what);
      assertTrue(card.select("li[data-step], .fact").size() > 0, what);
      String printed = card.select(".mode").text();
      String mode = card.attr("data-mode");
      assertTrue(Set.of("read-do", "do-confirm", "look-up").contains(mode), what + mode);
      assertTrue(printed.startsWith(mode.replace("look-up", "look up").toUpperCase()), printed);
      String of = card.attr("data-part") + " of " + parts(cards, card);
      assertTrue(card.select(".id").text().contains(card.attr("data-code") + " · " + of), what);
      assertEquals(card.hasClass("emergency") || qrless(cards), card.select("svg.qr").isEmpty());
      for (Element reminder : card.select("li [data-caution-ref]")) {
        Element next = reminder.nextElementSibling();
        assertTrue(next.hasAttr("data-caution-ref") || next.hasClass("do"), what);
      }
    }
    assertEquals("fire", cards.select("[data-card]").first().attr("data-card"));
  }

  private static int parts(Document cards, Element card) {
    return cards.select("[data-card=" + card.attr("data-card") + "]").size();
  }

  private static boolean qrless(Document cards) {
    return cards.select("svg.qr").isEmpty();
  }

  /** The binder as HTML alone; its print takes longest. */
  private static Document binder(String name) throws Exception {
    Issuing issuing = Issuing.toBuild(Profile.read(Printed.path(name)), Output.TEMPLATES);
    Sheets sheets = new Sheets(issuing, issuing.profile().maker(), new Options(), Output.TEMPLATES);
    return Jsoup.parse(sheets.make("binder").orElseThrow().html());
  }

  /** An action without the page or card that it sends to; those differ. */
  private static String unsent(Element step) {
    return step.select(".action").text().replaceAll("(page|card) '[^']*' \\([^)]*\\)", "-");
  }

  /** No step is told in other words than in the binder, and none twice on the cards. */
  @ParameterizedTest
  @ValueSource(strings = {"sedge", "spikerush", "bogbean", "bulrush"})
  void stepsAreThoseOfTheBinderInItsOrder(String name) throws Exception {
    Document cards = Jsoup.parse(usual(name));
    Document binder = binder(name);
    for (String id : new TreeSet<>(cards.select("[data-card]").eachAttr("data-card"))) {
      List<String> on = cards.select("[data-card=" + id + "] [data-step]").eachAttr("data-step");
      assertEquals(on.size(), new HashSet<>(on).size(), name + id);
      List<String> all = new ArrayList<>();
      for (Element step : cards.select("[data-card=" + id + "] [data-step]")) {
        Element same = binder.select("li[data-step=" + step.attr("data-step") + "]").first();
        if (same != null) { // a check of a fault is a row of a table there
          assertEquals(unsent(same), unsent(step));
          all.add(step.attr("data-step"));
        }
      }
      List<String> order = new ArrayList<>(binder.select("li[data-step]").eachAttr("data-step"));
      order.retainAll(all);
      assertEquals(order, all, name + " " + id);
    }
  }

  /** Who holds the cards may not hold the binder: what a card tells is looked for on the card. */
  @ParameterizedTest
  @MethodSource("rigs")
  void aTaskThatHasACardIsSentForByItsCard(String name) {
    Document cards = Jsoup.parse(usual(name));
    Map<String, String> titles = new HashMap<>(); // by code
    for (Element card : cards.select("[data-card]")) {
      titles.put(card.attr("data-code"), card.select(".card-title").text());
    }
    List<String> sent = new ArrayList<>();
    Matcher ref = SENT.matcher(cards.text());
    while (ref.find()) {
      List<String> codes = List.of(ref.group(3).split(", "));
      sent.add(ref.group(2));
      if (ref.group(1).equals("card")) {
        assertTrue(titles.keySet().containsAll(codes), name + " " + ref.group());
        assertTrue(codes.size() > 1 || titles.get(codes.get(0)).equals(ref.group(2)), ref.group());
      } else {
        assertTrue(NO_CARD.contains(ref.group(2)), name + " " + ref.group());
      }
    }
    assertTrue(sent.contains("Look at the site and park"), sent.toString());
  }

  /** Heron Flats keeps all demo rigs; its number stands in their profiles. */
  @Test
  void everyCardHasTheNumberToCallAndNoneAPrivateValue() {
    Document cards = Jsoup.parse(usual("sedge"));
    for (Element card : cards.select("[data-card]")) {
      assertTrue(card.select(".call").text().contains("555-0142"), card.id());
    }
    assertFalse(cards.html().contains("4471"), "the gate code");
    assertFalse(cards.html().contains("HF-20"), "the policy");
  }

  /** Other tests print the other rigs of the fleet; reckoning alone is for CardFitTest. */
  @ParameterizedTest
  @ValueSource(strings = {"sedge", "bulrush"})
  void demoCardsFitInEverySizeWithNoLetterUnderTenPoints(String name) throws IOException {
    CardSheet small = CardSheet.on(Paper.LETTER, CardSize.A6);
    String html = html(rig(name), small);
    readable(name, usual(name), print(name));
    readable(name, html, pdf(html, small));
  }

  private static void readable(String name, String html, byte[] pdf) throws IOException {
    int cards = Jsoup.parse(html).select("[data-card]").size();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertEquals((cards + 1) / 2, document.getNumberOfPages(), "two a sheet of Letter");
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition p) {
          assertTrue(p.getFontSizeInPt() >= SMALLEST, name + " " + p.getFontSizeInPt());
        }
      }.getText(document);
    }
  }

  /** Letter is 215.9 by 279.4 mm, A4 210 by 297; ISO 216 halves A4 twice to four A6. */
  @Test
  void asManyCardsAsThePaperHolds() {
    assertEquals(2, CardSheet.on(Paper.LETTER, CardSize.HALF_LETTER).count());
    assertEquals(279.4, CardSheet.on(Paper.LETTER, CardSize.HALF_LETTER).widthMm());
    assertEquals(4, CardSheet.on(Paper.A4, CardSize.A6).count());
    assertEquals(2, CardSheet.on(Paper.A4, CardSize.A5).count());
    assertEquals(2, CardSheet.on(Paper.LETTER, CardSize.FOUR_BY_SIX).count());
    assertEquals(101.6, CardSheet.single(CardSize.FOUR_BY_SIX).widthMm());
  }

  @Test
  void whatIsTooTallIsNamedWithMillimeters() {
    String where = "behind the ninth panel of the long wall and ".repeat(70) + "under it";
    Rig rig =
        TestRigs.of(
            "rig: {name: Rush, kind: travel trailer}\nkit: {gloves: {kept: "
                + where
                + "}}\n"
                + "waste: {black: {holds: 20 gal}, outlet: {where: low}}\n");
    String html = html(rig, usual());
    CardTooTall tall = assertThrows(CardTooTall.class, () -> pdf(html, usual()));
    assertTrue(
        tall.getMessage()
            .matches("the card K-\\d+ 'Empty the tanks', \\d is \\d+\\.\\d mm too tall"),
        tall.getMessage());
  }

  /** A phone's camera sees squares, not paths: the printed page is read back. */
  @Test
  void theCodeOnTheCardLeadsToThePageOfTheRig() throws Exception {
    List<Element> cards = Jsoup.parse(usual("sedge")).select("[data-card]");
    int card = 0;
    while (cards.get(card).hasClass("emergency")) {
      card++;
    }
    try (PDDocument document = Loader.loadPDF(print("sedge"))) {
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(card / 2, 150);
      int width = page.getWidth() / 2; // two cards side by side
      int height = page.getHeight();
      int[] pixels = page.getRGB(card % 2 * width, 0, width, height, null, 0, width);
      BinaryBitmap bitmap =
          new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
      assertEquals(
          "https://heron-flats.example/sedge", new QRCodeReader().decode(bitmap).getText());
    }
  }

  private int run(String command, String profile, String... more) throws IOException {
    Path rush = Files.writeString(folder.resolve("rush.yaml"), profile);
    List<String> words = new ArrayList<>(List.of(command, rush.toString()));
    words.addAll(List.of("--out", folder.resolve("out").toString()));
    words.addAll(List.of(more));
    PrintWriter out = new PrintWriter(new StringWriter());
    return Main.run(out, new PrintWriter(err, true), words.toArray(String[]::new));
  }

  private Document sheet(String name) throws IOException {
    return Jsoup.parse(Files.readString(folder.resolve("out/rush/" + name + ".html")));
  }

  /** A pump that moves changes the cards that name its place; the fire card stays. */
  @Test
  void aNoticeNamesTheCardsToExchangeAndTheOthersKeepTheirEdition() throws IOException {
    String first =
        "rig: {name: Rush, kind: travel trailer}\n"
            + "edition: {number: 1, date: 2026-05-02}\n"
            + "water: {fresh: {holds: 30 gal}, pump: {where: under the bed}}\n";
    String second =
        first
            .replace("number: 1, date: 2026-05-02", "number: 2, date: 2026-06-01")
            .replace("under the bed", "behind the stove");
    assertEquals(0, run("issue", first, "--sheets", "cards"), err.toString());
    assertEquals(0, run("build", second, "--sheets", "cards,notice"), err.toString());
    Document cards = sheet("cards");
    Set<String> changed = new TreeSet<>();
    for (Element card : cards.select("[data-card]")) {
      if (card.text().contains("behind the stove")) {
        changed.add("card " + card.attr("data-card"));
      }
      boolean now = card.select(".id").text().contains("Edition 2");
      boolean with =
          cards.select("[data-card=" + card.attr("data-card") + "]").text().contains("the stove");
      assertEquals(with, now, card.id());
    }
    assertTrue(changed.contains("card fill-fresh-tank"), changed.toString());
    Set<String> insert = new TreeSet<>(sheet("notice").select("tr").eachAttr("data-insert"));
    insert.removeIf(i -> !i.startsWith("card "));
    assertEquals(changed, insert);
  }

  @Test
  void aSizeThatDoesNotExistIsRefused() throws IOException {
    String profile = "rig: {name: Rush, kind: travel trailer}\n";
    assertEquals(2, run("build", profile, "--card", "a7"));
    assertTrue(err.toString().contains("no card is called 'a7'"), err.toString());
    assertEquals(0, run("build", profile, "--sheets", "cards", "--card", "A6", "--single"));
  }
}
