package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import org.rigleaf.drawings.Svg.Look;

/**
 * What one finds on a panel: breakers, fuses, or lamps and switches, a line each, in the order of
 * the profile. Where each of them stands on the panel is not known, and the note says so.
 */
public final class PanelFace {
  /** On A4 too nothing is scaled down. */
  static final double WIDE = 472;

  private static final double NOTE_WIDE = 400; // a line of at most 95 signs

  /** Right edge of the box; what its things feed stands outside it. */
  static final double FRAME = 262;

  static final double SMALL = 10;
  static final double SMALL_LEADING = 12;
  static final double TALLEST = 500; // a heading stands above on the same page
  static final double PAD = 8;
  static final Look LINE = Look.line(0.75);
  private static final int MOST_LINES = 30;
  private static final double GAP = 10;
  private static final double HEAD = 16; // above the first box, for the word over the right column

  /** What a line of the box stands for; each has a shape of its own. */
  public enum Sign {
    /** The breaker that everything else hangs on. */
    MAIN,
    BREAKER,
    /** A fuse that is a blade fuse, as far as its amps tell. */
    BLADE,
    /** Any other fuse. */
    FUSE,
    SWITCH
  }

  /**
   * One line of a box.
   *
   * @param amps as on the thing itself; empty if unknown, and for a switch
   * @param name the panel's own word; empty if unknown
   * @param remark a few words under the name; may be empty
   * @param feeds what hangs on it; empty if unknown
   */
  public record Row(Sign sign, String amps, String name, String remark, String feeds) {}

  /**
   * The lamps of a monitor.
   *
   * @param marks the words beside the lamps, first to last
   * @param mean what they mean; empty if unknown
   */
  public record Lamps(List<String> marks, String mean) {
    /** A box without lamps. */
    public static final Lamps NONE = new Lamps(List.of(), "");

    /** Copies the list. */
    public Lamps {
      marks = List.copyOf(marks);
    }
  }

  /**
   * A box on the wall.
   *
   * @param gear id of the gear it is; empty if none
   * @param code its code; empty if none
   * @param name what it is; empty for things that have a place but no box of their own
   * @param place where it is; empty if unknown
   */
  public record Box(
      String gear, String code, String name, String place, Lamps lamps, List<Row> rows) {
    /** Copies the list. */
    public Box {
      rows = List.copyOf(rows);
    }

    Box with(Lamps shown, List<Row> some) {
      return new Box(gear, code, name, place, shown, some);
    }
  }

  /** What the picture says: the word over what is fed, the word before the meaning, notes. */
  public record Words(String feeds, String mean, String note) {}

  private final Svg svg = new Svg();
  private final Words words;
  private final boolean main; // everything in the box hangs on one breaker
  private double y;

  private PanelFace(Words words, boolean main) {
    this.words = words;
    this.main = main;
  }

  /** Draws the boxes, as many pictures as they need; the same data give the same bytes. */
  public static List<Drawing> draw(List<Box> boxes, Words words, String alt) {
    boolean main = boxes.stream().flatMap(b -> b.rows().stream()).anyMatch(FaceRow::isMain);
    double room = TALLEST - HEAD - notes(words).size() * SMALL_LEADING - GAP;
    return pages(boxes, words, room).stream()
        .map(page -> new PanelFace(words, main).picture(page, alt))
        .toList();
  }

  private static List<String> notes(Words words) {
    return TextFit.wrap(words.note(), SMALL, NOTE_WIDE, MOST_LINES);
  }

  /** Boxes shared out over pictures; a box that is cut keeps its head. */
  private static List<List<Box>> pages(List<Box> boxes, Words words, double room) {
    List<List<Box>> pages = new ArrayList<>(List.of(new ArrayList<>()));
    double used = 0;
    for (Box box : boxes) {
      Box rest = box;
      double high = head(box, words);
      if (used + high + first(box) > room) {
        pages.add(new ArrayList<>());
        used = 0;
      }
      used += high;
      List<Row> some = new ArrayList<>();
      for (Row row : box.rows()) {
        if (used + new FaceRow(row).height() > room) {
          rest = keep(pages, rest, some);
          pages.add(new ArrayList<>());
          some.clear();
          used = head(rest, words);
        }
        some.add(row);
        used += new FaceRow(row).height();
      }
      keep(pages, rest, some);
    }
    return pages.stream().filter(p -> !p.isEmpty()).toList();
  }

  private static double head(Box box, Words words) {
    return new FaceHead(box, words).height() + GAP;
  }

  private static double first(Box box) {
    return box.rows().stream().findFirst().map(r -> new FaceRow(r).height()).orElse(0.0);
  }

  /** Puts the rows into the last picture; what goes on in the next one has no lamps any more. */
  private static Box keep(List<List<Box>> pages, Box box, List<Row> rows) {
    if (!rows.isEmpty() || !box.lamps().marks().isEmpty()) {
      pages.get(pages.size() - 1).add(box.with(box.lamps(), rows));
    }
    return box.with(Lamps.NONE, box.rows());
  }

  private Drawing picture(List<Box> boxes, String alt) {
    List<String> notes = notes(words);
    double high = HEAD;
    for (Box box : boxes) {
      high += height(box) + GAP;
    }
    svg.openWords(WIDE, high + notes.size() * SMALL_LEADING, alt);
    if (boxes.stream().anyMatch(b -> !b.rows().isEmpty())) {
      svg.text(FaceRow.FEEDS, HEAD - 5, SMALL, true, "start", words.feeds());
    }
    y = HEAD;
    boxes.forEach(this::box);
    for (String note : notes) {
      y += SMALL_LEADING;
      svg.text(1, y - 3, SMALL, false, "start", note);
    }
    return new Drawing(svg.close(), alt, List.of());
  }

  private double height(Box box) {
    double rows = box.rows().stream().mapToDouble(r -> new FaceRow(r).height()).sum();
    return new FaceHead(box, words).height() + rows;
  }

  private void box(Box box) {
    FaceHead head = new FaceHead(box, words);
    double top = y;
    svg.rect(1, top, FRAME - 1, height(box), 4, Look.line(1.5));
    head.draw(svg, top);
    y += head.height();
    boolean hangs = main && box.rows().size() > 1;
    if (hangs) {
      bus(box.rows());
    }
    for (Row row : box.rows()) {
      FaceRow line = new FaceRow(row);
      line.draw(svg, y, hangs);
      y += line.height();
      if (FaceRow.isMain(row)) {
        svg.line(1, y, FRAME, y, Look.line(1.5));
      }
    }
    y += GAP;
  }

  /** From the main breaker, or from the head of a box that goes on, to the last breaker. */
  private void bus(List<Row> rows) {
    double from = FaceRow.isMain(rows.get(0)) ? y + FaceRow.MIDDLE : y;
    double to = y + FaceRow.MIDDLE;
    for (Row row : rows.subList(0, rows.size() - 1)) {
      to += new FaceRow(row).height();
    }
    svg.line(FaceRow.BUS, from, FaceRow.BUS, to, Look.line(2));
  }
}
