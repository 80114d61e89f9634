package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rigleaf.sheets.Issued;

/** Issuing an edition and what the next build says of it, as a keeper meets it. */
class IssueTest {
  private static final String FIRST =
      "rig: {name: Rush, kind: travel trailer}\n"
          + "edition: {number: 1, date: 2026-05-02}\n"
          + "private: {gate-code: \"4471-secret\"}\n"
          + "water: {fresh: {holds: 30 gal}, pump: {where: under the bed}}\n";
  private static final String SECOND =
      FIRST
          .replace("number: 1, date: 2026-05-02", "number: 2, date: 2026-06-01")
          .replace("30 gal", "40 gal");

  @TempDir private Path folder;

  private final StringWriter err = new StringWriter();

  private int run(String command, String profile) throws IOException {
    Path rush = Files.writeString(folder.resolve("rush.yaml"), profile);
    PrintWriter out = new PrintWriter(new StringWriter());
    String to = folder.resolve("out").toString();
    return Main.run(out, new PrintWriter(err, true), command, rush.toString(), "--out", to);
  }

  private String file(String name) throws IOException {
    return Files.readString(folder.resolve(name));
  }

  private boolean draft() throws IOException {
    return file("out/rush/binder.html").contains("DRAFT");
  }

  @Test
  void anEditionIsIssuedOnceLaterThanTheLastAndWithADate() throws IOException {
    assertEquals(0, run("issue", FIRST), err.toString());
    String record = file("rush.editions/1.json");
    assertEquals(1, run("issue", FIRST));
    assertTrue(err.toString().contains("edition 1 is issued already: write 2"), err.toString());
    assertEquals(1, run("issue", SECOND.replace("2026-06-01", "2026-05-01")));
    assertTrue(err.toString().contains("is before edition 1 of 2026-05-02"), err.toString());
    assertEquals(1, run("issue", SECOND.replace(", date: 2026-06-01", "")));
    assertTrue(err.toString().contains("an edition needs its date"), err.toString());
    assertEquals(record, file("rush.editions/1.json"));
    assertFalse(Files.exists(folder.resolve("rush.editions/2.json")));
  }

  @Test
  void onlyWhatWasIssuedIsNoDraftAndALogChangesNothing() throws IOException {
    assertEquals(0, run("build", FIRST));
    assertTrue(draft());
    assertEquals(0, run("issue", FIRST), err.toString());
    assertFalse(draft());
    assertEquals(0, run("build", FIRST));
    assertFalse(draft());
    Files.writeString(folder.resolve("rush.log.yaml"), "last-done: {pump-strainer: 2026-04}\n");
    assertEquals(0, run("build", FIRST), err.toString());
    assertFalse(draft(), "the log stands outside");
    assertEquals(0, run("build", FIRST.replace("30 gal", "31 gal")));
    assertTrue(draft());
  }

  @Test
  void theContentsTellEachEditionAndWhatWasChangedForIt() throws IOException {
    assertEquals(0, run("issue", FIRST), err.toString());
    String pump = "changes: [{what: Water pump renewed}, {what: New hose}], note: spring work";
    assertEquals(0, run("build", SECOND.replace("date: 2026-06-01", "date: 2026-06-01, " + pump)));
    Document binder = Jsoup.parse(file("out/rush/binder.html"));
    List<String> rows = binder.select("#change-record tbody tr").eachText();
    String second = "2 1 June 2026 Water pump renewed; New hose; spring work";
    assertEquals(List.of("1 2 May 2026 First edition", second), rows);
    assertEquals(2, binder.select("#change-record [data-blank^=record.]").size(), "a line to sign");
  }

  /** Each topic of the contents has an edition, with and without an issued one. */
  @Test
  void theContentsTellInWhichEditionEachTopicLastChanged() throws IOException {
    assertEquals(0, run("build", FIRST));
    assertEquals(java.util.Set.of("1"), editions());
    assertEquals(0, run("issue", FIRST), err.toString());
    assertEquals(0, run("build", SECOND), err.toString());
    assertEquals(java.util.Set.of("1", "2"), editions());
  }

  private java.util.Set<String> editions() throws IOException {
    var cells = org.jsoup.Jsoup.parse(file("out/rush/binder.html")).select("td.toc-edition");
    assertTrue(cells.size() > 20, "topics in the contents");
    return new java.util.TreeSet<>(cells.eachText());
  }

  /** A bar on every block whose words the first edition does not have, and on no other. */
  @Test
  void barsStandOnChangedBlocksOnly() throws IOException {
    String blocks = "[data-topic] li, [data-topic] tr, [data-topic] p";
    assertEquals(0, run("issue", FIRST), err.toString());
    var first = org.jsoup.Jsoup.parse(file("out/rush/binder.html"));
    assertEquals(0, first.select("[data-changed]").size(), "nothing came before the first");
    assertEquals(0, run("build", SECOND), err.toString());
    var second = org.jsoup.Jsoup.parse(file("out/rush/binder.html"));
    int barred = 0;
    for (var topic : second.select("[data-topic]")) {
      var old = first.select("[data-topic=" + topic.attr("data-topic") + "]").select(blocks);
      java.util.List<String> known = old.eachText();
      for (var block : topic.select(blocks)) {
        if (block.parents().stream().anyMatch(p -> p.is("li, tr, .panel, .drawn"))) {
          continue; // the outermost block carries the bar
        }
        boolean bar = block.hasAttr("data-changed");
        barred += bar ? 1 : 0;
        assertEquals(!known.contains(block.text()), bar, block.outerHtml());
      }
    }
    assertTrue(barred > 0);
  }

  @Test
  void aDamagedRecordIsAProblemThatNamesItsFile() throws IOException {
    assertEquals(0, run("issue", FIRST), err.toString());
    String whole = file("rush.editions/1.json");
    for (String broken :
        List.of(
            "",
            "null",
            "{}",
            "[]",
            whole.substring(0, 900),
            whole.replace("\"pieces\"", "\"p\""))) {
      err.getBuffer().setLength(0);
      Files.writeString(folder.resolve("rush.editions/1.json"), broken);
      assertEquals(1, run("build", FIRST), broken);
      assertTrue(err.toString().contains("1.json:1:1: "), err.toString());
      assertTrue(err.toString().contains("not the record of an issued edition"), err.toString());
    }
  }

  @Test
  void aRecordIsReadBackAsItWasWritten() throws IOException {
    assertEquals(0, run("issue", FIRST), err.toString());
    String json = file("rush.editions/1.json");
    assertEquals(json, Issued.parse(json).orElseThrow().json());
  }

  @Test
  void nothingPrivateIsInTheRecordOrTheNotice() throws IOException {
    assertEquals(0, run("issue", FIRST), err.toString());
    assertEquals(0, run("issue", SECOND), err.toString());
    assertTrue(file("out/rush/binder.html").contains("4471-secret"));
    for (String name :
        List.of("rush.editions/1.json", "rush.editions/2.json", "out/rush/notice.html")) {
      assertFalse(file(name).contains("4471-secret"), name);
    }
    try (var pdf =
        org.apache.pdfbox.Loader.loadPDF(
            Files.readAllBytes(folder.resolve("out/rush/notice.pdf")))) {
      var info = pdf.getDocumentInformation();
      String said =
          new org.apache.pdfbox.text.PDFTextStripper().getText(pdf)
              + Stream.of(info.getTitle(), info.getSubject(), info.getKeywords()).toList();
      assertTrue(said.contains("Rush"), said);
      assertFalse(said.contains("4471-secret"), said);
    }
  }

  @Test
  void theSameChangeGivesTheSameBytesTwiceAndPassesPdfUa() throws Exception {
    assertEquals(0, run("issue", FIRST), err.toString());
    assertEquals(0, run("compare", SECOND), err.toString());
    byte[] first = Files.readAllBytes(folder.resolve("out/rush/notice.pdf"));
    assertEquals(0, run("compare", SECOND), err.toString());
    byte[] again = Files.readAllBytes(folder.resolve("out/rush/notice.pdf"));
    assertArrayEquals(first, again);
    org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider.initialise();
    var flavour = org.verapdf.pdfa.flavours.PDFAFlavour.PDFUA_1;
    var foundry = org.verapdf.pdfa.Foundries.defaultInstance();
    try (var parser = foundry.createParser(new java.io.ByteArrayInputStream(again), flavour);
        var validator = foundry.createValidator(flavour, false)) {
      assertTrue(validator.validate(parser).isCompliant());
    }
  }

  @Test
  void aNoticeTellsTheRigFromTheWording() throws IOException {
    assertEquals(0, run("issue", FIRST), err.toString());
    Path record = folder.resolve("rush.editions/1.json");
    String again = FIRST.replace("number: 1, date: 2026-05-02", "number: 2, date: 2026-06-01");
    Issued first = Issued.parse(Files.readString(record)).orElseThrow();
    String pump =
        first.pieces().stream()
            .filter(p -> p.id().equals("pump"))
            .findFirst()
            .orElseThrow()
            .digest();
    String other =
        first.json().replace(first.wording(), "other words").replace(pump, "another digest");
    Files.writeString(record, other);
    assertEquals(0, run("compare", again), err.toString());
    var rows = org.jsoup.Jsoup.parse(file("out/rush/notice.html")).select("[data-insert]");
    assertEquals(
        List.of("topic pump wording"),
        rows.stream().map(r -> r.attr("data-insert") + " " + r.attr("data-cause")).toList());
    assertEquals(0, run("compare", SECOND), err.toString());
    var both = org.jsoup.Jsoup.parse(file("out/rush/notice.html"));
    assertTrue(both.select("[data-cause=rig]").size() > 0);
    String cause = both.select("[data-insert=topic pump]").attr("data-cause");
    assertEquals("both", cause, "the page tells how much water the pump cannot reach");
  }
}
