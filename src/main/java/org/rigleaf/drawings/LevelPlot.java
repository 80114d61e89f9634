package org.rigleaf.drawings;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.rigleaf.drawings.Svg.Look;

/** How high one side or the nose must rise, by the slope of the ground. */
public final class LevelPlot {
  private static final double TOP = 24;
  private static final double BOTTOM = 214;
  private static final double HEIGHT = 246;
  private static final double MOST_LABEL = 76;
  private static final double TICK_ROOM = 18;
  private static final double SLOPE_ROOM = 50;
  private static final double LEAST_LINE = 4;
  private static final double LEAST_LABEL = 12;
  private static final double MARK = 3.2;

  /** A lift in inches for a slope in degrees. */
  public record Point(double degrees, double inches) {
    /** Refuses a slope or lift of less than nothing. */
    public Point {
      Axis.amount(degrees);
      Axis.amount(inches);
    }
  }

  /** Side or nose: its name and at least two points, by rising slope. */
  public record Series(String name, List<Point> points) {
    /** Refuses a single point and points out of order. */
    public Series {
      points = List.copyOf(points);
      boolean rising = points.size() > 1;
      for (int i = 1; rising && i < points.size(); i++) {
        rising = points.get(i).degrees() > points.get(i - 1).degrees();
      }
      if (!rising) {
        throw new IllegalArgumentException("slopes must rise");
      }
    }
  }

  /** What the plot says: titles of both scales, a note. */
  public record Words(String lift, String slope, String note) {}

  /**
   * What is drawn.
   *
   * @param series one or two
   * @param blockInches thickness of a block, if known
   * @param blocks labels for one block, two, and so on; no line without one
   */
  public record Data(
      List<Series> series, OptionalDouble blockInches, List<String> blocks, Words words) {
    /** Refuses more than two series and a block of no thickness. */
    public Data {
      series = List.copyOf(series);
      blocks = List.copyOf(blocks);
      if (series.isEmpty() || series.size() > 2 || blockInches.orElse(1) <= 0) {
        throw new IllegalArgumentException("one or two series, blocks with a thickness");
      }
    }
  }

  private final Data data;
  private final Plot plot;
  private final Axis x;
  private final Axis y;
  private final double left;
  private final double right;

  private LevelPlot(Data data, String alt) {
    this.data = data;
    plot = new Plot(HEIGHT, data.words().note(), alt);
    y = Axis.upTo(most(1), BOTTOM, TOP, TICK_ROOM);
    left = y.textWidth() + 8;
    double label =
        data.blocks().stream()
            .mapToDouble(b -> TextFit.width(b, Plot.SMALL, false))
            .max()
            .orElse(0);
    right = Plot.WIDE - (data.blockInches().isPresent() ? Math.min(MOST_LABEL, label) + 8 : 14);
    x = Axis.upTo(most(0), left, right, SLOPE_ROOM);
  }

  /** Draws it; the same data give the same bytes. */
  public static Drawing draw(Data data, String alt) {
    LevelPlot drawn = new LevelPlot(data, alt);
    drawn.ground();
    data.blockInches().ifPresent(drawn::blocks);
    data.series().forEach(drawn::line);
    data.series().forEach(drawn::name);
    return drawn.plot.close(alt);
  }

  private double most(int which) {
    return data.series().stream()
        .flatMap(s -> s.points().stream())
        .mapToDouble(p -> which == 0 ? p.degrees() : p.inches())
        .max()
        .orElse(0);
  }

  private void ground() {
    plot.title(1, 10, "start", Plot.WIDE - 2, data.words().lift());
    plot.across(y, left, right, data.blockInches().isEmpty());
    plot.upright(x, TOP, BOTTOM);
    plot.svg.line(left, TOP, left, BOTTOM, Plot.BASE).line(left, BOTTOM, right, BOTTOM, Plot.BASE);
    plot.title((left + right) / 2, BOTTOM + 29, "middle", right - left, data.words().slope());
  }

  /**
   * A dotted line for every block of the stack, as long as they stand apart; names where they fit.
   */
  private void blocks(double inches) {
    double apart = y.start() - y.at(inches);
    int labeled = (int) Math.ceil(LEAST_LABEL / apart);
    int lined = apart < LEAST_LINE ? labeled : 1;
    Look dots = Plot.GRID.in(Svg.GRAY).dashed("1 2.5");
    for (int n = lined; n <= data.blocks().size() && n * inches <= y.to(); n += lined) {
      double at = y.at(n * inches);
      plot.svg.line(left, at, right + 3, at, dots);
      if (n % labeled == 0) {
        plot.text(right + 6, at + Plot.DROP, "start", MOST_LABEL, data.blocks().get(n - 1));
      }
    }
  }

  private void line(Series series) {
    boolean first = series == data.series().get(0);
    Look look = Look.line(first ? 2 : 1.6);
    plot.curve(
        first ? look : look.dashed("7 3"),
        series.points().stream()
            .flatMapToDouble(p -> DoubleStream.of(x.at(p.degrees()), y.at(p.inches())))
            .toArray());
    for (Point p : series.points()) {
      mark(first, x.at(p.degrees()), y.at(p.inches()));
    }
  }

  private void mark(boolean first, double x, double y) {
    if (first) {
      plot.svg.circle(x, y, MARK, Look.solid(Svg.BLACK));
    } else {
      Look open = Look.line(1.2).filled(Svg.WHITE);
      plot.svg.rect(x - MARK, y - MARK, 2 * MARK, 2 * MARK, 0, open);
    }
  }

  private void name(Series series) {
    Point p = series.points().get(series.points().size() * 2 / 3);
    Rectangle2D frame = new Rectangle2D.Double(left, TOP, right - left, BOTTOM - TOP);
    plot.near(x.at(p.degrees()), y.at(p.inches()), frame, 150, true, series.name());
  }
}
