package org.rigleaf.figures;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rigleaf.rig.Answer;
import org.rigleaf.rig.Load;

/**
 * The 120 V loads of one source, laid out for the search: what is always on, what one chooses.
 *
 * @param source plug, generator or inverter
 * @param hot a hot afternoon, when air conditioners draw more
 * @param loads all of them, in the order of the profile
 * @param always the converter and small loads
 * @param choices the others, largest first
 * @param watts plain watts by id
 * @param search finds what fits
 */
record LoadTable(
    Source source,
    boolean hot,
    List<LoadItem> loads,
    List<LoadItem> always,
    List<LoadItem> choices,
    Map<String, Double> watts,
    LoadSearch search) {
  private static final String HOT_AFTERNOON = "air-conditioner.hot-afternoon";

  /** Loads below this are taken as always on: house rule. */
  private static final double SMALL_WATTS = 300;

  /** Sets are made of this many loads at most: house rule, keeps the table readable. */
  private static final int MOST_CHOICES = 12;

  /** What a load counts that runs three hours or more at a stretch: NEC 210.20(A). */
  private static final double CONTINUOUS = 1.25;

  /** Lays out the loads; the inputs hold what is missing, and then nothing here means anything. */
  static LoadTable of(Source source, boolean hot, Inputs in) {
    return in.once(LoadTable.class, List.of(source.id(), hot), once -> layOut(source, hot, once));
  }

  private static LoadTable layOut(Source source, boolean hot, Inputs in) {
    List<LoadItem> all =
        Loads.of(source.rig()).stream()
            .filter(i -> i.mains() || i.supply().isEmpty())
            .filter(source::feeds)
            .toList();
    Map<String, Double> watts = new HashMap<>();
    for (LoadItem item : all) {
      if (item.supply().isEmpty()) {
        in.missing(item.gear() + ".on");
      }
      watts.put(item.id(), Loads.watts(item, source.rig(), in));
    }
    Predicate<LoadItem> small = i -> i.converter() || watts.get(i.id()) < SMALL_WATTS;
    List<LoadItem> always = all.stream().filter(small).toList();
    List<LoadItem> choices =
        all.stream()
            .filter(small.negate())
            .sorted(
                Comparator.comparingDouble((LoadItem i) -> -watts.get(i.id()))
                    .thenComparing(LoadItem::id))
            .limit(MOST_CHOICES)
            .toList();
    double more = hot ? in.typical("hot", HOT_AFTERNOON) : 0;
    LoadSearch search =
        new LoadSearch(
            draws(source, always, watts, more),
            draws(source, choices, watts, more),
            source.limits(in));
    return new LoadTable(source, hot, all, always, choices, watts, search);
  }

  private static List<LoadSearch.Draw> draws(
      Source source, List<LoadItem> items, Map<String, Double> watts, double more) {
    return items.stream()
        .map(
            i ->
                new LoadSearch.Draw(
                    countedWatts(watts.get(i.id()), i.cools() ? more : 0, continuous(i)),
                    i.leg().map(Load.Leg::ordinal).orElse(-1),
                    source.breakers(i)))
        .toList();
  }

  /** The converter counts once: its full draw does not last three hours. */
  private static boolean continuous(LoadItem item) {
    return item.continuous() == Answer.YES && !item.converter();
  }

  /**
   * Watts that a load counts against a limit: more on a hot afternoon first, then 125 % if it runs
   * three hours or more. Source: NEC 210.20(A); the order is a house rule.
   */
  static double countedWatts(double watts, double hotShare, boolean continuous) {
    return watts * (1 + hotShare) * (continuous ? CONTINUOUS : 1);
  }

  /**
   * True if this load runs here beside what is always on; one that is itself always on, if all
   * does.
   */
  boolean runs(LoadItem item) {
    int place = choices.stream().map(LoadItem::id).toList().indexOf(item.id());
    return search.fits(place < 0 ? 0 : 1 << place);
  }

  /** The loads of a set, in the order of the profile. */
  List<LoadItem> items(int set) {
    List<String> chosen =
        IntStream.range(0, choices.size())
            .filter(i -> (set & 1 << i) != 0)
            .mapToObj(i -> choices.get(i).id())
            .toList();
    return loads.stream().filter(i -> chosen.contains(i.id())).toList();
  }

  /** Their ids. */
  List<String> ids(int set) {
    return items(set).stream().map(LoadItem::id).toList();
  }

  /** Plain watts of a set. */
  double watts(int set) {
    return items(set).stream().mapToDouble(i -> watts.get(i.id())).sum();
  }

  /** Sets by falling watts, then by their ids. */
  List<Integer> sorted(List<Integer> sets) {
    return sets.stream()
        .sorted(
            Comparator.comparingDouble((Integer s) -> -watts(s))
                .thenComparing(s -> String.join(" ", ids(s))))
        .toList();
  }

  /** Sets of one load each, in the order of the profile. */
  List<Integer> inOrder(List<Integer> ones) {
    return ones.stream()
        .sorted(Comparator.comparingInt(one -> loads.indexOf(items(one).get(0))))
        .toList();
  }

  /** The sum of what is always on and a set, in symbols. */
  String sum(int set) {
    return Stream.concat(always.stream(), items(set).stream())
        .map(this::term)
        .collect(Collectors.joining(" + "));
  }

  /** What breaks when a set runs, in symbols. */
  String tooMuch(int set) {
    return search
        .broken(set)
        .map(
            breaker ->
                Stream.concat(always.stream(), items(set).stream())
                        .filter(i -> source.breakers(i).contains(breaker))
                        .map(this::term)
                        .collect(Collectors.joining(" + "))
                    + " > 120 V × {"
                    + Source.name(breaker)
                    + "}")
        .orElseGet(() -> sum(set) + " > " + source.limitFormula());
  }

  private String term(LoadItem item) {
    String more = hot && item.cools() ? "(1 + {hot}) × " : "";
    String steady = continuous(item) ? "1.25 × " : "";
    return steady + more + Loads.wattsFormula(item, source.rig());
  }
}
