package org.rigleaf.drawings;

import java.awt.geom.Line2D;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Boundary labeling with straight leaders (type s) and labels of one size on two opposite sides,
 * after Bekos, Kaufmann, Symvonis and Wolff, 'Boundary labeling: models and efficient algorithms
 * for rectangular maps', Computational Geometry 36, 2007. Ports are sorted by distance back and
 * stand as near to their dots as the rows allow (least squares by pooling neighbors). Two leaders
 * that cross then exchange their ports: by the triangle inequality this shortens the sum of
 * lengths, so the exchange comes to an end, and at the end none cross. Further exchanges keep
 * leaders off other dots.
 */
final class Leaders {
  private static final double CLEAR = 7;
  private static final double PRICE = 25;
  private static final double TOUCHED = 4.6;
  private static final double PRICE_TOUCHED = 200;
  private static final double[] STEPS = {-6, -3, -1.5, 1.5, 3, 6};
  private static final int ROUNDS = 4;

  /** A column of labels: x where its leaders end, the span of its rows. */
  record Lane(double x, double top, double bottom) {}

  /** Where a leader ends: on the street side or not, at this height, in which row of its side. */
  record Port(boolean street, double x, double y, int row) {}

  private final List<Site> sites;
  private final Port[] ports;

  private Leaders(List<Site> sites) {
    this.sites = sites;
    this.ports = new Port[sites.size()];
  }

  /**
   * How many labels go to the street side: half of them, but gear on a wall keeps to its side as
   * long as a column can hold it.
   */
  static int streetCount(List<Integer> homes, int capacity) {
    int street = (int) homes.stream().filter(h -> h < 0).count();
    int curb = (int) homes.stream().filter(h -> h > 0).count();
    int wanted = Math.min(Math.max(homes.size() / 2, street), homes.size() - curb);
    return Math.max(Math.min(wanted, capacity), homes.size() - capacity);
  }

  /**
   * A port for every site, in the order of the sites.
   *
   * @param street how many go to the street side
   * @param row the least distance of two ports
   * @param needs how tall each label would like to be; given where it lets no leaders cross
   */
  static List<Port> match(
      List<Site> sites, int street, Lane left, Lane right, double row, double[] needs) {
    Leaders leaders = new Leaders(sites);
    List<Integer> order =
        IntStream.range(0, sites.size())
            .boxed()
            .sorted(
                Comparator.<Integer>comparingInt(i -> sites.get(i).home())
                    .thenComparingDouble(i -> sites.get(i).x())
                    .thenComparingDouble(i -> sites.get(i).y()))
            .toList();
    leaders.fill(order.subList(0, street), true, left, row);
    leaders.fill(order.subList(street, order.size()), false, right, row);
    leaders.untangle();
    leaders.improve((i, j) -> true);
    leaders.relax(left, needs);
    leaders.relax(right, needs);
    for (int round = 0; round < ROUNDS; round++) {
      leaders.improve((i, j) -> needs[i] == needs[j]);
      leaders.nudge(left, needs);
      leaders.nudge(right, needs);
    }
    return List.of(leaders.ports);
  }

  private void fill(List<Integer> side, boolean street, Lane lane, double row) {
    List<Integer> down =
        side.stream().sorted(Comparator.comparingDouble(i -> sites.get(i).y())).toList();
    double[] wanted = down.stream().mapToDouble(i -> sites.get(i).y()).toArray();
    double[] tall = new double[wanted.length];
    Arrays.fill(tall, row);
    double[] rows = Rows.place(wanted, lane, tall);
    for (int i = 0; i < rows.length; i++) {
      ports[down.get(i)] = new Port(street, lane.x(), rows[i], i);
    }
  }

  /** Shifts the rows of one column, order kept, so that tall labels stand clear of each other. */
  private void relax(Lane lane, double[] needs) {
    int[] down = column(lane);
    double[] was = IntStream.of(down).mapToDouble(i -> ports[i].y()).toArray();
    double[] gaps = IntStream.of(down).mapToDouble(i -> needs[i]).toArray();
    double[] wanted = IntStream.of(down).mapToDouble(i -> sites.get(i).y()).toArray();
    if (DoubleStream.of(gaps).sum() > lane.bottom() - lane.top()) {
      return;
    }
    double[] to = Rows.place(wanted, lane, gaps);
    for (double share = 1; share >= 0; share -= 0.25) {
      for (int k = 0; k < down.length; k++) {
        Port p = ports[down[k]];
        double y = was[k] + share * (to[k] - was[k]);
        ports[down[k]] = new Port(p.street(), p.x(), y, p.row());
      }
      if (IntStream.of(down).noneMatch(this::crossesAny)) {
        return;
      }
    }
  }

  /** Sites of one column from front to rear. */
  private int[] column(Lane lane) {
    return IntStream.range(0, ports.length)
        .filter(i -> ports[i].x() == lane.x())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> ports[i].y()))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** Shifts runs of neighbors a little where there is slack and the leaders get clearer of dots. */
  private void nudge(Lane lane, double[] needs) {
    int[] down = column(lane);
    for (int from = 0; from < down.length; from++) {
      for (int to = from; to < down.length; to++) {
        int[] run = Arrays.copyOfRange(down, from, to + 1);
        double up = room(down, from - 1, from, lane, needs);
        double low = room(down, to, to + 1, lane, needs);
        for (double by : STEPS) {
          if (by < 0 ? -by <= up : by <= low) {
            double done = shiftIfClearer(run, by);
            up += done;
            low -= done;
          }
        }
      }
    }
  }

  /** Slack between two neighbors of a column, or between the last one and the end of the lane. */
  private double room(int[] down, int upper, int lower, Lane lane, double[] needs) {
    double from = upper < 0 ? lane.top() : ports[down[upper]].y() + needs[down[upper]] / 2;
    double to =
        lower == down.length ? lane.bottom() : ports[down[lower]].y() - needs[down[lower]] / 2;
    return to - from;
  }

  private double shiftIfClearer(int[] run, double by) {
    double before = cost(run);
    shift(run, by);
    if (IntStream.of(run).noneMatch(this::crossesAny) && cost(run) < before - 1e-6) {
      return by;
    }
    shift(run, -by);
    return 0;
  }

  private void shift(int[] run, double by) {
    for (int i : run) {
      Port p = ports[i];
      ports[i] = new Port(p.street(), p.x(), p.y() + by, p.row());
    }
  }

  private double cost(int[] run) {
    return IntStream.of(run).mapToDouble(this::cost).sum();
  }

  private void untangle() {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < ports.length; i++) {
        for (int j = i + 1; j < ports.length; j++) {
          changed |= cross(i, j) && swapIfShorter(i, j);
        }
      }
    }
  }

  private boolean swapIfShorter(int i, int j) {
    double before = length(i) + length(j);
    swap(i, j);
    if (length(i) + length(j) < before - 1e-9) {
      return true;
    }
    swap(i, j);
    return false;
  }

  private void improve(BiPredicate<Integer, Integer> alike) {
    boolean changed = true;
    for (int pass = 0; changed && pass < 12; pass++) {
      changed = false;
      for (int i = 0; i < ports.length; i++) {
        for (int j = i + 1; j < ports.length; j++) {
          changed |= alike.test(i, j) && mayTrade(i, j) && swapIfClearer(i, j);
        }
      }
    }
  }

  private boolean mayTrade(int i, int j) {
    boolean bothFree = sites.get(i).home() == 0 && sites.get(j).home() == 0;
    return ports[i].street() == ports[j].street() || bothFree;
  }

  private boolean swapIfClearer(int i, int j) {
    double before = cost(i) + cost(j);
    swap(i, j);
    if (!crossesAny(i) && !crossesAny(j) && cost(i) + cost(j) < before - 1e-6) {
      return true;
    }
    swap(i, j);
    return false;
  }

  private void swap(int i, int j) {
    Port kept = ports[i];
    ports[i] = ports[j];
    ports[j] = kept;
  }

  private double length(int i) {
    return Math.hypot(ports[i].x() - sites.get(i).x(), ports[i].y() - sites.get(i).y());
  }

  /** Length, and a price for each other dot that the leader passes closely. */
  private double cost(int i) {
    double cost = length(i);
    for (int j = 0; j < ports.length; j++) {
      if (j != i) {
        Site s = sites.get(j);
        double away = line(i).ptSegDist(s.x(), s.y());
        cost += Math.max(0, CLEAR - away) * PRICE;
        cost += Math.max(0, TOUCHED - away) * PRICE_TOUCHED;
      }
    }
    return cost;
  }

  private boolean crossesAny(int i) {
    return IntStream.range(0, ports.length).anyMatch(j -> j != i && cross(i, j));
  }

  private boolean cross(int i, int j) {
    return line(i).intersectsLine(line(j));
  }

  private Line2D line(int i) {
    Site s = sites.get(i);
    return new Line2D.Double(s.x(), s.y(), ports[i].x(), ports[i].y());
  }
}
