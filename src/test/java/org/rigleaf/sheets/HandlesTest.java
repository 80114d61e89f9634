package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** A handle stands in the drawing, in the table under it and in the steps alike. */
class HandlesTest {
  private static List<Topic> topics(String rig) {
    Rig demo = TestRigs.demo(rig);
    return BinderMaker.of(demo, Figures.of(demo), Wording.english(), Map.of())
        .binder(Paper.LETTER, true)
        .topics();
  }

  private static String text(List<Topic> topics, String topic) {
    return topics.stream()
        .filter(t -> t.id().equals(topic))
        .flatMap(t -> Texts.of(t).stream())
        .map(HandlesTest::shown)
        .collect(Collectors.joining(" "));
  }

  private static String shown(Run run) {
    return run.kind() == Run.Kind.BLANK ? "___" : run.text();
  }

  private static List<String> box(List<Topic> topics, String title, String id) {
    DrawingBlock drawing =
        topics.stream()
            .flatMap(t -> t.blocks().stream())
            .filter(b -> b instanceof DrawingBlock d && d.title().equals(title))
            .map(DrawingBlock.class::cast)
            .findFirst()
            .orElseThrow();
    Document svg = Jsoup.parse(drawing.svg(), "", Parser.xmlParser());
    return svg.select("g[data-box=" + id + "] text").eachText();
  }

  private static void stands(String rig, String title, String id, String position, String topic) {
    List<Topic> topics = topics(rig);
    String drawn = String.join(" ", box(topics, title, id));
    assertTrue(drawn.endsWith(position), rig + " draws " + drawn);
    assertTrue(text(topics, topic).contains(position), rig + ": no step says " + position);
    assertTrue(text(topics, "water-map").contains(position), rig + ": not in the table");
  }

  @Test
  void theWinterDrawingAgreesWithTheWinterSteps() {
    String valve = "water.fill.valve";
    stands("cattail", "Set for antifreeze", valve, "winterize", "antifreeze");
    stands("pickerelweed", "Set for antifreeze", valve, "winterize", "antifreeze");
    String bypass = "water.heater.bypass";
    stands("pickerelweed", "Set for antifreeze", bypass, "both levers point down", "drain");
  }

  @Test
  void theOtherDrawingsAgreeWithTheirSteps() {
    String fill = "The fill valve set to fill the tank";
    stands("cattail", fill, "water.fill.valve", "fill", "fill-tank");
    stands("spikerush", fill, "water.fill.valve", "tank fill", "fill-tank");
    stands("cattail", "Water in use", "water.fill.valve", "tank", "pump");
    stands(
        "pickerelweed", "Water in use", "water.heater.bypass", "both levers point up", "hot-water");
  }

  @Test
  void aPositionThatNobodyToldIsALineToFillIn() {
    List<Topic> topics = topics("cattail");
    for (String title : List.of("Water in use", "Set for antifreeze")) {
      List<String> words = box(topics, title, "water.heater.bypass");
      assertEquals("_______", words.get(words.size() - 1));
    }
    assertTrue(text(topics, "water-map").contains("___"));
  }

  @Test
  void aLongPositionStandsInTheTableWhole() {
    List<Topic> topics = topics("sedge");
    String drawn = String.join(" ", box(topics, "Set for antifreeze", "water.heater.bypass"));
    assertTrue(drawn.endsWith("heater shut see the table"), drawn);
    String said = "outer two across, the middle one along its pipe";
    assertTrue(text(topics, "water-map").contains(said));
    assertTrue(text(topics, "drain").contains(said));
  }
}
