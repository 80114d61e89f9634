package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.drawings.PanelFace.Box;
import org.rigleaf.drawings.PanelFace.Lamps;
import org.rigleaf.drawings.PanelFace.Row;
import org.rigleaf.drawings.PanelFace.Sign;

/** What holds on the face of every panel, seen on panels made up from one seed. */
class PanelFaceTest {
  private static final PanelFace.Words WORDS =
      new PanelFace.Words("feeds", "They mean:", "A list, not a photograph. ".repeat(6).strip());
  private static final String ALT = "A list of what stands on the panel.";
  private static final double PEN = 0.2;

  private static List<Drawing> draw(Box... boxes) {
    return PanelFace.draw(List.of(boxes), WORDS, ALT);
  }

  private static Box panel(Row... rows) {
    return new Box("electric.panel", "E5", "Panel", "by the door", Lamps.NONE, List.of(rows));
  }

  private static Row breaker(String amps, String name, String feeds) {
    return new Row(Sign.BREAKER, amps, name, "", feeds);
  }

  /** Panels of 1 to 60 lines, names of 1 to 28 signs, feeds of none to five things. */
  static Stream<List<Box>> made() {
    Random random = new Random(20261125);
    return Stream.generate(() -> boxes(random)).limit(60);
  }

  private static List<Box> boxes(Random random) {
    List<Box> boxes = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      List<Row> rows = new ArrayList<>();
      int most = random.nextInt(i == 0 ? 50 : 5);
      for (int j = 0; j <= most; j++) {
        rows.add(row(random, i * 100 + j));
      }
      boolean lamps = random.nextInt(3) == 0;
      Lamps all =
          lamps ? new Lamps(words(random, 1 + random.nextInt(9)), text(random)) : Lamps.NONE;
      String code = random.nextBoolean() ? "E" + (1 + random.nextInt(30)) : "";
      boxes.add(
          new Box(code.isEmpty() ? "" : "g" + i, code, name(random), text(random), all, rows));
    }
    return boxes;
  }

  private static Row row(Random random, int number) {
    Sign sign = Sign.values()[random.nextInt(Sign.values().length)];
    String name = "n" + number + " " + "Wide M wordlings and more W".substring(random.nextInt(25));
    String amps =
        random.nextInt(4) == 0 ? "" : new String[] {"7.5 A", "30 A", "1,000 A"}[number % 3];
    return new Row(sign, amps, name, random.nextBoolean() ? "yellow" : "", text(random));
  }

  private static String name(Random random) {
    return "Not in the panel: " + words(random, 1).get(0);
  }

  private static String text(Random random) {
    return String.join(", ", words(random, random.nextInt(6)));
  }

  private static List<String> words(Random random, int count) {
    return Stream.generate(() -> "Wmiljk".repeat(5).substring(random.nextInt(28)))
        .limit(count)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("made")
  void everyLineStandsOnceAndItsWordsKeepApartAndOnThePage(List<Box> boxes) {
    List<Drawing> drawings = PanelFace.draw(boxes, WORDS, ALT);
    List<String> all = new ArrayList<>();
    for (Drawing drawing : drawings) {
      Sketch sketch = new Sketch(drawing);
      apart(sketch);
      inside(sketch);
      all.addAll(sketch.words());
    }
    for (Row row : boxes.stream().flatMap(b -> b.rows().stream()).toList()) {
      String first = row.name().split(" ")[0];
      long times = all.stream().filter(w -> w.equals(first) || w.startsWith(first + " ")).count();
      assertEquals(1, times, row.name());
    }
    assertEquals(drawings, PanelFace.draw(boxes, WORDS, ALT), "same bytes");
  }

  private static void apart(Sketch sketch) {
    List<Element> texts = sketch.texts();
    for (int i = 0; i < texts.size(); i++) {
      Rectangle2D a = Sketch.ink(texts.get(i));
      for (int j = i + 1; j < texts.size(); j++) {
        String both = texts.get(i) + " and " + texts.get(j);
        assertFalse(a.intersects(Sketch.ink(texts.get(j))), () -> both + " overlap");
      }
      for (Element line : sketch.svg.select("line")) {
        boolean upright = line.attr("x1").equals(line.attr("x2"));
        String both = texts.get(i) + " and " + line;
        assertFalse(!upright && crosses(line, a), () -> both + " cross");
      }
    }
  }

  private static boolean crosses(Element line, Rectangle2D box) {
    return box.intersectsLine(
        Sketch.number(line, "x1"),
        Sketch.number(line, "y1"),
        Sketch.number(line, "x2"),
        Sketch.number(line, "y2"));
  }

  private static void inside(Sketch sketch) {
    assertTrue(sketch.wide() <= 473, "wider than the text of A4"); // 167 mm
    assertTrue(sketch.high() <= 553, "higher than a page: " + sketch.high());
    for (double[] xy : sketch.corners()) {
      boolean in =
          xy[0] >= PEN && xy[1] >= 0 && xy[0] <= sketch.wide() - PEN && xy[1] <= sketch.high();
      assertTrue(in, () -> "outside: " + xy[0] + " " + xy[1]);
    }
  }

  @Test
  void theWordsAreReadAmpsNameAndWhatItFeedsLineByLine() {
    Drawing drawing =
        draw(panel(
                new Row(Sign.MAIN, "30 A", "Main", "", "the whole rig"),
                breaker("15 A", "Galley", "outlets")))
            .get(0);
    assertEquals(
        List.of(
            "feeds",
            "E5",
            "Panel",
            "by the door",
            "30 A",
            "Main",
            "the whole rig",
            "15 A",
            "Galley",
            "outlets"),
        new Sketch(drawing).words().subList(0, 10));
    assertTrue(drawing.svg().contains("role=\"group\""), "each word is read aloud");
  }

  @Test
  void theMainBreakerHasTheHeavierFrameAndALineToAllOthers() {
    Row main = new Row(Sign.MAIN, "30 A", "Main", "", "the whole rig");
    Sketch with = new Sketch(draw(panel(main, breaker("15 A", "Galley", "x"))).get(0));
    Sketch without =
        new Sketch(draw(panel(breaker("30 A", "One", "x"), breaker("15 A", "Two", "x"))).get(0));
    assertEquals(1, with.svg.select("rect[stroke-width=2.5]").size());
    assertEquals(3, with.svg.select("line[stroke-width=2]").size(), "one down, one to each");
    assertEquals(0, without.svg.select("line[stroke-width=2]").size());
    assertEquals(0, without.svg.select("rect[stroke-width=2.5]").size());
  }

  @Test
  void whatNobodySaidIsALineToFillIn() {
    Sketch known = new Sketch(draw(panel(breaker("15 A", "Galley", "outlets"))).get(0));
    Sketch unknown = new Sketch(draw(panel(breaker("", "Galley", ""))).get(0));
    assertEquals(0, known.svg.select("line[stroke-width=0.75]").size());
    assertEquals(2, unknown.svg.select("line[stroke-width=0.75]").size());
  }

  @Test
  void aPanelOfFiftyBreakersGoesOnInTheNextPictureUnderTheSameHead() {
    Row[] rows = new Row[50];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = breaker("15 A", "Breaker " + i, "outlet " + i);
    }
    List<Drawing> drawings = draw(panel(rows));
    assertTrue(drawings.size() >= 4, "50 lines of 36 pt need 1,800 pt of 500: " + drawings.size());
    drawings.forEach(d -> assertTrue(new Sketch(d).words().contains("Panel")));
  }
}
