package org.rigleaf.drawings;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.rigleaf.drawings.Net.Pin;
import org.rigleaf.drawings.Net.Side;
import org.rigleaf.drawings.Schematic.Box;

/**
 * How wide columns and channels are. A channel holds, from left to right, what is written at its
 * left edge, its tracks, what is written at its right edge.
 */
final class Ranks {
  static final double PITCH = 6;
  static final double ARROW = 5;
  static final double BAR = 10; // from the box to the bar of a shut link
  private static final double EDGE = 1;
  private static final double APART = 12; // two boxes side by side
  private static final double LEAST = 66; // a code and two letters
  private static final double STUB = 5;
  private static final double WORDS_EDGE = 4;

  final double[] left; // of each column
  final double[] width;
  private boolean cramped;
  private final double[] tracksAt; // x of the first track of each channel

  private Ranks(int ranks) {
    left = new double[ranks];
    width = new double[ranks];
    tracksAt = new double[ranks + 1];
  }

  /**
   * Shares out the page.
   *
   * @param tracks how many each channel has
   * @param letters true if every net shows its letter
   */
  static Ranks of(Nets nets, int[] tracks, boolean letters) {
    Ranks columns = new Ranks(nets.ranks);
    double[] before = new double[nets.ranks + 1];
    double[] after = new double[nets.ranks + 1];
    for (int c = 0; c <= nets.ranks; c++) {
      int channel = c;
      before[c] = zone(nets, p -> p.leftOf(channel), letters);
      after[c] = zone(nets, p -> p.rightOf(channel), letters);
      boolean between = c > 0 && c < nets.ranks;
      after[c] += between ? Math.max(0, APART - before[c] - after[c] - room(tracks[c])) : 0;
    }
    double channels =
        Arrays.stream(before).sum()
            + Arrays.stream(after).sum()
            + IntStream.range(0, tracks.length).mapToDouble(c -> room(tracks[c])).sum();
    double free = Sheet.WIDE - 2 * EDGE - channels;
    columns.share(nets, free);
    double x = EDGE + (free - Arrays.stream(columns.width).sum()) / 2;
    for (int c = 0; c <= nets.ranks; c++) {
      columns.tracksAt[c] = x + before[c] + PITCH / 2;
      x += before[c] + room(tracks[c]) + after[c];
      if (c < nets.ranks) {
        columns.left[c] = x;
        x += columns.width[c];
      }
    }
    return columns;
  }

  private static double room(int tracks) {
    return tracks * PITCH;
  }

  private static double zone(Nets nets, java.util.function.Predicate<Pin> edge, boolean letters) {
    return nets.all.stream()
        .flatMap(n -> n.pins.stream())
        .filter(edge)
        .mapToDouble(p -> zone(p, letters))
        .max()
        .orElse(0);
  }

  private static double zone(Pin pin, boolean letters) {
    if (pin.passes()) {
      return STUB;
    }
    if (pin == pin.net.stem()) {
      return STUB + (letters ? BoxText.SIZE * 0.75 + 2 : 0);
    }
    double words = TextFit.width(pin.words, BoxText.SIZE, false);
    double sign = pin.net.first.shut() ? BAR : ARROW;
    return Math.max(sign, words == 0 ? 0 : words + WORDS_EDGE) + STUB;
  }

  /** Whole words first, then more to whoever has least, as long as it helps. */
  private void share(Nets nets, double free) {
    double[] most = new double[width.length];
    for (Box box : nets.boxes) {
      int rank = box.rank();
      width[rank] = Math.max(width[rank], BoxText.least(box));
      most[rank] = Math.max(most[rank], BoxText.most(box));
    }
    for (int r = 0; r < width.length; r++) {
      double fair = Math.max(LEAST, free / width.length);
      cramped |= width[r] > fair;
      width[r] = Math.min(width[r], fair);
    }
    double spare = free - Arrays.stream(width).sum();
    while (spare >= 1) {
      int least = -1;
      for (int r = 0; r < width.length; r++) {
        boolean wants = width[r] < most[r];
        least = wants && (least < 0 || width[r] < width[least]) ? r : least;
      }
      if (least < 0) {
        return;
      }
      width[least]++;
      spare--;
    }
  }

  /** True if a word had to be broken or the page is too narrow: the schematic is cut in parts. */
  boolean cramped() {
    return cramped;
  }

  double right(int rank) {
    return left[rank] + width[rank];
  }

  double middle(int rank) {
    return left[rank] + width[rank] / 2;
  }

  double track(int channel, int track) {
    return tracksAt[channel] + track * PITCH;
  }

  /** Where a line that meets a channel leaves it. */
  double edge(Pin pin, int channel) {
    return pin.leftOf(channel) ? right(pin.rank) : left[pin.rank];
  }

  /** The side of a box where a pin sits. */
  double port(Pin pin) {
    return pin.side == Side.LEFT ? left[pin.rank] : right(pin.rank);
  }
}
