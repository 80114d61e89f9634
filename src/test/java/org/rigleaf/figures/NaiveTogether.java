package org.rigleaf.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

/**
 * A random rig and what runs together on it, worked out the slow way: every subset, every deal to
 * the legs, in whole sixteenths of a watt. Shares no code with the program; written from the rules
 * alone.
 *
 * @param service amperes of the rig, 30 or 50
 * @param converter its watts
 * @param branch amperes of the one branch breaker, which feeds the loads marked
 */
record NaiveTogether(int service, int converter, int branch, List<Thing> things) {

  /** One load. leg: a, b or empty. */
  record Thing(
      String id, int watts, boolean cooler, boolean continuous, String leg, boolean branch) {
    long counts(boolean hot) {
      long sixteenths = 16L * watts;
      sixteenths = hot && cooler ? sixteenths * 5 / 4 : sixteenths; // a quarter more
      return continuous ? sixteenths * 5 / 4 : sixteenths; // 125 %
    }
  }

  static NaiveTogether random(Random random) {
    int service = random.nextBoolean() ? 30 : 50;
    List<Thing> things = new ArrayList<>();
    int loads = 2 + random.nextInt(5);
    for (int i = 0; i < loads; i++) {
      int watts = 50 * (2 + random.nextInt(service == 50 ? 70 : 36));
      things.add(thing("load-" + (char) ('a' + i), watts, false, random));
    }
    int coolers = random.nextInt(3);
    for (int i = 0; i < coolers; i++) {
      things.add(thing("air-" + (char) ('a' + i), 1200 + 50 * random.nextInt(10), true, random));
    }
    return new NaiveTogether(
        service, 50 * random.nextInt(20) + 50, 15 + random.nextInt(15), things);
  }

  private static Thing thing(String id, int watts, boolean cooler, Random random) {
    String leg = List.of("a", "b", "", "").get(random.nextInt(4));
    return new Thing(id, watts, cooler, random.nextInt(3) == 0, leg, random.nextInt(3) == 0);
  }

  boolean cools() {
    return things.stream().anyMatch(Thing::cooler);
  }

  String yaml() {
    return "rig: {name: T, kind: travel trailer, length: 20 ft}\n"
        + "electric:\n"
        + "  shore: {service: "
        + service
        + " A}\n"
        + "  adapters: [{from-post: 15 A, to-rig: "
        + service
        + " A}]\n"
        + "  converter: {draws: "
        + converter
        + " W}\n"
        + "  breakers: [{name: Branch, rating: "
        + branch
        + " A, feeds: ["
        + fed()
        + "]}]\n"
        + "  loads: ["
        + list(false, ", on: 120 V")
        + "]\n"
        + "climate: {air-conditioners: ["
        + list(true, "")
        + "]}\n";
  }

  private String fed() {
    return things.stream().filter(Thing::branch).map(Thing::id).collect(Collectors.joining(", "));
  }

  private String list(boolean coolers, String more) {
    return things.stream()
        .filter(t -> t.cooler() == coolers)
        .map(
            t ->
                "{name: "
                    + t.id()
                    + more
                    + ", draws: "
                    + t.watts()
                    + " W"
                    + (t.continuous() ? ", continuous: yes" : "")
                    + (t.leg().isEmpty() ? "" : ", leg: " + t.leg())
                    + "}")
        .collect(Collectors.joining(", "));
  }

  private List<Thing> choices() {
    return things.stream().filter(t -> t.watts() >= 300).toList();
  }

  private boolean fits(List<Thing> chosen, int post, boolean hot) {
    List<Thing> on = new ArrayList<>(chosen);
    things.stream().filter(t -> t.watts() < 300).forEach(on::add);
    long onBranch = on.stream().filter(Thing::branch).mapToLong(t -> t.counts(hot)).sum();
    if (onBranch > 16L * 120 * branch) {
      return false;
    }
    on.add(new Thing("converter", converter, false, false, "", false));
    long limit = 16L * 120 * post;
    return post == 50
        ? deal(on, 0, 0, 0, limit, hot)
        : on.stream().mapToLong(t -> t.counts(hot)).sum() <= limit;
  }

  private static boolean deal(List<Thing> on, int next, long a, long b, long limit, boolean hot) {
    if (next == on.size()) {
      return a <= limit && b <= limit;
    }
    Thing t = on.get(next);
    long w = t.counts(hot);
    boolean inA = !t.leg().equals("b") && deal(on, next + 1, a + w, b, limit, hot);
    return inA || (!t.leg().equals("a") && deal(on, next + 1, a, b + w, limit, hot));
  }

  private List<List<Thing>> subsets() {
    List<List<Thing>> all = new ArrayList<>(List.of(List.of()));
    for (Thing t : choices()) {
      for (List<Thing> s : List.copyOf(all)) {
        List<Thing> more = new ArrayList<>(s);
        more.add(t);
        all.add(more);
      }
    }
    return all;
  }

  List<String> sets(int post, boolean hot) {
    List<List<Thing>> fitting = subsets().stream().filter(s -> fits(s, post, hot)).toList();
    return fitting.stream()
        .filter(s -> fitting.stream().noneMatch(b -> b.size() > s.size() && b.containsAll(s)))
        .filter(s -> s.stream().anyMatch(t -> t.watts() > 1000))
        .sorted(order())
        .limit(12)
        .map(NaiveTogether::text)
        .toList();
  }

  String never(int post) {
    return text(choices().stream().filter(t -> !fits(List.of(t), post, false)).toList());
  }

  List<String> apart(int post) {
    return subsets().stream()
        .filter(s -> s.size() == 2)
        .filter(s -> s.stream().allMatch(t -> fits(List.of(t), post, false)))
        .filter(s -> !fits(s, post, false))
        .sorted(order())
        .map(NaiveTogether::text)
        .toList();
  }

  private static Comparator<List<Thing>> order() {
    return Comparator.comparingInt((List<Thing> s) -> -s.stream().mapToInt(Thing::watts).sum())
        .thenComparing(NaiveTogether::text);
  }

  private static String text(List<Thing> set) {
    return set.stream().map(Thing::id).collect(Collectors.joining(" "));
  }
}
