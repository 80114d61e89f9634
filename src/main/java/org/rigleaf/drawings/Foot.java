package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rigleaf.drawings.Svg.Look;

/** What stands under a wall that is seen square on: a scale, and what the marks mean. */
final class Foot {
  static final double LINE = 15;
  private static final double SMALL = 10;
  private static final double GAP = 15;
  private static final double MARK = 12;
  private static final int BAR_FT = 5;

  /** One thing in the flow. */
  private record Piece(Mark mark, String text, double wide) {}

  private final double x0;
  private final double wide;
  private final double scale; // points a foot; 0 if not to scale
  private final List<List<Piece>> lines = new ArrayList<>();

  /** Pieces flow from x on, in lines so wide; that a dot is on the wall goes without saying. */
  Foot(double x, double wide, double scale, List<Site> sites, MapWords words) {
    this.x0 = x;
    this.wide = wide;
    this.scale = scale;
    add(new Piece(null, scale > 0 ? BAR_FT + " ft" : words.say("not-to-scale"), scaleWide(words)));
    Arrays.stream(Mark.values())
        .filter(m -> m != Mark.WALL && sites.stream().anyMatch(s -> s.mark() == m))
        .map(m -> new Piece(m, words.mark(m), MARK + width(words.mark(m))))
        .forEach(this::add);
  }

  private double scaleWide(MapWords words) {
    return scale > 0
        ? 14 + BAR_FT * scale + width(BAR_FT + " ft")
        : width(words.say("not-to-scale"));
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
      bar(svg, x, y);
    } else {
      svg.text(x, y, SMALL, true, "start", piece.text());
    }
  }

  private void bar(Svg svg, double x, double y) {
    svg.text(x, y, SMALL, false, "start", "0");
    for (int i = 0; i < BAR_FT; i++) {
      Look look = Look.line(0.6).filled(i % 2 == 0 ? Svg.BLACK : Svg.WHITE);
      svg.rect(x + 9 + i * scale, y - 6, scale, 5, 0, look);
    }
    svg.text(x + 13 + BAR_FT * scale, y, SMALL, false, "start", BAR_FT + " ft");
  }
}
