package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The booklet, read as it lies on its sheets and as it is folded. */
class BookletTest {
  @TempDir private Path folder;

  /**
   * Half a letter is 5.5 in x 8.5 in, an A5 leaf 148.5 mm x 210 mm; the papers are their doubles.
   */
  @ParameterizedTest
  @CsvSource({"letter,792,612", "a4,841.89,595.28"})
  void twoPagesStandOnASideAndFoldedTheyReadInOrder(String paper, double wide, double high)
      throws IOException {
    made("--paper", paper);
    Map<Integer, String> pages = new TreeMap<>();
    try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(folder.resolve("sedge/booklet.pdf")))) {
      assertEquals(0, pdf.getNumberOfPages() % 2, "each sheet has two sides");
      for (PDPage side : pdf.getPages()) {
        assertEquals(wide, side.getMediaBox().getWidth(), 1);
        assertEquals(high, side.getMediaBox().getHeight(), 1);
        for (String half : halves(side)) {
          String[] lines = half.strip().split("\\R");
          if (lines[lines.length - 1].matches("\\d+")) {
            pages.put(Integer.valueOf(lines[lines.length - 1]), half);
          }
        }
      }
    }
    for (Element line : html().select(".book-lines li")) {
      int page = Integer.parseInt(line.select(".book-page").text());
      String title = line.ownText().strip();
      assertTrue(flat(pages.get(page)).contains(title + " "), title + " is not on page " + page);
      assertTrue(pages.get(page).contains("card 1 of"), title + " begins before page " + page);
    }
  }

  @Test
  void eachCardIsAPageAndEachTaskALineOfTheContents() throws IOException {
    made();
    Document booklet = html();
    List<String> tasks = booklet.select("[data-card][data-part=1] .card-title").eachText();
    List<String> lines =
        booklet.select(".book-lines li").stream().map(l -> l.ownText().strip()).toList();
    assertEquals(tasks, lines);
    assertTrue(tasks.size() > 20, tasks + " is no set of cards");
    assertTrue(booklet.select(".bound").stream().allMatch(b -> b.select(".card").size() == 1));
  }

  @Test
  void itIsMadeOnlyWhenAskedForByName() {
    assertTrue(Sheets.names().contains("booklet"));
    assertFalse(Sheets.usual().contains("booklet"));
    assertEquals(Sheets.names().size() - 1, Sheets.usual().size());
  }

  private void made(String... more) {
    List<String> words = new ArrayList<>(List.of("build", "--sheets", "booklet", "--out"));
    words.addAll(List.of(folder.toString(), "rig-profiles/sedge.yaml"));
    words.addAll(List.of(more));
    StringWriter err = new StringWriter();
    PrintWriter out = new PrintWriter(new StringWriter());
    int code = Main.run(out, new PrintWriter(err, true), words.toArray(String[]::new));
    assertEquals(0, code, err.toString());
  }

  private Document html() throws IOException {
    return Jsoup.parse(Files.readString(folder.resolve("sedge/booklet.html")));
  }

  private static List<String> halves(PDPage side) throws IOException {
    double wide = side.getMediaBox().getWidth() / 2;
    double high = side.getMediaBox().getHeight();
    List<String> halves = new ArrayList<>();
    for (int half = 0; half < 2; half++) {
      PDFTextStripperByArea text = new PDFTextStripperByArea();
      text.setSortByPosition(true);
      text.addRegion("half", new Rectangle2D.Double(half * wide, 0, wide, high));
      text.extractRegions(side);
      halves.add(text.getTextForRegion("half"));
    }
    return halves;
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
