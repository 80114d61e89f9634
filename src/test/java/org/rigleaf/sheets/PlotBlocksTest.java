package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.figures.Value;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** The plots of a binder stand where their figures are, and show them as they are. */
class PlotBlocksTest {
  private static Rig rig(String name) {
    return name.equals("bulrush") ? TestRigs.smallest() : TestRigs.demo(name);
  }

  /** The topics that ask for a plot; other drawings are not looked at here. */
  private static boolean hasPlot(Topic topic) {
    return Wording.english().topics().stream()
        .filter(t -> t.id().equals(topic.id()))
        .flatMap(t -> t.shows().stream())
        .anyMatch(Show.Plot.class::isInstance);
  }

  /** The plots of the binder by their topic. */
  private static Map<String, List<DrawingBlock>> plots(Rig rig) {
    Binder binder =
        BinderMaker.of(rig, Figures.of(rig), Wording.english(), Map.of())
            .binder(Paper.LETTER, true);
    Map<String, List<DrawingBlock>> plots = new TreeMap<>();
    for (Topic topic : binder.topics()) {
      List<DrawingBlock> drawn =
          topic.blocks().stream()
              .filter(b -> b instanceof DrawingBlock d && d.svg().contains("<text"))
              .map(DrawingBlock.class::cast)
              .filter(d -> d.legend().isEmpty())
              .toList();
      if (!drawn.isEmpty() && hasPlot(topic)) {
        plots.put(topic.id(), drawn);
      }
    }
    return plots;
  }

  private static Document svg(String rig, String topic) {
    return Jsoup.parse(plots(rig(rig)).get(topic).get(0).svg(), "", Parser.xmlParser());
  }

  private static List<Figure> figures(String rig, String pattern) {
    return Figures.of(rig(rig)).all().stream().filter(f -> f.id().matches(pattern)).toList();
  }

  private static double[] numbers(String path) {
    return Arrays.stream(path.trim().split("[\\s,A-Z]+"))
        .filter(s -> !s.isEmpty())
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  private static double number(Element e, String key) {
    return Double.parseDouble(e.attr(key));
  }

  /** Bulrush's profile names no panels, no track and no length to lift over, and one large load. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sedge | battery chock-and-level staying sun together",
        "cattail | battery chock-and-level staying sun together",
        "bulrush | staying"
      })
  void aRigHasThePlotsOfItsOwnGearAndNoOther(String rig, String topics) {
    assertEquals(topics, String.join(" ", plots(rig(rig)).keySet()));
  }

  @Test
  void aRigThatLosesItsPanelsLosesThePlotOfTheSun() {
    String barest = "rig: {name: Bur Reed, kind: travel trailer}\n";
    assertEquals(Map.of(), plots(TestRigs.of(barest)));
    String year = "stay: {place: {latitude: 40}}\nelectric: {solar: ";
    String panels = "{panels: 2 x 100 W, controller: mppt}}\n";
    assertEquals(List.of("sun"), List.copyOf(plots(TestRigs.of(barest + year + panels)).keySet()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail", "bulrush"})
  void everyPlotIsToldInWordsAndNothingIsUnderTenPoint(String rig) {
    List<DrawingBlock> all = plots(rig(rig)).values().stream().flatMap(List::stream).toList();
    for (DrawingBlock plot : all) {
      Document svg = Jsoup.parse(plot.svg(), "", Parser.xmlParser());
      assertTrue(plot.alt().length() >= 20 && plot.alt().length() <= 250, plot.alt());
      assertTrue(!plot.alt().contains("{") && !plot.title().isBlank(), plot.alt());
      assertEquals(plot.alt(), svg.selectFirst("svg").attr("aria-label"));
      svg.select("text").forEach(t -> assertTrue(number(t, "font-size") >= 10, t.text()));
      assertEquals(0, svg.select("text:contains({)").size());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail"})
  void theCurveOfTheBankIsItsHours(String rig) {
    Document svg = svg(rig, "battery");
    double[] xy = numbers(svg.selectFirst("path[stroke-width=2.2]").attr("d"));
    List<Figure> hours = figures(rig, "bank\\.hour\\..*");
    assertEquals(50, xy.length, "25 points");
    double none = y(svg, "0");
    double all = y(svg, "100");
    for (int h = 0; h <= 24; h++) {
      double percent = 100 * (xy[2 * h + 1] - none) / (all - none);
      assertEquals(hours.get(h).number(), percent, 0.01, hours.get(h).id());
    }
  }

  private static double y(Document svg, String tick) {
    Element text =
        svg.select("text[text-anchor=end]").stream()
            .filter(t -> t.text().equals(tick))
            .findFirst()
            .orElseThrow();
    return number(text, "y") - 3.6; // from the baseline to the middle of a digit
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail"})
  void theBarsOfTheYearAreAsHighAsTheMonths(String rig) {
    Document svg = svg(rig, "sun");
    List<Figure> months = figures(rig, "sun\\.[a-z]+");
    List<Element> bars = svg.select("rect[stroke-width=0.8]").subList(0, 12);
    double wattHour = (y(svg, "0") - y(svg, "200")) / 200;
    for (int m = 0; m < 12; m++) {
      assertEquals(months.get(m).number(), number(bars.get(m), "height") / wattHour, 0.5);
    }
  }

  /** A bar or an arrow for each figure; the number at a bar is the figure to a tenth of a day. */
  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail", "bulrush"})
  void everyStorePartyAndNightHasItsBar(String rig) {
    Document svg = svg(rig, "staying");
    List<Figure> lengths = figures(rig, "lasts\\..*");
    long numbered = lengths.stream().filter(f -> f.value() instanceof Value.Number).count();
    assertTrue(numbered > 0);
    assertEquals(numbered, svg.select("rect[stroke-width=0.8]").size());
    assertEquals(lengths.size() - numbered, svg.select("polygon").size());
    List<String> texts = new ArrayList<>(svg.select("text").eachText());
    for (Figure f : lengths) {
      if (f.value() instanceof Value.Number n) {
        boolean there = texts.stream().anyMatch(t -> isAbout(t, n.number()));
        assertTrue(there, f.id() + " " + n.number());
      }
    }
  }

  private static boolean isAbout(String text, double days) {
    return text.matches("\\d+(\\.\\d)?") && Math.abs(Double.parseDouble(text) - days) <= 0.0501;
  }

  /** Sedge at 30 A by hand: 780 W converter + 60 W television are always on. */
  @Test
  void theDotsAndWattsOfASetAreItsLoads() {
    Document svg = svg("sedge", "together");
    assertEquals(
        3 + 3 + 2 + 2 + 4, svg.select("circle").size(), "four sets, and always on in each");
    List<Element> bars = svg.select("rect[stroke-width=0.8]");
    double watt = (y(svg, "0") - y(svg, "2,000")) / 2000;
    double[] byHand = {
      840 + 900 + 1440 + 325, 840 + 1350 + 900 + 325, 840 + 900 + 1450, 840 + 1450 + 325
    };
    assertEquals(byHand.length, bars.size());
    for (int i = 0; i < byHand.length; i++) {
      assertEquals(byHand[i], number(bars.get(i), "height") / watt, 1);
    }
    assertTrue(svg.select("text").eachText().contains("limit: 3,600 W"), "30 A x 120 V");
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail"})
  void everyLiftHasItsMark(String rig) {
    Document svg = svg(rig, "chock-and-level");
    assertEquals(figures(rig, "level\\.side\\..*").size(), svg.select("circle").size());
    assertEquals(
        figures(rig, "level\\.nose\\..*").size(), svg.select("rect[stroke-width=1.2]").size());
  }
}
