package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.TestRigs;
import org.rigleaf.source.PartialDate;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Unit;

/** Due dates, counted on a calendar by hand. */
class DueTest {
  private static final String RUSH = "rig: {name: Rush, kind: travel trailer}";

  @ParameterizedTest
  @CsvSource({
    "2026-03-12, 6 months, 2026-09-12",
    "2026-03-31, 6 months, 2026-09-30", // September has 30 days
    "2026-01-31, 1 month, 2026-02-28", // 2026 is no leap year
    "2028-01-31, 1 month, 2028-02-29", // 2028 is one
    "2028-02-29, 1 year, 2029-02-28", // 2029 has no 29 February
    "2028-02-29, 4 years, 2032-02-29",
    "2025-10, 1 year, 2026-10-31", // a bare month: 31 October
    "2026-02, 1 month, 2026-03-28", // a bare month: 28 February, and a month on
    "2026-04, 1 year, 2027-04-30",
    "2025, 1 year, 2026-12-31", // a bare year: 31 December
    "2025-12-28, 1 week, 2026-01-04", // 28 + 7 = 35, less the 31 days of December
    "2026-02-20, 2 weeks, 2026-03-06", // 20 + 14 = 34, less the 28 days of February
    "2026-05-02, 10 years, 2036-05-02"
  })
  void aTaskIsDueAnIntervalAfterTheLastDayThatItsDateMayMean(
      String done, String every, String due) {
    Period period = Interval.parse(every, Optional.empty()).orElseThrow().every();
    assertEquals(LocalDate.parse(due), Due.dueDay(PartialDate.parse(done).orElseThrow(), period));
  }

  /** Day by day: the due day is the last one whose month is that many months on. */
  @Test
  void noDueDayFallsIntoTheMonthAfter() {
    LocalDate end = LocalDate.of(2029, 1, 1);
    for (LocalDate d = LocalDate.of(2027, 1, 1); d.isBefore(end); d = d.plusDays(1)) {
      for (int months = 1; months <= 24; months++) {
        LocalDate due = Due.dueDay(new PartialDate(d, d), Period.ofMonths(months));
        int wanted = d.getYear() * 12 + d.getMonthValue() + months;
        assertEquals(wanted, due.getYear() * 12 + due.getMonthValue());
        assertEquals(Math.min(d.getDayOfMonth(), due.lengthOfMonth()), due.getDayOfMonth());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"9350, 12000, 21350", "118, 100, 218"})
  void aMeterIsDueSoMuchLater(double at, double after, double due) {
    assertEquals(due, Due.dueReading(at, after));
  }

  @Test
  void anIntervalLeadsOnward() {
    PartialDate day = PartialDate.parse("2026-05-02").orElseThrow();
    assertThrows(IllegalArgumentException.class, () -> Due.dueDay(day, Period.ZERO));
    assertThrows(IllegalArgumentException.class, () -> Due.dueDay(day, Period.ofMonths(-1)));
    assertThrows(IllegalArgumentException.class, () -> Due.dueReading(100, 0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"0 months", "6 fortnights", "each trip", "month", "six months", "-1 year"})
  void whatIsNoTimeIsNoInterval(String text) {
    assertTrue(Interval.parse(text, Optional.empty()).isEmpty());
  }

  private static Map<String, Interval> tasks(String every, Quantity after) {
    return Map.of("polish", Interval.parse(every, Optional.of(after)).orElseThrow());
  }

  /** 2026-04 is its last day, the 30th; 9,350 + 12,000 mi. */
  @Test
  void theLogGivesTheDayAndWhereItHoldsTheReadingThatToo() {
    Figures figures =
        Figures.of(
            TestRigs.of(RUSH, "last-done: {wheel-bearings: {on: 2026-04, miles: 9350}}"),
            Map.of(
                "wheel-bearings",
                Interval.parse("1 year", Optional.of(new Quantity(12_000, Unit.MILE)))
                    .orElseThrow()));
    Figure day = figures.find("due.wheel-bearings").orElseThrow();
    assertEquals("2027-04-30", day.value().data());
    assertEquals("2026-04 + 1 year", day.formula());
    Figure miles = figures.find("due.wheel-bearings.miles").orElseThrow();
    assertEquals(21_350, miles.number());
    assertTrue(figures.find("due.wheel-bearings.hours").isEmpty(), "it counts miles");
  }

  /** 118 + 100 h on the hour meter. */
  @Test
  void hoursCountOnTheHourMeter() {
    Figures figures =
        Figures.of(
            TestRigs.of(RUSH, "last-done: {generator-oil: {on: 2025-09-30, generator-hours: 118}}"),
            Map.of(
                "generator-oil",
                Interval.parse("1 year", Optional.of(new Quantity(100, Unit.HOUR_UNIT)))
                    .orElseThrow()));
    assertEquals("2026-09-30", figures.find("due.generator-oil").orElseThrow().value().data());
    assertEquals(218, figures.find("due.generator-oil.hours").orElseThrow().number());
  }

  @Test
  void withoutALogATaskHasNoDayAndSaysWhy() {
    Figures figures =
        Figures.of(TestRigs.of(RUSH), tasks("1 year", new Quantity(12_000, Unit.MILE)));
    assertEquals(List.of(), figures.all().stream().filter(f -> f.id().startsWith("due.")).toList());
    assertEquals(Set.of("last-done.polish"), figures.missing("due.polish"));
  }
}
