package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.DATE;
import static org.rigleaf.source.Unit.POUND;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.Propane;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.PartialDate;

/** Portable cylinders: what the scale reads, and when the next test is due. */
final class Cylinders {
  static final Entry FULL_WEIGHT =
      Entry.of("lp.<id>.full-weight", POUND, SECOND_DERIVATION, "empty weight and fill")
          .each(
              "{tare} + {fill}",
              Lp::cylinders,
              c -> c.gear().part(),
              (c, in) -> weight(c, 100, in));

  static final Entry SCALE =
      Entry.of("lp.<id>.scale.<percent>", POUND, SECOND_DERIVATION, "empty weight and part fill")
          .rows(Cylinders::scales);

  static final Entry REQUALIFY =
      Entry.of(
              "lp.<id>.requalify",
              DATE,
              HOUSE_ASSUMPTION,
              "49 CFR 180.209: years from the month made or tested; the years are data, to be"
                  + " checked with whoever fills it")
          .rows(Cylinders::tests);

  static final List<Entry> ENTRIES = List.of(FULL_WEIGHT, SCALE, REQUALIFY);

  private static final List<Integer> PERCENTS = List.of(0, 25, 50, 75, 100);

  private Cylinders() {}

  private static double weight(Propane.Cylinder c, int percent, Inputs in) {
    return scalePounds(in.of("tare", c.tare()), in.of("fill", Lp.FILL, c.gear().part()), percent);
  }

  private static void scales(Rig rig, Rows rows) {
    for (Propane.Cylinder c : Lp.cylinders(rig)) {
      for (int percent : PERCENTS) {
        rows.number(
            "{tare} + {fill} × " + percent + " ÷ 100",
            in -> weight(c, percent, in),
            c.gear().part(),
            Integer.toString(percent));
      }
    }
  }

  private static void tests(Rig rig, Rows rows) {
    for (Propane.Cylinder c : Lp.cylinders(rig)) {
      Optional<YearMonth> from =
          c.tested().or(c::made).map(PartialDate::first).map(YearMonth::from);
      rows.value(
          from.map(YearMonth::toString).orElse("") + " + {interval}",
          in -> new Value.Day(due(c, from, in)),
          c.gear().part());
    }
  }

  /** Only the first test has usual years; after a test they hang on its kind, so must be given. */
  private static LocalDate due(Propane.Cylinder c, Optional<YearMonth> from, Inputs in) {
    if (from.isEmpty()) {
      in.missing(c.gear().id() + ".made");
    }
    double years =
        c.tested().isPresent()
            ? in.of("interval", c.interval())
            : in.of("interval", c.interval(), "cylinder.test-interval");
    return requalifyDay(from.orElseThrow(() -> new IllegalArgumentException("no month")), years);
  }

  /**
   * What the scale reads.
   *
   * @param percent of the fill that is still in it
   * @throws IllegalArgumentException unless that is from 0 to 100
   */
  static double scalePounds(double tarePounds, double fillPounds, double percent) {
    if (percent < 0 || percent > 100) {
      throw new IllegalArgumentException("not a part: " + percent);
    }
    return tarePounds + fillPounds * percent / 100;
  }

  /**
   * The last day on which a cylinder may still be filled: the end of the month, so many years on.
   *
   * @throws IllegalArgumentException without years
   */
  static LocalDate requalifyDay(YearMonth from, double years) {
    if (!(years > 0)) {
      throw new IllegalArgumentException("years must be above zero: " + years);
    }
    return from.plusMonths(Math.round(years * 12)).atEndOfMonth();
  }
}
