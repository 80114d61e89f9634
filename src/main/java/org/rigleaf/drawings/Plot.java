package org.rigleaf.drawings;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.rigleaf.drawings.Svg.Look;

/**
 * What the plots share: grid lines with their numbers, bars that gray print tells apart, and words
 * that keep to their room and off each other. All words come from outside.
 */
final class Plot {
  /** The text column of the narrower paper. */
  static final double WIDE = 453;

  private static final double NOTE_WIDE = 400; // a line of at most 95 signs

  static final double SMALL = 10;
  static final double HEADING = 11;
  static final double LEADING = 11.5;
  static final double DROP = 3.6;
  static final double UNDER = 14;
  static final Look GRID = Look.line(0.5).in("#bdbdbd");
  static final Look BASE = Look.line(1);
  static final String SHADE = "#e9e9e9";
  private static final String DARK = "#707070";
  private static final double HATCH = 3.6;
  private static final int NOTE_LINES = 3;

  /** Ways to fill a bar that differ without color. */
  enum Fill {
    DARK,
    HATCHED,
    LIGHT
  }

  final Svg svg = new Svg();
  private final double height;
  private final Spots spots = new Spots();

  /** Opens a plot so high, notes not counted, and writes the notes at its foot. */
  Plot(double body, String note, String alt) {
    List<String> notes = TextFit.wrap(note, SMALL, NOTE_WIDE, NOTE_LINES);
    height = body + notes.size() * LEADING + (notes.isEmpty() ? 0 : 4);
    svg.open(WIDE, height, alt);
    for (int i = 0; i < notes.size(); i++) {
      text(1, height - 3 - (notes.size() - 1 - i) * LEADING, "start", WIDE - 2, notes.get(i));
    }
  }

  Drawing close(String alt) {
    return new Drawing(svg.close(), alt, List.of());
  }

  /** Bold words, cut to their room. */
  void title(double x, double y, String anchor, double room, String text) {
    write(x, y, HEADING, true, anchor, cut(text, HEADING, true, room));
  }

  /** Plain words, cut to their room. */
  void text(double x, double y, String anchor, double room, String text) {
    write(x, y, SMALL, false, anchor, cut(text, SMALL, false, room));
  }

  /** Plain words on white, so that a grid line does not strike them through. */
  void tag(double x, double y, double room, String text) {
    String line = cut(text, SMALL, false, room);
    double width = TextFit.width(line, SMALL, false);
    svg.rect(x - 1, y - 8, width + 2, 10, 0, Look.solid(Svg.WHITE));
    write(x, y, SMALL, false, "start", line);
  }

  /** Lines of plain words around a height, kept between two others. */
  void block(double x, double middle, double room, int most, Axis within, String text) {
    List<String> lines = TextFit.wrap(text, SMALL, room, most);
    double high = lines.size() * LEADING;
    double upper = Math.min(within.start(), within.end());
    double lower = Math.max(within.start(), within.end());
    double top = Plan.clamp(middle - high / 2, upper, Math.max(upper, lower - high));
    for (int i = 0; i < lines.size(); i++) {
      double y = top + (i + 0.5) * LEADING + DROP;
      write(x, y, SMALL, false, "start", lines.get(i));
    }
  }

  /** Light lines across from the ticks of an upright scale, with its numbers at their left. */
  void across(Axis y, double left, double right, boolean grid) {
    for (double tick : y.ticks()) {
      double at = y.at(tick);
      if (grid) {
        svg.line(left, at, right, at, GRID);
      } else {
        svg.line(left - 3, at, left, at, Look.line(0.6));
      }
      text(left - 5, at + DROP, "end", left, y.text(tick));
    }
  }

  /** Light upright lines from the ticks of a level scale, with its numbers under them. */
  void upright(Axis x, double top, double bottom) {
    for (double tick : x.ticks()) {
      svg.line(x.at(tick), top, x.at(tick), bottom, GRID);
      text(x.at(tick), bottom + UNDER, "middle", WIDE, x.text(tick));
    }
  }

  /** A line through points; labels placed later keep off it. */
  void curve(Look look, double... xy) {
    Path path = Path.from(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      path.to(xy[i], xy[i + 1]);
      spots.curve(xy[i - 2], xy[i - 1], xy[i], xy[i + 1]);
    }
    svg.path(look, path);
  }

  /** A dashed line that must not be crossed, edged in white to show on dark bars. */
  void limit(double left, double right, double y) {
    svg.line(left, y, right, y, Look.line(2.4).in(Svg.WHITE));
    curve(Look.line(1.4).dashed("6 3"), left, y, right, y);
  }

  void bar(double x, double y, double width, double height, Fill fill) {
    Look edge = Look.line(0.8);
    switch (fill) {
      case DARK -> svg.rect(x, y, width, height, 0, edge.filled(DARK));
      case LIGHT -> svg.rect(x, y, width, height, 0, edge.filled("#dcdcdc"));
      case HATCHED -> {
        svg.rect(x, y, width, height, 0, edge.filled(Svg.WHITE));
        for (double c = HATCH; c < width + height; c += HATCH) {
          double left = Math.max(0, c - height);
          double right = Math.min(c, width);
          svg.line(x + left, y + c - left, x + right, y + c - right, Look.line(0.7));
        }
      }
    }
  }

  /**
   * A label as near to a point as curves and other words allow; over a curve if nothing is free.
   */
  void near(double x, double y, Rectangle2D frame, double most, boolean onWhite, String text) {
    double room = Math.min(most, frame.getWidth() - 4);
    double width = TextFit.width(cut(text, SMALL, false, room), SMALL, false);
    Point2D spot = spots.nearest(x, y, frame, width);
    if (onWhite) {
      tag(spot.getX(), spot.getY(), room, text);
    } else {
      text(spot.getX(), spot.getY(), "start", room, text);
    }
  }

  private void write(double x, double y, double size, boolean bold, String anchor, String line) {
    if (line.isEmpty()) {
      return;
    }
    svg.text(x, y, size, bold, anchor, line);
    double width = TextFit.width(line, size, bold);
    double left = anchor.equals("start") ? x : anchor.equals("end") ? x - width : x - width / 2;
    spots.word(left, y, width, size);
  }

  /** One line that fits; bold letters are wider than the plain ones that {@link TextFit} cuts. */
  private static String cut(String text, double size, boolean bold, double room) {
    double plain = room;
    List<String> line = TextFit.wrap(text, size, plain, 1);
    while (!line.isEmpty() && TextFit.width(line.get(0), size, bold) > room) {
      plain -= 2;
      line = TextFit.wrap(text, size, plain, 1);
    }
    return line.isEmpty() ? "" : line.get(0);
  }
}
