package org.rigleaf.drawings;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.rigleaf.drawings.Svg.Look;

/** The charge of a battery bank through a day and its night, and the floor it should not cross. */
public final class BankPlot {
  private static final double TOP = 24;
  private static final double BOTTOM = 196;
  private static final double HEIGHT = 228;
  private static final double LEFT = 28;
  private static final double RIGHT = 366;
  private static final double LABEL = 82;
  private static final double DAY = 24;
  private static final double LEAST_NIGHT = 40;
  private static final double NIGHT_FROM = 20;
  private static final double NIGHT_TO = 32;

  /**
   * A reading of the curve.
   *
   * @param hour since midnight of the first day; 39 is 15:00 of the next
   * @param percent of the full charge
   */
  public record Point(double hour, double percent) {
    /** Refuses a charge that no bank can have. */
    public Point {
      if (!(percent >= 0 && percent <= 100)) {
        throw new IllegalArgumentException("no charge: " + percent);
      }
    }
  }

  /** A time that the scale names; names that do not fit are left out evenly. */
  public record Hour(double at, String text) {}

  /** What the plot says: titles of both scales, labels of floor, night and lowest point, a note. */
  public record Words(
      String charge, String hours, String floor, String night, String low, String note) {}

  /** Points from first to last, two days apart at most. */
  public record Data(List<Point> points, double floorPercent, List<Hour> hours, Words words) {
    /** Refuses points that do not go forward in time. */
    public Data {
      points = List.copyOf(points);
      hours = List.copyOf(hours);
      boolean forward = points.size() > 1 && Axis.amount(points.get(0).hour()) < DAY;
      for (int i = 1; forward && i < points.size(); i++) {
        forward = points.get(i).hour() > points.get(i - 1).hour();
      }
      if (!forward || points.get(points.size() - 1).hour() > 3 * DAY) {
        throw new IllegalArgumentException("hours must go forward, within three days");
      }
      new Point(0, floorPercent);
    }
  }

  private final Data data;
  private final Plot plot;
  private final Axis x;
  private final Axis y = new Axis(0, 100, 20, BOTTOM, TOP);

  private BankPlot(Data data, String alt) {
    this.data = data;
    plot = new Plot(HEIGHT, data.words().note(), alt);
    List<Point> points = data.points();
    x = new Axis(points.get(0).hour(), points.get(points.size() - 1).hour(), DAY, LEFT, RIGHT);
  }

  /** Draws it; the same data give the same bytes. */
  public static Drawing draw(Data data, String alt) {
    BankPlot drawn = new BankPlot(data, alt);
    drawn.ground();
    drawn.floor();
    drawn.line();
    drawn.names();
    return drawn.plot.close(alt);
  }

  private void ground() {
    for (Rectangle2D night : nights()) {
      double high = night.getHeight();
      plot.svg.rect(night.getX(), TOP, night.getWidth(), high, 0, Look.solid(Plot.SHADE));
    }
    plot.title(1, 10, "start", Plot.WIDE - 2, data.words().charge());
    plot.across(y, LEFT, RIGHT, true);
    hours();
    plot.svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, Plot.BASE);
    plot.title((LEFT + RIGHT) / 2, BOTTOM + 29, "middle", RIGHT - LEFT, data.words().hours());
  }

  private List<Rectangle2D> nights() {
    List<Rectangle2D> nights = new ArrayList<>();
    for (double day = -DAY; day < x.to(); day += DAY) {
      double from = x.at(Math.max(x.from(), day + NIGHT_FROM));
      double to = x.at(Math.min(x.to(), day + NIGHT_TO));
      if (to > from) {
        nights.add(new Rectangle2D.Double(from, TOP, to - from, BOTTOM - TOP));
      }
    }
    return nights;
  }

  private void hours() {
    List<Hour> named =
        data.hours().stream().filter(h -> h.at() >= x.from() && h.at() <= x.to()).toList();
    int every = 1;
    while (!clear(named, every)) {
      every++;
    }
    for (int i = 0; i < named.size(); i += every) {
      double at = x.at(named.get(i).at());
      plot.svg.line(at, TOP, at, BOTTOM, Plot.GRID);
      plot.text(at, BOTTOM + Plot.UNDER, "middle", 2 * LEFT, named.get(i).text());
    }
  }

  private boolean clear(List<Hour> named, int every) {
    for (int i = every; i < named.size(); i += every) {
      double gap = x.at(named.get(i).at()) - x.at(named.get(i - every).at());
      double both = wide(named.get(i)) + wide(named.get(i - every));
      if (both / 2 + 5 > gap) {
        return false;
      }
    }
    return true;
  }

  private static double wide(Hour hour) {
    return Math.min(2 * LEFT, TextFit.width(hour.text(), Plot.SMALL, false));
  }

  private void floor() {
    double at = y.at(data.floorPercent());
    for (double px = LEFT + 2; px < RIGHT; px += 4) {
      double low = y.at(percent(x.from() + (px - LEFT) / (RIGHT - LEFT) * (x.to() - x.from())));
      if (low > at) {
        plot.curve(Look.line(0.7), px, at, px, low);
      }
    }
    plot.limit(LEFT, RIGHT, at);
    plot.block(RIGHT + 5, at, LABEL - 6, 4, y, data.words().floor());
  }

  private double percent(double hour) {
    int i = 1;
    while (data.points().get(i).hour() < hour) {
      i++;
    }
    Point a = data.points().get(i - 1);
    Point b = data.points().get(i);
    double share = (hour - a.hour()) / (b.hour() - a.hour());
    return a.percent() + share * (b.percent() - a.percent());
  }

  private void line() {
    plot.curve(
        Look.line(2.2),
        data.points().stream()
            .flatMapToDouble(p -> DoubleStream.of(x.at(p.hour()), y.at(p.percent())))
            .toArray());
  }

  /** The lowest point first, then each night at its top where the curve leaves room. */
  private void names() {
    Point low =
        data.points().stream().min(Comparator.comparingDouble(Point::percent)).orElseThrow();
    double px = x.at(low.hour());
    double py = y.at(low.percent());
    plot.svg.circle(px, py, 3.4, Look.line(1.6).filled(Svg.WHITE));
    Rectangle2D frame = new Rectangle2D.Double(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP);
    plot.near(px, py, frame, 170, false, data.words().low());
    for (Rectangle2D night : nights()) {
      if (night.getWidth() > LEAST_NIGHT) {
        night.setRect(night.getX(), TOP + 4, night.getWidth(), BOTTOM - TOP - 4);
        plot.near(night.getX(), TOP, night, 170, false, data.words().night());
      }
    }
  }
}
