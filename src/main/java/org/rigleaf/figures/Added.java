package org.rigleaf.figures;

/** What a change of the rig adds to its weight. */
public final class Added {
  private static final double BOUND_POUNDS = 100;
  private static final double BOUND_SHARE_OF_GVWR = 0.015;

  private Added() {}

  /** Added pounds as percent of the GVWR; plain division. */
  public static double sharePercent(double addedPounds, double gvwrPounds) {
    return 100 * addedPounds / gvwrPounds;
  }

  /**
   * Pounds above which an added weight is flagged, the lesser of 1.5 % of the GVWR and 100 lb.
   *
   * <p>Source: 72 FR 68442, where it makes a dealer correct the cargo label before the first sale;
   * its use after any upgrade is this project's own.
   */
  public static double boundPounds(double gvwrPounds) {
    return Math.min(BOUND_SHARE_OF_GVWR * gvwrPounds, BOUND_POUNDS);
  }
}
