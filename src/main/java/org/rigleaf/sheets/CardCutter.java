package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.LinkedList;
import java.util.List;
import org.rigleaf.guidance.Reminder;
import org.rigleaf.guidance.Words;

/**
 * Cuts a task into cards at its pause points, which are the ends of its parts. A card more is
 * better than a broken part, and a broken part than a card with a line alone. Else the fewest cards
 * are taken, evenly filled.
 */
final class CardCutter {
  private static final int MOST = 9; // lines a card
  private static final double CARD = 1;
  private static final double BROKEN = 1.2;
  private static final double ALONE = 1.4; // a line
  private static final double UNEVEN = 0.2; // less than a card

  private final CardFit fit;
  private final double first; // room for lines, in points
  private final double room; // the same on the cards that follow
  private final List<CardTask.Part> parts;
  private final List<Integer> partOf = new ArrayList<>(); // by line
  private final List<CardLine> lines = new ArrayList<>();

  /**
   * A cutter for one task.
   *
   * @param task as it will be, its cards left out
   */
  CardCutter(
      CardSize size,
      CardTask task,
      List<Reminder> reminders,
      List<CardTask.Part> parts,
      Words done) {
    this.fit = new CardFit(size);
    this.room = size.heightPt() - fit.head(task) - fit.foot(task, done);
    this.first = room - fit.reminders(reminders);
    this.parts = parts;
    for (int p = 0; p < parts.size(); p++) {
      for (CardLine line : parts.get(p).lines()) {
        partOf.add(p);
        lines.add(line);
      }
    }
  }

  /** What stands on each card. */
  List<List<CardTask.Part>> cut() {
    int count = lines.size();
    double[] best = new double[count + 1]; // cost of the lines from here to the end
    int[] next = new int[count + 1];
    for (int from = count - 1; from >= 0; from--) {
      best[from] = Double.MAX_VALUE;
      for (int to = from + 1; to <= Math.min(count, from + MOST); to++) {
        double cost = cost(from, to) + best[to];
        if (to == from + 1 || cost < best[from]) {
          best[from] = cost;
          next[from] = to;
        }
      }
    }
    List<List<CardTask.Part>> cards = new LinkedList<>();
    for (int from = 0; from < count; from = next[from]) {
      cards.add(parts(from, next[from]));
    }
    return cards;
  }

  /** A single line that is too tall stands alone; the printer will refuse it. */
  private double cost(int from, int to) {
    double space = from == 0 ? first : room;
    double free = space - tall(from, to);
    if (free < 0 && to > from + 1) {
      return Double.POSITIVE_INFINITY;
    }
    boolean broken = to < lines.size() && partOf.get(to).equals(partOf.get(to - 1));
    double alone = to == from + 1 && lines.size() > 1 ? ALONE : 0;
    return CARD + alone + (broken ? BROKEN : 0) + UNEVEN * Math.pow(Math.max(0, free) / space, 2);
  }

  private double tall(int from, int to) {
    double tall = 0;
    for (int i = from; i < to; i++) {
      boolean opens = i == from || !partOf.get(i).equals(partOf.get(i - 1));
      tall += fit.line(lines.get(i)) + (opens ? fit.part(parts.get(partOf.get(i)).title()) : 0);
    }
    return tall;
  }

  private List<CardTask.Part> parts(int from, int to) {
    List<CardTask.Part> on = new ArrayList<>();
    for (int i = from; i < to; ) {
      int part = partOf.get(i);
      int end = i;
      while (end < to && partOf.get(end) == part) {
        end++;
      }
      on.add(new CardTask.Part(parts.get(part).title(), lines.subList(i, end)));
      i = end;
    }
    return on;
  }
}
