package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.source.Unit.GALLON_PER_HOUR;
import static org.rigleaf.source.Unit.GALLON_PER_MINUTE;
import static org.rigleaf.source.Unit.MINUTE_UNIT;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Water;

/**
 * How fast a heater heats: with a tank the first tank and gallons an hour after that, without one
 * gallons a minute.
 */
final class WaterHeater {
  private static final String SOURCE =
      "a Btu heats a pound of water by a degree F; 8.33 lb a gallon, as plumbers reckon heat";

  static final Entry FIRST_HOT =
      Entry.of("heater.first-hot.<lp|electric|both>", MINUTE_UNIT, PUBLISHED, SOURCE)
          .rows((rig, rows) -> storage(rig).ifPresent(h -> firstHot(rig, h, rows)));

  static final Entry RECOVERY =
      Entry.of("heater.recovery.<lp|electric|both>", GALLON_PER_HOUR, PUBLISHED, SOURCE)
          .rows((rig, rows) -> storage(rig).ifPresent(h -> recovery(h, rows)));

  static final Entry FLOW =
      Entry.of("heater.flow.<lp|electric|both>", GALLON_PER_MINUTE, PUBLISHED, SOURCE)
          .rows((rig, rows) -> onDemand(rig).ifPresent(h -> flow(h, rows)));

  static final List<Entry> ENTRIES = List.of(FIRST_HOT, RECOVERY, FLOW);

  /** Pounds of a gallon for heat: 62 F water is 8.333 (Scientific American Reference Book). */
  static final double HEAT_POUNDS_PER_GALLON = 8.33;

  /** Btu of a watt-hour: 1 kWh is 3,412.142 Btu (EIA; GNU units 3,412.1416). */
  private static final double BTU_PER_WATT_HOUR = 3.412142;

  private static final String RISE = "({set-point} − {cold})";
  private static final String BURNER = "{burner} × {burner-efficiency}";
  private static final String ELEMENT = "{element} × 3.412142 × {element-efficiency}";

  private WaterHeater() {}

  /** The heater, if it is of a kind with a tank. */
  static Optional<Water.Heater> storage(Rig rig) {
    return rig.water()
        .heater()
        .filter(
            h ->
                h.kind()
                    .filter(k -> k == Water.HeaterKind.STORAGE || k == Water.HeaterKind.COMBINATION)
                    .isPresent());
  }

  private static Optional<Water.Heater> onDemand(Rig rig) {
    return rig.water()
        .heater()
        .filter(h -> h.kind().filter(Water.HeaterKind.ON_DEMAND::equals).isPresent());
  }

  private static void firstHot(Rig rig, Water.Heater heater, Rows rows) {
    sources(heater)
        .forEach(
            (part, heat) ->
                rows.number(
                    "{holds} × 8.33 × " + RISE + " × 60 ÷ (" + heat.formula() + ")",
                    in ->
                        firstHotMinutes(
                            in.of("holds", heater.holds()),
                            rise(heater, in),
                            heat.btuPerHour(heater, in)),
                    part));
  }

  private static void recovery(Water.Heater heater, Rows rows) {
    sources(heater)
        .forEach(
            (part, heat) ->
                rows.number(
                    "(" + heat.formula() + ") ÷ (8.33 × " + RISE + ")",
                    in -> recoveryGallonsPerHour(rise(heater, in), heat.btuPerHour(heater, in)),
                    part));
  }

  private static void flow(Water.Heater heater, Rows rows) {
    sources(heater)
        .forEach(
            (part, heat) ->
                rows.number(
                    "(" + heat.formula() + ") ÷ (8.33 × " + RISE + ") ÷ 60",
                    in -> flowGallonsPerMinute(rise(heater, in), heat.btuPerHour(heater, in)),
                    part));
  }

  /** What heats: its working, and its Btu an hour into the water. */
  private record Heat(String formula, ToDoubleBiFunction<Water.Heater, Inputs> rate) {
    double btuPerHour(Water.Heater heater, Inputs in) {
      return rate.applyAsDouble(heater, in);
    }

    Heat and(Heat other) {
      return new Heat(
          formula + " + " + other.formula, (h, in) -> btuPerHour(h, in) + other.btuPerHour(h, in));
    }
  }

  /** The burner, the element, and both at once, where the heater runs on them. */
  private static Map<String, Heat> sources(Water.Heater heater) {
    Heat burner = new Heat(BURNER, WaterHeater::burner);
    Heat element = new Heat(ELEMENT, WaterHeater::element);
    boolean lp = heater.fuel().contains(Water.HeaterFuel.LP);
    boolean electric = heater.fuel().contains(Water.HeaterFuel.ELECTRIC);
    Map<String, Heat> sources = new LinkedHashMap<>();
    if (lp) {
      sources.put("lp", burner);
    }
    if (electric) {
      sources.put("electric", element);
    }
    if (lp && electric) {
      sources.put("both", burner.and(element));
    }
    return sources;
  }

  /** A given efficiency is the burner's. */
  private static double burner(Water.Heater heater, Inputs in) {
    return in.of("burner", heater.burner())
        * in.of("burner-efficiency", heater.efficiency(), "heater.efficiency-lp");
  }

  private static double element(Water.Heater heater, Inputs in) {
    return electricBtuPerHour(in.of("element", heater.element()))
        * in.typical("element-efficiency", "heater.efficiency-electric");
  }

  private static double rise(Water.Heater heater, Inputs in) {
    return in.of("set-point", heater.setPoint(), "heater.set-point")
        - in.typical("cold", "water.cold");
  }

  /** Btu an hour of an electric element. */
  static double electricBtuPerHour(double watts) {
    return watts * BTU_PER_WATT_HOUR;
  }

  /**
   * Minutes until a tank of cold water is hot.
   *
   * @param btuPerHour heat that reaches the water
   * @throws IllegalArgumentException without a rise or without heat
   */
  static double firstHotMinutes(double gallons, double riseFahrenheit, double btuPerHour) {
    return gallons * 60 / recoveryGallonsPerHour(riseFahrenheit, btuPerHour);
  }

  /**
   * Gallons that become hot in an hour.
   *
   * @param btuPerHour heat that reaches the water
   * @throws IllegalArgumentException without a rise or without heat
   */
  static double recoveryGallonsPerHour(double riseFahrenheit, double btuPerHour) {
    if (riseFahrenheit <= 0 || btuPerHour <= 0) {
      throw new IllegalArgumentException("water must rise and heat must flow");
    }
    return btuPerHour / (HEAT_POUNDS_PER_GALLON * riseFahrenheit);
  }

  /**
   * Gallons a minute that a heater without a tank brings to its set point as they run through.
   *
   * @param btuPerHour heat that reaches the water
   * @throws IllegalArgumentException without a rise or without heat
   */
  static double flowGallonsPerMinute(double riseFahrenheit, double btuPerHour) {
    return recoveryGallonsPerHour(riseFahrenheit, btuPerHour) / 60;
  }
}
