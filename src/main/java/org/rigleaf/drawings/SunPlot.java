package org.rigleaf.drawings;

import java.util.List;
import java.util.OptionalDouble;
import org.rigleaf.drawings.Plot.Fill;

/** What the sun brings on a day of each month, against what a day needs. */
public final class SunPlot {
  private static final double TOP = 24;
  private static final double BOTTOM = 184;
  private static final double HEIGHT = 220;
  private static final double LABEL = 78;
  private static final double TICK_ROOM = 18;
  private static final double KEY_GAP = 20;
  private static final double BAR_SHARE = 0.66;

  /** One month: its short name and what a day of it brings, in watt-hours. */
  public record Month(String name, double wattHours) {
    /** Refuses less than nothing. */
    public Month {
      Axis.amount(wattHours);
    }
  }

  /**
   * What the plot says.
   *
   * @param energy title of the scale, with its unit
   * @param need label of the line of the day's need
   * @param enough what a dark bar means
   * @param less what a hatched bar means
   * @param note empty for none
   */
  public record Words(String energy, String need, String enough, String less, String note) {}

  /** Twelve months and the need of a day in watt-hours, if it is known. */
  public record Data(List<Month> months, OptionalDouble needWattHours, Words words) {
    /** Refuses a year of other than twelve months. */
    public Data {
      months = List.copyOf(months);
      needWattHours.ifPresent(Axis::amount);
      if (months.size() != 12) {
        throw new IllegalArgumentException("months: " + months.size());
      }
    }
  }

  private final Data data;
  private final Plot plot;
  private final Axis y;
  private final double left;
  private final double right;

  private SunPlot(Data data, String alt) {
    this.data = data;
    boolean need = data.needWattHours().isPresent();
    plot = new Plot(need ? HEIGHT : HEIGHT - 18, data.words().note(), alt);
    double best = data.months().stream().mapToDouble(Month::wattHours).max().orElse(0);
    y = Axis.upTo(Math.max(best, data.needWattHours().orElse(0)), BOTTOM, TOP, TICK_ROOM);
    left = y.textWidth() + 8;
    right = need ? Plot.WIDE - LABEL : Plot.WIDE - 2;
  }

  /** Draws it; the same data give the same bytes. */
  public static Drawing draw(Data data, String alt) {
    SunPlot drawn = new SunPlot(data, alt);
    drawn.plot.title(1, 10, "start", Plot.WIDE - 2, data.words().energy());
    drawn.plot.across(drawn.y, drawn.left, drawn.right, true);
    drawn.bars();
    drawn.plot.svg.line(drawn.left, BOTTOM, drawn.right, BOTTOM, Plot.BASE);
    data.needWattHours().ifPresent(drawn::need);
    return drawn.plot.close(alt);
  }

  private void bars() {
    double pitch = (right - left) / data.months().size();
    for (int i = 0; i < data.months().size(); i++) {
      Month month = data.months().get(i);
      double middle = left + (i + 0.5) * pitch;
      double top = y.at(month.wattHours());
      Fill fill = month.wattHours() < data.needWattHours().orElse(0) ? Fill.HATCHED : Fill.DARK;
      double wide = pitch * BAR_SHARE;
      plot.bar(middle - wide / 2, top, wide, BOTTOM - top, fill);
      plot.text(middle, BOTTOM + Plot.UNDER, "middle", pitch - 2, month.name());
    }
  }

  private void need(double wattHours) {
    plot.limit(left, right, y.at(wattHours));
    plot.block(right + 5, y.at(wattHours), LABEL - 6, 4, y, data.words().need());
    key(wattHours);
  }

  /** What the kinds of bar mean that are there. */
  private void key(double need) {
    double room = (Plot.WIDE - left) / 2 - KEY_GAP;
    double x = left;
    if (data.months().stream().anyMatch(m -> m.wattHours() >= need)) {
      key(x, Fill.DARK, room, data.words().enough());
      x += Math.min(room, TextFit.width(data.words().enough(), Plot.SMALL, false) + 19) + KEY_GAP;
    }
    if (data.months().stream().anyMatch(m -> m.wattHours() < need)) {
      key(x, Fill.HATCHED, room, data.words().less());
    }
  }

  private void key(double x, Fill fill, double room, String text) {
    plot.bar(x, BOTTOM + 23, 14, 9, fill);
    plot.text(x + 19, BOTTOM + 31, "start", room - 19, text);
  }
}
