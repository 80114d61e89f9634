package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.DATE;
import static org.rigleaf.source.Unit.HOUR_UNIT;
import static org.rigleaf.source.Unit.MILE;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Log;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.PartialDate;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Unit;

/**
 * When a task of upkeep is due next: from the log and the task's interval, never from a clock. The
 * tasks that a rig has, with their intervals, are handed to {@link Figures}.
 */
final class Due {
  static final Entry DAY =
      Entry.of(
              "due.<task>",
              DATE,
              SECOND_DERIVATION,
              "the calendar: the day last done and the interval; a bare month counts as its last"
                  + " day, a bare year as its last")
          .rows((rig, rows) -> rows.upkeep().forEach((task, i) -> day(rig, rows, task, i)));

  static final Entry MILES =
      Entry.of(
              "due.<task>.miles",
              MILE,
              SECOND_DERIVATION,
              "the meter when last done and the miles of the task")
          .rows((rig, rows) -> meters(rig, rows, MILE, Log.Readings::miles));

  static final Entry HOURS =
      Entry.of(
              "due.<task>.hours",
              HOUR_UNIT,
              SECOND_DERIVATION,
              "the meter when last done and the hours of the task")
          .rows((rig, rows) -> meters(rig, rows, HOUR_UNIT, Log.Readings::generatorHours));

  static final List<Entry> ENTRIES = List.of(DAY, MILES, HOURS);

  private Due() {}

  private static void day(Rig rig, Rows rows, String task, Interval interval) {
    String path = "last-done." + task;
    Optional<PartialDate> done =
        Optional.ofNullable(rig.log().lastDone().get(task)).map(Log.Done::on);
    String written = rig.texts().getOrDefault(path, rig.texts().getOrDefault(path + ".on", ""));
    rows.value(
        written + " + " + interval.written(),
        in -> {
          if (done.isEmpty()) {
            in.missing(path);
          }
          return new Value.Day(
              dueDay(
                  done.orElseThrow(() -> new IllegalArgumentException("not known")),
                  interval.every()));
        },
        task);
  }

  private static void meters(Rig rig, Rows rows, Unit unit, Function<Log.Readings, Fact> meter) {
    rows.upkeep()
        .forEach(
            (task, interval) ->
                interval
                    .orAfter()
                    .filter(q -> q.unit() == unit)
                    .flatMap(q -> reading(rig, task, meter))
                    .ifPresent(
                        fact ->
                            rows.number(
                                "{at} + " + Amounts.US.text(after(interval), unit),
                                in -> dueReading(in.of("at", fact), after(interval)),
                                task)));
  }

  private static double after(Interval interval) {
    return interval.orAfter().map(Quantity::value).orElseThrow();
  }

  /** What the meter showed when the task was last done; most logs keep the day alone. */
  private static Optional<Fact> reading(Rig rig, String task, Function<Log.Readings, Fact> meter) {
    return Optional.ofNullable(rig.log().lastDone().get(task))
        .map(Log.Done::at)
        .map(meter)
        .filter(Fact::known);
  }

  /**
   * The day on which a task is due again. A day that its month lacks becomes the month's last.
   *
   * @param lastDone as exact as it is known; the last day that it may mean counts
   * @param every the interval of the task
   * @throws IllegalArgumentException unless the interval leads onward
   */
  static LocalDate dueDay(PartialDate lastDone, Period every) {
    if (every.isZero() || every.isNegative()) {
      throw new IllegalArgumentException("no interval: " + every);
    }
    return lastDone.last().plus(every);
  }

  /**
   * The reading of a meter at which a task is due again, in the meter's own unit.
   *
   * @throws IllegalArgumentException unless the interval leads onward
   */
  static double dueReading(double atLastDone, double after) {
    if (!(after > 0)) {
      throw new IllegalArgumentException("no interval: " + after);
    }
    return atLastDone + after;
  }
}
