package org.rigleaf.sheets;

import org.rigleaf.drawings.TextFit;
import org.rigleaf.guidance.Label;
import org.rigleaf.guidance.Words;

/** Whether the words of a label stand whole inside it. Lengths in points. */
record LabelFit(LabelGrid grid) {
  /** Clear of the edge of a label. */
  static final double CLEAR_MM = 2;

  /** Column of the code. */
  static final double CODE_WIDE = 57;

  static final double CODE = 18;
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double BOX = 6; // the box about a code
  private static final String LINE = "_".repeat(10); // a line to fill in

  boolean fits(Label label) {
    return high(label) <= inside(grid.heightMm())
        && TextFit.width(label.code(), CODE, true) + BOX <= CODE_WIDE;
  }

  private double high(Label label) {
    double points = ReadingSize.points(label.feet());
    double word = lines(label.word(), points * ReadingSize.WORD, true);
    return word + lines(Words.of(label.name()), points, true) + lines(label.text(), points, false);
  }

  private double lines(Words words, double points, boolean bold) {
    double room = inside(grid.widthMm()) - CODE_WIDE;
    String text = words.plain().replace("___", LINE);
    return words.empty()
        ? 0
        : TextFit.lines(text, points, room, bold) * points * ReadingSize.LEADING;
  }

  private static double inside(double mm) {
    return (mm - 2 * CLEAR_MM) * POINTS_PER_MM;
  }
}
