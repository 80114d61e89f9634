package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.source.Unit.BTU_PER_HOUR;
import static org.rigleaf.source.Unit.FAHRENHEIT;
import static org.rigleaf.source.Unit.PERCENT_SHARE;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.rigleaf.rig.Body;
import org.rigleaf.rig.Climate;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Identity;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Stay;
import org.rigleaf.source.Unit;

/** The heat a rig loses, and how hard its furnace works against that. */
final class Furnaces {
  private static final String LOSS_FORMULA =
      "2 × ({length} + {width}) × {height} × ({window-share} ÷ {r-windows} + (1 − {window-share})"
          + " ÷ {r-walls}) + {length} × {width} × (1 ÷ {r-roof} + 1 ÷ {r-floor}) + 0.018 ×"
          + " {length} × {width} × {height} × {air-changes}";

  static final Entry LOSS =
      Entry.of(
              "shell.loss",
              BTU_PER_HOUR,
              PUBLISHED,
              "area over R-value of each part; 0.018 Btu a cubic foot and degree of air changed;"
                  + " slide rooms left out")
          .rows(
              (rig, rows) ->
                  furnace(rig)
                      .ifPresent(f -> rows.number(LOSS_FORMULA, in -> lossPerDegree(rig, in))));

  static final Entry OUTPUT =
      Entry.of(
              "furnace.output",
              BTU_PER_HOUR,
              PUBLISHED,
              "NFPA 54 11.1.2, read as 4 % for each 1,000 ft above the sea where the place is above"
                  + " 2,000 ft; other makers read it as above 2,000 ft")
          .rows(Furnaces::outputs);

  static final Entry DUTY =
      Entry.of(
              "furnace.duty",
              PERCENT_SHARE,
              HOUSE_ASSUMPTION,
              "mean loss of the day's 24 hours over the output; the day by its low and high")
          .rows(
              (rig, rows) ->
                  duty(
                      rig,
                      rows,
                      "the mean over 24 hours of max(0, {inside} − outside), outside from {low} to"
                          + " {high},",
                      Heat::mean));

  static final Entry WORST =
      Entry.of(
              "furnace.duty.worst",
              PERCENT_SHARE,
              HOUSE_ASSUMPTION,
              "loss at the low, at 05:00, over the output")
          .rows((rig, rows) -> duty(rig, rows, "max(0, {inside} − {low})", Heat::worst));

  static final Entry HOLDS =
      Entry.of(
              "furnace.holds",
              FAHRENHEIT,
              HOUSE_ASSUMPTION,
              "the cold at which the loss is all that the furnace gives; never below the rig's own"
                  + " limit, or 0 °F where nobody says it")
          .rows((rig, rows) -> furnace(rig).ifPresent(f -> holds(rig, rows)));

  static final List<Entry> ENTRIES = List.of(LOSS, OUTPUT, DUTY, WORST, HOLDS);

  /** Heat of a cubic foot of air for a degree F, Btu: from memory, as heat-loss sheets have it. */
  private static final double AIR_BTU = 0.018;

  /** Height above the sea up to which a burner gives all it is rated for (NFPA 54 11.1.2). */
  private static final double FULL_UP_TO_FEET = 2000;

  /** Loss for each 1,000 ft above the sea beyond that. */
  private static final double LOSS_PER_1000_FEET = 0.04;

  private Furnaces() {}

  static Optional<Climate.Furnace> furnace(Rig rig) {
    return rig.climate().furnace();
  }

  private static double lossPerDegree(Rig rig, Inputs in) {
    Identity body = rig.identity();
    Body.Shell shell = rig.body().shell();
    double length = in.of("length", Pipes.bodyLength(body));
    double width = in.of("width", body.width());
    double height = in.of("height", body.insideHeight(), "shell.inside-height");
    double windows = in.of("window-share", shell.windowShare(), "shell.window-share");
    double walls =
        wallLoss(
            2 * (length + width) * height,
            windows,
            in.of("r-windows", shell.windows(), "shell.windows"),
            in.of("r-walls", shell.walls(), "shell.walls"));
    double flat =
        length
            * width
            * (1 / in.of("r-roof", shell.roof(), "shell.roof")
                + 1 / in.of("r-floor", shell.floor(), "shell.floor"));
    double air =
        airLoss(
            length * width * height, in.of("air-changes", shell.airChanges(), "shell.air-changes"));
    return walls + flat + air;
  }

  private static void outputs(Rig rig, Rows rows) {
    for (Climate.Furnace f : furnace(rig).stream().toList()) {
      Fact elevation = Trip.fact(rig, Stay::elevation, "place.elevation", Unit.FOOT);
      boolean thin = gas(f) && elevation.known() && elevation.value() > FULL_UP_TO_FEET;
      String rated = f.output().known() ? "{output}" : "{input} × {furnace-efficiency}";
      rows.number(
          rated + (thin ? " × (1 − 0.04 × {elevation} ÷ 1,000 ft)" : ""),
          in -> rated(f, in) * (gas(f) ? thinAirShare(in.of("elevation", elevation)) : 1));
    }
  }

  private static boolean gas(Climate.Furnace f) {
    return f.burns(Climate.FurnaceFuel.LP);
  }

  /** Btu an hour into the room at the sea. */
  static double rated(Climate.Furnace f, Inputs in) {
    return f.output().known()
        ? in.of("output", f.output())
        : in.of("input", f.input()) * in.typical("furnace-efficiency", "furnace.efficiency");
  }

  /** Btu an hour into the room on this trip. */
  static double output(Climate.Furnace f, Trip trip, Inputs in) {
    return rated(f, in) * (gas(f) ? thinAirShare(trip.elevation(in)) : 1);
  }

  /** Mean and worst loss of a day, Btu an hour. */
  private record Heat(double mean, double worst) {}

  private static void duty(Rig rig, Rows rows, String degrees, ToDoubleFunction<Heat> which) {
    Trip trip = Trip.stay(rig);
    furnace(rig)
        .ifPresent(
            f ->
                rows.number(
                    "100 × {loss} × " + degrees + " ÷ {furnace}",
                    in -> {
                      double loss = in.of("loss", LOSS);
                      double worst = loss * Math.max(0, trip.inside(in) - trip.low(in));
                      Heat heat = new Heat(Hours.sum(losses(loss, trip, in)) / Hours.DAY, worst);
                      return 100 * which.applyAsDouble(heat) / in.of("furnace", OUTPUT);
                    }));
  }

  private static void holds(Rig rig, Rows rows) {
    Fact limit = rig.limits().lowestTemperature();
    rows.number(
        "max(" + (limit.known() ? "{limit}" : "0") + ", {inside} − {furnace} ÷ {loss})",
        in ->
            Math.max(
                limit.known() ? in.of("limit", limit) : 0,
                heldFahrenheit(
                    Trip.stay(rig).inside(in), in.of("furnace", OUTPUT), in.of("loss", LOSS))));
  }

  /** Degrees F outside down to which a furnace that never pauses keeps the warmth inside. */
  static double heldFahrenheit(double insideFahrenheit, double outputBtu, double lossPerDegree) {
    return insideFahrenheit - outputBtu / lossPerDegree;
  }

  /** Btu lost in each hour of the day, taken at the middle of the hour. */
  static double[] losses(double lossPerDegree, Trip trip, Inputs in) {
    double inside = trip.inside(in);
    double low = trip.low(in);
    double high = trip.high(in);
    return Hours.each(
        h -> lossPerDegree * Math.max(0, inside - Weather.outsideFahrenheit(h + 0.5, low, high)));
  }

  /**
   * Btu an hour through walls with windows, for a degree F.
   *
   * @param windowShare of the area
   * @param windowR and the other: R-value, h ft2 degF / Btu
   */
  static double wallLoss(double squareFeet, double windowShare, double windowR, double wallR) {
    return squareFeet * (windowShare / windowR + (1 - windowShare) / wallR);
  }

  /** Btu an hour for a degree F that the air carries away. */
  static double airLoss(double cubicFeet, double changesPerHour) {
    return AIR_BTU * cubicFeet * changesPerHour;
  }

  /**
   * What a gas burner gives of its rating at a height, never below nothing.
   *
   * @throws IllegalArgumentException for a height below zero
   */
  static double thinAirShare(double elevationFeet) {
    if (elevationFeet < 0) {
      throw new IllegalArgumentException("a height is not below the sea");
    }
    return elevationFeet > FULL_UP_TO_FEET
        ? Math.max(0, 1 - LOSS_PER_1000_FEET * elevationFeet / 1000)
        : 1;
  }
}
