package org.rigleaf.figures;

import java.util.OptionalDouble;

/**
 * One store through a stay, hour by hour from 15:00 of the first day for thirty days, every day
 * alike.
 *
 * @param level what is in it at the end of each hour; the first is the start
 * @param brought all that came in, less what the charging lost
 * @param taken all that was taken
 * @param spilled what came when it was full
 * @param lacked what was wanted when it was empty
 */
record Ledger(
    Store store, double[] level, double brought, double taken, double spilled, double lacked) {
  static final int DAYS = 30;
  private static final int FIRST_HOUR = 15;
  private static final int NIGHT_FALLS = 20;
  private static final int NIGHT_ENDS = 8;

  /** Runs a store through its days. */
  static Ledger of(Store store) {
    double[] level = new double[DAYS * Hours.DAY + 1];
    level[0] = store.start();
    double brought = 0;
    double taken = 0;
    double spilled = 0;
    double lacked = 0;
    for (int i = 1; i < level.length; i++) {
      int hour = hour(i);
      double surplus = store.in()[hour] - store.out()[hour];
      double change = surplus > 0 ? surplus * store.kept() : surplus;
      double next = Math.max(0, Math.min(store.full(), level[i - 1] + change));
      spilled += Math.max(0, level[i - 1] + change - store.full());
      lacked += Math.max(0, -(level[i - 1] + change));
      brought += store.in()[hour] - Math.max(0, surplus) * (1 - store.kept());
      taken += store.out()[hour];
      level[i] = next;
    }
    return new Ledger(store, level, brought, taken, spilled, lacked);
  }

  /** A billionth of the store counts as nothing, so that rounding moves no end by hours. */
  private boolean reached(int entry) {
    return level[entry] <= store.floor() + store.full() * 1e-9;
  }

  /** The hour of the day that ends with this entry. */
  private static int hour(int entry) {
    return (FIRST_HOUR + entry - 1) % Hours.DAY;
  }

  /** Days until the floor is reached, on a straight line within the hour; empty if never. */
  OptionalDouble days() {
    if (reached(0)) {
      return OptionalDouble.of(0);
    }
    for (int i = 1; i < level.length; i++) {
      if (reached(i)) {
        int hour = hour(i);
        double part =
            Math.min(1, (level[i - 1] - store.floor()) / (store.out()[hour] - store.in()[hour]));
        return OptionalDouble.of((i - 1 + part) / Hours.DAY);
      }
    }
    return OptionalDouble.empty();
  }

  /** What is in it at the midnight after so many nights have begun, the first being 1. */
  double midnight(int number) {
    return level[number * Hours.DAY - FIRST_HOUR];
  }

  /** The least in it from 20:00 of the first evening to 08:00. */
  double leastOfFirstNight() {
    double least = Double.MAX_VALUE;
    for (int i = NIGHT_FALLS - FIRST_HOUR; i <= NIGHT_ENDS + Hours.DAY - FIRST_HOUR; i++) {
      least = Math.min(least, level[i]);
    }
    return least;
  }
}
