package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.FOOT;
import static org.rigleaf.source.Unit.GALLON;
import static org.rigleaf.source.Unit.HOUR_UNIT;
import static org.rigleaf.source.Unit.SHARE;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Generator;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Road;
import org.rigleaf.rig.Stay;

/** What the generator gives where the rig stands, and how long its fuel lasts. */
final class Generators {
  static final Entry STEADY =
      Entry.of(
              "generator.steady",
              WATT_UNIT,
              HOUSE_ASSUMPTION,
              "its rating less a share for each 1,000 ft, on a straight line from sea level")
          .rows(Generators::steady);

  static final Entry UNTIL_BARE =
      Entry.of(
              "generator.until-bare",
              HOUR_UNIT,
              SECOND_DERIVATION,
              "the fuel that its pick-up reaches over its burn at full load")
          .rows((rig, rows) -> rig.electric().generator().ifPresent(g -> untilBare(g, rig, rows)));

  static final List<Entry> ENTRIES = List.of(STEADY, UNTIL_BARE);

  private Generators() {}

  private static void steady(Rig rig, Rows rows) {
    rig.electric()
        .generator()
        .ifPresent(
            g ->
                rows.number(
                    "{rated} × (1 − {derate} × {elevation} ÷ 1,000 ft)", in -> steady(g, rig, in)));
  }

  private static double steady(Generator g, Rig rig, Inputs in) {
    Fact elevation =
        rig.stay().map(Stay::elevation).orElse(Fact.unknown("stay.place.elevation", FOOT));
    double loss = in.of("derate", g.derate(), "generator.derate");
    return steadyWatts(in.of("rated", g.rated()), loss, in.of("elevation", elevation));
  }

  static boolean burnsPropane(Generator g) {
    return g.fuel().filter(Generator.Fuel.LP::equals).isPresent();
  }

  /** True if it burns motor fuel that the rig carries; a portable one has a tank of its own. */
  static boolean drinksMotorFuel(Generator g) {
    return !burnsPropane(g) && !g.portable();
  }

  private static void untilBare(Generator g, Rig rig, Rows rows) {
    boolean lp = burnsPropane(g);
    List<String> containers = Lp.containers(rig);
    if (lp && !containers.isEmpty()) {
      rows.number(
          "(" + Lp.braces(containers, " + ") + ") ÷ {full-load}",
          in ->
              runHours(
                  containers.stream().mapToDouble(id -> in.of(id, Lp.GALLONS, id)).sum(),
                  in.of("full-load", g.fullLoad())));
    } else if (!lp && g.portable()) {
      rows.number(
          "{holds} ÷ {full-load}",
          in -> runHours(in.of("holds", g.holds()), in.of("full-load", g.fullLoad())));
    } else if (!lp && drinksFromTank(g, rig)) {
      rows.number(
          "{holds} × (1 − {stops-at}) ÷ {full-load}",
          in -> runHours(reachedGallons(g, rig, in), in.of("full-load", g.fullLoad())));
    }
  }

  /** False if the rig has no fuel tank, or one of another fuel: nobody tells of its own then. */
  private static boolean drinksFromTank(Generator g, Rig rig) {
    Optional<String> tank = rig.road().fuel().flatMap(Road.Fuel::kind).map(Enum::name);
    Optional<String> own = g.fuel().map(Enum::name);
    boolean other = tank.isPresent() && own.isPresent() && !tank.equals(own);
    return !other && !rig.has("road.fuel.none");
  }

  private static double reachedGallons(Generator g, Rig rig, Inputs in) {
    if (g.fuel().isEmpty()) {
      in.missing("electric.generator.fuel");
    }
    Optional<Road.Fuel> tank = rig.road().fuel();
    Fact holds = tank.map(Road.Fuel::holds).orElse(Fact.unknown("road.fuel.holds", GALLON));
    Fact stop =
        tank.map(Road.Fuel::generatorStopsAt)
            .orElse(Fact.unknown("road.fuel.generator-stops-at", SHARE));
    return reachedGallons(in.of("holds", holds), in.of("stops-at", stop));
  }

  /** Gallons above the pick-up, whose end stands at a share of the tank. */
  static double reachedGallons(double tankGallons, double stopsAtShare) {
    return tankGallons * (1 - stopsAtShare);
  }

  /**
   * Hours that fuel lasts.
   *
   * @throws IllegalArgumentException without a burn
   */
  static double runHours(double gallons, double gallonsPerHour) {
    if (gallonsPerHour <= 0) {
      throw new IllegalArgumentException("an engine that runs burns fuel");
    }
    return gallons / gallonsPerHour;
  }

  /**
   * Gallons an hour at a load: a straight line between half and full load, never under the
   * half-load figure nor over the rating. House rule.
   *
   * @throws IllegalArgumentException for a load below zero or a rating not above it
   */
  static double burnGallonsPerHour(
      double loadWatts, double ratedWatts, double halfGallonsPerHour, double fullGallonsPerHour) {
    if (loadWatts < 0 || ratedWatts <= 0) {
      throw new IllegalArgumentException("no such load: " + loadWatts + " of " + ratedWatts);
    }
    double aboveHalf = 2 * Math.min(1, loadWatts / ratedWatts) - 1;
    double line = halfGallonsPerHour + (fullGallonsPerHour - halfGallonsPerHour) * aboveHalf;
    return Math.max(halfGallonsPerHour, line);
  }

  /**
   * Watts at a height, on a straight line from sea level, never below zero.
   *
   * @throws IllegalArgumentException for a height below zero
   */
  static double steadyWatts(double ratedWatts, double lossPer1000Ft, double elevationFt) {
    if (elevationFt < 0) {
      throw new IllegalArgumentException("a height is not below the sea");
    }
    return Math.max(0, ratedWatts * (1 - lossPer1000Ft * elevationFt / 1000));
  }
}
