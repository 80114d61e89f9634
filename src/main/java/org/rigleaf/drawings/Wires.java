package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rigleaf.drawings.Net.Pin;
import org.rigleaf.drawings.Net.Side;

/** The pieces of line of one net, laid end to end where they are level. */
final class Wires {
  /** A level or upright piece. */
  record Piece(double x1, double y1, double x2, double y2) {}

  /** Where three or four pieces of one net meet. */
  record Joint(double x, double y) {}

  final List<Piece> pieces = new ArrayList<>();
  final List<Joint> joints = new ArrayList<>();
  private final List<Piece> level = new ArrayList<>();

  Wires(Net net, List<Channel> channels, Ranks columns) {
    for (Channel channel : channels) {
      if (!net.in(channel.number).isEmpty()) {
        lay(net, channel, columns);
      }
    }
    net.pins.stream()
        .filter(Pin::passes)
        .map(p -> new Piece(columns.left[p.rank], p.y, columns.right(p.rank), p.y))
        .forEach(level::add);
    join();
  }

  private void lay(Net net, Channel channel, Ranks columns) {
    int c = channel.number;
    List<Pin> pins = net.in(c);
    int track = channel.track(net);
    if (track < 0) {
      double[] x = pins.stream().mapToDouble(p -> columns.edge(p, c)).sorted().toArray();
      level.add(new Piece(x[0], pins.get(0).y, x[x.length - 1], pins.get(0).y));
      return;
    }
    double x = columns.track(c, track);
    double top = net.top(c);
    double bottom = net.bottom(c);
    pieces.add(new Piece(x, top, x, bottom));
    for (Pin pin : pins) {
      double edge = columns.edge(pin, c);
      level.add(new Piece(Math.min(edge, x), pin.y, Math.max(edge, x), pin.y));
      boolean across = pins.stream().anyMatch(p -> p != pin && p.y == pin.y);
      if (across || pin.y > top && pin.y < bottom) {
        joints.add(new Joint(x, pin.y));
      }
    }
  }

  private void join() {
    level.sort(Comparator.comparingDouble(Piece::y1).thenComparingDouble(Piece::x1));
    Piece last = null;
    for (Piece p : level) {
      boolean on = last != null && last.y1() == p.y1() && p.x1() - last.x2() < 0.01;
      if (last != null && !on) {
        pieces.add(last);
      }
      last = on ? new Piece(last.x1(), p.y1(), Math.max(last.x2(), p.x2()), p.y1()) : p;
    }
    pieces.add(last);
  }

  /** -1 if a line leaves this pin to the left, 1 if to the right. */
  static int outward(Pin pin) {
    return pin.side == Side.LEFT ? -1 : 1;
  }
}
