package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.rigleaf.drawings.Net.Pin;
import org.rigleaf.drawings.Net.Side;
import org.rigleaf.drawings.Schematic.Box;
import org.rigleaf.drawings.Schematic.Link;

/**
 * Which way every link takes, before anything has a size: between columns, past the boxes of a
 * column through one gap a net, or straight down to the next box of its column.
 */
final class Nets {
  private static final double BETWEEN = 0.3; // price of a gap that is no empty place
  private static final double CROWD = 0.4; // of one that another net takes too
  private static final double AT_STRAIGHT = 1; // of one that a straight link crosses

  final List<Box> boxes; // ranks and lanes without holes
  final int ranks;
  final int lanes;
  final List<Net> all = new ArrayList<>();
  final List<Link> straight = new ArrayList<>(); // down or up to the neighbor in the column
  private final Map<String, Box> byId = new HashMap<>();

  Nets(Schematic schematic) {
    List<Integer> usedRanks = used(schematic.boxes().stream().map(Box::rank).toList());
    List<Integer> usedLanes = used(schematic.boxes().stream().map(Box::lane).toList());
    ranks = usedRanks.size();
    lanes = usedLanes.size();
    boxes =
        schematic.boxes().stream()
            .map(b -> b.at(usedRanks.indexOf(b.rank()), usedLanes.indexOf(b.lane())))
            .toList();
    boxes.forEach(b -> byId.put(b.id(), b));
    schematic.links().stream().filter(this::neighbors).forEach(this::addStraight);
    Map<List<Object>, Net> nets = new LinkedHashMap<>();
    schematic.links().stream()
        .filter(l -> !straight.contains(l))
        .forEach(l -> nets.computeIfAbsent(key(l), k -> new Net(box(l.from()), l)).links.add(l));
    all.addAll(nets.values());
    all.forEach(this::route);
  }

  private static List<Integer> used(List<Integer> numbers) {
    return List.copyOf(new TreeSet<>(numbers));
  }

  Box box(String id) {
    return byId.get(id);
  }

  private List<Object> key(Link link) {
    boolean back = box(link.to()).rank() < box(link.from()).rank();
    return List.of(link.from(), link.line(), link.shut(), back);
  }

  List<Box> column(int rank) {
    return boxes.stream()
        .filter(b -> b.rank() == rank)
        .sorted(java.util.Comparator.comparingInt(Box::lane))
        .toList();
  }

  private boolean neighbors(Link link) {
    Box from = box(link.from());
    List<Box> column = column(from.rank());
    int to = column.indexOf(box(link.to()));
    return to >= 0 && Math.abs(column.indexOf(from) - to) == 1;
  }

  private void addStraight(Link link) {
    if (straight.stream().noneMatch(l -> pair(l).containsAll(pair(link)))) {
      straight.add(link);
    }
  }

  private static List<String> pair(Link link) {
    return List.of(link.from(), link.to());
  }

  // ---- the way of one net

  private void route(Net net) {
    int from = net.from.rank();
    boolean back = net.links.stream().anyMatch(l -> box(l.to()).rank() < from);
    net.pins.add(end(net, net.from, back ? Side.LEFT : Side.RIGHT, ""));
    int step = back ? -1 : 1;
    int last =
        net.links.stream()
            .mapToInt(l -> box(l.to()).rank())
            .reduce(from, back ? Math::min : Math::max);
    double lane = net.from.lane();
    for (int rank = from + step; rank != last && last != from; rank += step) {
      lane = way(rank, lane, beyond(net, rank, step));
      net.pins.add(new Pin(net, net.from, rank, Side.THROUGH, lane, ""));
    }
    for (Link link : net.links) {
      Box to = box(link.to());
      Side side = to.rank() > from ? Side.LEFT : Side.RIGHT;
      net.pins.add(end(net, to, side, link.words()));
    }
  }

  private static Pin end(Net net, Box box, Side side, String words) {
    return new Pin(net, box, box.rank(), side, box.lane(), words);
  }

  /** The middle lane of what the net still has to reach. */
  private double beyond(Net net, int rank, int step) {
    int[] far =
        net.links.stream()
            .map(l -> box(l.to()))
            .filter(b -> step * (b.rank() - rank) > 0)
            .mapToInt(Box::lane)
            .sorted()
            .toArray();
    return far[far.length / 2];
  }

  /** The best place to pass a column: an empty one or a gap, near the way from here to there. */
  private double way(int rank, double here, double there) {
    return IntStream.rangeClosed(-1, 2 * lanes - 1)
        .mapToDouble(i -> i / 2.0)
        .filter(p -> free(rank, p))
        .boxed()
        .min(
            java.util.Comparator.comparingDouble(
                p -> Math.abs(p - here) + Math.abs(p - there) + price(rank, p)))
        .orElseThrow();
  }

  private boolean free(int rank, double lane) {
    boolean between = lane != Math.rint(lane);
    return between
        || boxes.stream().noneMatch(b -> b.rank() == rank && b.lane() == lane)
            && passing(rank, lane).findAny().isEmpty();
  }

  private DoubleStream passing(int rank, double lane) {
    return all.stream()
        .flatMap(n -> n.pins.stream())
        .filter(p -> p.passes() && p.rank == rank && p.lane == lane)
        .mapToDouble(p -> p.lane);
  }

  private double price(int rank, double lane) {
    double price = lane == Math.rint(lane) ? 0 : BETWEEN + CROWD * passing(rank, lane).count();
    return price + (straightAt(rank, lane) ? AT_STRAIGHT : 0);
  }

  /** True if a straight link runs down this column here. */
  boolean straightAt(int rank, double lane) {
    return straight.stream()
        .anyMatch(
            l -> {
              Box a = box(l.from());
              Box b = box(l.to());
              int upper = Math.min(a.lane(), b.lane());
              int lower = Math.max(a.lane(), b.lane());
              return a.rank() == rank && upper < lane && lane < lower;
            });
  }
}
