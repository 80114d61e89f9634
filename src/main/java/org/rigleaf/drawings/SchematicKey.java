package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Link;
import org.rigleaf.drawings.Schematic.Shape;

/** What lines and shapes mean, in rows at the foot: only those that are drawn. */
final class SchematicKey {
  private static final double ROW = 15;
  private static final double SAMPLE = 26;
  private static final double GAP = 4;
  private static final double BETWEEN = 14;
  private static final double DROP = 3.6;

  private interface Sample {
    void draw(Svg svg, double x, double y);
  }

  private record Item(Sample sample, String words, double x, int row) {}

  private final List<Item> items = new ArrayList<>();
  private double x = 1;
  private int row;

  SchematicKey(Schematic schematic, SchematicWords words) {
    boolean letters = schematic.links().stream().map(Link::line).distinct().count() > 1;
    for (Line line : Line.values()) {
      if (schematic.links().stream().anyMatch(l -> l.line() == line)) {
        String letter = letters ? words.letters().getOrDefault(line, "") + " " : "";
        add((svg, at, y) -> line(svg, line, at, y), letter + words.lines().get(line));
      }
    }
    if (schematic.links().stream().anyMatch(Link::shut)) {
      add(SchematicKey::shut, words.shut());
    }
    Arrays.stream(Shape.values())
        .filter(s -> schematic.boxes().stream().anyMatch(b -> b.shape() == s))
        .forEach(
            s ->
                add(
                    (svg, at, y) -> BoxShape.draw(svg, s, at, y - 5.5, SAMPLE, 11),
                    words.shapes().get(s)));
  }

  private void add(Sample sample, String words) {
    double wide = SAMPLE + GAP + TextFit.width(words, BoxText.SIZE, false);
    if (x + wide > Sheet.WIDE - 1) {
      x = 1;
      row++;
    }
    items.add(new Item(sample, words, x, row));
    x += wide + BETWEEN;
  }

  double height() {
    return ROW * (row + 1);
  }

  void draw(Svg svg, double top) {
    svg.openGroup("key", "key");
    for (Item item : items) {
      double y = top + ROW * item.row() + ROW / 2;
      item.sample().draw(svg, item.x(), y);
      double left = item.x() + SAMPLE + GAP;
      svg.text(left, y + DROP, BoxText.SIZE, false, "start", item.words());
    }
    svg.closeGroup();
  }

  private static void line(Svg svg, Line line, double x, double y) {
    svg.line(x, y, x + SAMPLE, y, LineLooks.of(line, false));
  }

  private static void shut(Svg svg, double x, double y) {
    double middle = x + SAMPLE / 2;
    svg.line(x, y, x + SAMPLE, y, LineLooks.of(Line.AC, true));
    svg.line(middle, y - Ranks.ARROW, middle, y + Ranks.ARROW, Svg.Look.line(2.4));
  }
}
