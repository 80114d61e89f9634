package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Wording;
import org.rigleaf.print.Imprint;
import org.rigleaf.print.Press;
import org.rigleaf.rig.Rig;
import org.rigleaf.sheets.BinderMaker;
import org.rigleaf.sheets.CardSheet;
import org.rigleaf.sheets.CardSize;
import org.rigleaf.sheets.CardsMaker;
import org.rigleaf.sheets.Paper;

/** Cards as cut from the task and from the paper, of every size. */
class CardsCutTest {
  private static final double MM = 72 / 25.4; // points
  private static final double CLOSE = 0.05; // points: the rounding of the file
  private static final int PRINTED = 5; // random rigs; CardFitTest reckons more
  private static final double UNPRINTED = 5; // mm at the edge, of common printers
  private static final List<CardSize> SIZES =
      List.of(CardSize.HALF_LETTER, CardSize.FOUR_BY_SIX, CardSize.A5, CardSize.A6);

  static Stream<String> rigs() {
    return TestRigs.all();
  }

  private static String html(Rig rig, CardSheet sheet) {
    Wording wording = Wording.english();
    BinderMaker maker = BinderMaker.of(rig, Figures.of(rig), wording, Map.of());
    CardsMaker cards = new CardsMaker(rig, maker, wording, sheet.size());
    return Output.TEMPLATES.sheet("cards", cards.cards(sheet, false, List.of()));
  }

  private static Rig rig(String name) {
    return name.equals("bulrush") ? TestRigs.smallest() : TestRigs.demo(name);
  }

  private static PDDocument pdf(Rig rig, CardSheet sheet) throws IOException {
    byte[] pdf =
        new Press(Output.TEMPLATES)
            .cards(
                html(rig, sheet),
                sheet,
                new Imprint(LocalDate.of(2026, 5, 2), 7, "test.yaml", "rig: {}"));
    return Loader.loadPDF(pdf);
  }

  /**
   * A card of the larger sizes seldom ends inside a part; on a small one a part often fills two.
   */
  @ParameterizedTest
  @MethodSource("rigs")
  void aTaskIsCutWhereOneMayPause(String name) {
    for (CardSize size : SIZES) {
      Document cards = Jsoup.parse(html(rig(name), CardSheet.single(size)));
      int broken = 0;
      List<Element> all = cards.select("[data-card]");
      for (int i = 1; i < all.size(); i++) {
        Element card = all.get(i);
        Element before = all.get(i - 1);
        boolean same = card.attr("data-card").equals(before.attr("data-card"));
        assertEquals(same ? next(before) : "1", card.attr("data-part"), name + card.id());
        broken += same && begun(card).equals(last(before)) ? 1 : 0;
        int lines = card.select("[data-step], .fact").size();
        assertTrue(lines > 0 && lines <= 9, name + card.id());
      }
      boolean large = size.heightMm() > 200;
      assertTrue(!large || broken <= all.size() / 10, name + " " + size.name() + ": " + broken);
    }
  }

  private static String next(Element card) {
    return String.valueOf(Integer.parseInt(card.attr("data-part")) + 1);
  }

  private static String begun(Element card) {
    return card.select(".part-title").stream().findFirst().map(Element::text).orElse("");
  }

  private static String last(Element card) {
    List<Element> titles = card.select(".part-title");
    return titles.isEmpty() ? "-" : titles.get(titles.size() - 1).text();
  }

  /** What number, what mode, one word and one command: as a renter finds them on each card. */
  @ParameterizedTest
  @MethodSource("rigs")
  void eachCardCountsItselfAndEachCautionIsAWordAndOneCommand(String name) {
    Document cards = Jsoup.parse(html(rig(name), CardSheet.single(CardSize.HALF_LETTER)));
    Map<String, Integer> of = new HashMap<>();
    cards.select("[data-card]").forEach(c -> of.merge(c.attr("data-card"), 1, Integer::sum));
    for (Element card : cards.select("[data-card]")) {
      String count = "card " + card.attr("data-part") + " of " + of.get(card.attr("data-card"));
      assertTrue(card.select(".card-code").text().contains(count), name + card.id());
      boolean goesOn = !card.attr("data-part").equals(of.get(card.attr("data-card")).toString());
      assertEquals(goesOn, card.select(".end").text().startsWith("Go on with card "), card.id());
      assertTrue(card.select(".mode").text().matches("[A-Z -]+: .*"), card.id());
      assertFalse(card.hasClass("emergency") && !card.select("svg.qr").isEmpty(), card.id());
      for (Element panel : card.select(".panel")) {
        String signal = panel.select(".signal").text();
        assertTrue(Set.of("DANGER", "WARNING", "CAUTION", "NOTICE").contains(signal), signal);
        assertEquals(1, panel.select(".command").size(), card.id());
        String command = panel.select(".command").text();
        assertTrue(command.matches("[A-Z][^.!?]*(\\d\\.\\d[^.!?]*)*[.]"), command);
        assertEquals(signal.toLowerCase(java.util.Locale.ROOT), panel.attr("data-level"));
      }
    }
  }

  /** One numbering: the code of a thing on a card is its code on the map. */
  @ParameterizedTest
  @MethodSource("rigs")
  void codesAreThoseOfTheMap(String name) throws Exception {
    Document cards = Jsoup.parse(html(rig(name), CardSheet.single(CardSize.HALF_LETTER)));
    Issuing issuing = Issuing.toBuild(Profile.read(Printed.path(name)), Output.TEMPLATES);
    Sheets sheets = new Sheets(issuing, issuing.profile().maker(), new Options(), Output.TEMPLATES);
    Document binder = Jsoup.parse(sheets.make("binder").orElseThrow().html());
    Map<String, String> legend = new HashMap<>();
    binder
        .select(".legend [data-gear][data-code]")
        .forEach(e -> legend.put(e.attr("data-gear"), e.attr("data-code")));
    assertFalse(legend.isEmpty(), name);
    int met = 0;
    for (Element code : cards.select(".code[data-gear]")) {
      String known = legend.get(code.attr("data-gear"));
      assertTrue(known == null || known.equals(code.text()), name + " " + code.text());
      met += known == null ? 0 : 1;
    }
    assertTrue(met > 0, name);
  }

  /** Each mark lies on a cut, and each cut has its two; nothing is printed near the edge. */
  @Test
  void marksLieOnTheCutsAndWordsKeepOffTheEdge() throws IOException {
    for (CardSize size : SIZES) {
      for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
        CardSheet sheet = CardSheet.on(paper, size);
        try (PDDocument document = pdf(TestRigs.smallest(), sheet)) {
          assertTrue(document.getNumberOfPages() * sheet.count() >= 28, size.name());
          Marks marks = new Marks(document.getPage(0));
          marks.processPage(document.getPage(0));
          same(cuts(sheet), marks.found, size.name() + " on " + paper);
          edges(document, sheet);
        }
      }
    }
  }

  private static void same(List<Double> cuts, Set<Double> found, String what) {
    List<Double> marks = List.copyOf(found);
    assertEquals(cuts.size(), marks.size(), what + " " + marks);
    for (int i = 0; i < marks.size(); i++) {
      assertEquals(cuts.get(i), marks.get(i), CLOSE, what);
    }
  }

  /** The cuts by the widths of paper and card alone: ISO 216 and inches, cards centered. */
  private static List<Double> cuts(CardSheet sheet) {
    List<Double> cuts = new ArrayList<>();
    add(cuts, sheet.widthMm(), sheet.size().widthMm(), 1);
    add(cuts, sheet.heightMm(), sheet.size().heightMm(), -1);
    cuts.sort(null);
    return cuts;
  }

  private static void add(List<Double> cuts, double paper, double card, int sign) {
    int count = (int) Math.floor(paper / card + 0.001);
    for (int i = 0; i <= count; i++) {
      double at = (paper - count * card) / 2 + i * card;
      if (at > 1 && at < paper - 1) {
        cuts.add(sign * at); // millimeters; those from the left are positive
      }
    }
  }

  private static void edges(PDDocument document, CardSheet sheet) throws IOException {
    new PDFTextStripper() {
      @Override
      protected void processTextPosition(TextPosition p) {
        assertTrue(p.getXDirAdj() >= UNPRINTED * MM, p.getUnicode());
        assertTrue(p.getXDirAdj() + p.getWidth() <= (sheet.widthMm() - UNPRINTED) * MM, "right");
        assertTrue(p.getYDirAdj() - p.getHeightDir() >= UNPRINTED * MM, "top");
        assertTrue(p.getYDirAdj() <= (sheet.heightMm() - UNPRINTED) * MM, "bottom");
      }
    }.getText(document);
  }

  @Test
  void aCardAPageHasTheSizeOfTheCardAndNoMark() throws IOException {
    for (CardSize size : SIZES) {
      try (PDDocument document = pdf(TestRigs.smallest(), CardSheet.single(size))) {
        PDPage page = document.getPage(0);
        assertEquals(size.widthMm() * MM, page.getMediaBox().getWidth(), 0.5);
        assertEquals(size.heightMm() * MM, page.getMediaBox().getHeight(), 0.5);
        Marks marks = new Marks(page);
        marks.processPage(page);
        assertEquals(Set.of(), marks.found);
        int cards =
            Jsoup.parse(html(TestRigs.smallest(), CardSheet.single(size))).select("article").size();
        assertEquals(cards, document.getNumberOfPages(), "one side each");
      }
    }
  }

  /** The printer measures each card and throws for one that is too tall. */
  @Test
  void randomRigsPrintInTheUsualSize() throws IOException {
    CardSheet sheet = CardSheet.on(Paper.LETTER, CardSize.HALF_LETTER);
    List<RandomRigs.Profile> drawn = RandomRigs.all();
    for (RandomRigs.Profile profile : drawn.subList(0, Math.min(PRINTED, drawn.size()))) {
      int cards = Jsoup.parse(html(profile.rig(), sheet)).select("[data-card]").size();
      try (PDDocument document = pdf(profile.rig(), sheet)) {
        assertEquals((cards + 1) / 2, document.getNumberOfPages(), profile.name());
      }
    }
  }

  /** The longest address, on the smallest card: ISO/IEC 18004 has 62 letters in 33 squares. */
  @Test
  void theLongestAddressStillScans() throws Exception {
    String address = "https://heron-flats.example/" + "a".repeat(62 - 28);
    String profile = Files.readString(Path.of("src/test/resources/profiles/bulrush.yaml"));
    Rig rig = TestRigs.of("page: " + address + "\n" + profile);
    CardSheet sheet = CardSheet.single(CardSize.A6);
    int page = 0;
    List<Element> cards = Jsoup.parse(html(rig, sheet)).select("[data-card]");
    while (cards.get(page).hasClass("emergency")) {
      page++;
    }
    String box = cards.get(page).select("svg.qr").attr("viewBox");
    assertEquals("0 0 41 41", box, "33 squares, 4 of quiet on each side");
    assertTrue(CardSize.A6.codePt() / MM / 41 >= 0.5, "each square 0.5 mm");
    try (PDDocument document = pdf(rig, sheet)) {
      BufferedImage seen = new PDFRenderer(document).renderImageWithDPI(page, 200);
      int w = seen.getWidth();
      int h = seen.getHeight();
      int[] pixels = seen.getRGB(0, 0, w, h, null, 0, w);
      BinaryBitmap bitmap =
          new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(w, h, pixels)));
      assertEquals(address, new QRCodeReader().decode(bitmap).getText());
    }
  }

  /** Collects lines of half a point near the edge of the page: place in millimeters. */
  private static final class Marks extends PDFGraphicsStreamEngine {
    private final Set<Double> found = new TreeSet<>();
    private final List<double[]> lines = new ArrayList<>();
    private Point2D at = new Point2D.Double();

    Marks(PDPage page) {
      super(page);
    }

    @Override
    public void moveTo(float x, float y) {
      at = new Point2D.Double(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
      lines.add(new double[] {at.getX(), at.getY(), x, y});
      at = new Point2D.Double(x, y);
    }

    @Override
    public void strokePath() {
      for (double[] l : lines) {
        double across = Math.abs(l[2] - l[0]);
        double up = Math.abs(l[3] - l[1]);
        boolean mark =
            Math.abs(across + up - UNPRINTED * MM) < CLOSE && Math.min(across, up) < CLOSE;
        boolean edge =
            near(l[0], getPage().getMediaBox().getWidth(), across)
                || near(l[1], getPage().getMediaBox().getHeight(), up);
        if (mark && edge) {
          double from = across < CLOSE ? l[0] : getPage().getMediaBox().getHeight() - l[1];
          found.add(Math.rint((across < CLOSE ? 1 : -1) * from / MM * 1000) / 1000);
        }
      }
      lines.clear();
    }

    private static boolean near(double from, double paper, double run) {
      double edge = UNPRINTED * MM;
      return run > CLOSE
          && (Math.abs(from - edge) < CLOSE || Math.abs(paper - from - edge) < CLOSE);
    }

    @Override
    public Point2D getCurrentPoint() {
      return at;
    }

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int rule) {}

    @Override
    public void curveTo(float a, float b, float c, float d, float e, float f) {
      at = new Point2D.Double(e, f);
    }

    @Override
    public void closePath() {}

    @Override
    public void endPath() {
      lines.clear();
    }

    @Override
    public void fillPath(int rule) {
      lines.clear();
    }

    @Override
    public void fillAndStrokePath(int rule) {
      lines.clear();
    }

    @Override
    public void shadingFill(COSName name) {}
  }
}
