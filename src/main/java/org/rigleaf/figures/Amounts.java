package org.rigleaf.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.rigleaf.source.PartialDate;
import org.rigleaf.source.Unit;

/**
 * The one place that turns numbers, units and dates into text. Rounding is for the page; data keep
 * their digits.
 */
public final class Amounts {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

  private static final double LONGEST_LIFE =
      1000; // years; anything above is a year of the calendar

  private Amounts() {}

  /**
   * A number with its unit, as a reader wants it: {@code 2,580 Wh}, {@code 11 ft 3 in}, {@code 38
   * gal}.
   */
  public static String text(double value, Unit unit) {
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
      case VOLT_UNIT -> 2;
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
