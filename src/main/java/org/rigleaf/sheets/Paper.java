package org.rigleaf.sheets;

/**
 * A paper and its margins, in millimeters: the only place that knows a length of a paper.
 *
 * <p>What is left between top and bottom is a whole number of lines of 16 points.
 *
 * @param name as printed
 * @param widthMm width
 * @param heightMm height
 * @param outerMm margin at the edge that carries the thumb tab
 * @param innerMm margin at the binding, clear of the holes
 * @param topMm margin above the text
 * @param bottomMm margin below the text
 */
public record Paper(
    String name,
    double widthMm,
    double heightMm,
    double outerMm,
    double innerMm,
    double topMm,
    double bottomMm) {
  /** US letter: 42 lines. */
  public static final Paper LETTER = new Paper("Letter", 215.9, 279.4, 18, 25, 22.58, 19.75);

  /** ISO A4: 45 lines. */
  public static final Paper A4 = new Paper("A4", 210, 297, 18, 25, 22.58, 20.42);

  /** Width of the text. */
  public double textWidthMm() {
    return widthMm - outerMm - innerMm;
  }

  /** Height of the text. */
  public double textHeightMm() {
    return heightMm - topMm - bottomMm;
  }
}
