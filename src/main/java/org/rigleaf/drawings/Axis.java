package org.rigleaf.drawings;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * A straight scale along one side of a plot.
 *
 * @param from value at {@code start}
 * @param to value at {@code end}
 * @param step from tick to tick
 * @param start where the scale begins, in points
 * @param end where it ends
 */
record Axis(double from, double to, double step, double start, double end) {
  /** Larger values have no place on a page. */
  private static final double MOST = 10_000_000;

  private static final double HAIR = 1e-9;

  /** Refuses a scale of no length. */
  Axis {
    if (!(to > from) || !(step > 0)) {
      throw new IllegalArgumentException("no scale from " + from + " to " + to);
    }
  }

  /**
   * From nothing to the first tick that holds the most, and to one at least; ticks no less than
   * {@code room} points apart.
   */
  static Axis upTo(double most, double start, double end, double room) {
    double top = Math.max(1, amount(most));
    double step = round(top / Math.max(1, Math.floor(Math.abs(end - start) / room)));
    return new Axis(0, Math.ceil(top / step - HAIR) * step, step, start, end);
  }

  /** The least of 1, 2 and 5 times a power of ten that is not below a value. */
  static double round(double least) {
    double ten = Math.pow(10, Math.floor(Math.log10(least)));
    return IntStream.of(1, 2, 5, 10)
        .mapToDouble(i -> i * ten)
        .filter(s -> s >= least * (1 - HAIR))
        .findFirst()
        .orElseThrow();
  }

  /** A value that a plot can show, or a refusal. */
  static double amount(double value) {
    if (!(value >= 0 && value <= MOST)) {
      throw new IllegalArgumentException("no amount to draw: " + value);
    }
    return value;
  }

  double at(double value) {
    return start + (value - from) / (to - from) * (end - start);
  }

  List<Double> ticks() {
    int count = (int) Math.floor((to - from) / step + HAIR);
    return IntStream.rangeClosed(0, count).mapToObj(i -> from + i * step).toList();
  }

  /** A tick's number with no more digits than its step needs. */
  String text(double tick) {
    int digits = Math.max(0, (int) -Math.floor(Math.log10(step) + HAIR));
    return String.format(Locale.ENGLISH, "%,." + digits + "f", tick);
  }

  /** Width of the widest of its numbers, in points. */
  double textWidth() {
    return ticks().stream()
        .mapToDouble(t -> TextFit.width(text(t), Plot.SMALL, false))
        .max()
        .orElse(0);
  }
}
