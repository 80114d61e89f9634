package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The words of one box, wrapped to its width.
 *
 * @param code its call-out; may be empty
 * @param name lines in bold
 * @param more lines under them
 */
record BoxText(String code, List<String> name, List<String> more) {
  static final double SIZE = 10;
  static final double LEADING = 11.5;

  /** Where a line meets its box, below its upper edge: half the height of the least box. */
  static final double PORT = 12.5;

  private static final double EDGE = 7;
  private static final double BADGE_EDGE = 4;
  private static final double BADGE_HIGH = 17;
  private static final double BADGE_LEAST = 20;
  private static final double DROP = 0.36; // from the middle of a capital to its foot, in ems
  private static final int MOST_LINES = 3; // of one of its words
  private static final double LONGEST = 90; // a longer word is broken
  private static final double WIDEST = 190;

  static BoxText of(Schematic.Box box, double width) {
    double room = width - left(box.code()) - EDGE;
    List<String> name = wrap(box.words().get(0), room, true);
    List<String> more =
        box.words().stream().skip(1).flatMap(w -> wrap(w, room, false).stream()).toList();
    return new BoxText(box.code(), name, more);
  }

  /** The width in which none of its words is broken. */
  static double least(Schematic.Box box) {
    double word = words(box, w -> Arrays.stream(w.split(" ")));
    return Math.ceil(left(box.code()) + Math.min(LONGEST, word) + EDGE); // or the last letter wraps
  }

  /** The width in which every line stands whole. */
  static double most(Schematic.Box box) {
    return Math.max(least(box), Math.min(WIDEST, left(box.code()) + words(box, Stream::of) + EDGE));
  }

  private static double words(
      Schematic.Box box, java.util.function.Function<String, Stream<String>> parts) {
    double name = parts.apply(box.words().get(0)).mapToDouble(w -> width(w, true)).max().orElse(0);
    return box.words().stream()
        .skip(1)
        .flatMap(parts)
        .map(w -> width(w, false))
        .max(Comparator.naturalOrder())
        .map(w -> Math.max(w, name))
        .orElse(name);
  }

  private static double left(String code) {
    return code.isEmpty() ? EDGE : BADGE_EDGE + badge(code) + BADGE_EDGE;
  }

  private static double badge(String code) {
    return Math.max(BADGE_LEAST, TextFit.width(code, Badges.CODE_SIZE, true) + 8);
  }

  private static double width(String text, boolean bold) {
    return TextFit.width(text, SIZE, bold);
  }

  double height() {
    return 2 * PORT + (name.size() + more.size() - 1) * LEADING;
  }

  /** Writes the words into a box with this corner. */
  void draw(Svg svg, double x, double y) {
    if (!code.isEmpty()) {
      double wide = badge(code);
      Svg.Look look = Svg.Look.line(0.9).filled(Svg.WHITE);
      double top = y + PORT - BADGE_HIGH / 2;
      svg.rect(x + BADGE_EDGE, top, wide, BADGE_HIGH, BADGE_HIGH / 2, look);
      double foot = y + PORT + DROP * Badges.CODE_SIZE;
      svg.text(x + BADGE_EDGE + wide / 2, foot, Badges.CODE_SIZE, true, "middle", code);
    }
    double foot = y + PORT + DROP * SIZE;
    for (int i = 0; i < name.size() + more.size(); i++) {
      boolean bold = i < name.size();
      String line = bold ? name.get(i) : more.get(i - name.size());
      svg.text(x + left(code), foot + i * LEADING, SIZE, bold, "start", line);
    }
  }

  /** Lines no wider than the room; a word that is wider is broken. */
  private static List<String> wrap(String text, double room, boolean bold) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer, bold) <= room) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (width(line, bold) > room) {
        int fits = fits(line, room, bold);
        lines.add(line.substring(0, fits));
        line = line.substring(fits);
      }
    }
    lines.add(line);
    return lines.size() <= MOST_LINES ? lines : cut(lines, room, bold);
  }

  private static List<String> cut(List<String> lines, double room, boolean bold) {
    String last = lines.get(MOST_LINES - 1);
    while (!last.isEmpty() && width(last + "…", bold) > room) {
      last = last.substring(0, last.offsetByCodePoints(last.length(), -1));
    }
    List<String> kept = new ArrayList<>(lines.subList(0, MOST_LINES - 1));
    kept.add(last.strip() + "…");
    return kept;
  }

  private static int fits(String word, double room, boolean bold) {
    int end = word.offsetByCodePoints(0, 1);
    while (end < word.length()) {
      int next = word.offsetByCodePoints(end, 1);
      if (width(word.substring(0, next), bold) > room) {
        break;
      }
      end = next;
    }
    return end;
  }
}
