package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.FOOT;
import static org.rigleaf.source.Unit.INCH;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.rigleaf.rig.Climate;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;
import org.rigleaf.rig.Road;
import org.rigleaf.rig.Stay;

/** Leveling on sloping ground, and the height to keep clear. */
final class Ground {
  static final Entry SIDE =
      Entry.of("level.side.<slope>", INCH, SECOND_DERIVATION, "track times the tangent")
          .rows(
              (rig, rows) ->
                  slopes(
                      rig,
                      rows,
                      "{track}",
                      in -> in.of("track", rig.identity().track()),
                      Climate.Refrigerator::tiltSide));

  static final Entry NOSE =
      Entry.of(
              "level.nose.<slope>",
              INCH,
              SECOND_DERIVATION,
              "from the middle of the axles to the jack, or the wheelbase, times the tangent")
          .rows(Ground::nose);

  static final Entry HEIGHT =
      Entry.of(
              "clearance.height",
              FOOT,
              HOUSE_ASSUMPTION,
              "height and a margin; a folded trailer counts with the vehicle that pulls it")
          .rows(Ground::height);

  static final List<Entry> ENTRIES = List.of(SIDE, NOSE, HEIGHT);

  private static final double INCHES_PER_FOOT = 12;

  private Ground() {}

  private static void height(Rig rig, Rows rows) {
    boolean folds = rig.identity().kind() == RigKind.FOLDING_TRAILER;
    rows.number(
        folds ? "max({height}, {vehicle}) + {margin} ÷ 12" : "{height} + {margin} ÷ 12",
        in ->
            clearanceFeet(
                Math.max(
                    in.of("height", rig.identity().height()), folds ? vehicleHeight(rig, in) : 0),
                in.typical("margin", "clearance.margin")));
  }

  private static double vehicleHeight(Rig rig, Inputs in) {
    Optional<Fact> height =
        rig.stay()
            .flatMap(Stay::towVehicle)
            .or(rig.road()::towVehicle)
            .map(Road.TowVehicle::height);
    if (height.isEmpty()) {
      in.missing("road.tow-vehicle.height");
    }
    return height.map(h -> in.of("vehicle", h)).orElse(0.0);
  }

  private static void nose(Rig rig, Rows rows) {
    boolean motorized = rig.identity().kind().motorized();
    if (motorized || rig.identity().kind().towable()) {
      slopes(
          rig,
          rows,
          motorized ? "{wheelbase}" : towedFormula(rig),
          in -> motorized ? in.of("wheelbase", rig.identity().wheelbase()) : towedFeet(rig, in),
          Climate.Refrigerator::tiltLong);
    }
  }

  private static String towedFormula(Rig rig) {
    String middle = middleFormula(rig);
    return rig.identity().jack().known() ? "(" + middle + " − {jack})" : middle;
  }

  /** Feet from the jack to the middle of the axles; a jack of unknown place is at the coupler. */
  private static double towedFeet(Rig rig, Inputs in) {
    Fact jack = rig.identity().jack();
    return middleFeet(rig, in) - (jack.known() ? in.of("jack", jack) : 0);
  }

  /** The working of {@link #middleFeet}. */
  static String middleFormula(Rig rig) {
    List<String> names =
        IntStream.rangeClosed(1, rig.identity().axles().size()).mapToObj(Ground::axle).toList();
    return "(" + Lp.braces(names, " + ") + ") ÷ " + names.size();
  }

  /** Feet from the coupler or pin back to the middle of the axles. */
  static double middleFeet(Rig rig, Inputs in) {
    int axles = Math.max(1, rig.identity().axles().size());
    return IntStream.rangeClosed(1, axles).mapToDouble(n -> axleFeet(rig, n, in)).sum() / axles;
  }

  /** Feet from the coupler, pin or front bumper back to an axle, counted from the front. */
  static double axleFeet(Rig rig, int number, Inputs in) {
    List<Fact> axles = rig.identity().axles();
    return in.of(
        axle(number),
        number <= axles.size() ? axles.get(number - 1) : Fact.unknown("rig.axles", FOOT));
  }

  private static String axle(int number) {
    return "axle-" + number;
  }

  /** By half degrees to five, and at the limit of an absorption refrigerator if it is given. */
  private static void slopes(
      Rig rig,
      Rows rows,
      String span,
      ToDoubleFunction<Inputs> feet,
      Function<Climate.Refrigerator, Fact> limit) {
    TreeSet<Double> degrees = new TreeSet<>();
    IntStream.rangeClosed(1, 10).forEach(half -> degrees.add(half / 2.0));
    List<Double> limits = new ArrayList<>();
    rig.climate()
        .refrigerator()
        .filter(r -> r.kind().filter(Climate.RefrigeratorKind.ABSORPTION::equals).isPresent())
        .map(limit)
        .filter(Fact::known)
        .ifPresent(f -> limits.add(f.value()));
    degrees.addAll(limits);
    for (double d : degrees) {
      rows.number(
          span + " × 12 × tan(" + plain(d) + "°)",
          in -> liftInches(feet.applyAsDouble(in), d),
          plain(d).replace('.', '-'));
    }
  }

  private static String plain(double degrees) {
    return degrees == Math.rint(degrees)
        ? Integer.toString((int) degrees)
        : String.format(Locale.ROOT, "%s", degrees);
  }

  /**
   * How far one end of a span must rise to be level.
   *
   * @param spanFeet level distance between the two ends
   * @param slopeDegrees slope of the ground
   * @throws IllegalArgumentException for a slope of nothing or of a wall
   */
  static double liftInches(double spanFeet, double slopeDegrees) {
    if (slopeDegrees <= 0 || slopeDegrees >= 45 || spanFeet <= 0) {
      throw new IllegalArgumentException("no slope to level: " + slopeDegrees);
    }
    return spanFeet * INCHES_PER_FOOT * Math.tan(Math.toRadians(slopeDegrees));
  }

  /** Feet of clear height to look for. */
  static double clearanceFeet(double heightFeet, double marginInches) {
    return heightFeet + marginInches / INCHES_PER_FOOT;
  }
}
