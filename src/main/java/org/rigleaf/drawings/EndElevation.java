package org.rigleaf.drawings;

import org.rigleaf.rig.Rig;

/** Draws the front or the rear of the rig, seen square on. */
final class EndElevation {
  private final Svg svg;
  private final Board board;
  private final Size size;
  private final double top;

  EndElevation(Svg svg, Board board, Rig rig, boolean rear) {
    this.svg = svg;
    this.board = board;
    this.size = Size.of(rig);
    this.top = Tall.of(rig).top();
  }

  void draw() {
    double left = Math.min(board.x(0), board.x(size.width()));
    double high = (top - Tall.FLOOR) * board.scale();
    svg.rect(left, board.y(top), size.width() * board.scale(), high, 4, Outline.WALL);
    svg.line(board.x(0), board.ground(), board.x(size.width()), board.ground(), Outline.PART);
  }
}
