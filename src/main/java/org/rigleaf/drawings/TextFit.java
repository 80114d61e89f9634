package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;

/**
 * Measures and wraps the words of a drawing. Advance widths are those of DejaVu Sans Condensed, the
 * printed face, in thousandths of the type size; signs beyond ASCII are taken as wide.
 */
public final class TextFit {
  private static final int[] REGULAR =
      widths(
          "286 360 414 754 572 855 702 247 351 351 450 754 286 325 286 303 572 572 572 572"
              + " 572 572 572 572 572 572 303 303 754 754 754 478 900 615 617 628 693 568 518 697"
              + " 677 265 265 590 501 776 673 708 542 708 625 571 549 659 615 890 616 549 616 351"
              + " 303 351 754 450 450 551 571 495 571 554 316 571 570 250 250 521 250 876 570 550"
              + " 571 571 370 469 353 570 532 736 532 532 472 572 303 572 754");
  private static final int[] BOLD =
      widths(
          "313 410 469 754 626 901 785 275 411 411 470 754 342 374 342 329 626 626 626 626"
              + " 626 626 626 626 626 626 360 360 754 754 754 522 900 696 686 660 747 615 615 738"
              + " 753 334 334 697 573 896 753 765 659 765 693 648 614 730 696 993 694 651 652 411"
              + " 329 411 754 450 450 607 644 533 644 610 391 644 641 308 308 598 308 938 641 618"
              + " 644 644 444 536 430 641 586 831 580 586 523 641 329 641 754");
  private static final int WIDE = 1000;
  private static final String CUT = "…";

  private TextFit() {}

  private static int[] widths(String list) {
    return List.of(list.split(" ")).stream().mapToInt(Integer::parseInt).toArray();
  }

  /** Width in points of one line of text. */
  static double width(String text, double size, boolean bold) {
    int[] table = bold ? BOLD : REGULAR;
    return text.codePoints().map(c -> c >= 32 && c < 127 ? table[c - 32] : WIDE).sum()
        * size
        / 1000;
  }

  /** How many lines a text takes; a word wider than {@code room} points is broken. */
  public static int lines(String text, double size, double room, boolean bold) {
    int lines = 1;
    double used = 0;
    for (String word : text.strip().split("\\s+")) {
      double width = width(word, size, bold);
      double blank = used == 0 ? 0 : width(" ", size, bold);
      if (used + blank + width > room && used > 0) {
        lines++;
        used = 0;
        blank = 0;
      }
      lines += (int) (width / room);
      used = width > room ? width % room : used + blank + width;
    }
    return lines;
  }

  /** At most so many lines, none wider than {@code room} points; what does not fit is cut. */
  static List<String> wrap(String text, double size, double room, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip().replaceAll("\\s+", " ");
    while (!rest.isEmpty() && lines.size() < most) {
      boolean last = lines.size() == most - 1;
      String line = last ? cut(rest, size, room) : head(rest, size, room);
      lines.add(line);
      rest = last ? "" : rest.substring(line.length()).strip();
    }
    return lines;
  }

  /** True if the text stands whole in so many lines. */
  static boolean fits(String text, double size, double room, int most) {
    List<String> lines = wrap(text, size, room, most);
    return String.join(" ", lines).equals(text.strip().replaceAll("\\s+", " "));
  }

  private static String head(String text, double size, double room) {
    if (width(text, size, false) <= room) {
      return text;
    }
    int fits = fits(text, size, room);
    int blank = text.lastIndexOf(' ', fits);
    return blank > 0 ? text.substring(0, blank) : text.substring(0, Math.max(1, fits));
  }

  private static String cut(String text, double size, double room) {
    if (width(text, size, false) <= room) {
      return text;
    }
    int fits = fits(text, size, room - width(CUT, size, false));
    return fits == 0 ? "" : text.substring(0, fits).strip() + CUT;
  }

  /** How many chars of the text fit; never half of a surrogate pair. */
  private static int fits(String text, double size, double room) {
    int end = 0;
    while (end < text.length()) {
      int next = text.offsetByCodePoints(end, 1);
      if (width(text.substring(0, next), size, false) > room) {
        return end;
      }
      end = next;
    }
    return end;
  }
}
