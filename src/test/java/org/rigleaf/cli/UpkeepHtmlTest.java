package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The upkeep calendar in the binder, from profile and log to the page. */
class UpkeepHtmlTest {
  private static final String RUSH =
      "rig: {name: Rush, kind: travel trailer}\nedition: {number: 1, date: 2026-05-02}\n";

  @TempDir private Path folder;

  private Path rush(String log) throws IOException {
    Files.writeString(folder.resolve("rush.log.yaml"), log);
    return Files.writeString(folder.resolve("rush.yaml"), RUSH);
  }

  private Document html(String log) throws IOException {
    byte[] html = Printed.of(rush(log)).get("binder.html");
    return Jsoup.parse(new String(html, StandardCharsets.UTF_8));
  }

  private static Element row(Document html, String task) {
    List<Element> rows = html.select("[data-upkeep='" + task + "']");
    assertEquals(1, rows.size(), task + " stands once");
    return rows.get(0);
  }

  /** Worked by hand from the logs and the profiles; the working stands behind each. */
  @ParameterizedTest
  @CsvSource({
    "sedge, wheel-bearings, 2026-10-31", // October 2025, its last day, and a year
    "sedge, brakes, 2026-10-31",
    "sedge, roof-seals, 2026-09-21", // 21 March and six months
    "sedge, propane-leak-test, 2027-04-11",
    "sedge, smoke-alarm-battery, 2027-04-11",
    "sedge, tank-sanitize, 2026-10-11", // 11 April and six months
    "sedge, battery-water, 2026-05-11",
    "sedge, filter-cartridge, 2026-10-11", // 11 April and six months
    "sedge, coupler-grease, 2027-03-31", // March 2026, its last day, and a year
    "sedge, safety.alarms.carbon-monoxide, 2027-03-31", // the date on its back
    "sedge, propane.cylinders.cylinder-1, 2031-03-31", // made 2019-03, 12 years
    "sedge, tire.1, 2028-12-31", // made 2022, 6 years
    "cattail, generator-exercise, 2026-04-30", // 31 March and a month
    "cattail, roof-seals, 2026-08-28", // February 2026, its last day, and six months
    "cattail, engine-battery, 2026-03-31", // March 2025, its last day, and a year
    "cattail, chassis, 2026-06-30", // June 2025, its last day, and a year
    "cattail, generator-oil, 2026-09-30"
  })
  void aTaskIsDueOnTheDayWorkedByHand(String rig, String task, String day) {
    Element row = row(Printed.html(rig), task);
    assertEquals(day, row.attr("data-due"));
    row.select("[data-figure^='due.'][data-unit=date]")
        .forEach(f -> assertEquals(day, f.attr("data-value")));
  }

  @Test
  void whatWasLastDonePrintsAsExactlyAsItIsKnown() {
    Document html = Printed.html("sedge");
    assertEquals("October 2025", row(html, "brakes").select("td.date").get(0).text());
    assertEquals("21 March 2026", row(html, "roof-seals").select("td.date").get(0).text());
  }

  /** 19,680 + 12,000 mi, and 118 + 100 h. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sedge | wheel-bearings | 31 October 2026 or 31,680 mi",
        "cattail | generator-oil | 30 September 2026 or 218 h"
      })
  void aMeterCountsToo(String rig, String task, String due) {
    String text = row(Printed.html(rig), task).select("td.date").get(1).text();
    assertEquals(due, text);
  }

  @Test
  void aTaskThatNobodyDatedAsksForTheDayAndComesBeforeTheFirstTrip() {
    Element row = row(Printed.html("sedge"), "solar-wash");
    assertEquals("", row.attr("data-due"));
    assertEquals("last-done.solar-wash", row.selectFirst("[data-blank]").attr("data-blank"));
    assertTrue(row.text().contains("Not known: do it before the first trip."), row.text());
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void everyRowHasABoxATaskAndItsCautionsBeforeIt(String rig) {
    Document html = Printed.html(rig);
    List<Element> rows = html.select("[data-upkeep]");
    assertTrue(rows.size() >= 20, rig + ": " + rows.size());
    for (Element row : rows) {
      Element task = row.selectFirst("th");
      assertFalse(row.select(".tick").isEmpty());
      assertFalse(task.selectFirst(".action").text().isBlank());
      for (Element reminder : task.select("[data-caution-ref]")) {
        assertTrue(
            reminder.elementSiblingIndex() < task.selectFirst(".action").elementSiblingIndex());
        String id = reminder.attr("data-caution-ref");
        assertEquals(1, html.select("[data-caution='" + id + "']").size(), id);
      }
    }
  }

  /** A day before the edition's is late, the day itself is not; the clock says nothing. */
  @Test
  void lateIsBeforeTheEditionsDate() throws IOException {
    Document late =
        html("last-done: {brakes: 2025-05-01, coupler-grease: 2025-05-01, roof-wash: 2025-11-02}");
    List<Element> found = late.select("[data-finding^='upkeep-late']");
    assertTrue(
        found.stream().anyMatch(f -> f.text().contains("Ball and coupler: was due 1 May 2026.")),
        found.toString());
    assertEquals(0, late.select("[data-finding='upkeep-late roof-wash']").size(), "due on the day");
    assertEquals(
        "Overdue: 1 May 2026", row(late, "coupler-grease").select("td.date").get(1).text());
    Element topic = late.selectFirst("[data-topic=upkeep-year-road]");
    assertFalse(topic.select("[data-finding='upkeep-late coupler-grease']").isEmpty());
  }

  @Test
  void aLateAlarmOrGasTestIsASafetyMatter() throws IOException {
    Document html = html("last-done: {propane-leak-test: 2025-05-01}");
    Element found = html.selectFirst("[data-finding='upkeep-late-safety propane-leak-test']");
    assertEquals("safety", found.attr("data-severity"));
    String cover = html.selectFirst(".cover").text();
    assertTrue(cover.contains("Propane leak test: was due 1 May 2026."), cover);
  }

  /** 9,000 + 12,000 = 21,000 mi; the meter shows that or a mile less. */
  @ParameterizedTest
  @CsvSource({"21000, 1", "20999, 0"})
  void aMeterThatHasPassedItsReadingIsLate(int miles, int late) throws IOException {
    String log =
        "last-done: {wheel-bearings: {on: 2026-04-01, miles: 9000}}\nreadings: {miles: "
            + miles
            + "}\n";
    Document html = html(log);
    assertEquals(
        late,
        html.select("[data-topic] [data-finding='upkeep-late wheel-bearings']").size() > 0 ? 1 : 0);
  }

  @Test
  void aMisspeltTaskOfTheLogIsNamedWithItsLine() throws IOException {
    StringWriter err = new StringWriter();
    Path rig = rush("readings: {miles: 5}\nlast-done:\n  roof-seal: 2026-03\n");
    int code =
        Main.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true),
            "check",
            rig.toString());
    assertEquals(1, code);
    assertTrue(
        err.toString()
            .contains(
                "rush.log.yaml:3:3: last-done.roof-seal: no such key: did you mean 'roof-seals'?"),
        err.toString());
  }

  @Test
  void explainTellsADueDateAndWhatOneLacks() {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String sedge = "rig-profiles/sedge.yaml";
    PrintWriter to = new PrintWriter(out, true);
    assertEquals(0, Main.run(to, to, "explain", sedge, "due.wheel-bearings"));
    assertTrue(out.toString().contains("2025-10 + 1 year = 31 October 2026"), out.toString());
    assertEquals(2, Main.run(to, new PrintWriter(err, true), "explain", sedge, "due.solar-wash"));
    assertTrue(err.toString().contains("does not give last-done.solar-wash"), err.toString());
  }

  @Test
  void theFiguresFileHoldsTheDueDates() {
    assertTrue(Printed.figures("sedge").contains("\"id\" : \"due.wheel-bearings\""));
  }
}
