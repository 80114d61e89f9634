package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** The picture of the rig on the cover. */
class PortraitsTest {
  private static List<DrawingBlock> of(Rig rig, Amounts units, int findings) {
    Wording wording = Wording.english(units);
    Guide guide = new Guide(rig, Figures.of(rig), wording, Map.of());
    return Portraits.of(rig, wording, guide.filler(), Paper.LETTER, 1, findings);
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void everyCoverHasAPictureAtLeastFourCentimetersLong(String name) {
    for (int findings : List.of(0, 1)) {
      Element svg = Jsoup.parse(of(TestRigs.demo(name), Amounts.US, findings).get(0).svg());
      Element ground = svg.select("g[data-part=length] line").get(0);
      double wide = Double.parseDouble(ground.attr("x2")) - Double.parseDouble(ground.attr("x1"));
      assertTrue(wide * 25.4 / 72 >= 40, name + ": " + wide);
    }
  }

  @Test
  void lengthAndHeightStandInTheUnitsOfTheSheet() {
    Rig sedge = TestRigs.demo("sedge");
    assertEquals(
        List.of("24 ft 8 in long", "10 ft 9 in high"),
        Jsoup.parse(of(sedge, Amounts.US, 0).get(0).svg()).select("text").eachText());
    assertEquals(
        List.of("7.52 m long", "3.28 m high"),
        Jsoup.parse(of(sedge, Amounts.METRIC, 0).get(0).svg()).select("text").eachText());
  }

  @Test
  void anUnknownHeightHasNoLine() {
    Rig rig = TestRigs.of("rig: {name: Reed, kind: class b, length: 20 ft}");
    String svg = of(rig, Amounts.US, 0).get(0).svg();
    assertTrue(svg.contains("20 ft long"));
    assertFalse(svg.contains("data-part=\"height\""));
  }

  @Test
  void itGivesWayToFindings() {
    assertTrue(of(TestRigs.demo("sedge"), Amounts.US, 8).isEmpty());
  }
}
