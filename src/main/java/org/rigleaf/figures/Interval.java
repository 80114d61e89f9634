package org.rigleaf.figures;

import java.time.Period;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rigleaf.source.Quantity;

/**
 * How often a task of upkeep is due by the calendar, and by a meter where the trade counts so.
 *
 * @param written as the wording has it, such as {@code 6 months}
 * @param every the same as a period
 * @param orAfter miles, or hours of the generator, if those come first
 */
public record Interval(String written, Period every, Optional<Quantity> orAfter) {
  private static final Pattern TEXT = Pattern.compile("([1-9]\\d?) (week|month|year)s?");

  /** Reads {@code 2 weeks}, {@code 6 months} or {@code 1 year}; empty if it is none of them. */
  public static Optional<Interval> parse(String text, Optional<Quantity> orAfter) {
    Matcher m = TEXT.matcher(text);
    return m.matches() ? Optional.of(new Interval(text, period(m), orAfter)) : Optional.empty();
  }

  private static Period period(Matcher m) {
    int count = Integer.parseInt(m.group(1));
    return switch (m.group(2)) {
      case "week" -> Period.ofWeeks(count);
      case "month" -> Period.ofMonths(count);
      default -> Period.ofYears(count);
    };
  }
}
