package org.rigleaf.drawings;

import org.rigleaf.drawings.Svg.Look;

/**
 * Draws on a wall that is seen square on; every length in feet, along the wall and up from the
 * ground.
 */
record Pen(Svg svg, Board board) {
  Pen line(double along1, double up1, double along2, double up2, Look look) {
    svg.line(board.x(along1), board.y(up1), board.x(along2), board.y(up2), look);
    return this;
  }

  /** A box between two places along the wall and two heights; corners rounded in feet. */
  Pen box(double along1, double along2, double low, double high, double round, Look look) {
    double left = Math.min(board.x(along1), board.x(along2));
    double wide = Math.abs(board.x(along2) - board.x(along1));
    double tall = (high - low) * board.scale();
    svg.rect(left, board.y(high), wide, tall, round * board.scale(), look);
    return this;
  }

  Pen circle(double along, double up, double radius, Look look) {
    svg.circle(board.x(along), board.y(up), radius * board.scale(), look);
    return this;
  }

  Pen polygon(Look look, double... alongUp) {
    double[] xy = new double[alongUp.length];
    for (int i = 0; i < alongUp.length; i += 2) {
      xy[i] = board.x(alongUp[i]);
      xy[i + 1] = board.y(alongUp[i + 1]);
    }
    svg.polygon(look, xy);
    return this;
  }

  Pen path(Look look, Path path) {
    svg.path(look, path.placed(board::x, board::y));
    return this;
  }

  /** Begins a part of the drawing that says what it stands for. */
  Pen open(String part) {
    svg.openGroup("part", part);
    return this;
  }

  Pen close() {
    svg.closeGroup();
    return this;
  }
}
