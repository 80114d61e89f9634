package org.rigleaf.drawings;

import java.util.List;
import java.util.stream.Stream;
import org.rigleaf.drawings.Plot.Fill;
import org.rigleaf.drawings.Svg.Look;

/** How many days each store lasts, for groups of people, in one panel for each kind of night. */
public final class LastsPlot {
  /** Longer than this is as good as for ever on a stay. */
  static final double KEEPS_UP_DAYS = 30;

  private static final double TOP = 36;
  private static final double FOOT = 32;
  private static final double GAP = 22;
  private static final double APART = 7;
  private static final double THICK = 7.6;
  private static final double TICK_ROOM = 24;
  private static final int MOST_STORES = 8;

  /**
   * How long one store lasts one group.
   *
   * @param store its number, from 0
   * @param group its number, from 0
   * @param days may be infinite
   * @param text at the end of the bar; of more than 30 days, the word in place of the bar
   */
  public record Bar(int store, int group, double days, String text) {
    /** Refuses a time that runs backward. */
    public Bar {
      if (!(days >= 0)) {
        throw new IllegalArgumentException("no time: " + days);
      }
    }

    boolean keepsUp() {
      return days > KEEPS_UP_DAYS;
    }
  }

  /** One kind of night; a bar that is not there has no mark. */
  public record Panel(String title, List<Bar> bars) {
    /** Refuses two bars in one row. */
    public Panel {
      bars = List.copyOf(bars);
      if (bars.stream().map(b -> List.of(b.store(), b.group())).distinct().count() < bars.size()) {
        throw new IllegalArgumentException("two bars of one store and group");
      }
    }
  }

  /** What the plot says: title of all, title of the scale, a note. */
  public record Words(String title, String days, String note) {}

  /** Up to eight stores, three groups, two panels. */
  public record Data(List<String> stores, List<String> groups, List<Panel> panels, Words words) {
    /** Refuses what the page cannot hold and bars of no store or group. */
    public Data {
      stores = List.copyOf(stores);
      groups = List.copyOf(groups);
      panels = List.copyOf(panels);
      boolean fits =
          between(1, stores.size(), MOST_STORES)
              && between(1, groups.size(), Fill.values().length)
              && between(1, panels.size(), 2);
      int rows = stores.size();
      int fills = groups.size();
      if (!fits
          || panels.stream()
              .flatMap(p -> p.bars().stream())
              .anyMatch(
                  b -> !between(0, b.store(), rows - 1) || !between(0, b.group(), fills - 1))) {
        throw new IllegalArgumentException("stores, groups, panels or bars do not fit");
      }
    }

    private static boolean between(int least, int number, int most) {
      return least <= number && number <= most;
    }

    Stream<Bar> bars() {
      return panels.stream().flatMap(p -> p.bars().stream()).filter(b -> !b.keepsUp());
    }
  }

  private final Data data;
  private final Plot plot;
  private final double pitch;
  private final double bottom;
  private final double stores;
  private final double left;
  private final double wide;

  private LastsPlot(Data data, String alt) {
    this.data = data;
    int rows = data.stores().size() * data.groups().size();
    pitch = Plan.clamp((170 - APART * data.stores().size()) / rows, 11, 16);
    bottom = TOP + rows * pitch + data.stores().size() * APART;
    plot = new Plot(bottom + FOOT, data.words().note(), alt);
    stores = widest(data.stores().stream(), 92) + 8;
    left = stores + widest(data.groups().stream(), 60) + 6;
    wide = (Plot.WIDE - 2 - left - GAP * (data.panels().size() - 1)) / data.panels().size();
  }

  private static double widest(Stream<String> texts, double most) {
    return texts
        .mapToDouble(t -> Math.min(most, TextFit.width(t, Plot.SMALL, false) + 1))
        .max()
        .orElse(0);
  }

  /** Draws it; the same data give the same bytes. */
  public static Drawing draw(Data data, String alt) {
    LastsPlot drawn = new LastsPlot(data, alt);
    drawn.plot.title(1, 10, "start", Plot.WIDE - 2, data.words().title());
    drawn.rows();
    for (int i = 0; i < data.panels().size(); i++) {
      drawn.panel(data.panels().get(i), drawn.left + i * (drawn.wide + GAP));
    }
    double middle = (drawn.left + Plot.WIDE) / 2;
    double room = Plot.WIDE - drawn.left;
    drawn.plot.title(middle, drawn.bottom + 29, "middle", room, data.words().days());
    return drawn.plot.close(alt);
  }

  private double y(int store, int group) {
    return TOP + store * (data.groups().size() * pitch + APART) + APART / 2 + (group + 0.5) * pitch;
  }

  private void rows() {
    int groups = data.groups().size();
    for (int s = 0; s < data.stores().size(); s++) {
      double upper = y(s, 0) - pitch / 2 - APART / 2;
      double lower = y(s, groups - 1) + pitch / 2 + APART / 2;
      plot.svg.line(1, upper, Plot.WIDE - 1, upper, Plot.GRID);
      Axis within = new Axis(0, 1, 1, upper, lower);
      int lines = Math.max(1, (int) ((lower - upper) / Plot.LEADING));
      plot.block(1, (upper + lower) / 2, stores - 8, lines, within, data.stores().get(s));
      for (int g = 0; g < groups; g++) {
        plot.text(stores, y(s, g) + Plot.DROP, "start", left - stores - 6, data.groups().get(g));
      }
    }
  }

  private void panel(Panel panel, double from) {
    plot.title(from, TOP - 7, "start", wide, panel.title());
    double most = data.bars().mapToDouble(Bar::days).max().orElse(KEEPS_UP_DAYS);
    double end = from + wide - widest(data.bars().map(Bar::text), wide / 3) - 4;
    Axis x = Axis.upTo(most, from, end, TICK_ROOM);
    plot.upright(x, TOP, bottom);
    for (Bar bar : panel.bars()) {
      if (bar.keepsUp()) {
        arrow(from, y(bar.store(), bar.group()), bar.text());
      } else {
        bar(x, y(bar.store(), bar.group()), bar, from + wide);
      }
    }
    plot.svg.line(from, TOP, from, bottom, Plot.BASE);
  }

  private void bar(Axis x, double y, Bar bar, double edge) {
    double end = x.at(bar.days());
    Fill fill = Fill.values()[bar.group()];
    plot.bar(x.start(), y - THICK / 2, end - x.start(), THICK, fill);
    plot.tag(end + 3, y + Plot.DROP, edge - end - 3, bar.text());
  }

  /** The word, and an arrow from it to the edge of the panel. */
  private void arrow(double from, double y, String word) {
    double edge = from + wide;
    plot.tag(from + 4, y + Plot.DROP, wide - 34, word);
    double shaft = from + 9 + Math.min(wide - 34, TextFit.width(word, Plot.SMALL, false));
    plot.svg.line(shaft, y, edge - 6, y, Look.line(1.2));
    plot.svg.polygon(Look.solid(Svg.BLACK), edge - 7, y - 3.5, edge - 7, y + 3.5, edge, y);
  }
}
