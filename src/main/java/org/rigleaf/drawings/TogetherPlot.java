package org.rigleaf.drawings;

import java.util.List;
import java.util.Set;
import org.rigleaf.drawings.Plot.Fill;
import org.rigleaf.drawings.Svg.Look;

/** Which loads run at once: a column for each set, its watts at the foot against the limit. */
public final class TogetherPlot {
  private static final int MOST_LOADS = 14;
  private static final int MOST_SETS = 12;
  private static final double TOP = 20;
  private static final double BARS = 70;
  private static final double BETWEEN = 22;
  private static final double FOOT = 18;
  private static final double LEAST_LEFT = 60;
  private static final double MOST_LEFT = 150;
  private static final double MOST_PITCH = 64;
  private static final double BAR_SHARE = 0.6;
  private static final double TICK_ROOM = 16;

  /** Loads that run at once, by their numbers from 0, and what they draw in all. */
  public record Column(String name, Set<Integer> loads, double watts) {
    /** Refuses less than nothing. */
    public Column {
      loads = Set.copyOf(loads);
      Axis.amount(watts);
    }
  }

  /**
   * What the plot says: head of the numbers, title of the bars' scale, label of the limit, note.
   */
  public record Words(String sets, String watts, String limit, String note) {}

  /** Up to 14 loads and 12 sets of them. */
  public record Data(List<String> loads, List<Column> sets, double limitWatts, Words words) {
    /** Refuses what the page cannot hold and sets of loads that have no row. */
    public Data {
      loads = List.copyOf(loads);
      sets = List.copyOf(sets);
      Axis.amount(limitWatts);
      int rows = loads.size();
      if (rows < 1
          || rows > MOST_LOADS
          || sets.isEmpty()
          || sets.size() > MOST_SETS
          || sets.stream().anyMatch(s -> s.loads().stream().anyMatch(i -> i < 0 || i >= rows))) {
        throw new IllegalArgumentException("loads or sets do not fit");
      }
    }
  }

  private final Data data;
  private final Plot plot;
  private final double row;
  private final double left;
  private final double right;
  private final double bottom;
  private final Axis y;

  private TogetherPlot(Data data, String alt) {
    this.data = data;
    row = Plan.clamp(150.0 / data.loads().size(), 13, 18);
    bottom = TOP + row * data.loads().size();
    double foot = bottom + BETWEEN + BARS;
    plot = new Plot(foot + FOOT, data.words().note(), alt);
    double most = data.sets().stream().mapToDouble(Column::watts).max().orElse(0);
    y = Axis.upTo(Math.max(most, data.limitWatts()), foot, bottom + BETWEEN, TICK_ROOM);
    double widest =
        data.loads().stream().mapToDouble(l -> TextFit.width(l, Plot.SMALL, false)).max().orElse(0);
    left = Plan.clamp(widest + 10, LEAST_LEFT, MOST_LEFT);
    right = Math.min(Plot.WIDE - 2, left + MOST_PITCH * data.sets().size());
  }

  /** Draws it; the same data give the same bytes. */
  public static Drawing draw(Data data, String alt) {
    TogetherPlot drawn = new TogetherPlot(data, alt);
    drawn.rows();
    drawn.scale();
    double limit = drawn.y.at(data.limitWatts());
    drawn.plot.limit(drawn.left, drawn.right, limit);
    for (int i = 0; i < data.sets().size(); i++) {
      drawn.column(data.sets().get(i), drawn.left + (i + 0.5) * drawn.pitch());
    }
    double room = Plot.WIDE - drawn.left - 6;
    drawn.plot.tag(drawn.left + 4, limit - 4, room, data.words().limit());
    return drawn.plot.close(alt);
  }

  private double pitch() {
    return (right - left) / data.sets().size();
  }

  private double middle(int load) {
    return TOP + (load + 0.5) * row;
  }

  private void rows() {
    plot.title(1, 12, "start", left - 8, data.words().sets());
    for (int i = 0; i < data.loads().size(); i++) {
      if (i % 2 == 0) {
        plot.svg.rect(1, TOP + i * row, right - 1, row, 0, Look.solid(Plot.SHADE));
      }
      plot.text(3, middle(i) + Plot.DROP, "start", left - 8, data.loads().get(i));
    }
  }

  private void scale() {
    plot.across(y, left, right, false);
    plot.title(1, bottom + BETWEEN - 6, "start", left - 8, data.words().watts());
    plot.svg.line(left, y.start(), right, y.start(), Plot.BASE);
    plot.svg.line(left, y.start(), left, y.end(), Look.line(0.6));
  }

  private void column(Column set, double x) {
    plot.title(x, 12, "middle", pitch() - 2, set.name());
    plot.svg.line(x, TOP, x, bottom, Plot.GRID);
    set.loads().stream()
        .sorted()
        .forEach(i -> plot.svg.circle(x, middle(i), 4.4, Look.solid(Svg.BLACK)));
    double wide = Math.min(pitch() * BAR_SHARE, 20);
    double top = y.at(set.watts());
    Fill fill = set.watts() > data.limitWatts() ? Fill.HATCHED : Fill.DARK;
    plot.bar(x - wide / 2, top, wide, y.start() - top, fill);
    plot.text(x, y.start() + Plot.UNDER, "middle", pitch() - 2, set.name());
  }
}
