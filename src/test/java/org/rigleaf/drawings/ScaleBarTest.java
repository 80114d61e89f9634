package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.figures.Amounts;

/** By hand, at 12 points a foot: 5 ft are 60 points; 2 m are 2 / 0.3048 ft, so 78.74 points. */
class ScaleBarTest {
  @ParameterizedTest
  @CsvSource({"US, 60, 5 ft", "METRIC, 78.74, 2 m"})
  void itsPartsMeasureWhatItSays(Amounts amounts, double points, String says) {
    Svg svg = new Svg().open(200, 20, "a scale, for a test");
    new ScaleBar(12, amounts).draw(svg, 1, 10);
    Document drawn = Jsoup.parse(svg.close(), Parser.xmlParser());
    double length =
        drawn.select("rect[height=5]").stream()
            .mapToDouble(r -> Double.parseDouble(r.attr("width")))
            .sum();
    assertEquals(points, length, 0.1);
    assertEquals(says, drawn.select("text").last().text());
  }
}
