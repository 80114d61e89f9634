package org.rigleaf.drawings;

import java.util.List;
import org.rigleaf.drawings.PanelFace.Row;
import org.rigleaf.drawings.PanelFace.Sign;
import org.rigleaf.drawings.Svg.Look;

/** One line of a panel: its shape with the amps, its name, an arrow to what it feeds. */
record FaceRow(Row row) {
  /** Middle of the shape, below the top of the line. */
  static final double MIDDLE = 18;

  static final double BUS = 13;
  static final double FEEDS = PanelFace.FRAME + 28;
  private static final double SIGN = 24;
  private static final double SIGN_HIGH = 26;
  private static final double SIGN_WIDE = 56;
  private static final double TEXT = 12;
  private static final double LEADING = 14;
  private static final double AMPS = 13;
  private static final double NAME = SIGN + SIGN_WIDE + 10;
  private static final double NAME_ROOM = PanelFace.FRAME - 6 - NAME;
  private static final double FEEDS_ROOM = PanelFace.WIDE - 1 - FEEDS;
  private static final double BLANK = 130; // of a line to fill in
  private static final double BOLDER = 1.27; // no bold letter is wider against the plain one
  private static final int MOST_LINES = 12;

  static boolean isMain(Row row) {
    return row.sign() == Sign.MAIN;
  }

  double height() {
    double text = Math.max(nameHigh(), feeds().size() * LEADING);
    return Math.max(text, SIGN_HIGH) + 10;
  }

  private double nameHigh() {
    return names().size() * LEADING + remarks().size() * PanelFace.SMALL_LEADING;
  }

  private List<String> names() {
    return bold(row.name(), TEXT, NAME_ROOM);
  }

  private List<String> remarks() {
    return TextFit.wrap(row.remark(), PanelFace.SMALL, NAME_ROOM, MOST_LINES);
  }

  private List<String> feeds() {
    return TextFit.wrap(row.feeds(), TEXT, FEEDS_ROOM, MOST_LINES);
  }

  /** Lines of bold words, none wider than the room. */
  static List<String> bold(String text, double size, double room) {
    return TextFit.width(text, size, true) <= room
        ? (text.isEmpty() ? List.of() : List.of(text))
        : TextFit.wrap(text, size, room / BOLDER, MOST_LINES);
  }

  void draw(Svg svg, double top, boolean hangs) {
    double middle = top + MIDDLE;
    if (hangs) {
      svg.line(BUS, middle, SIGN, middle, Look.line(2));
    }
    sign(svg, top + 5);
    double nameTop = top + 5 + Math.max(0, (SIGN_HIGH - nameHigh()) / 2);
    blank(svg, NAME, middle, row.name());
    lines(svg, NAME, nameTop, names(), true);
    double remark = nameTop + names().size() * LEADING;
    for (String line : remarks()) {
      remark += PanelFace.SMALL_LEADING;
      svg.text(NAME, remark - 3, PanelFace.SMALL, false, "start", line);
    }
    arrow(svg, middle);
    double feedsTop = top + 5 + Math.max(0, (SIGN_HIGH - feeds().size() * LEADING) / 2);
    blank(svg, FEEDS, middle, row.feeds());
    lines(svg, FEEDS, feedsTop, feeds(), false);
  }

  /** A line to fill in where there are no words. */
  private static void blank(Svg svg, double x, double middle, String text) {
    if (text.isBlank()) {
      svg.line(x, middle + 5, x + BLANK, middle + 5, PanelFace.LINE);
    }
  }

  private static void lines(Svg svg, double x, double top, List<String> lines, boolean bold) {
    double y = top;
    for (String line : lines) {
      y += LEADING;
      svg.text(x, y - 3.5, TEXT, bold, "start", line);
    }
  }

  private static void arrow(Svg svg, double y) {
    double from = PanelFace.FRAME;
    svg.line(from, y, from + 17, y, Look.line(1.2));
    double tip = from + 23;
    svg.polygon(Look.solid(Svg.BLACK), tip - 7, y - 3.5, tip - 7, y + 3.5, tip, y);
  }

  private void sign(Svg svg, double top) {
    switch (row.sign()) {
      case MAIN -> breaker(svg, top, 2.5);
      case BREAKER -> breaker(svg, top, 1);
      case BLADE -> blade(svg, top);
      case FUSE -> fuse(svg, top);
      case SWITCH -> toggle(svg, top);
    }
  }

  /** A frame, and the handle in it that carries the amps. */
  private void breaker(Svg svg, double top, double pen) {
    svg.rect(SIGN, top, SIGN_WIDE, SIGN_HIGH, 2, Look.line(pen).filled(Svg.WHITE));
    svg.rect(SIGN + 4, top + 4, SIGN_WIDE - 8, SIGN_HIGH - 8, 2, Look.line(0.75));
    amps(svg, top + SIGN_HIGH / 2);
  }

  /** A body that carries the amps, on two blades. */
  private void blade(Svg svg, double top) {
    for (double x : new double[] {SIGN + 8, SIGN + SIGN_WIDE - 16}) {
      svg.rect(x, top + 18, 8, SIGN_HIGH - 18, 0, Look.line(1));
    }
    svg.rect(SIGN, top, SIGN_WIDE, 18, 3, Look.line(1).filled(Svg.WHITE));
    amps(svg, top + 9);
  }

  /** A body that carries the amps, between the ends of a wire. */
  private void fuse(Svg svg, double top) {
    double middle = top + SIGN_HIGH / 2;
    svg.line(SIGN - 5, middle, SIGN, middle, Look.line(1));
    svg.line(SIGN + SIGN_WIDE, middle, SIGN + SIGN_WIDE + 5, middle, Look.line(1));
    svg.rect(SIGN, top + 4, SIGN_WIDE, 18, 3, Look.line(1).filled(Svg.WHITE));
    amps(svg, middle);
  }

  /** A rocker: a frame parted in two, a ring on one half. */
  private static void toggle(Svg svg, double top) {
    double left = SIGN + 8;
    double wide = SIGN_WIDE - 16;
    svg.rect(left, top + 4, wide, SIGN_HIGH - 8, 3, Look.line(1));
    svg.line(left + wide / 2, top + 4, left + wide / 2, top + SIGN_HIGH - 4, Look.line(1));
    svg.circle(left + wide / 4, top + SIGN_HIGH / 2, 3, Look.line(1));
  }

  private void amps(Svg svg, double middle) {
    double x = SIGN + SIGN_WIDE / 2;
    if (row.amps().isEmpty()) {
      svg.line(x - 16, middle + 4, x + 16, middle + 4, PanelFace.LINE);
      return;
    }
    double fits = (SIGN_WIDE - 12) / TextFit.width(row.amps(), AMPS, true);
    double size = Plan.clamp(AMPS * fits, PanelFace.SMALL, AMPS);
    svg.text(x, middle + size * 0.711 / 2, size, true, "middle", row.amps());
  }
}
