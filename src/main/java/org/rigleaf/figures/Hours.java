package org.rigleaf.figures;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.rigleaf.rig.Load.When;

/** Spreads what happens in a day over its 24 hours: house assumptions on when things are done. */
final class Hours {
  static final int DAY = 24;

  /** The hours of washing and showering, half in each. */
  private static final int MORNING_WASH = 7;

  private static final int EVENING_WASH = 18;

  private Hours() {}

  /** A value for each hour of the day. */
  static double[] each(IntToDoubleFunction hour) {
    return IntStream.range(0, DAY).mapToDouble(hour).toArray();
  }

  /** The same in every hour. */
  static double[] evenly(double total) {
    return each(h -> total / DAY);
  }

  /** Half in the morning hour of washing, half in the evening one. */
  static double[] washing(double total) {
    return each(h -> h == MORNING_WASH || h == EVENING_WASH ? total / 2 : 0);
  }

  /** All in the hour of cooking, from 18:00. */
  static double[] cooking(double total) {
    return each(h -> h == EVENING_WASH ? total : 0);
  }

  /**
   * The share of each hour in which something runs.
   *
   * @param when the part of the day; longer running widens it on both sides alike
   * @param hours a day, at most 24
   * @throws IllegalArgumentException for hours that a day has not
   */
  static double[] running(When when, double hours) {
    if (!(hours >= 0 && hours <= DAY)) {
      throw new IllegalArgumentException("a day has no " + hours + " hours");
    }
    double length = Math.max(length(when), hours);
    double from = middle(when) - length / 2;
    return each(h -> hours / length * overlap(h, from, from + length));
  }

  private static double length(When when) {
    return switch (when) {
      case MORNING -> 3;
      case DAY, NIGHT -> 8;
      case EVENING -> 4;
      case ALWAYS -> DAY;
    };
  }

  private static double middle(When when) {
    return switch (when) {
      case MORNING -> 7.5; // 06 to 09
      case DAY -> 13; // 09 to 17
      case EVENING -> 20; // 18 to 22
      case NIGHT -> 2; // 22 to 06
      case ALWAYS -> 12;
    };
  }

  /** How much of an hour lies between two moments, of which either may lie in the next day. */
  private static double overlap(int hour, double from, double to) {
    double sum = 0;
    for (int day = -DAY; day <= DAY; day += DAY) {
      sum += Math.max(0, Math.min(hour + 1 + day, to) - Math.max(hour + day, from));
    }
    return sum;
  }

  /** The sum over a day. */
  static double sum(double[] day) {
    return Arrays.stream(day).sum();
  }

  /** Two days hour by hour together. */
  static double[] plus(double[] a, double[] b) {
    return each(h -> a[h] + b[h]);
  }

  /** A day in other units. */
  static double[] times(double[] day, double factor) {
    return each(h -> day[h] * factor);
  }
}
