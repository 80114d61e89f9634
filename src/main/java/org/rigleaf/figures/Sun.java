package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.HOUR_UNIT;
import static org.rigleaf.source.Unit.WATT_HOUR;

import java.time.LocalDate;
import java.time.Month;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Solar;
import org.rigleaf.rig.Stay;
import org.rigleaf.source.Unit;

/**
 * What flat panels bring on a day: the method of FAO Irrigation and Drainage Paper 56 (Allen and
 * others, 1998, chapter 3) for the sunshine on level ground, on the 15th of the month.
 */
final class Sun {
  private static final String SOURCE =
      "FAO Irrigation and Drainage Paper 56, equations 21 to 25, 34 and 35; Ra is the sunshine above"
          + " the air, MJ/m2 a day; kWh/m2 are peak-sun hours";

  static final Entry MONTH =
      Entry.of("sun.<month>", WATT_HOUR, PUBLISHED, SOURCE)
          .rows((rig, rows) -> solar(rig).ifPresent(s -> year(rig, s, rows)));

  static final Entry SKY =
      Entry.of("sun.<month>.<clear|mixed|gray>", WATT_HOUR, PUBLISHED, SOURCE)
          .rows((rig, rows) -> solar(rig).ifPresent(s -> skies(rig, s, rows)));

  static final Entry HOURS =
      Entry.of(
              "sun.hours.<load>",
              HOUR_UNIT,
              SECOND_DERIVATION,
              "a day's sun in the month of the stay, through an inverter, over what an air"
                  + " conditioner draws")
          .rows(Sun::hours);

  static final List<Entry> ENTRIES = List.of(MONTH, SKY, HOURS);

  /** Share of the possible sunshine under three skies (house rule). */
  private static final Map<String, Double> SKIES = skies();

  /** Solar constant, MJ/m2 a minute (FAO-56). */
  private static final double SOLAR_CONSTANT_MJ = 0.0820;

  /** Share of the sunshine that comes through clouds, and what clear sky adds (FAO-56 eq. 35). */
  private static final double OVERCAST = 0.25;

  private static final double CLEAR_ADDS = 0.50;

  private static final double MJ_PER_KWH = 3.6;

  /** A common year, so that a day of the year is the same in every edition. */
  private static final int COMMON_YEAR = 2025;

  /** Volts at which a charging 12 V bank holds panels on a PWM controller. */
  private static final double CHARGING_VOLTS = 13.6;

  private Sun() {}

  private static Optional<Solar> solar(Rig rig) {
    return rig.electric().solar();
  }

  private static void year(Rig rig, Solar solar, Rows rows) {
    for (Month month : Month.values()) {
      row(rig, solar, month, rows, "{sunshine}", in -> sunshine(rig, month, in), name(month));
    }
  }

  private static Fact inverterEfficiency(Rig rig) {
    return rig.electric()
        .inverter()
        .map(Electric.Inverter::efficiency)
        .orElse(Fact.unknown("electric.inverter.efficiency", Unit.SHARE));
  }

  private static void hours(Rig rig, Rows rows) {
    Optional<Month> month = rig.stay().flatMap(Stay::month).filter(m -> solar(rig).isPresent());
    month.ifPresent(
        m ->
            Loads.of(rig).stream()
                .filter(LoadItem::cools)
                .forEach(
                    i ->
                        rows.number(
                            "{sun} × {efficiency} ÷ (120 V × {current})",
                            in ->
                                in.of("sun", MONTH, name(m))
                                    * in.of(
                                        "efficiency",
                                        inverterEfficiency(rig),
                                        "inverter.efficiency")
                                    / (Shore.VOLTS * in.of("current", Loads.CURRENT, i.id())),
                            i.id())));
  }

  private static void skies(Rig rig, Solar solar, Rows rows) {
    Optional<Month> month = rig.stay().flatMap(Stay::month);
    month.ifPresent(
        m ->
            SKIES.forEach(
                (sky, share) ->
                    row(rig, solar, m, rows, share.toString(), in -> share, name(m), sky)));
  }

  private static void row(
      Rig rig,
      Solar solar,
      Month month,
      Rows rows,
      String shareText,
      ToDoubleFunction<Inputs> share,
      String... parts) {
    int day = dayOfYear(month);
    String times = Batteries.bank(rig).map(Batteries::timesTwelves).orElse("");
    boolean pwm = solar.controller().filter(Solar.Controller.PWM::equals).isPresent();
    String formula =
        above(rig, day, rows.look())
            + " × (0.25 + 0.50 × "
            + shareText
            + ") ÷ 3.6 × {panels} × {watts} × {system}"
            + (pwm ? " × min(1, 13.6 V" + times + " ÷ {vmp})" : "");
    rows.number(
        formula,
        in ->
            peakSunHours(extraterrestrialMj(latitude(rig, in), day), share.applyAsDouble(in))
                * in.of("panels", solar.panels())
                * in.of("watts", solar.each())
                * in.typical("system", "solar.system-factor")
                * controllerShare(solar, in),
        parts);
  }

  /** The sunshine above the air, with its number where it has one. */
  private static String above(Rig rig, int day, Inputs look) {
    double latitude = latitude(rig, look);
    String number =
        look.missing().isEmpty() ? Amounts.number(extraterrestrialMj(latitude, day), 2) : "";
    return "Ra " + number + " (day " + day + " at {latitude})";
  }

  private static double latitude(Rig rig, Inputs in) {
    Fact unknown = Fact.unknown("stay.place.latitude", Unit.DEGREE);
    return in.of("latitude", rig.stay().map(Stay::latitude).orElse(unknown));
  }

  private static double sunshine(Rig rig, Month month, Inputs in) {
    List<Fact> given = rig.stay().map(Stay::sunshine).orElse(List.of());
    Fact unknown = Fact.unknown("stay.place.sunshine", Unit.SHARE);
    Fact share = given.isEmpty() ? unknown : given.get(given.size() == 1 ? 0 : month.ordinal());
    return in.of("sunshine", share, "solar.sunshine");
  }

  /** The kind of controller is never assumed. */
  private static double controllerShare(Solar solar, Inputs in) {
    if (solar.controller().isEmpty()) {
      in.missing("electric.solar.controller");
      return Double.NaN;
    }
    return switch (solar.controller().get()) {
      case MPPT -> 1;
      case PWM ->
          pwmShare(in.of("bank", Batteries.VOLTAGE), in.of("vmp", solar.vmp(), "solar.panel-vmp"));
    };
  }

  /** A month as it stands in figure ids. */
  static String name(Month month) {
    return month.name().toLowerCase(Locale.ROOT);
  }

  private static Map<String, Double> skies() {
    Map<String, Double> skies = new LinkedHashMap<>();
    skies.put("clear", 0.8);
    skies.put("mixed", 0.5);
    skies.put("gray", 0.2);
    return skies;
  }

  /** Number of the 15th of a month in a common year, the J of FAO-56. */
  static int dayOfYear(Month month) {
    return LocalDate.of(COMMON_YEAR, month, 15).getDayOfYear();
  }

  /** Relative distance between earth and sun, inverted (FAO-56 eq. 23). */
  static double inverseDistance(int dayOfYear) {
    return 1 + 0.033 * Math.cos(2 * Math.PI * dayOfYear / 365);
  }

  /** The sun's height over the equator, radians (FAO-56 eq. 24). */
  static double declinationRadians(int dayOfYear) {
    return 0.409 * Math.sin(2 * Math.PI * dayOfYear / 365 - 1.39);
  }

  /**
   * Half the day as an angle, radians (FAO-56 eq. 25), by the center of the sun's disk and without
   * refraction. Where the sun does not set it is pi, where it does not rise 0.
   *
   * @throws IllegalArgumentException for a latitude beyond the poles
   */
  static double sunsetAngleRadians(double latitudeDegrees, int dayOfYear) {
    if (Math.abs(latitudeDegrees) > 90) {
      throw new IllegalArgumentException("no such latitude: " + latitudeDegrees);
    }
    double cosine =
        -Math.tan(Math.toRadians(latitudeDegrees)) * Math.tan(declinationRadians(dayOfYear));
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  /** Hours from sunrise to sunset (FAO-56 eq. 34). */
  static double dayLengthHours(double latitudeDegrees, int dayOfYear) {
    return 24 / Math.PI * sunsetAngleRadians(latitudeDegrees, dayOfYear);
  }

  /** Sunshine above the air on level ground, MJ/m2 a day (FAO-56 eq. 21). */
  static double extraterrestrialMj(double latitudeDegrees, int dayOfYear) {
    double latitude = Math.toRadians(latitudeDegrees);
    double declination = declinationRadians(dayOfYear);
    double sunset = sunsetAngleRadians(latitudeDegrees, dayOfYear);
    return 24
        * 60
        / Math.PI
        * SOLAR_CONSTANT_MJ
        * inverseDistance(dayOfYear)
        * (sunset * Math.sin(latitude) * Math.sin(declination)
            + Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset));
  }

  /**
   * Sunshine that reaches the ground, MJ/m2 a day (FAO-56 eq. 35).
   *
   * @param sunshineShare hours of sunshine as a share of the day, n/N
   * @throws IllegalArgumentException unless the share is from 0 to 1
   */
  static double groundMj(double extraterrestrialMj, double sunshineShare) {
    if (sunshineShare < 0 || sunshineShare > 1) {
      throw new IllegalArgumentException("no such share of sunshine: " + sunshineShare);
    }
    return (OVERCAST + CLEAR_ADDS * sunshineShare) * extraterrestrialMj;
  }

  /** Hours at 1 kW/m2 that bring the same as the day: kWh/m2. */
  static double peakSunHours(double extraterrestrialMj, double sunshineShare) {
    return groundMj(extraterrestrialMj, sunshineShare) / MJ_PER_KWH;
  }

  /**
   * What a PWM controller uses of a panel: it holds the panel at the volts of the bank, 13.6 V for
   * each 12 V of it.
   *
   * @throws IllegalArgumentException without volts
   */
  static double pwmShare(double bankVolts, double panelVmpVolts) {
    if (panelVmpVolts <= 0) {
      throw new IllegalArgumentException("volts must be above zero");
    }
    return Math.min(1, CHARGING_VOLTS * Batteries.twelves(bankVolts) / panelVmpVolts);
  }
}
