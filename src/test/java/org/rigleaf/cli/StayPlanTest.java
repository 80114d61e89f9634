package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StayPlanTest {
  @TempDir private Path folder;
  private final StringWriter err = new StringWriter();

  /** Sedge's own stay: three nights from 15:00, so four days, the last until noon. */
  @Test
  void eachStoreIsToldHourByHour() throws IOException {
    Document plan = plan("--sheets", "stay");
    Elements days = plan.select("[data-day]");
    assertEquals(List.of("1", "2", "3", "4"), days.eachAttr("data-day"));
    assertEquals(9, days.get(0).select("tbody tr").size()); // 15:00 to 23:00
    assertEquals(24, days.get(1).select("tbody tr").size());
    assertEquals(13, days.get(3).select("tbody tr").size()); // 0:00 to 12:00
    assertEquals("15:00", days.get(0).select("tbody th").first().text());
  }

  /** The plan's midnights are the ledger's; both stand in the files of the same rig. */
  @Test
  void midnightsAreThoseOfTheBinder() throws IOException {
    Document plan = plan("--sheets", "stay");
    Document binder = Jsoup.parse(new String(Printed.print("sedge").get("binder.html"), "UTF-8"));
    List<String> stores = List.of("bank", "fresh", "gray.main", "black", "lp");
    Elements cells = plan.select("[data-day=2] tbody tr").first().select("td");
    for (int i = 0; i < stores.size(); i++) {
      Element figure = binder.select("[data-figure=ledger.1." + stores.get(i) + "]").first();
      long percent = Math.round(Double.parseDouble(figure.attr("data-value")));
      assertTrue(cells.get(i).text().startsWith(percent + " %"), stores.get(i) + cells.text());
    }
  }

  /** Four people fill 38 gal of gray water in the time that is left of it at 42 gal a day. */
  @Test
  void anotherStayHasItsOwnPartyAndTowVehicle() throws IOException {
    Path trip = folder.resolve("lake.yaml");
    Files.writeString(
        trip,
        """
        stay:
          people: 4
          nights: 1
          outside: {low: 50 degF, high: 70 degF}
          inside: 66 degF
          month: June
          tow-vehicle: {name: rented pickup, payload-label: 1400 lb, people: 600 lb, bed-cargo: 100 lb, hitch-hardware: 95 lb}
          habits: {drinking-and-cooking: 1 gal, washing: 2 gal, showers-a-day: 1, shower: {minutes: 5, flow: 1.5 gpm}}
        """);
    Document plan = plan("--stay", trip.toString());
    assertEquals(2, plan.select("[data-day]").size());
    assertTrue(plan.text().contains("June"), plan.text());
    // 4 people × (2 gal of washing + 1 shower of 5 min × 1.5 gpm = 7.5 gal) = 38 gal a day of gray
    Element gray = plan.select("[data-figure=use.gray.main]").first();
    assertEquals(38, Double.parseDouble(gray.attr("data-value")), 0.05);
    Element payload = plan.select("[data-figure=tow.payload]").first();
    double hitch =
        Double.parseDouble(plan.select("[data-figure=hitch.weight]").first().attr("data-value"));
    // its label, less people, cargo, hardware and what the rig presses on the hitch
    double left = 1400 - 600 - 100 - 95 - hitch;
    assertEquals(left, Double.parseDouble(payload.attr("data-value")), 0.01);
    try (Stream<Path> files = Files.list(folder.resolve("out/sedge"))) {
      assertEquals(
          List.of("stay.html", "stay.pdf"),
          files.map(f -> f.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void aFileOfAnotherKindIsNamedWithItsLine() throws IOException {
    Path trip = folder.resolve("lake.yaml");
    Files.writeString(trip, "people: 4\nstay: {people: many}\n");
    assertEquals(1, run("--stay", trip.toString()));
    assertTrue(
        err.toString().contains("lake.yaml:1:1: people: the file of a stay"), err.toString());
  }

  @Test
  void aMistakeInTheStayIsNamedInItsOwnFile() throws IOException {
    Path trip = folder.resolve("lake.yaml");
    Files.writeString(trip, "stay: {people: many}\n");
    assertEquals(1, run("--stay", trip.toString()));
    assertTrue(err.toString().contains("lake.yaml:1:16: stay.people"), err.toString());
  }

  private Document plan(String... options) throws IOException {
    assertEquals(0, run(options), err.toString());
    return Jsoup.parse(Files.readString(folder.resolve("out/sedge/stay.html")));
  }

  private int run(String... options) {
    String[] build = {
      "build", "rig-profiles/sedge.yaml", "--out", folder.resolve("out").toString()
    };
    String[] all = Stream.concat(Stream.of(build), Stream.of(options)).toArray(String[]::new);
    return Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err, true), all);
  }
}
