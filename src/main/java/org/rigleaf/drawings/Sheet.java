package org.rigleaf.drawings;

import java.util.List;

/**
 * How a plan shares out its page: the rig upright in the middle, a column of labels on each side.
 * Lengths are points.
 *
 * @param wide width of the whole drawing
 * @param height of the whole drawing
 * @param row from one label to the next in a column
 * @param names true if names stand beside the codes
 */
record Sheet(
    Plan plan,
    double wide,
    double height,
    double row,
    Badges badges,
    boolean names,
    Leaders.Lane street,
    Leaders.Lane curb) {
  /** Text column of a Letter page. */
  static final double WIDE = 488;

  /** Half of it: the legend stands beside the drawing. */
  static final double HALF = 240;

  static final double TALLEST = 553;
  static final double HEAD = 20;
  private static final double FOOT = 35;
  private static final double HALF_FOOT = 48;
  static final double UNDER_PLAN = 17;
  static final double NAME_SIZE = 10;
  static final double NAME_LEADING = 10.8;
  static final double SHELF = 5;
  static final double NAME_GAP = 4;
  static final double EDGE = 1;
  private static final double LEAST_ROW = 20;
  private static final double BEST_ROW = 22.5;
  private static final double TWO_LINES_ROW = 21;
  private static final double TWO_LINES_AIR = 24.5;
  private static final double BADGE_GAP = 2;
  private static final double GAP = 30;
  private static final double HALF_GAP = 12;
  private static final double LEAST_NAME = 72;
  private static final double MOST_NAME = 118;
  private static final double MOST_SCALE = 22;
  private static final double BAND = TALLEST - HEAD - HALF_FOOT;
  private static final double USUAL_BAND = 386; // leaves room for the legend
  private static final double HALF_BAND = 362;

  /** Labels that one column holds. */
  static int capacity() {
    return (int) Math.floor(BAND / LEAST_ROW);
  }

  /**
   * Shares out the width of a page, with names beside the codes.
   *
   * @param most labels in the fuller column
   * @param codes every code that is drawn
   * @param words the names beside them
   */
  static Sheet of(Size size, int most, List<String> codes, List<String> words) {
    double row = Math.min(BEST_ROW, BAND / Math.max(1, most));
    Badges badges = Badges.of(codes, Math.min(Badges.HIGH, row - BADGE_GAP));
    double scale = scale(size, WIDE, LEAST_NAME + NAME_GAP + badges.wide(), GAP, USUAL_BAND);
    double band = Math.max(size.length() * scale + UNDER_PLAN, most * row);
    double body = size.width() * scale;
    double free = WIDE - 2 * EDGE - body - outs(size, scale, GAP) - 2 * SHELF;
    double least = roomFor(words, lines(row));
    double label = Math.min(free / 2, NAME_GAP + badges.wide() + least);
    label += Plan.clamp(free / 2 - label - GAP, 0, roomFor(words, 1) - least);
    return placed(size, scale, WIDE, band, row, badges, true, label, GAP);
  }

  /** Shares out half of it, with bare codes. */
  static Sheet half(Size size, int most, List<String> codes) {
    double row = Math.min(BEST_ROW, BAND / Math.max(1, most));
    Badges badges = Badges.of(codes, Math.min(Badges.HIGH, row - BADGE_GAP));
    double scale = scale(size, HALF, badges.wide(), HALF_GAP, HALF_BAND);
    double band = Math.max(size.length() * scale + UNDER_PLAN, most * row);
    return placed(size, scale, HALF, band, row, badges, false, badges.wide(), HALF_GAP);
  }

  private static double scale(Size size, double page, double label, double gap, double band) {
    double room = page - 2 * (EDGE + label + SHELF + gap);
    double wide = size.width() + size.streetSlides() + size.curbSlides();
    double tall = (band - UNDER_PLAN) / size.length();
    return Math.min(Math.min(tall, room / wide), MOST_SCALE);
  }

  /** Room beside the walls for slides and for the slant of leaders. */
  private static double outs(Size size, double scale, double gap) {
    return out(size.streetSlides() * scale, gap) + out(size.curbSlides() * scale, gap);
  }

  private static double out(double slides, double gap) {
    return Math.max(slides + gap / 2, gap);
  }

  private static Sheet placed(
      Size size,
      double scale,
      double page,
      double band,
      double row,
      Badges badges,
      boolean names,
      double label,
      double gap) {
    double free =
        page - 2 * EDGE - size.width() * scale - outs(size, scale, gap) - 2 * (SHELF + label);
    double street = EDGE + label + SHELF;
    double curb = page - street;
    double left = street + free / 2 + out(size.streetSlides() * scale, gap);
    double top = HEAD + (band - UNDER_PLAN - size.length() * scale) / 2;
    return new Sheet(
        new Plan(size, left, top, scale),
        page,
        HEAD + band + (names ? FOOT : HALF_FOOT),
        row,
        badges,
        names,
        new Leaders.Lane(street, HEAD, HEAD + band),
        new Leaders.Lane(curb, HEAD, HEAD + band));
  }

  /** The least width in which every name stands whole in so many lines. */
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

  int nameLines() {
    return lines(row);
  }

  /** How tall a label likes to be: a name of two lines needs air, one of one line needs less. */
  double need(String name) {
    if (!names) {
      return row;
    }
    boolean one = TextFit.fits(name, NAME_SIZE, nameRoom(), 1) || nameLines() == 1;
    return one ? badges.high() + 1 : Math.max(row, TWO_LINES_AIR);
  }

  double nameRoom() {
    return street.x() - SHELF - badges.wide() - NAME_GAP - EDGE;
  }
}
