package org.rigleaf.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.rigleaf.source.PartialDate;
import org.rigleaf.source.Unit;

/**
 * The one place that turns numbers, units and dates into text, in US units or in metric ones.
 * Rounding is for the page; data keep their digits.
 */
public enum Amounts {
  US,
  METRIC;

  /** Units that are metric, and those of the United States; the others are both. */
  private static final Set<Unit> OF_METRIC =
      EnumSet.of(
          Unit.METRE,
          Unit.CENTIMETRE,
          Unit.MILLIMETRE,
          Unit.KILOMETRE,
          Unit.LITRE,
          Unit.MILLILITRE,
          Unit.KILOGRAM_MASS,
          Unit.KILOPASCAL,
          Unit.BAR,
          Unit.CELSIUS_DEGREE,
          Unit.LITRE_PER_MINUTE,
          Unit.LITRE_PER_HOUR,
          Unit.KILOMETRE_AN_HOUR,
          Unit.NEWTON_METRE);

  private static final Map<Unit, Unit> TO_METRIC = toMetric();

  /** What a gauge, dial or nameplate of a rig from the United States shows in US units. */
  private static final Set<Unit> ON_GAUGES =
      EnumSet.of(
          Unit.PSI,
          Unit.FAHRENHEIT,
          Unit.BTU_PER_HOUR,
          Unit.MILE_PER_HOUR,
          Unit.MILE,
          Unit.POUND_FOOT);

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

  private static final double LONGEST_LIFE =
      1000; // years; anything above is a year of the calendar

  private static Map<Unit, Unit> toMetric() {
    Map<Unit, Unit> to = new EnumMap<>(Unit.class);
    to.put(Unit.FOOT, Unit.METRE);
    to.put(Unit.INCH, Unit.MILLIMETRE);
    to.put(Unit.MILE, Unit.KILOMETRE);
    to.put(Unit.GALLON, Unit.LITRE);
    to.put(Unit.FLUID_OUNCE, Unit.MILLILITRE);
    to.put(Unit.POUND, Unit.KILOGRAM_MASS);
    to.put(Unit.PSI, Unit.KILOPASCAL);
    to.put(Unit.FAHRENHEIT, Unit.CELSIUS_DEGREE);
    to.put(Unit.BTU_PER_HOUR, Unit.KILOWATT);
    to.put(Unit.BTU, Unit.KILOWATT_HOUR);
    to.put(Unit.GALLON_PER_MINUTE, Unit.LITRE_PER_MINUTE);
    to.put(Unit.GALLON_PER_HOUR, Unit.LITRE_PER_HOUR);
    to.put(Unit.MILE_PER_HOUR, Unit.KILOMETRE_AN_HOUR);
    to.put(Unit.POUND_FOOT, Unit.NEWTON_METRE);
    return to;
  }

  /**
   * A number with its unit, as a reader wants it: {@code 2,580 Wh}, {@code 11 ft 3 in}, {@code 38
   * gal}. In metric, what a gauge shows in US units follows in brackets.
   */
  public String text(double value, Unit unit) {
    return this == METRIC && TO_METRIC.containsKey(unit) ? metric(value, unit) : plain(value, unit);
  }

  private static String metric(double value, Unit unit) {
    Unit to = TO_METRIC.get(unit);
    double converted = unit.convert(value, to);
    boolean centimetres = to == Unit.METRE && Math.abs(converted) < 1;
    String text = centimetres ? plain(converted * 100, Unit.CENTIMETRE) : plain(converted, to);
    return ON_GAUGES.contains(unit) ? text + " (" + plain(value, unit) + ")" : text;
  }

  /** True if something written in this unit can stand as it is. */
  public boolean suits(Unit unit) {
    return this == US ? !OF_METRIC.contains(unit) : !TO_METRIC.containsKey(unit);
  }

  private static String plain(double value, Unit unit) {
    return switch (unit) {
      case FOOT -> feet(value);
      case PERCENT_SHARE -> number(value, 1) + " %";
      case SHARE -> number(value, 2);
      case COUNT -> number(value, 2);
      case YEAR_UNIT ->
          value > LONGEST_LIFE ? String.valueOf((long) value) : counted(value, "year");
      case HOUR_UNIT -> hours(value);
      case DAY_UNIT -> counted(value, "day");
      case AWG -> (value == 0 ? "1/0" : number(value, 0)) + " AWG";
      case FAHRENHEIT -> number(value, 1) + " °F";
      case CELSIUS_DEGREE -> number(value, 0) + " °C";
      case NEWTON_METRE -> number(value, 0) + " N·m";
      case DEGREE -> number(value, 1) + "°";
      default -> number(value, decimals(value, unit)) + " " + unit.symbol();
    };
  }

  /** Less than an hour reads better in minutes. */
  private static String hours(double hours) {
    boolean minutes = hours < 1 && hours > 0;
    return minutes
        ? number(hours * 60, 0) + " min"
        : number(hours, decimals(hours, Unit.HOUR_UNIT)) + " h";
  }

  private static String counted(double value, String one) {
    String number = number(value, 1);
    return number + " " + one + (number.equals("1") ? "" : "s");
  }

  private static int decimals(double value, Unit unit) {
    return switch (unit) {
      case WATT_UNIT, WATT_HOUR, BTU_PER_HOUR, BTU, PSI, MILE_PER_HOUR, MINUTE_UNIT -> 0;
      case KILOPASCAL, MILLIMETRE, CENTIMETRE, MILLILITRE, KILOMETRE, KILOMETRE_AN_HOUR -> 0;
      case LITRE, KILOGRAM_MASS -> Math.abs(value) < 30 ? 1 : 0;
      case VOLT_UNIT -> Math.abs(value) < 100 ? 2 : 0;
      case POUND -> Math.abs(value) < 100 ? 1 : 0;
      case INCH, GALLON -> Math.abs(value) < 1 ? 2 : 1;
      case AMPERE_UNIT, FLUID_OUNCE, GALLON_PER_HOUR -> 1;
      default -> Math.abs(value) < 10 ? 2 : Math.abs(value) < 100 ? 1 : 0;
    };
  }

  /** A number rounded half up, without trailing zeros, thousands set apart by commas. */
  public static String number(double value, int decimals) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    int scale = Math.max(0, rounded.scale());
    return String.format(Locale.ENGLISH, "%,." + scale + "f", rounded);
  }

  private static String feet(double feet) {
    long inches = Math.round(feet * 12);
    String rest = inches % 12 == 0 ? "" : " " + inches % 12 + " in";
    return inches < 12 ? inches + " in" : number(inches / 12, 0) + " ft" + rest;
  }

  /** A date: {@code 2 May 2026}. */
  public static String date(LocalDate day) {
    return DATE.format(day);
  }

  /** A date as exact as it is known: {@code 2 May 2026}, {@code May 2026}, {@code 2026}. */
  public static String date(PartialDate date) {
    if (date.first().equals(date.last())) {
      return date(date.last());
    }
    String days = date(date.first()) + " to " + date(date.last());
    boolean month = YearMonth.from(date.first()).equals(YearMonth.from(date.last()));
    boolean whole = date.first().getDayOfMonth() == 1 && date.last().equals(lastOfMonth(date));
    return !whole
        ? days
        : month ? MONTH.format(date.last()) : String.valueOf(date.last().getYear());
  }

  private static LocalDate lastOfMonth(PartialDate date) {
    return YearMonth.from(date.last()).atEndOfMonth();
  }
}
