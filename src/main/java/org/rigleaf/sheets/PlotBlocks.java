package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rigleaf.drawings.BankPlot;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.drawings.SunPlot;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Filler;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Unit;

/** Plots of figures; a plot that lacks a figure it needs is not printed. */
final class PlotBlocks {
  private static final int MONTHS = 12;
  private static final int DAY = 24;
  private static final int FROM_HOUR = 15; // the ledger's day begins at 3 pm
  private static final int HOURS_APART = 3; // of two hours named on the scale

  /** No page has room for more than this of anything, nor has any rig as much. */
  static final double MOST = 1_000_000;

  private final Figures figures;
  private final Wording wording;
  private final Labels labels;
  private final TableBlocks tables;
  private final LastsPlots lasts;
  private final TogetherPlots together;
  private final LevelPlots level;

  PlotBlocks(
      Rig rig, Figures figures, Wording wording, Labels labels, TableBlocks tables, Filler filler) {
    this.figures = figures;
    this.wording = wording;
    this.labels = labels;
    this.tables = tables;
    this.lasts = new LastsPlots(wording, labels, tables);
    this.together = new TogetherPlots(rig, figures, wording, labels, tables, filler);
    this.level = new LevelPlots(rig, wording, labels, tables, filler);
  }

  /** The plots that a topic asks for; none if this rig lacks their figures. */
  List<Block> plots(Show.Plot show) {
    return switch (show.of()) {
      case "bank" -> block(show.title(), bank());
      case "sun" -> block(show.title(), sun());
      case "lasts" -> block(show.title(), lasts.plot());
      case "level" -> block(show.title(), level.plot());
      case "together" -> together.plots(show.title());
      default -> throw new IllegalStateException("no plot of '" + show.of() + "'");
    };
  }

  private static List<Block> block(String title, Optional<Drawing> drawing) {
    return drawing.map(d -> block(title, d)).stream().toList();
  }

  static Block block(String title, Drawing drawing) {
    return new DrawingBlock(title, drawing.svg(), drawing.alt(), List.of());
  }

  private String shown(Figure figure) {
    return labels.value(figure).plain();
  }

  // ---- the bank's first day and night

  private Optional<Drawing> bank() {
    List<Figure> hours = tables.glob("bank.hour.*");
    return floorPercent().filter(f -> hours.size() == DAY + 1).map(f -> bank(hours, f));
  }

  /** The share of the bank's energy that must stay in it. */
  private Optional<Double> floorPercent() {
    return figures
        .find("bank.energy")
        .flatMap(e -> figures.find("bank.usable").map(u -> 1 - u.number() / e.number()))
        .map(share -> 100 * share);
  }

  private Drawing bank(List<Figure> hours, double floor) {
    List<BankPlot.Point> points = new ArrayList<>();
    for (int i = 0; i < hours.size(); i++) {
      double percent = Math.max(0, Math.min(100, hours.get(i).number()));
      points.add(new BankPlot.Point(FROM_HOUR + i, percent));
    }
    BankPlot.Point low =
        points.stream().min(Comparator.comparingDouble(BankPlot.Point::percent)).orElseThrow();
    Map<String, String> values =
        Map.of(
            "first", shown(hours.get(0)),
            "last", shown(hours.get(DAY)),
            "percent", shown(hours.get(points.indexOf(low))),
            "hour", clock((int) low.hour()),
            "floor", wording.amounts().text(floor, Unit.PERCENT_SHARE));
    BankPlot.Words words =
        new BankPlot.Words(
            wording.phrase("plot-bank-charge"),
            wording.phrase("plot-bank-hours"),
            wording.phrase("plot-bank-floor", values),
            wording.phrase("plot-bank-night"),
            wording.phrase("plot-bank-low", values),
            wording.phrase("plot-bank-note"));
    return BankPlot.draw(
        new BankPlot.Data(points, floor, scale(), words), wording.phrase("plot-bank-alt", values));
  }

  private List<BankPlot.Hour> scale() {
    return IntStream.rangeClosed(0, DAY / HOURS_APART)
        .map(i -> FROM_HOUR + i * HOURS_APART)
        .mapToObj(hour -> new BankPlot.Hour(hour, clock(hour)))
        .toList();
  }

  /** An hour on the clock, counted since midnight of the first day. */
  private String clock(int hours) {
    int hour = hours % DAY;
    if (hour % 12 == 0) {
      return wording.phrase(hour == 0 ? "plot-midnight" : "plot-noon");
    }
    return wording.phrase(
        hour < 12 ? "plot-am" : "plot-pm", Map.of("x", String.valueOf(hour % 12)));
  }

  // ---- the sun's year

  private Optional<Drawing> sun() {
    List<Figure> months = tables.glob("sun.*");
    Optional<Figure> need = figures.find("day.energy");
    boolean fits = Stream.concat(months.stream(), need.stream()).allMatch(f -> f.number() <= MOST);
    return months.size() == MONTHS && fits ? Optional.of(sun(months, need)) : Optional.empty();
  }

  private Drawing sun(List<Figure> months, Optional<Figure> need) {
    Comparator<Figure> byEnergy = Comparator.comparingDouble(Figure::number);
    Figure best = months.stream().max(byEnergy).orElseThrow();
    Figure worst = months.stream().min(byEnergy).orElseThrow();
    Map<String, String> values =
        Map.of(
            "best", labels.of("month", Ids.last(best.id())),
            "most", shown(best),
            "worst", labels.of("month", Ids.last(worst.id())),
            "least", shown(worst),
            "need", need.map(this::shown).orElse(""));
    SunPlot.Words words =
        new SunPlot.Words(
            wording.phrase("plot-sun-energy"),
            wording.phrase("plot-sun-need", values),
            wording.phrase("plot-sun-enough"),
            wording.phrase("plot-sun-less"),
            wording.phrase("plot-sun-note"));
    OptionalDouble line = need.stream().mapToDouble(Figure::number).findFirst();
    List<SunPlot.Month> bars = months.stream().map(this::month).toList();
    String alt = need.isPresent() ? "plot-sun-alt-need" : "plot-sun-alt";
    return SunPlot.draw(new SunPlot.Data(bars, line, words), wording.phrase(alt, values));
  }

  private SunPlot.Month month(Figure figure) {
    return new SunPlot.Month(
        wording.phrase("plot-month-" + Ids.last(figure.id())), figure.number());
  }
}
