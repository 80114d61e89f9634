package org.rigleaf.figures;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds which loads a supply carries at once. Powers are held in whole sixteenths of a watt, so
 * that sums are exact (1.25 × 1.25 × whole watts is whole sixteenths) and 'exactly at the limit
 * fits' is no matter of rounding. A set of choices is an int, one bit a choice.
 */
final class LoadSearch {
  private static final double STEPS_PER_WATT = 16;

  /** A megawatt, more than any rig has; what is above fits nowhere, whatever a profile says. */
  private static final long MOST_STEPS = 16_000_000;

  /** Far below a step: lets 119.99999 V times amperes stand for what it means. */
  private static final double SLACK_STEPS = 1e-3;

  /**
   * One load as the search sees it.
   *
   * @param watts what it counts, 125 % if continuous
   * @param leg 0 for the first, 1 for the second, -1 if it may be dealt to either
   * @param breakers branch breakers it hangs on
   */
  record Draw(double watts, int leg, List<String> breakers) {
    long steps() {
      return Math.round(Math.min(watts * STEPS_PER_WATT, MOST_STEPS + 1.0));
    }
  }

  /**
   * What a supply gives.
   *
   * @param legs one or two
   * @param legWatts limit of each leg
   * @param allWatts limit of the legs together
   * @param breakerWatts limits of the branch breakers
   */
  record Limits(int legs, double legWatts, double allWatts, Map<String, Double> breakerWatts) {}

  private final List<Draw> always;
  private final List<Draw> choices;
  private final Limits limits;
  private final long grain; // steps of which every draw is a whole multiple
  private List<Integer> largest; // found when first asked for

  LoadSearch(List<Draw> always, List<Draw> choices, Limits limits) {
    if (choices.size() > 20) {
      throw new IllegalArgumentException("too many choices to try every set of them");
    }
    this.always = List.copyOf(always);
    this.choices = List.copyOf(choices);
    this.limits = limits;
    this.grain =
        Stream.concat(always.stream(), choices.stream())
            .map(d -> BigInteger.valueOf(d.steps()))
            .reduce(BigInteger.ZERO, BigInteger::gcd)
            .max(BigInteger.ONE)
            .longValue();
  }

  /** True if these choices run at once beside what is always on. */
  boolean fits(int set) {
    List<Draw> on = on(set);
    return sum(on) <= steps(limits.allWatts()) && broken(set).isEmpty() && legsHold(on);
  }

  private List<Draw> on(int set) {
    List<Draw> on = new ArrayList<>(always);
    for (int i = 0; i < choices.size(); i++) {
      if ((set & 1 << i) != 0) {
        on.add(choices.get(i));
      }
    }
    return on;
  }

  /** The branch breaker that these choices trip, if one. */
  Optional<String> broken(int set) {
    List<Draw> on = on(set);
    return limits.breakerWatts().keySet().stream()
        .filter(b -> sum(on, d -> d.breakers().contains(b)) > steps(limits.breakerWatts().get(b)))
        .findFirst();
  }

  private boolean legsHold(List<Draw> on) {
    if (limits.legs() == 1 || sum(on) <= steps(limits.legWatts())) {
      return sum(on) <= steps(limits.legWatts());
    }
    long first = sum(on, d -> d.leg() == 0);
    long second = sum(on, d -> d.leg() == 1);
    List<Draw> free = on.stream().filter(d -> d.leg() < 0).toList();
    long most = steps(limits.legWatts()) - first;
    long least = Math.max(0, sum(free) - (steps(limits.legWatts()) - second));
    return most >= least && sum(free) <= MOST_STEPS && dealt(free, least, most);
  }

  /** Whether some of the loads sum to between two limits: all sums at once, a bit a grain. */
  private boolean dealt(List<Draw> free, long least, long most) {
    BigInteger sums = BigInteger.ONE;
    for (Draw d : free) {
      sums = sums.or(sums.shiftLeft(Math.toIntExact(d.steps() / grain)));
    }
    int from = Math.toIntExact((least + grain - 1) / grain);
    int above = sums.shiftRight(from).getLowestSetBit();
    return above >= 0 && from + above <= most / grain;
  }

  /** The sets that fit and to which no other choice can be added; none if nothing fits. */
  List<Integer> largest() {
    if (largest == null) {
      largest = findLargest();
    }
    return largest;
  }

  private List<Integer> findLargest() {
    boolean[] fits = new boolean[1 << choices.size()];
    for (int set = 0; set < fits.length; set++) {
      int fewer = set & set - 1; // without its lowest choice; if that is too much, so is this
      fits[set] = (set == 0 || fits[fewer]) && fits(set);
    }
    List<Integer> found = new ArrayList<>();
    for (int set = 1; set < fits.length; set++) {
      if (fits[set] && !canGrow(set, fits)) {
        found.add(set);
      }
    }
    return found;
  }

  private boolean canGrow(int set, boolean[] fits) {
    for (int i = 0; i < choices.size(); i++) {
      if ((set & 1 << i) == 0 && fits[set | 1 << i]) {
        return true;
      }
    }
    return false;
  }

  /** The choices that never run, one bit each. */
  List<Integer> never() {
    return IntStream.range(0, choices.size())
        .mapToObj(i -> 1 << i)
        .filter(one -> !fits(one))
        .toList();
  }

  /** The pairs of choices of which each runs alone, but not both. */
  List<Integer> apart() {
    List<Integer> pairs = new ArrayList<>();
    for (int i = 0; i < choices.size(); i++) {
      for (int j = i + 1; j < choices.size(); j++) {
        if (fits(1 << i) && fits(1 << j) && !fits(1 << i | 1 << j)) {
          pairs.add(1 << i | 1 << j);
        }
      }
    }
    return pairs;
  }

  private static long sum(List<Draw> draws) {
    return sum(draws, d -> true);
  }

  private static long sum(List<Draw> draws, Predicate<Draw> which) {
    long sum = 0;
    for (Draw draw : draws) {
      sum += which.test(draw) ? draw.steps() : 0;
    }
    return sum;
  }

  private static long steps(double watts) {
    return (long) Math.floor(watts * STEPS_PER_WATT + SLACK_STEPS);
  }
}
