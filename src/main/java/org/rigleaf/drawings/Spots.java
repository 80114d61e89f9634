package org.rigleaf.drawings;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds room for a label among the words and curves that already stand on a plot. */
final class Spots {
  private static final double GRAIN = 2;
  private static final double CLEAR = 4;
  private static final double SIDE = 2;
  private static final double HIGH = 11;
  private static final double BASELINE = 8.5;

  /** How much a label likes to stand straight over or under its point. */
  private static final double STRAIGHT = 0.05;

  private final List<Rectangle2D> words = new ArrayList<>();
  private final List<Line2D> curves = new ArrayList<>();

  void word(double left, double baseline, double width, double size) {
    words.add(new Rectangle2D.Double(left, baseline - 0.72 * size, width, 0.93 * size));
  }

  void curve(double x1, double y1, double x2, double y2) {
    curves.add(new Line2D.Double(x1, y1, x2, y2));
  }

  /**
   * Where a line of 10 pt begins that is as near to a point as curves and words allow; if nothing
   * is free, only words count.
   *
   * @param frame what the label must stay inside; higher than the words in it
   */
  Point2D nearest(double x, double y, Rectangle2D frame, double width) {
    Rectangle2D box = box(x, y, frame, width, true);
    if (box == null) {
      box = box(x, y, frame, width, false);
    }
    return new Point2D.Double(box.getX() + SIDE, box.getY() + BASELINE);
  }

  private Rectangle2D box(double x, double y, Rectangle2D frame, double width, boolean strict) {
    double wide = width + 2 * SIDE;
    Rectangle2D best = null;
    double least = Double.MAX_VALUE;
    for (double top = frame.getMinY(); top + HIGH <= frame.getMaxY(); top += GRAIN) {
      for (double left = frame.getMinX(); left + wide <= frame.getMaxX() + 0.01; left += GRAIN) {
        Rectangle2D box = new Rectangle2D.Double(left, top, wide, HIGH);
        double away = away(box, x, y) + STRAIGHT * Math.abs(box.getCenterX() - x);
        if (away < least && free(box, strict)) {
          best = box;
          least = away;
        }
      }
    }
    return best;
  }

  private static double away(Rectangle2D box, double x, double y) {
    double across = Math.max(0, Math.max(box.getMinX() - x, x - box.getMaxX()));
    double down = Math.max(0, Math.max(box.getMinY() - y, y - box.getMaxY()));
    return Math.hypot(across, down);
  }

  private boolean free(Rectangle2D box, boolean strict) {
    Rectangle2D wide =
        new Rectangle2D.Double(
            box.getX() - CLEAR,
            box.getY() - CLEAR,
            box.getWidth() + 2 * CLEAR,
            box.getHeight() + 2 * CLEAR);
    return words.stream().noneMatch(box::intersects)
        && !(strict && curves.stream().anyMatch(c -> c.intersects(wide)));
  }
}
