package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.drawings.LastsPlot.Bar;

/** What a reader of the plots relies on: marks stand where the scale beside them says. */
class PlotsTest {
  /** From the baseline of a tick's number up to its tick: half the height of a digit of 10 pt. */
  private static final double HALF_DIGIT = 3.6;

  /** Two numbers of a scale tell where any other value must lie. */
  private record Scale(double zero, double unit) {
    double at(double value) {
      return zero + value * unit;
    }
  }

  private static Scale upright(Sketch sketch, String low, String high) {
    return scale(low, y(tick(sketch, "end", low)), high, y(tick(sketch, "end", high)));
  }

  private static double y(Element text) {
    return Sketch.number(text, "y") - HALF_DIGIT;
  }

  private static Scale level(Sketch sketch, String low, String high) {
    Element a = tick(sketch, "middle", low);
    Element b = tick(sketch, "middle", high);
    return scale(low, Sketch.number(a, "x"), high, Sketch.number(b, "x"));
  }

  private static Scale scale(String low, double lowAt, String high, double highAt) {
    double a = Double.parseDouble(low.replace(",", ""));
    double b = Double.parseDouble(high.replace(",", ""));
    double unit = (highAt - lowAt) / (b - a);
    return new Scale(lowAt - a * unit, unit);
  }

  private static Element tick(Sketch sketch, String anchor, String number) {
    return sketch.texts().stream()
        .filter(t -> t.attr("text-anchor").equals(anchor) && t.text().equals(number))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no tick " + number + " in " + sketch.words()));
  }

  private static Element text(Sketch sketch, String words) {
    return sketch.texts().stream().filter(t -> t.text().equals(words)).findFirst().orElseThrow();
  }

  private static List<Rectangle2D> bars(Sketch sketch) {
    return sketch.svg.select("rect[stroke-width=0.8]").stream().map(PlotsTest::box).toList();
  }

  private static Rectangle2D box(Element rect) {
    return new Rectangle2D.Double(
        Sketch.number(rect, "x"),
        Sketch.number(rect, "y"),
        Sketch.number(rect, "width"),
        Sketch.number(rect, "height"));
  }

  private static List<Line2D> segments(Element path) {
    double[] xy = Sketch.numbers(path.attr("d"));
    List<Line2D> lines = new ArrayList<>();
    for (int i = 0; i + 3 < xy.length; i += 2) {
      lines.add(new Line2D.Double(xy[i], xy[i + 1], xy[i + 2], xy[i + 3]));
    }
    return lines;
  }

  @Test
  void theChargeOfAnHourStandsOverThatHour() {
    Sketch sketch = new Sketch(SamplePlots.bank());
    Scale percent = upright(sketch, "0", "100");
    double six = Sketch.number(text(sketch, "6 pm"), "x");
    double noon = Sketch.number(text(sketch, "noon"), "x");
    double hour = (noon - six) / 18;
    double[] xy = Sketch.numbers(sketch.svg.selectFirst("path[stroke-width=2.2]").attr("d"));
    assertEquals(50, xy.length, "25 points");
    assertEquals(six + 14 * hour, xy[2 * 17], 0.02, "the eighteenth point is 8 am");
    assertEquals(percent.at(33), xy[2 * 17 + 1], 0.02, "33 %");
    Element low = sketch.svg.selectFirst("circle");
    assertEquals(percent.at(33), Sketch.number(low, "cy"), 0.02, "the ring marks the lowest point");
    assertEquals(six + 14 * hour, Sketch.number(low, "cx"), 0.02);
    double[] floor = Sketch.numbers(sketch.svg.selectFirst("path[stroke-dasharray]").attr("d"));
    assertEquals(percent.at(20), floor[1], 0.02);
    assertEquals(percent.at(20), floor[3], 0.02);
    Rectangle2D night = box(sketch.svg.selectFirst("rect[fill=" + Plot.SHADE + "]"));
    assertEquals(six + 2 * hour, night.getMinX(), 0.02, "night falls at 20:00");
    assertEquals(six + 14 * hour, night.getMaxX(), 0.02, "and ends at 8:00");
  }

  @Test
  void onlyAChargeUnderTheFloorIsHatched() {
    assertEquals(0, new Sketch(SamplePlots.bank()).svg.select("path[stroke-width=0.7]").size());
    BankPlot.Words words = new BankPlot.Words("%", "time", "floor", "night", "low", "");
    List<BankPlot.Point> points =
        List.of(new BankPlot.Point(15, 60), new BankPlot.Point(27, 0), new BankPlot.Point(39, 60));
    Drawing drawing =
        BankPlot.draw(new BankPlot.Data(points, 30, List.of(), words), SamplePlots.ALT);
    Sketch sketch = new Sketch(drawing);
    double floor = upright(sketch, "0", "100").at(30);
    List<Element> strokes = sketch.svg.select("path[stroke-width=0.7]");
    assertEquals(42, strokes.size(), 1, "under it for 12 of 24 h: 338 ÷ 2 ÷ 4");
    strokes.forEach(s -> assertEquals(floor, segments(s).get(0).getY1(), 0.02));
    Rectangle2D low = Sketch.ink(text(sketch, "low"));
    strokes.forEach(s -> assertFalse(segments(s).get(0).intersects(low), "low is struck"));
  }

  @Test
  void aBarOfTheYearIsAsHighAsItsMonthAndHatchedUnderTheNeed() {
    Sketch sketch = new Sketch(SamplePlots.sun(OptionalDouble.of(1100)));
    Scale energy = upright(sketch, "0", "1,000");
    List<Rectangle2D> bars = bars(sketch);
    assertEquals(14, bars.size(), "twelve months and two of the key");
    assertEquals(energy.at(420), bars.get(0).getMinY(), 0.02, "January");
    assertEquals(energy.at(1550), bars.get(6).getMinY(), 0.02, "July");
    bars.subList(0, 12).forEach(b -> assertEquals(energy.at(0), b.getMaxY(), 0.02));
    double[] need = Sketch.numbers(sketch.svg.selectFirst("path[stroke-dasharray]").attr("d"));
    assertEquals(energy.at(1100), need[1], 0.02);
    List<Integer> hatched =
        IntStream.range(0, 12)
            .filter(i -> strokesIn(sketch, bars.get(i)) > 3)
            .map(i -> i + 1)
            .boxed()
            .toList();
    assertEquals(List.of(1, 2, 3, 9, 10, 11, 12), hatched);
  }

  private static long strokesIn(Sketch sketch, Rectangle2D bar) {
    return sketch.svg.select("line[stroke-width=0.7]").stream()
        .filter(
            l ->
                bar.contains(
                    (Sketch.number(l, "x1") + Sketch.number(l, "x2")) / 2,
                    (Sketch.number(l, "y1") + Sketch.number(l, "y2")) / 2))
        .count();
  }

  @Test
  void theKeyExplainsOnlyBarsThatAreThere() {
    List<String> never = new Sketch(SamplePlots.sun(OptionalDouble.of(2000))).words();
    assertFalse(never.contains("sun covers the day"));
    assertTrue(never.contains("sun falls short: use a plug"));
    List<String> always = new Sketch(SamplePlots.sun(OptionalDouble.of(300))).words();
    assertTrue(always.contains("sun covers the day"));
    assertFalse(always.contains("sun falls short: use a plug"));
  }

  @Test
  void withoutANeedNoBarIsJudged() {
    Sketch sketch = new Sketch(SamplePlots.sun(OptionalDouble.empty()));
    assertEquals(12, bars(sketch).size());
    assertEquals(0, sketch.svg.select("line[stroke-width=0.7], path").size());
    assertFalse(sketch.words().contains("sun covers the day"));
  }

  @Test
  void aStoreLastsAsLongAsItsBarAndNoBarMeansNotKnown() {
    Sketch sketch = new Sketch(SamplePlots.lasts());
    Scale days = level(sketch, "0", "20");
    List<Rectangle2D> bars = bars(sketch);
    assertEquals(27, bars.size(), "30, less two that keep up and one that is not known");
    assertEquals(days.at(0), bars.get(0).getMinX(), 0.02);
    assertEquals(days.at(6.2), bars.get(0).getMaxX(), 0.02, "fresh water, one person");
    assertEquals(days.at(5), bars.get(9).getMaxX(), 0.02, "battery, four people");
    assertEquals(2, sketch.svg.select("polygon").size(), "one arrow for each that keeps up");
    List<Element> words = sketch.texts().stream().filter(t -> t.text().equals("keeps up")).toList();
    assertEquals(2, words.size());
    double arrow = Sketch.numbers(sketch.svg.selectFirst("polygon").attr("points"))[5];
    assertEquals(Sketch.number(words.get(0), "y") - HALF_DIGIT, arrow, 0.02, "word and arrow");
  }

  @ParameterizedTest
  @CsvSource({"30, 1, 0", "30.1, 0, 1"})
  void aMonthIsABarAndMoreIsAnArrow(double days, int bars, int arrows) {
    LastsPlot.Panel panel = new LastsPlot.Panel("mild", List.of(new Bar(0, 0, days, "text")));
    LastsPlot.Words words = new LastsPlot.Words("title", "days", "");
    Drawing drawing =
        LastsPlot.draw(
            new LastsPlot.Data(List.of("water"), List.of("two"), List.of(panel), words),
            SamplePlots.ALT);
    Sketch sketch = new Sketch(drawing);
    assertEquals(bars, bars(sketch).size());
    assertEquals(arrows, sketch.svg.select("polygon").size());
  }

  @Test
  void aDotStandsWhereALoadMeetsItsSetAndNowhereElse() {
    Sketch sketch = new Sketch(SamplePlots.together());
    assertEquals(30, sketch.svg.select("circle").size(), "4 + 5 + 4 + 4 + 4 + 4 + 5");
    assertTrue(dot(sketch, "Air conditioner, front", "1"));
    assertFalse(dot(sketch, "Air conditioner, front", "2"));
    assertTrue(dot(sketch, "Television", "7"));
    assertTrue(dot(sketch, "Space heater", "6"));
    assertFalse(dot(sketch, "Hair dryer", "6"));
  }

  private static boolean dot(Sketch sketch, String load, String set) {
    double x = Sketch.number(text(sketch, set), "x");
    double y = Sketch.number(text(sketch, load), "y") - HALF_DIGIT;
    return sketch.svg.select("circle").stream()
        .anyMatch(
            c ->
                Math.abs(Sketch.number(c, "cx") - x) < 0.02
                    && Math.abs(Sketch.number(c, "cy") - y) < 0.02);
  }

  @Test
  void theWattsOfASetStandUnderItAgainstTheLimit() {
    Sketch sketch = new Sketch(SamplePlots.together());
    Scale watts = upright(sketch, "0", "2,000");
    List<Rectangle2D> bars = bars(sketch);
    assertEquals(7, bars.size());
    assertEquals(watts.at(2960), bars.get(0).getMinY(), 0.02);
    assertEquals(Sketch.number(text(sketch, "3"), "x"), bars.get(2).getCenterX(), 0.02);
    double[] limit = Sketch.numbers(sketch.svg.selectFirst("path[stroke-dasharray]").attr("d"));
    assertEquals(watts.at(3600), limit[1], 0.02);
    assertEquals(0, sketch.svg.select("line[stroke-width=0.7]").size(), "none is over the limit");
  }

  @Test
  void aSlopeOfThreeDegreesLiftsASevenFootTrackFourAndAHalfInches() {
    Sketch sketch = new Sketch(SamplePlots.level(OptionalDouble.of(1.5)));
    Scale degrees = level(sketch, "0", "5");
    Scale inches = upright(sketch, "0", "10");
    // 84 in x tan 3 degrees = 84 x 0.05241 = 4.402, by hand
    Element mark = sketch.svg.select("circle").get(5);
    assertEquals(degrees.at(3), Sketch.number(mark, "cx"), 0.02);
    assertEquals(inches.at(4.402), Sketch.number(mark, "cy"), 0.02);
    assertEquals(1, sketch.svg.select("path[stroke-dasharray]").size(), "the nose is dashed");
    Element four = text(sketch, "4 blocks");
    assertEquals(inches.at(6), y(four), 0.02, "four of 1.5 in are 6 in");
    assertEquals(13, sketch.svg.select("line[stroke-dasharray]").size(), "13 x 1.5 = 19.5 of 20");
  }

  @Test
  void thinBlocksAreNamedOnlyWhereTheirNamesFit() {
    Sketch sketch = new Sketch(SamplePlots.level(OptionalDouble.of(0.75)));
    assertTrue(sketch.words().contains("2 blocks"));
    assertFalse(sketch.words().contains("3 blocks"));
    assertEquals(20, sketch.svg.select("line[stroke-dasharray]").size(), "as many as have a name");
  }

  @Test
  void theNameOfALineStandsNearItAndOffEveryLine() {
    Random random = new Random(11);
    for (int i = 0; i < 40; i++) {
      double side = 60 + random.nextInt(60);
      double nose = 60 + random.nextInt(300);
      LevelPlot.Words words = new LevelPlot.Words("inches", "degrees", "");
      LevelPlot.Data data =
          new LevelPlot.Data(
              List.of(SamplePlots.lift("side to side", side), SamplePlots.lift("nose", nose)),
              OptionalDouble.empty(),
              List.of(),
              words);
      Sketch sketch = new Sketch(LevelPlot.draw(data, SamplePlots.ALT));
      List<Element> paths = sketch.svg.select("path");
      for (int s = 0; s < 2; s++) {
        Rectangle2D ink = Sketch.ink(text(sketch, s == 0 ? "side to side" : "nose"));
        String where = side + " and " + nose + ", line " + s;
        paths.forEach(
            p -> segments(p).forEach(l -> assertFalse(l.intersects(ink), "struck: " + where)));
        assertTrue(distance(paths.get(s), ink) < 12, "far: " + where);
        if (Math.abs(side - nose) > 10) {
          assertTrue(distance(paths.get(s), ink) < distance(paths.get(1 - s), ink), where);
        }
      }
    }
  }

  private static double distance(Element path, Rectangle2D ink) {
    return segments(path).stream()
        .mapToDouble(
            l ->
                IntStream.rangeClosed(0, 20)
                    .mapToDouble(i -> ink.getMinX() + i / 20.0 * ink.getWidth())
                    .map(
                        x -> Math.min(l.ptSegDist(x, ink.getMinY()), l.ptSegDist(x, ink.getMaxY())))
                    .min()
                    .orElseThrow())
        .min()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "1550, 160, 18, 200, 1600",
    "100, 100, 20, 20, 100",
    "101, 100, 20, 50, 150",
    "19, 190, 18, 2, 20",
    "7.3, 190, 18, 1, 8",
    "0, 100, 20, 0.2, 1",
    "2.6, 100, 30, 1, 3",
    "4000000, 100, 25, 1000000, 4000000"
  })
  void ticksStandAtRoundNumbers(double most, double wide, double room, double step, double to) {
    // Worked by hand: the least of 1, 2, 5 x 10^n that leaves no more than wide / room steps.
    Axis axis = Axis.upTo(most, 0, wide, room);
    assertEquals(step, axis.step(), step * 1e-9);
    assertEquals(to, axis.to(), to * 1e-9);
    assertEquals(to / step + 1, axis.ticks().size(), 1e-6);
  }

  @Test
  void theNumbersOfAScaleReadAsPeopleWriteThem() {
    assertEquals(List.of("0", "500", "1,000", "1,500"), numbers(Axis.upTo(1500, 0, 100, 30)));
    assertEquals(List.of("0.0", "0.5", "1.0"), numbers(Axis.upTo(1, 0, 100, 40)));
  }

  private static List<String> numbers(Axis axis) {
    return axis.ticks().stream().map(axis::text).toList();
  }

  @Test
  void theCallersAlternativeTextIsTheDrawingsOwn() {
    for (Drawing drawing : SamplePlots.all().values()) {
      assertEquals(SamplePlots.ALT, drawing.alt());
      assertEquals(SamplePlots.ALT, new Sketch(drawing).svg.selectFirst("svg").attr("aria-label"));
      assertEquals(List.of(), drawing.callOuts());
    }
    SunPlot.Words words = new SunPlot.Words("Wh", "need", "enough", "less", "");
    SunPlot.Data year =
        new SunPlot.Data(
            IntStream.range(0, 12).mapToObj(i -> new SunPlot.Month("m" + i, i)).toList(),
            OptionalDouble.empty(),
            words);
    assertThrows(IllegalArgumentException.class, () -> SunPlot.draw(year, "Too short."));
    assertThrows(IllegalArgumentException.class, () -> SunPlot.draw(year, "x".repeat(251)));
  }

  @Test
  void wordsCannotBecomeMarkup() {
    String hostile = "<b>A</b></svg>&\"'\u0000";
    TogetherPlot.Words words = new TogetherPlot.Words(hostile, hostile, hostile, hostile);
    TogetherPlot.Column set = new TogetherPlot.Column("1", Set.of(0), 900);
    Drawing drawing =
        TogetherPlot.draw(
            new TogetherPlot.Data(List.of(hostile), List.of(set), 1800, words),
            "A plot of <b>hostile</b> \"words\".");
    Sketch sketch = new Sketch(drawing);
    assertEquals(0, sketch.svg.select("b").size());
    assertEquals(drawing.svg().length() - 7, drawing.svg().indexOf("</svg>"));
    assertTrue(sketch.words().stream().anyMatch(w -> w.startsWith("<b>A</b></svg>&\"'")));
  }

  @Test
  void nonsenseIsRefused() {
    List<Runnable> nonsense =
        List.of(
            () -> new BankPlot.Point(3, 101),
            () -> new BankPlot.Point(3, Double.NaN),
            () -> new SunPlot.Month("May", -1),
            () -> new SunPlot.Month("May", Double.POSITIVE_INFINITY),
            () -> new Bar(0, 0, Double.NaN, "?"),
            () -> new LastsPlot.Panel("", List.of(new Bar(0, 1, 2, ""), new Bar(0, 1, 3, ""))),
            () -> new TogetherPlot.Column("1", Set.of(), Double.NaN),
            () -> new LevelPlot.Series("nose", List.of(new LevelPlot.Point(1, 1))),
            () -> new LevelPlot.Point(-1, 1));
    for (Runnable r : nonsense) {
      assertThrows(IllegalArgumentException.class, r::run);
    }
  }

  @Test
  void theLowestChargeIsNamedBesideTheCurve() {
    Sketch sketch = new Sketch(SamplePlots.bank());
    Rectangle2D ink = Sketch.ink(text(sketch, "lowest: 33 % at 8 am"));
    Element ring = sketch.svg.selectFirst("circle");
    double away = ink.getMinY() - Sketch.number(ring, "cy");
    assertTrue(away > 3.4 && away < 12, "under the ring: " + away);
    sketch
        .svg
        .select("path")
        .forEach(p -> segments(p).forEach(l -> assertFalse(l.intersects(ink), "struck")));
    double top =
        sketch.texts().stream()
            .filter(t -> t.text().equals("night"))
            .map(Sketch::ink)
            .min(Comparator.comparingDouble(Rectangle2D::getMinY))
            .orElseThrow()
            .getMinY();
    assertTrue(top < Sketch.number(ring, "cy"), "night is named at the top");
  }
}
