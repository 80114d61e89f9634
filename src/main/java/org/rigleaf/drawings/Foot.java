package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What stands under a wall that is seen square on: a scale, and what the marks mean. */
final class Foot {
  static final double LINE = 15;
  private static final double SMALL = 10;
  private static final double GAP = 15;
  private static final double MARK = 12;

  /** One thing in the flow. */
  private record Piece(Mark mark, String text, double wide) {}

  private final double x0;
  private final double wide;
  private final double scale; // points a foot; 0 if not to scale
  private final ScaleBar bar;
  private final List<List<Piece>> lines = new ArrayList<>();

  /** Pieces flow from x on, in lines so wide; that a dot is on the wall goes without saying. */
  Foot(double x, double wide, double scale, List<Site> sites, MapWords words) {
    this.x0 = x;
    this.wide = wide;
    this.scale = scale;
    this.bar = new ScaleBar(scale, words.words().amounts());
    String no = words.say("not-to-scale");
    add(new Piece(null, no, scale > 0 ? bar.width() : width(no)));
    Arrays.stream(Mark.values())
        .filter(m -> m != Mark.WALL && sites.stream().anyMatch(s -> s.mark() == m))
        .map(m -> new Piece(m, words.mark(m), MARK + width(words.mark(m))))
        .forEach(this::add);
  }

  private static double width(String text) {
    return TextFit.width(text, SMALL, true);
  }

  private void add(Piece piece) {
    double used =
        lines.isEmpty()
            ? wide
            : lines.get(lines.size() - 1).stream().mapToDouble(p -> p.wide() + GAP).sum();
    if (used + piece.wide() > wide) {
      lines.add(new ArrayList<>());
    }
    lines.get(lines.size() - 1).add(piece);
  }

  double height() {
    return LINE * lines.size();
  }

  void draw(Svg svg, double top) {
    for (int i = 0; i < lines.size(); i++) {
      double x = x0;
      for (Piece piece : lines.get(i)) {
        draw(svg, x, top + LINE * i + 11, piece);
        x += piece.wide() + GAP;
      }
    }
  }

  private void draw(Svg svg, double x, double y, Piece piece) {
    if (piece.mark() != null) {
      piece.mark().draw(svg, x + 5, y - 3.5);
      svg.text(x + MARK, y, SMALL, false, "start", piece.text());
    } else if (scale > 0) {
      bar.draw(svg, x, y);
    } else {
      svg.text(x, y, SMALL, true, "start", piece.text());
    }
  }
}
