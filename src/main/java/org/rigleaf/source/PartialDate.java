package org.rigleaf.source;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date known to the day, the week, the month or the year. {@code week 14 of 2022} is the week of
 * a tire's date code: week 1 is the first full week from Sunday to Saturday (49 CFR 574.5(b)(3),
 * read in the 2015 text), which is not the ISO week.
 *
 * @param first the first day it may mean
 * @param last the last day it may mean
 */
public record PartialDate(LocalDate first, LocalDate last) {
  private static final int EARLIEST = 1930; // no rig is older
  private static final int LATEST = 2099; // 2422 on a tire is a week and two digits of the year
  private static final Pattern WEEK = Pattern.compile("week (\\d{1,2}) of (\\d{4})");
  private static final Pattern PARTS = Pattern.compile("(\\d{4})(?:-(\\d{2})(?:-(\\d{2}))?)?");

  /** Reads {@code 2026-05-02}, {@code 2026-05}, {@code 2026} or {@code week 14 of 2022}. */
  public static Optional<PartialDate> parse(String text) {
    Matcher week = WEEK.matcher(text.strip());
    Matcher parts = PARTS.matcher(text.strip());
    try {
      if (week.matches()) {
        return week(Integer.parseInt(week.group(1)), Integer.parseInt(week.group(2)));
      }
      return parts.matches() ? Optional.of(calendar(parts)) : Optional.empty();
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<PartialDate> week(int week, int year) {
    LocalDate firstSunday =
        LocalDate.of(year, 1, 1).with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
    LocalDate start = firstSunday.plusWeeks(week - 1L);
    boolean exists = week >= 1 && start.getYear() == year;
    return exists ? Optional.of(new PartialDate(start, start.plusDays(6))) : Optional.empty();
  }

  private static PartialDate calendar(Matcher m) {
    int year = Integer.parseInt(m.group(1));
    if (year < EARLIEST || year > LATEST) {
      throw new DateTimeException("no year of a rig");
    }
    if (m.group(2) == null) {
      return new PartialDate(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
    }
    YearMonth month = YearMonth.of(year, Integer.parseInt(m.group(2)));
    if (m.group(3) == null) {
      return new PartialDate(month.atDay(1), month.atEndOfMonth());
    }
    LocalDate day = month.atDay(Integer.parseInt(m.group(3)));
    return new PartialDate(day, day);
  }
}
