package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rigleaf.drawings.Net.Pin;
import org.rigleaf.drawings.Net.Side;
import org.rigleaf.drawings.Schematic.Box;

/**
 * How high everything stands. Boxes of one lane start at one height; a box that is higher than its
 * lane pushes down only what is under it. Lines that pass a column push its boxes apart.
 */
final class Heights {
  private static final double TOP = 6;
  private static final double BETWEEN_BOXES = 9;
  private static final double LINE_ROOM = 7;
  private static final double STRAIGHT_ROOM = 17;
  private static final double LEAST_STEP = 10;
  private static final double PORTS = 15; // between two at one side of a box: a line of words
  private static final double PORT_EDGE = 6; // corners of a box are cut
  private static final double APART = 4.5; // lines that come from two sides
  private static final double LINES_APART = 6; // lines side by side
  private static final double STEP = 1.5;
  private static final int MOST_SLACK = 12;

  private final Nets nets;
  private final Map<String, BoxText> texts;
  private final double slack;
  private final Map<String, Double> tops = new HashMap<>();
  private double bottom;
  private boolean clean = true;

  private Heights(Nets nets, Map<String, BoxText> texts, double slack) {
    this.nets = nets;
    this.texts = texts;
    this.slack = slack;
  }

  /** Sets the height of every box and every pin. */
  static Heights of(Nets nets, Map<String, BoxText> texts) {
    Heights heights = new Heights(nets, texts, 0);
    for (int slack = 0; slack < MOST_SLACK; slack++) {
      heights = new Heights(nets, texts, slack);
      heights.stack();
      heights.spread();
      heights.ports();
      heights.settle();
      if (heights.clean) {
        return heights;
      }
    }
    return heights;
  }

  /** True if two lines run into each other: the schematic is cut in parts. */
  boolean crowded() {
    return !clean;
  }

  double top(Box box) {
    return tops.get(box.id());
  }

  double bottom(Box box) {
    return top(box) + height(box);
  }

  /** Where the lowest box or line ends. */
  double bottom() {
    return bottom;
  }

  double height(Box box) {
    long left = pins(box, Side.LEFT).size();
    long right = pins(box, Side.RIGHT).size();
    double ports = BoxText.PORT + PORTS * (Math.max(left, right) - 1) + BoxText.PORT;
    return Math.max(texts.get(box.id()).height(), ports) + 4 * slack;
  }

  private List<Pin> pins(Box box, Side side) {
    return nets.all.stream()
        .flatMap(n -> n.pins.stream())
        .filter(p -> p.side == side && p.box.equals(box))
        .sorted(Comparator.comparingDouble(Heights::elsewhere))
        .toList();
  }

  /** The mean lane of the rest of the net. */
  private static double elsewhere(Pin pin) {
    return pin.net.pins.stream().filter(p -> p != pin).mapToDouble(p -> p.lane).average().orElse(0);
  }

  private List<Pin> passing(int rank, double lane) {
    return nets.all.stream()
        .flatMap(n -> n.pins.stream())
        .filter(p -> p.passes() && p.rank == rank && p.lane == lane)
        .sorted(Comparator.comparingDouble(Heights::elsewhere))
        .toList();
  }

  // ---- from the top down

  private void stack() {
    double[] low = new double[nets.ranks];
    boolean[] box = new boolean[nets.ranks]; // the last thing in this column is a box
    java.util.Arrays.fill(low, TOP - BETWEEN_BOXES);
    java.util.Arrays.fill(box, true);
    double top = Double.NEGATIVE_INFINITY;
    for (int lane = 0; lane <= nets.lanes; lane++) {
      for (int rank = 0; rank < nets.ranks; rank++) {
        for (Pin pin : passing(rank, lane - 0.5)) {
          boolean first = box[rank] && nets.straightAt(rank, lane - 0.5);
          low[rank] += (first ? STRAIGHT_ROOM : LINE_ROOM) + slack;
          pin.y = low[rank];
          box[rank] = false;
        }
      }
      top += LEAST_STEP;
      for (int rank = 0; rank < nets.ranks; rank++) {
        top = Math.max(top, need(rank, lane, low[rank], box[rank]));
      }
      for (int rank = 0; rank < nets.ranks; rank++) {
        for (Pin pin : passing(rank, lane)) {
          pin.y = top + BoxText.PORT;
          low[rank] = pin.y;
          box[rank] = false;
        }
        for (Box b : at(rank, lane)) {
          tops.put(b.id(), top);
          low[rank] = top + height(b);
          box[rank] = true;
        }
      }
    }
    bottom = java.util.Arrays.stream(low).max().orElse(0);
  }

  private List<Box> at(int rank, int lane) {
    return nets.boxes.stream().filter(b -> b.rank() == rank && b.lane() == lane).toList();
  }

  private double need(int rank, int lane, double low, boolean afterBox) {
    if (!passing(rank, lane).isEmpty()) {
      return low + LINE_ROOM - BoxText.PORT;
    }
    if (at(rank, lane).isEmpty()) {
      return Double.NEGATIVE_INFINITY;
    }
    boolean straight = nets.straightAt(rank, lane - 0.5);
    return low + (straight ? STRAIGHT_ROOM : afterBox ? BETWEEN_BOXES : LINE_ROOM);
  }

  /** Lines in one gap share out the room that it has in the end. */
  private void spread() {
    for (int rank = 0; rank < nets.ranks; rank++) {
      for (int lane = 0; lane <= nets.lanes; lane++) {
        List<Pin> gap = passing(rank, lane - 0.5);
        if (!gap.isEmpty()) {
          double above = nets.straightAt(rank, lane - 0.5) ? 9 : 0;
          double from = edge(rank, lane - 0.5, true) + above;
          double to = edge(rank, lane - 0.5, false);
          double step = Math.min((to - from) / (gap.size() + 1), 2 * LINE_ROOM);
          for (int i = 0; i < gap.size(); i++) {
            gap.get(i).y = from + step * (i + 1);
          }
        }
      }
    }
  }

  /** The nearest box or line above or under this place of a column. */
  private double edge(int rank, double lane, boolean above) {
    double most = above ? 0 : bottom + 2 * LINE_ROOM;
    double edge = most;
    for (Box b : nets.column(rank)) {
      if (above == b.lane() < lane) {
        edge = above ? Math.max(edge, bottom(b)) : Math.min(edge, top(b));
      }
    }
    for (int i = 0; i < 2 * nets.lanes + 2; i++) {
      double at = i / 2.0 - 0.5;
      if (at != lane && above == at < lane) {
        for (Pin p : passing(rank, at)) {
          edge = above ? Math.max(edge, p.y) : Math.min(edge, p.y);
        }
      }
    }
    return edge;
  }

  private void ports() {
    for (Box box : nets.boxes) {
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        List<Pin> pins = pins(box, side);
        for (int i = 0; i < pins.size(); i++) {
          pins.get(i).y = top(box) + BoxText.PORT + PORTS * i;
        }
      }
    }
  }

  // ---- no two nets meet a channel at one height

  private void settle() {
    List<Pin> order =
        nets.all.stream()
            .flatMap(n -> n.pins.stream())
            .sorted(Comparator.comparing(p -> !level(p)))
            .toList();
    List<Pin> settled = new ArrayList<>();
    for (Pin pin : order) {
      clean &= settle(pin, settled);
      settled.add(pin);
    }
  }

  private static boolean level(Pin pin) {
    return pin.net.pins.stream().anyMatch(p -> p != pin && p.y == pin.y && p.meets(pin));
  }

  private boolean settle(Pin pin, List<Pin> settled) {
    double from = pin.passes() ? edge(pin.rank, pin.lane, true) + 4 : top(pin.box) + PORT_EDGE;
    double to = pin.passes() ? edge(pin.rank, pin.lane, false) - 4 : bottom(pin.box) - PORT_EDGE;
    double wanted = pin.y;
    for (int i = 0; i < 60; i++) {
      double y = wanted + (i % 2 == 0 ? -1 : 1) * STEP * ((i + 1) / 2);
      if ((y >= from && y <= to || i == 0) && clear(pin, y, settled)) {
        pin.y = y;
        return true;
      }
    }
    return false;
  }

  private static boolean clear(Pin pin, double y, List<Pin> settled) {
    return settled.stream()
        .filter(p -> p.meets(pin))
        .allMatch(p -> Math.abs(p.y - y) >= least(p, pin) || p.net == pin.net && p.y == y);
  }

  private static double least(Pin a, Pin b) {
    if (!a.beside(b)) {
      return a.net == b.net ? 0 : APART;
    }
    return a.box == b.box && !a.passes() && !b.passes() ? PORTS - 2 : LINES_APART;
  }
}
