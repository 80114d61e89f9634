package org.rigleaf.drawings;

import java.util.List;

/**
 * How the page is shared out: a column of labels on each side, the plan between them, a head and a
 * foot. All in points.
 *
 * @param height of the whole drawing
 * @param row from one label to the next in a column
 * @param badgeWide width of the round badge that holds a code; one size for all
 * @param names true if names stand beside the codes
 */
record Sheet(
    Plan plan,
    double height,
    double row,
    double badgeWide,
    boolean names,
    Leaders.Lane street,
    Leaders.Lane curb) {
  /** Text column of a Letter page. */
  static final double WIDE = 488;

  static final double TALLEST = 553;
  static final double HEAD = 20;
  static final double FOOT = 35;
  static final double UNDER_PLAN = 17;
  static final double CODE_SIZE = 13;
  static final double NAME_SIZE = 10;
  static final double NAME_LEADING = 10.8;
  static final double SHELF = 5;
  static final double NAME_GAP = 4;
  static final double LEAST_ROW = 15;
  private static final double BEST_ROW = 23;
  private static final double TWO_LINES_ROW = 21;
  private static final double TWO_LINES_AIR = 24.5;
  private static final double BEST_BADGE = 19;
  private static final double BADGE_GAP = 2;
  private static final double EDGE = 1;
  private static final double GAP = 30;
  private static final double LEAST_NAME = 72;
  private static final double MOST_NAME = 118;
  private static final double MOST_SCALE = 22;
  private static final double BAND = TALLEST - HEAD - FOOT;

  /** Labels that one column holds: with names in rows, without them in two staggered rows. */
  static int capacity(boolean names) {
    return (int) Math.floor(BAND / (names ? LEAST_ROW : LEAST_ROW / 2));
  }

  /**
   * Shares out the page.
   *
   * @param most labels in the fuller column
   * @param codes every code that is drawn
   * @param words the names beside them
   */
  static Sheet of(Size size, int most, List<String> codes, List<String> words) {
    boolean names = most <= capacity(true);
    double row = Math.min(names ? BEST_ROW : BEST_ROW / 2, BAND / Math.max(1, most));
    double[] wanted = names ? roomFor(words, row) : new double[2];
    double badge = badge(names ? row : 2 * row, codes);
    double label = names ? LEAST_NAME + NAME_GAP + badge : 2 * badge + NAME_GAP;
    double room = WIDE - 2 * (EDGE + label + SHELF + GAP);
    double wide = size.width() + size.streetSlides() + size.curbSlides();
    double tall = (BAND - UNDER_PLAN) / size.length();
    double scale = Math.min(Math.min(tall, room / wide), MOST_SCALE);
    double band = Math.max(size.length() * scale + UNDER_PLAN, most * row);
    return placed(size, scale, Math.min(BAND, band), row, badge, wanted);
  }

  private static Sheet placed(
      Size size, double scale, double band, double row, double badge, double[] nameRoom) {
    double body = size.width() * scale;
    double outStreet = Math.max(size.streetSlides() * scale + GAP / 2, GAP);
    double outCurb = Math.max(size.curbSlides() * scale + GAP / 2, GAP);
    boolean names = nameRoom[0] > 0;
    double wanted = NAME_GAP + badge + (names ? nameRoom[0] : badge);
    double free = WIDE - 2 * EDGE - body - outStreet - outCurb - 2 * SHELF;
    double label = Math.min(free / 2, wanted);
    label += Plan.clamp(free / 2 - label - GAP, 0, nameRoom[1] - nameRoom[0]);
    double spare = (free - 2 * label) / 2;
    double street = EDGE + label + SHELF;
    double curb = WIDE - street;
    double left = street + spare + outStreet;
    double top = HEAD + (band - UNDER_PLAN - size.length() * scale) / 2;
    return new Sheet(
        new Plan(size, left, top, scale),
        HEAD + band + FOOT,
        row,
        badge,
        names,
        new Leaders.Lane(street, HEAD, HEAD + band),
        new Leaders.Lane(curb, HEAD, HEAD + band));
  }

  /** The least width in which every name stands whole in its row, and that for a single line. */
  private static double[] roomFor(List<String> words, double row) {
    return new double[] {roomFor(words, lines(row)), roomFor(words, 1)};
  }

  private static double roomFor(List<String> words, int lines) {
    double room = LEAST_NAME;
    while (room < MOST_NAME && !allWhole(words, room, lines)) {
      room += 2;
    }
    return room;
  }

  private static boolean allWhole(List<String> words, double room, int lines) {
    return words.stream().allMatch(w -> TextFit.fits(w, NAME_SIZE, room, lines));
  }

  private static int lines(double row) {
    return row >= TWO_LINES_ROW ? 2 : 1;
  }

  private static double badge(double row, List<String> codes) {
    double widest =
        codes.stream().mapToDouble(c -> TextFit.width(c, CODE_SIZE, true)).max().orElse(0);
    return Math.max(Math.min(BEST_BADGE, row - BADGE_GAP), widest + 8);
  }

  double badgeHigh() {
    return Math.min(BEST_BADGE, (names ? row : 2 * row) - BADGE_GAP);
  }

  int nameLines() {
    return lines(row);
  }

  /** How tall a label likes to be: a name of two lines needs air, one of one line needs less. */
  double need(String name) {
    if (!names) {
      return row;
    }
    boolean one = TextFit.fits(name, NAME_SIZE, nameRoom(), 1) || nameLines() == 1;
    return one ? badgeHigh() + 1 : Math.max(row, TWO_LINES_AIR);
  }

  double nameRoom() {
    return street.x() - SHELF - badgeWide - NAME_GAP - EDGE;
  }
}
