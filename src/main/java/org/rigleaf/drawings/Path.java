package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** An outline under way: from a point along straight lines and curves, in the units of its pen. */
final class Path {
  /** One command of SVG 1.1, section 8.3, and its numbers, which are pairs of coordinates. */
  record Step(char command, double... xy) {}

  private final List<Step> steps = new ArrayList<>();

  private Path() {}

  static Path from(double x, double y) {
    return new Path().with('M', x, y);
  }

  /** Along a straight line. */
  Path to(double x, double y) {
    return with('L', x, y);
  }

  /** Along a curve that leaves for one point and ends at another. */
  Path bend(double leaveX, double leaveY, double x, double y) {
    return with('Q', leaveX, leaveY, x, y);
  }

  Path close() {
    return with('Z');
  }

  /** The same outline in other units. */
  Path placed(DoubleUnaryOperator x, DoubleUnaryOperator y) {
    Path placed = new Path();
    for (Step step : steps) {
      double[] xy = step.xy().clone();
      for (int i = 0; i < xy.length; i += 2) {
        xy[i] = x.applyAsDouble(xy[i]);
        xy[i + 1] = y.applyAsDouble(xy[i + 1]);
      }
      placed.with(step.command(), xy);
    }
    return placed;
  }

  List<Step> steps() {
    return List.copyOf(steps);
  }

  private Path with(char command, double... xy) {
    steps.add(new Step(command, xy));
    return this;
  }
}
