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
import java.util.Map;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A binder in metric: the data stay in the register's unit, the words do not. */
class MetricSheetsTest {
  private static final Map<String, String> PRINTED =
      Map.of(
          "gal",
          "\\d (L|m?L)",
          "lb",
          "\\d kg",
          "in",
          "\\d mm",
          "ft",
          "\\d c?m",
          "psi",
          "\\d kPa \\(.* psi\\)",
          "mph",
          "\\d km/h \\(.* mph\\)");
  private static final Pattern US =
      Pattern.compile("gallons|\\d (gal|lb|ft|psi|mph|gpm|fl oz|lb-ft)\\b(?![^(]*\\))");

  @TempDir private Path folder;

  @Test
  void everyFigureIsPrintedInMetricAndKeepsItsData() throws IOException {
    Document us = Jsoup.parse(new String(Printed.print("sedge").get("binder.html"), "UTF-8"));
    Document metric = metric();
    List<String> wrong = new ArrayList<>();
    for (Element figure : metric.select("[data-figure]")) {
      String form = PRINTED.get(figure.attr("data-unit"));
      if (form != null && !Pattern.compile(form).matcher(figure.text()).find()) {
        wrong.add(figure.outerHtml());
      }
    }
    assertEquals(List.of(), wrong);
    assertEquals(data(us), data(metric));
  }

  private static List<String> data(Document binder) {
    return binder.select("[data-figure]").stream()
        .map(f -> f.attr("data-figure") + " " + f.attr("data-value") + " " + f.attr("data-unit"))
        .toList();
  }

  /** Steps and cautions name no US unit but in brackets. */
  @Test
  void stepsAndCautionsSpeakMetric() throws IOException {
    var texts =
        metric()
            .select(
                ".action, .see, .if-not, .avoid, .hazard, .command, .what, .meaning, h3, thead th");
    assertTrue(texts.size() > 500, "steps and cautions");
    assertEquals(
        List.of(), texts.eachText().stream().filter(t -> US.matcher(t).find()).distinct().toList());
  }

  private Document metric() throws IOException {
    StringWriter err = new StringWriter();
    String out = folder.toString();
    String[] build = {
      "build",
      "rig-profiles/sedge.yaml",
      "--units",
      "metric",
      "--paper",
      "a4",
      "--sheets",
      "binder",
      "--out",
      out
    };
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    assertEquals(0, Main.run(nowhere, new PrintWriter(err, true), build), err.toString());
    return Jsoup.parse(Files.readString(folder.resolve("sedge/binder.html")));
  }
}
