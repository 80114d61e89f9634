package org.rigleaf.figures;

/**
 * Something that a day takes from and adds to: charge, water, room in a tank, fuel. The unit is the
 * store's own.
 *
 * @param start what is in it at 15:00 of the first day
 * @param floor it ends where this is reached
 * @param full the most it holds
 * @param in what each hour of the day brings
 * @param out what each hour takes
 * @param kept the share that is kept of what an hour brings beyond what it takes
 */
record Store(double start, double floor, double full, double[] in, double[] out, double kept) {

  /** A store that is only drawn down, from full. */
  static Store drawn(double full, double floor, double[] out) {
    return new Store(full, floor, full, Hours.evenly(0), out, 1);
  }

  /** The room left in a tank, which ends full. */
  static Store room(double holds, double inIt, double endsWithRoom, double[] fills) {
    return new Store(holds - inIt, endsWithRoom, holds, Hours.evenly(0), fills, 1);
  }
}
