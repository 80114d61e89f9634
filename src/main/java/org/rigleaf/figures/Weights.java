package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.POUND;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Road;

/** What the rig may carry, what its water weighs, and what is left of it. */
public final class Weights {
  static final Entry CARGO =
      Entry.of(
              "weight.cargo",
              POUND,
              SECOND_DERIVATION,
              "the label; else 49 CFR 571.110: GVWR less unloaded weight, which full propane is"
                  + " part of (S9.3.2)")
          .rows((rig, rows) -> rows.number(cargoFormula(rig), in -> cargo(rig, in)));

  static final Entry WATER =
      Entry.of("weight.water", POUND, PUBLISHED, "49 CFR 571.110 S9.3: 8.3 lb a gallon, all full")
          .rows(Weights::water);

  static final Entry MARGIN =
      Entry.of(
              "weight.margin",
              POUND,
              PUBLISHED,
              "49 CFR 575.6(a)(5): the rating less the load; "
                  + Aboard.TANKS
                  + "; in motorhomes the people and the hitch weight of what is towed are load")
          .rows(Weights::margin);

  static final List<Entry> ENTRIES = List.of(CARGO, WATER, MARGIN);

  /**
   * The two bounds of 72 FR 68442. That rule corrects a label above the lesser of them; here the
   * greater counts, so that rounding on two labels is no conflict (a rule of this project's own).
   */
  private static final double LABEL_POUNDS = 100;

  private static final double LABEL_SHARE_OF_GVWR = 0.015;

  private Weights() {}

  /** A label weight of the rig; unknown if the profile lists no weights. */
  static Fact of(Rig rig, String key, Function<Road.Weights, Fact> which) {
    return rig.road()
        .weights()
        .map(which)
        .orElseGet(() -> Fact.unknown("road.weights." + key, POUND));
  }

  private static Fact label(Rig rig) {
    return of(rig, "cargo-label", Road.Weights::cargoLabel);
  }

  private static Fact gvwr(Rig rig) {
    return of(rig, "gvwr", Road.Weights::gvwr);
  }

  private static String cargoFormula(Rig rig) {
    List<String> propane = Aboard.propane(rig).stream().map(Aboard.Item::formula).toList();
    return label(rig).known()
        ? "{label}"
        : "{gvwr} − "
            + unloadedFormula(rig)
            + propane.stream().map(" − "::concat).collect(Collectors.joining());
  }

  private static double cargo(Rig rig, Inputs in) {
    return label(rig).known()
        ? in.of("label", label(rig))
        : marginPounds(
            in.of("gvwr", gvwr(rig)), unloaded(rig, in) + Aboard.pounds(Aboard.propane(rig), in));
  }

  /** The two axles of a motorhome make its unloaded weight where no sum of them is told. */
  static String unloadedFormula(Rig rig) {
    return byAxles(rig) ? "({front-unloaded} + {rear-unloaded})" : "{unloaded}";
  }

  /** Pounds of the rig unloaded. */
  static double unloaded(Rig rig, Inputs in) {
    return byAxles(rig)
        ? in.of("front-unloaded", front(rig)) + in.of("rear-unloaded", rear(rig))
        : in.of("unloaded", of(rig, "unloaded", Road.Weights::unloaded));
  }

  private static boolean byAxles(Rig rig) {
    boolean told = of(rig, "unloaded", Road.Weights::unloaded).known();
    return !told && front(rig).known() && rear(rig).known();
  }

  /** The front axle of a motorhome unloaded. */
  static Fact front(Rig rig) {
    return of(rig, "front.unloaded", w -> w.front().unloaded());
  }

  /** The rear axle of a motorhome unloaded. */
  static Fact rear(Rig rig) {
    return of(rig, "rear.unloaded", w -> w.rear().unloaded());
  }

  private static void water(Rig rig, Rows rows) {
    List<String> tanks = Tanks.built(rig).stream().map(Tanks.Tank::id).toList();
    if (!tanks.isEmpty()) {
      rows.number(
          Lp.braces(tanks, " + "),
          in -> tanks.stream().mapToDouble(id -> in.of(id, Tanks.WEIGHT, id)).sum());
    }
  }

  private static void margin(Rig rig, Rows rows) {
    List<Aboard.Item> loads = Aboard.loads(rig);
    String formula =
        loads.stream().map(i -> " − " + i.formula()).collect(Collectors.joining("", "{cargo}", ""));
    rows.number(
        formula,
        in -> {
          if (rig.road().cargo().isEmpty() && !rig.has("road.cargo.none")) {
            in.missing("road.cargo");
          }
          return marginPounds(in.of("cargo", CARGO), Aboard.pounds(loads, in));
        });
  }

  /** Pounds that a rating leaves above a load; below zero if the load is too heavy. */
  static double marginPounds(double ratingPounds, double loadPounds) {
    return ratingPounds - loadPounds;
  }

  /** GVWR less the unloaded weight, if the cargo label is far from it; else empty. */
  public static OptionalDouble conflictingSum(Rig rig) {
    Fact unloaded = of(rig, "unloaded", Road.Weights::unloaded);
    double sum = marginPounds(gvwr(rig).value(), unloaded.value());
    return inConflict(label(rig).value(), sum, gvwr(rig).value())
        ? OptionalDouble.of(sum)
        : OptionalDouble.empty();
  }

  /**
   * True if label and sum are further apart than both bounds of the label rule; never if one of
   * them is not a number.
   */
  static boolean inConflict(double labelPounds, double sumPounds, double gvwrPounds) {
    return Math.abs(labelPounds - sumPounds)
        > Math.max(LABEL_POUNDS, LABEL_SHARE_OF_GVWR * gvwrPounds);
  }
}
