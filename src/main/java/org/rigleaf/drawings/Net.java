package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.rigleaf.drawings.Schematic.Box;
import org.rigleaf.drawings.Schematic.Link;

/** Links that leave one box on one side and carry the same: a tree with one stem. */
final class Net {
  /** Where a line meets a column: at a side of a box, or on its way between two boxes. */
  enum Side {
    LEFT,
    RIGHT,
    THROUGH
  }

  /** One meeting of the net with a column. */
  static final class Pin {
    final Net net;
    final Box box; // that of the stem where the line only passes
    final int rank;
    final Side side;
    final double lane; // halves lie between two lanes
    final String words;
    double y;

    Pin(Net net, Box box, int rank, Side side, double lane, String words) {
      this.net = net;
      this.box = box;
      this.rank = rank;
      this.side = side;
      this.lane = lane;
      this.words = words;
    }

    /** True if it lies at the left edge of this channel; channel 0 is left of rank 0. */
    boolean leftOf(int channel) {
      return side != Side.LEFT && rank + 1 == channel;
    }

    boolean rightOf(int channel) {
      return side != Side.RIGHT && rank == channel;
    }

    boolean in(int channel) {
      return leftOf(channel) || rightOf(channel);
    }

    /** True if both meet one channel. */
    boolean meets(Pin other) {
      return Stream.of(rank, rank + 1).anyMatch(c -> in(c) && other.in(c));
    }

    /** True if both meet it at the same edge. */
    boolean beside(Pin other) {
      return rank == other.rank
          && (side == other.side || side == Side.THROUGH || other.side == Side.THROUGH);
    }

    boolean passes() {
      return side == Side.THROUGH;
    }
  }

  final Box from;
  final Link first;
  final List<Link> links = new ArrayList<>();
  final List<Pin> pins = new ArrayList<>(); // the stem first

  Net(Box from, Link first) {
    this.from = from;
    this.first = first;
  }

  Pin stem() {
    return pins.get(0);
  }

  List<Pin> in(int channel) {
    return pins.stream().filter(p -> p.in(channel)).toList();
  }

  /** True if it needs a piece of a track in this channel, for its ends differ in height. */
  boolean turns(int channel) {
    return in(channel).stream().mapToDouble(p -> p.y).distinct().count() > 1;
  }

  double top(int channel) {
    return in(channel).stream().mapToDouble(p -> p.y).min().orElseThrow();
  }

  double bottom(int channel) {
    return in(channel).stream().mapToDouble(p -> p.y).max().orElseThrow();
  }
}
