package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/** The printed walk-through of each demo rig. */
class WalkThroughTest {
  /** Lines that are there if and only if the rig has the gear. */
  private static final Map<String, String> READINGS =
      Map.of(
          "fuel", "road.fuel",
          "generator-hours", "electric.generator",
          "propane-1", "propane.cylinders",
          "propane-tank", "propane.tank",
          "fresh", "water.fresh",
          "black", "waste.black",
          "gray", "waste.gray",
          "battery", "electric.batteries");

  private static String text(String rig) {
    return new String(Printed.file(rig, "walk-through.html"), StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void theMinutesAddUpAndBothOrdersHoldTheSameStops(String name) {
    Document html = Jsoup.parse(text(name));
    List<String> stops = html.select("[data-stop]").eachAttr("data-stop");
    int sum =
        html.select("[data-stop]").stream().mapToInt(s -> number(s.attr("data-minutes"))).sum();
    assertEquals(sum, number(html.select("[data-total]").text()));
    List<String> rain = html.select("[data-rain]").eachAttr("data-rain");
    assertEquals(stops.stream().sorted().toList(), rain.stream().sorted().toList());
    assertTrue(stops.size() > 10, stops.toString());
    html.select("[data-stop]")
        .forEach(s -> assertEquals(1, s.select("[data-blank^=initials]").size(), s.text()));
  }

  /** Few headings for whoever hands over; each says the minutes of its own stops. */
  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void everyStopStandsUnderOneOfFewHeadings(String name) {
    Document html = Jsoup.parse(text(name));
    List<Element> legs = html.select("[data-leg]");
    List<String> titles = legs.stream().map(l -> l.select("h3").get(0).ownText()).toList();
    assertEquals(titles.stream().distinct().toList(), titles);
    assertTrue(titles.size() >= 6 && titles.size() <= 12, titles.toString());
    assertEquals("Before anything else", titles.get(0));
    for (Element leg : legs) {
      int sum =
          leg.select("[data-stop]").stream().mapToInt(s -> number(s.attr("data-minutes"))).sum();
      assertEquals(sum, number(leg.select("[data-leg-minutes]").text()), leg.text());
    }
    List<String> stops = html.select("[data-stop]").eachAttr("data-stop");
    assertEquals(stops, html.select("[data-leg] > [data-stop]").eachAttr("data-stop"));
  }

  private static int number(String text) {
    return Integer.parseInt(text);
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void readingsAreAskedOfTheGearThatIsThere(String name) {
    Document html = Jsoup.parse(text(name));
    Rig rig = TestRigs.demo(name);
    READINGS.forEach(
        (key, gear) ->
            assertEquals(
                rig.has(gear), !html.select("[data-blank=" + key + "]").isEmpty(), name + key));
    assertEquals(
        rig.identity().kind().motorized(), !html.select("[data-blank=odometer]").isEmpty());
    for (String key : List.of("keeper-signature", "newcomer-signature", "handed-over-at")) {
      assertEquals(1, html.select("[data-blank=" + key + "]").size(), key);
    }
    assertEquals(1, html.select(".signed svg").size());
    assertEquals(3 + 5, html.select(".signed [data-blank]").size(), "marks, and who signs them");
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void nothingPrivateIsOnIt(String name) {
    TestRigs.demo(name)
        .privateWords()
        .values()
        .forEach(secret -> assertFalse(text(name).contains(secret), secret));
    assertFalse(TestRigs.demo("sedge").privateWords().isEmpty());
  }
}
