package org.rigleaf.sheets;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.drawings.LevelPlot;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Figure;
import org.rigleaf.guidance.Filler;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Kit;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Unit;

/** The plot of how far to lift by the slope, with the blocks aboard as its measure. */
final class LevelPlots {
  private final Rig rig;
  private final Wording wording;
  private final Labels labels;
  private final TableBlocks tables;
  private final Filler filler;

  LevelPlots(Rig rig, Wording wording, Labels labels, TableBlocks tables, Filler filler) {
    this.filler = filler;
    this.rig = rig;
    this.wording = wording;
    this.labels = labels;
    this.tables = tables;
  }

  /** The plot; empty if neither the track nor the length to lift over is known. */
  Optional<Drawing> plot() {
    List<Line> lines =
        Stream.of("side", "nose")
            .map(end -> new Line(end, tables.glob("level." + end + ".*")))
            .filter(l -> !l.points().isEmpty())
            .toList();
    boolean fits = lines.stream().allMatch(l -> l.last().number() <= PlotBlocks.MOST);
    return lines.isEmpty() || !fits ? Optional.empty() : Optional.of(draw(lines));
  }

  /** The figures of one line, by rising slope. */
  private record Line(String end, List<Figure> points) {
    Figure last() {
      return points.get(points.size() - 1);
    }
  }

  private Drawing draw(List<Line> lines) {
    List<String> stack = stack();
    OptionalDouble thick =
        stack.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(high(blocks().thick().value()));
    String note =
        stack.isEmpty()
            ? ""
            : wording.phrase("plot-level-note", Map.of("thick", filler.written(blocks().thick())));
    LevelPlot.Words words =
        new LevelPlot.Words(
            wording.phrase(metric() ? "plot-level-lift-metric" : "plot-level-lift"),
            wording.phrase("plot-level-slope"),
            note);
    List<LevelPlot.Series> series = lines.stream().map(this::series).toList();
    return LevelPlot.draw(new LevelPlot.Data(series, thick, stack, words), alt(lines));
  }

  private boolean metric() {
    return wording.amounts() == Amounts.METRIC;
  }

  /** Inches as the plot's scale counts: inches, or centimeters. */
  private double high(double inches) {
    return metric() ? Unit.INCH.convert(inches, Unit.CENTIMETRE) : inches;
  }

  private LevelPlot.Series series(Line line) {
    return new LevelPlot.Series(
        name(line),
        line.points().stream()
            .map(f -> new LevelPlot.Point(degrees(f), high(f.number())))
            .toList());
  }

  private String name(Line line) {
    return wording.phrase("plot-level-" + line.end());
  }

  private static double degrees(Figure figure) {
    return Double.parseDouble(Ids.last(figure.id()).replace('-', '.'));
  }

  private Kit.Counted blocks() {
    return rig.kit().blocks().orElseThrow();
  }

  /** Labels of a stack of one block, of two and so on, as high as the blocks aboard reach. */
  private List<String> stack() {
    boolean known =
        rig.kit().blocks().filter(b -> b.thick().known() && b.count().known()).isPresent();
    int wheels = Math.max(1, rig.identity().axles().size()); // of the low side
    int high = known ? (int) blocks().count().value() / wheels : 0;
    return IntStream.rangeClosed(1, high).mapToObj(this::blocks).toList();
  }

  private String blocks(int n) {
    return n == 1
        ? wording.phrase("plot-level-block")
        : wording.phrase("plot-level-blocks", Map.of("n", String.valueOf(n)));
  }

  private String alt(List<Line> lines) {
    String all = lines.stream().map(this::steepest).collect(Collectors.joining(", "));
    return wording.phrase("plot-level-alt", Map.of("lines", all));
  }

  private String steepest(Line line) {
    Map<String, String> values =
        Map.of(
            "name", name(line),
            "lift", labels.value(line.last()).plain(),
            "slope", labels.of("slope", Ids.last(line.last().id())));
    return wording.phrase("plot-level-line", values);
  }
}
