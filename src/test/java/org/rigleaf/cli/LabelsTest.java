package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/** Printed labels: where they stand on the sheet, what is on them, what a change exchanges. */
class LabelsTest {
  private static final double CLEAR = 2 * 72 / 25.4; // 2 mm inside a label, in points

  /** A label sheet in points, as its maker gives it; worked out here by hand. */
  private record Grid(
      int columns, int rows, double left, double top, double wide, double high, double across) {}

  /** 2.625 x 1 in, margins 0.1875 and 0.5 in, gap 0.125 in. */
  private static final Grid LETTER_30 = new Grid(3, 10, 13.5, 36, 189, 72, 9);

  /** 63.5 x 38.1 mm, margins 7.2 and 15.15 mm, gap 2.55 mm. */
  private static final Grid A4_21 = new Grid(3, 7, 20.41, 42.94, 180, 108, 7.228);

  /** 4 x 2 in, margins 0.15625 and 0.5 in, gap 0.1875 in. */
  private static final Grid LETTER_10 = new Grid(2, 5, 11.25, 36, 288, 144, 13.5);

  @TempDir private Path folder;

  private final StringWriter err = new StringWriter();

  private int run(String command, Path profile, String... more) {
    List<String> args = new ArrayList<>(List.of(command, profile.toString()));
    args.addAll(List.of("--out", folder.resolve("out").toString()));
    args.addAll(List.of(more));
    PrintWriter out = new PrintWriter(new StringWriter());
    return Main.run(out, new PrintWriter(err, true), args.toArray(String[]::new));
  }

  private Document html(String rig) throws IOException {
    return Jsoup.parse(Files.readString(folder.resolve("out/" + rig + "/labels.html")));
  }

  private byte[] pdf(String rig) throws IOException {
    return Files.readAllBytes(folder.resolve("out/" + rig + "/labels.pdf"));
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void eachLabelStandsInItsPlaceOnTheSheetAndInsideItsEdges(String rig) throws IOException {
    check(rig, "letter-30", LETTER_30);
  }

  @ParameterizedTest
  @CsvSource({"sedge, a4-21", "spikerush, letter-10", "pickerelweed, a4-21"})
  void otherLabelSheetsToo(String rig, String grid) throws IOException {
    check(rig, grid, grid.equals("a4-21") ? A4_21 : LETTER_10);
  }

  private void check(String rig, String name, Grid grid) throws IOException {
    assertEquals(
        0, run("build", Printed.path(rig), "--sheets", "labels", "--labels", name), err.toString());
    Elements labels = html(rig).select("[data-label]");
    try (PDDocument pdf = Loader.loadPDF(pdf(rig))) {
      int cells = grid.columns * grid.rows;
      assertEquals((labels.size() + cells - 1) / cells, pdf.getNumberOfPages());
      for (int page = 0; page < pdf.getNumberOfPages(); page++) {
        List<TextPosition> signs = signs(pdf, page + 1);
        int from = page * cells;
        List<Element> here = labels.subList(from, Math.min(labels.size(), from + cells));
        for (int i = 0; i < here.size(); i++) {
          place(here.get(i), signs, i, grid);
        }
        List<TextPosition> head = signs.stream().filter(s -> s.getYDirAdj() < grid.top).toList();
        signs.removeAll(head);
        assertEquals(List.of(), signs, "signs that are inside no label");
        assertTrue(!head.isEmpty(), "the page says whose labels these are");
      }
    }
  }

  /** All signs of the label are in its place, clear of its edge; takes them off the list. */
  private static void place(Element label, List<TextPosition> signs, int cell, Grid grid) {
    double left = grid.left + cell % grid.columns * (grid.wide + grid.across) + CLEAR;
    double top = grid.top + cell / grid.columns * grid.high + CLEAR;
    double right = left + grid.wide - 2 * CLEAR;
    double bottom = top + grid.high - 2 * CLEAR;
    List<TextPosition> inside =
        signs.stream()
            .filter(s -> s.getXDirAdj() > left - 0.1 && s.getYDirAdj() - height(s) > top - 0.1)
            .filter(s -> s.getXDirAdj() + s.getWidthDirAdj() < right + 0.1)
            .filter(s -> s.getYDirAdj() < bottom + 0.1)
            .toList();
    assertEquals(letters(label.text()), letters(text(inside)), label.text());
    double first = inside.stream().mapToDouble(TextPosition::getXDirAdj).min().orElseThrow();
    assertEquals(left, first, 0.15, label.text());
    inside.forEach(s -> assertTrue(s.getFontSizeInPt() >= 9.99, label.text()));
    signs.removeAll(inside);
  }

  private static double height(TextPosition sign) {
    return sign.getFontSizeInPt() * 0.73; // capitals of the face
  }

  private static String text(List<TextPosition> signs) {
    return signs.stream().map(TextPosition::getUnicode).collect(Collectors.joining());
  }

  private static String letters(String text) {
    return text.chars()
        .filter(c -> !Character.isWhitespace(c) && c != 0xA0)
        .sorted()
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }

  private static List<TextPosition> signs(PDDocument pdf, int page) throws IOException {
    List<TextPosition> signs = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition text) {
            if (!text.getUnicode().isBlank()) {
              signs.add(text);
            }
          }
        };
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    stripper.getText(pdf);
    return signs;
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void everyPieceOfCodedGearHasOneLabelAndNothingPrivateIsOnAny(String name) throws IOException {
    assertEquals(0, run("build", Printed.path(name), "--sheets", "labels"), err.toString());
    Rig rig = TestRigs.demo(name);
    Document html = html(name);
    List<String> codes =
        html.select("[data-label][data-code]").eachAttr("data-code").stream().sorted().toList();
    assertEquals(rig.codes().values().stream().sorted().toList(), codes);
    rig.privateWords().values().forEach(s -> assertTrue(!html.text().contains(s), s));
  }

  // ---- too full, and changed

  private static final String RUSH =
      "rig: {name: Rush, kind: travel trailer}\n"
          + "edition: {number: 1, date: 2026-05-02}\n"
          + "private: {gate-code: \"4471-secret\"}\n"
          + "water: {heater: {kind: storage, bypass: {normal: open}}}\n"
          + "waste: {black: {holds: 30 gal, handle: {opens: pull}}, outlet: {where: at the back}}\n";

  private Path rush(String text) throws IOException {
    return Files.writeString(folder.resolve("rush.yaml"), text);
  }

  @Test
  void aLabelThatIsTooFullIsNamedAndNothingIsWritten() throws IOException {
    String words =
        "a first handle along its own pipe, a second across it, and a third one between the two"
            + " of them, all of them behind the drawer";
    Path full = rush(RUSH.replace("normal: open", "normal: \"" + words + "\""));
    assertEquals(1, run("build", full, "--sheets", "labels"));
    assertTrue(err.toString().contains("water.heater.bypass"), err.toString());
    assertTrue(err.toString().contains("'Heater bypass' is too full for letter-30"), "" + err);
    assertTrue(!Files.exists(folder.resolve("out/rush/labels.pdf")));
    assertEquals(0, run("build", full, "--sheets", "labels", "--labels", "letter-10"), "" + err);
    assertTrue(html("rush").text().contains(words));
    assertEquals(2, run("build", full, "--labels", "letter-9"));
  }

  @Test
  void aNoticeExchangesTheLabelsThatChangedAndNoOthers() throws IOException {
    assertEquals(0, run("issue", rush(RUSH)), err.toString());
    String second =
        RUSH.replace("number: 1, date: 2026-05-02", "number: 2, date: 2026-06-01")
            .replace("opens: pull", "opens: turn")
            .replace(", outlet: {where: at the back}", "");
    assertEquals(0, run("issue", rush(second)), err.toString());
    Document notice = Jsoup.parse(Files.readString(folder.resolve("out/rush/notice.html")));
    assertEquals(
        List.of("label waste.black.handle"),
        notice.select("[data-insert^=label]").eachAttr("data-insert"));
    assertEquals(
        List.of("label waste.black.handle", "label waste.outlet"),
        notice.select("[data-remove^=label]").eachAttr("data-remove"));
    assertEquals("Ed. 2", edition("waste.black.handle"));
    assertEquals("Ed. 1", edition("water.heater.bypass"));
  }

  private String edition(String label) throws IOException {
    assertEquals(0, run("build", folder.resolve("rush.yaml")), err.toString());
    return html("rush").select("[data-label=" + label + "] .label-edition").text();
  }
}
