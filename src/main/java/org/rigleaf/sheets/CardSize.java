package org.rigleaf.sheets;

/**
 * A card: its size in millimeters and its type in points. All lengths of a card stand here, for the
 * style as for the cutting of a task into cards.
 *
 * @param name as printed
 * @param widthMm width
 * @param heightMm height
 * @param marginMm left free on each side, for the seam of the pouch
 * @param text size of steps and cautions
 * @param line their line
 * @param small size of places and of what one should see
 * @param smallLine its line
 * @param title size of the title
 * @param titleLine its line
 */
public record CardSize(
    String name,
    double widthMm,
    double heightMm,
    double marginMm,
    double text,
    double line,
    double small,
    double smallLine,
    double title,
    double titleLine) {
  /** Half a US letter. */
  public static final CardSize HALF_LETTER =
      new CardSize("half letter", 139.7, 215.9, 8, 14, 17, 12, 14.5, 18, 22);

  /** ISO A5. */
  public static final CardSize A5 = new CardSize("A5", 148, 210, 8, 14, 17, 12, 14.5, 18, 22);

  /** Four by six inches. */
  public static final CardSize FOUR_BY_SIX =
      new CardSize("4 x 6 in", 101.6, 152.4, 6, 12, 14.5, 10.5, 12.5, 15, 18);

  /** ISO A6. */
  public static final CardSize A6 = new CardSize("A6", 105, 148, 6, 12, 14.5, 10.5, 12.5, 15, 18);

  static final double AIR = 2.5; // above and below a line
  static final double TO_WRITE = 24; // a line for handwriting
  static final double RULE = 1; // the thickest that is common
  static final double FOOT_LINE = 12; // the line at the very foot is of 10 points

  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double CODE_MM = 20.8; // 33 squares and 4 of quiet a side, each of 0.5 mm

  /** Width of what is printed, in points. */
  public double roomPt() {
    return Math.floor((widthMm - 2 * marginMm) * POINTS_PER_MM);
  }

  /** Height of what is printed, in points. */
  public double heightPt() {
    return Math.floor((heightMm - 2 * marginMm) * POINTS_PER_MM);
  }

  /** Room for the number and the box of a step. */
  public double gutterPt() {
    return Math.rint(text * 3.4);
  }

  /** Width of the cell with the signal word. */
  public double signalPt() {
    return Math.rint(text * 7);
  }

  /** Side of the code to scan. */
  public double codePt() {
    return Math.rint(CODE_MM * POINTS_PER_MM);
  }

  /** Height of a line to fill in by hand. */
  public double toWrite() {
    return TO_WRITE;
  }

  /** Width of the label of a fact. */
  public double labelPt() {
    return Math.floor(roomPt() * 0.42);
  }
}
