package org.rigleaf.drawings;

import java.awt.geom.Line2D;
import java.util.Comparator;
import java.util.List;
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
  static int streetCount(List<Site> sites, int capacity) {
    int street = (int) sites.stream().filter(s -> s.home() < 0).count();
    int curb = (int) sites.stream().filter(s -> s.home() > 0).count();
    int wanted = Math.min(Math.max(sites.size() / 2, street), sites.size() - curb);
    return Math.max(Math.min(wanted, capacity), sites.size() - capacity);
  }

  /** A port for every site, in the order of the sites. */
  static List<Port> match(List<Site> sites, int street, Lane left, Lane right, double row) {
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
    leaders.improve();
    return List.of(leaders.ports);
  }

  private void fill(List<Integer> side, boolean street, Lane lane, double row) {
    List<Integer> down =
        side.stream().sorted(Comparator.comparingDouble(i -> sites.get(i).y())).toList();
    double[] rows = rows(down.stream().mapToDouble(i -> sites.get(i).y()).toArray(), lane, row);
    for (int i = 0; i < rows.length; i++) {
      ports[down.get(i)] = new Port(street, lane.x(), rows[i], i);
    }
  }

  /** Heights at least a row apart, as near to the wanted ones as that allows, all in the lane. */
  static double[] rows(double[] wanted, Lane lane, double row) {
    int n = wanted.length;
    double[] sum = new double[n];
    int[] count = new int[n];
    int blocks = 0;
    for (int i = 0; i < n; i++) {
      sum[blocks] = wanted[i] - i * row;
      count[blocks++] = 1;
      while (blocks > 1
          && sum[blocks - 2] / count[blocks - 2] >= sum[blocks - 1] / count[blocks - 1]) {
        sum[blocks - 2] += sum[blocks - 1];
        count[blocks - 2] += count[--blocks];
      }
    }
    double first = lane.top() + row / 2;
    double last = Math.max(first, lane.bottom() - row / 2 - (n - 1) * row);
    double[] heights = new double[n];
    for (int b = 0, i = 0; b < blocks; b++) {
      double start = Plan.clamp(sum[b] / count[b], first, last);
      for (int j = 0; j < count[b]; j++, i++) {
        heights[i] = start + i * row;
      }
    }
    return heights;
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

  private void improve() {
    boolean changed = true;
    for (int pass = 0; changed && pass < 12; pass++) {
      changed = false;
      for (int i = 0; i < ports.length; i++) {
        for (int j = i + 1; j < ports.length; j++) {
          changed |= mayTrade(i, j) && swapIfClearer(i, j);
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
