package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Circuit;
import org.rigleaf.rig.Rig;

/** The faces of the panels: what the profile names stands on them once, and nothing else. */
class FaceBlocksTest {
  private static final String NOT_A_PHOTOGRAPH = "This is a list, not a photograph.";

  private static List<DrawingBlock> faces(Rig rig) {
    return BinderMaker.of(rig, Figures.of(rig), Wording.english(), Map.of())
        .binder(Paper.LETTER, true)
        .topics()
        .stream()
        .filter(t -> t.id().equals("controls"))
        .flatMap(t -> t.blocks().stream())
        .filter(DrawingBlock.class::isInstance)
        .map(DrawingBlock.class::cast)
        .toList();
  }

  private static List<String> words(Rig rig) {
    return words(rig, "text");
  }

  private static List<String> words(Rig rig, String which) {
    return faces(rig).stream()
        .flatMap(f -> Jsoup.parse(f.svg(), "", Parser.xmlParser()).select(which).stream())
        .map(Element::text)
        .toList();
  }

  private static Rig electric(String lines) {
    return TestRigs.of("rig: {name: Reed, kind: travel trailer}\nelectric:\n" + lines);
  }

  @Test
  void onRandomRigsEveryBreakerAndFuseStandsOnceInBold() {
    List<String> wrong = new ArrayList<>();
    for (RandomRigs.Profile profile : RandomRigs.all()) {
      Rig rig = profile.rig();
      List<String> words = words(rig, "text[font-weight=bold]");
      for (Circuit c :
          Stream.concat(rig.electric().breakers().stream(), rig.electric().fuses().stream())
              .toList()) {
        long times = words.stream().filter(c.name()::equals).count();
        if (times != 1) {
          wrong.add(profile.name() + ": " + c.name() + " stands " + times + " times");
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void everyPictureSaysThatItIsAList() {
    for (String name : TestRigs.fleet().toList()) {
      List<DrawingBlock> faces = faces(TestRigs.demo(name));
      assertFalse(faces.isEmpty(), name);
      faces.forEach(f -> assertTrue(f.svg().contains(NOT_A_PHOTOGRAPH), name + f.title()));
    }
  }

  @Test
  void aRigThatNamesNoBreakersHasNoPicture() {
    assertEquals(List.of(), faces(electric("  panel: {where: hall}\n")));
    assertEquals(List.of(), faces(TestRigs.smallest()));
  }

  @Test
  void theMainBreakerStandsFirstAndFeedsTheWholeRig() {
    List<String> words =
        words(
            electric(
                "  breakers: [{name: Galley, rating: 15 A, feeds: [\"outlets\"]}, {name: Main, rating: 30 A}]\n"));
    List<String> line = List.of("30 A", "Main", "the whole rig", "15 A", "Galley", "outlets");
    int at = words.indexOf("30 A");
    assertEquals(line, words.subList(at, at + line.size()));
  }

  /** Trade tables of blade fuses; 4 and 80 A are none of the usual ones. */
  @Test
  void aBladeFuseHasItsColorInWords() {
    Map<String, String> colors =
        Map.of(
            "2 A", "gray", "3 A", "violet", "5 A", "tan", "7.5 A", "brown", "10 A", "red", "15 A",
            "blue", "20 A", "yellow", "25 A", "clear", "30 A", "green");
    colors.forEach(
        (amps, color) -> {
          List<String> words = words(electric("  fuses: {name: Pump, rating: " + amps + "}\n"));
          assertEquals(color, words.get(words.indexOf("Pump") + 1), amps);
        });
    List<String> none = words(electric("  fuses: {name: Jacks, rating: 80 A}\n"));
    assertTrue(none.stream().noneMatch(colors.values()::contains), none.toString());
  }

  @Test
  void aFuseWithAPlaceOfItsOwnStandsOutsideThePanel() {
    List<String> words =
        words(
            electric(
                "  panel: {where: hall}\n  fuses: [{name: Slide, rating: 30 A, where: by the tongue}, {name: Pump, rating: 10 A}]\n"));
    assertEquals(
        List.of("E1", "Breaker and fuse panel", "hall", "10 A", "Pump", "red"),
        words.subList(1, 7));
    assertEquals(List.of("Not in the panel: by the tongue"), words.subList(7, 8));
    assertEquals("30 A", words.get(8));
  }

  @Test
  void theSwitchesThatTheProfilePutsOnTheMonitorStandOnIt() {
    String rig =
        """
        rig: {name: Reed, kind: travel trailer}
        waste: {monitor: {lamps: [E, F], lamps-mean: E is empty., where: panel by the door}}
        water:
          pump: {switches: [monitor panel, bathroom], marked: WTR PUMP}
          heater: {switches: panel by the door}
        electric:
          generator: {switch: on the panel by the door, marked: GEN}
          inverter: {switch: by the door, marked: INV}
        body: {awnings: {name: Shade, switch: left of the panel by the door, marked: SHADE}}
        """;
    List<String> words = words(TestRigs.of(rig));
    assertTrue(words.containsAll(List.of("E", "F", "They mean: E is empty.", "WTR PUMP", "GEN")));
    assertTrue(words.stream().anyMatch(w -> w.startsWith("Water heater (W")), words.toString());
    assertFalse(words.contains("INV") || words.contains("SHADE"), words.toString());
  }
}
