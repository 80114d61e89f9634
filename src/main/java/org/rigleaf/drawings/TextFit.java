package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;

/**
 * Measures and wraps the words of a drawing. Advance widths are those of Roboto, the printed face,
 * in thousandths of the type size; signs beyond ASCII are taken as wide.
 */
final class TextFit {
  private static final int[] REGULAR =
      widths(
          "248 257 320 616 562 732 622 174 342 348 431 567 196 276 263 412 562 562 562 562 562 562"
              + " 562 562 562 562 242 211 508 549 522 472 898 652 623 651 656 568 553 681 713 272"
              + " 552 627 538 873 713 688 631 688 616 593 597 648 636 887 627 601 599 265 410 265"
              + " 418 451 309 544 561 523 564 530 347 561 551 243 239 507 243 876 552 570 561 568"
              + " 338 516 327 551 484 751 496 473 496 338 244 338 680");
  private static final int[] BOLD =
      widths(
          "249 272 321 596 574 738 656 162 351 353 453 546 244 388 291 374 574 574 574 574 574 574"
              + " 574 574 574 574 282 262 509 572 517 498 895 673 638 654 650 563 548 681 707 292"
              + " 559 635 542 876 706 690 645 690 638 615 619 658 654 875 635 618 606 278 422 278"
              + " 437 446 331 536 563 521 563 541 358 571 560 265 260 534 265 866 560 565 563 565"
              + " 365 514 338 560 505 735 509 502 509 330 253 330 648");
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
