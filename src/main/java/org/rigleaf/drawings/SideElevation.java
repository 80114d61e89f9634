package org.rigleaf.drawings;

import org.rigleaf.rig.Rig;

/** Draws a long side of the rig, seen square on. */
final class SideElevation {
  private final Svg svg;
  private final Board board;
  private final Size size;
  private final double top;

  SideElevation(Svg svg, Board board, Rig rig, boolean street) {
    this.svg = svg;
    this.board = board;
    this.size = Size.of(rig);
    this.top = Tall.of(rig).top();
  }

  void draw() {
    double left = Math.min(board.x(size.starts()), board.x(size.ends()));
    double wide = (size.ends() - size.starts()) * board.scale();
    double high = (top - Tall.FLOOR) * board.scale();
    svg.rect(left, board.y(top), wide, high, 4, Outline.WALL);
    svg.line(board.x(0), board.ground(), board.x(size.length()), board.ground(), Outline.PART);
  }
}
