package org.rigleaf.sheets;

/** How large type must be to be read from some way off. */
final class ReadingSize {
  /** Share of the type size that a line takes. */
  static final double LEADING = 1.2;

  /** A signal word is half as large again as its message; Z535.2, as a maker of signs quotes it. */
  static final double WORD = 1.5;

  private ReadingSize() {}

  /**
   * Type size in points for a distance in feet: 10 at 2, 12 at 3, 14 at 4, 16 at 5; ANSI
   * Z535.4-2011 Annex B, as a maker of safety signs quotes it, in good light.
   *
   * @throws IllegalArgumentException outside of those distances
   */
  static int points(int feet) {
    if (feet < 2 || feet > 5) {
      throw new IllegalArgumentException("no type size is known for " + feet + " feet");
    }
    return 6 + 2 * feet;
  }
}
