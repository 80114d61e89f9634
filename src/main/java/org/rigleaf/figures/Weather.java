package org.rigleaf.figures;

/** The outside temperature through a day, from its low and its high alone: a house assumption. */
final class Weather {
  /** Hour of the coldest moment, and of the warmest. */
  private static final double COLDEST = 5;

  private static final double WARMEST = 15;

  private Weather() {}

  /**
   * Degrees F outside: half a cosine up from the low at 05:00 to the high at 15:00, half one down
   * again.
   *
   * @param hour of the day, 0 to 24
   * @throws IllegalArgumentException if the low is above the high
   */
  static double outsideFahrenheit(double hour, double low, double high) {
    if (low > high) {
      throw new IllegalArgumentException("a low of " + low + " above a high of " + high);
    }
    double rise = WARMEST - COLDEST;
    boolean rising = hour >= COLDEST && hour < WARMEST;
    double since = (hour - (rising ? COLDEST : WARMEST) + 24) % 24;
    double turn = Math.cos(Math.PI * since / (rising ? rise : 24 - rise));
    double middle = (low + high) / 2;
    double swing = (high - low) / 2;
    return rising ? middle - swing * turn : middle + swing * turn;
  }
}
