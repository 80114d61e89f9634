package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.figures.Check.INDEPENDENT_PROGRAM;
import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.source.Unit.MILE;
import static org.rigleaf.source.Unit.MILE_PER_HOUR;
import static org.rigleaf.source.Unit.YEAR_UNIT;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Road;
import org.rigleaf.source.PartialDate;

/** The tires: their age on the day of the edition, the year that ends their time, their speed. */
public final class Tires {
  static final Entry AGE =
      Entry.of(
              "tire.<n>.age",
              YEAR_UNIT,
              INDEPENDENT_PROGRAM,
              "49 CFR 574.5(b)(3): the Sunday that opens the week of the date code")
          .rows(Tires::ages);

  static final Entry REPLACE =
      Entry.of(
              "tire.<n>.replace",
              YEAR_UNIT,
              HOUSE_ASSUMPTION,
              "the year of the date code and the years that many makers give")
          .rows(Tires::ends);

  static final Entry SPEED =
      Entry.of(
              "tire.<n>.speed",
              MILE_PER_HOUR,
              HOUSE_ASSUMPTION,
              "the mark on the tire; without one what is usual for trailer tires, sizes that start"
                  + " with ST")
          .rows((rig, rows) -> byAxle(rig).forEach(a -> speed(a, rows)));

  static final Entry TORQUE_CHECK =
      Entry.of(
              "torque.check.<n>",
              MILE,
              PUBLISHED,
              "the maker's miles; without them 10, 25 and 50, as a manual of trailer-mounted"
                  + " equipment prints them on page 53; other makers say 50 to 100")
          .rows(Tires::torqueChecks);

  static final List<Entry> ENTRIES = List.of(AGE, REPLACE, SPEED, TORQUE_CHECK);

  /** Miles after which the nuts of a wheel that was off are tightened again. */
  private static final List<Integer> TORQUE_MILES = List.of(10, 25, 50);

  private static final double DAYS_PER_YEAR = 365.25;

  private Tires() {}

  /**
   * The tires of one axle.
   *
   * @param number the axle, counted from the front; the part of the figure's id
   * @param tires what the profile says of them
   * @param axles how many axles that speaks of; its count is of all of them together
   */
  public record AxleTires(int number, Road.Tires tires, int axles) {
    /** The number as it stands in figure ids. */
    public String part() {
      return Integer.toString(number);
    }
  }

  /** Tires by axle, front to rear; one entry for 'both' or 'all' axles stands for each of them. */
  public static List<AxleTires> byAxle(Rig rig) {
    List<AxleTires> all = new ArrayList<>();
    rig.road().tires().stream()
        .sorted(Comparator.comparingInt(Tires::place))
        .forEach(
            tires -> {
              int axles = axles(tires, rig);
              for (int i = axles; i > 0; i--) {
                all.add(new AxleTires(all.size() + 1, tires, axles));
              }
            });
    return all;
  }

  private static int place(Road.Tires tires) {
    return switch (tires.axle()) {
      case "front" -> 0;
      case "rear" -> 2;
      default -> 1;
    };
  }

  private static int axles(Road.Tires tires, Rig rig) {
    boolean everyAxle = rig.road().tires().size() == 1;
    int known = rig.identity().axles().size();
    return switch (tires.axle()) {
      case "both" -> 2;
      case "front", "rear" -> 1;
      default -> everyAxle ? Math.max(1, known) : 1;
    };
  }

  private static void ages(Rig rig, Rows rows) {
    Optional<LocalDate> edition = rig.edition().date();
    for (AxleTires axle : byAxle(rig)) {
      Optional<LocalDate> made =
          axle.tires().made().map(PartialDate::first).filter(d -> notAfter(d, edition));
      rows.number(
          "(" + text(edition) + " − " + text(made) + ") ÷ 365.25",
          in ->
              ageYears(
                  known(made, axle.tires().id() + ".made", in), known(edition, "edition.date", in)),
          axle.part());
    }
  }

  private static void ends(Rig rig, Rows rows) {
    for (AxleTires axle : byAxle(rig)) {
      Optional<LocalDate> made = axle.tires().made().map(PartialDate::first);
      rows.number(
          made.map(LocalDate::getYear).map(Object::toString).orElse("") + " + {years}",
          in ->
              replaceYear(
                  known(made, axle.tires().id() + ".made", in).getYear(),
                  in.typical("years", "tire.years")),
          axle.part());
    }
  }

  private static void speed(AxleTires axle, Rows rows) {
    Fact mark = axle.tires().speedMark();
    boolean trailer =
        axle.tires().size().filter(s -> s.toUpperCase(Locale.ROOT).startsWith("ST")).isPresent();
    rows.number(
        "{speed}",
        in -> trailer ? in.of("speed", mark, "tire.ball-trailer-speed") : in.of("speed", mark),
        axle.part());
  }

  private static void torqueChecks(Rig rig, Rows rows) {
    if (rig.road().tires().isEmpty()) {
      return;
    }
    List<Fact> given = rig.road().torqueChecks();
    for (int i = 0; i < given.size(); i++) {
      Fact miles = given.get(i);
      rows.number("{miles}", in -> in.of("miles", miles), Integer.toString(i + 1));
    }
    for (int i = 0; given.isEmpty() && i < TORQUE_MILES.size(); i++) {
      double miles = TORQUE_MILES.get(i);
      rows.number(TORQUE_MILES.get(i) + " mi", in -> miles, Integer.toString(i + 1));
    }
  }

  /** Tires newer than the edition have no age in it. */
  private static boolean notAfter(LocalDate made, Optional<LocalDate> edition) {
    return edition.filter(made::isAfter).isEmpty();
  }

  private static String text(Optional<LocalDate> day) {
    return day.map(LocalDate::toString).orElse("");
  }

  private static LocalDate known(Optional<LocalDate> day, String path, Inputs in) {
    if (day.isEmpty()) {
      in.missing(path);
    }
    return day.orElse(LocalDate.EPOCH);
  }

  /**
   * Years from the Sunday of the week made to a day.
   *
   * @throws IllegalArgumentException if the tire was not made yet
   */
  static double ageYears(LocalDate weekOpens, LocalDate day) {
    if (weekOpens.isAfter(day)) {
      throw new IllegalArgumentException("made on " + weekOpens + ", after " + day);
    }
    return ChronoUnit.DAYS.between(weekOpens, day) / DAYS_PER_YEAR;
  }

  /** The calendar year that ends a tire's time. */
  static double replaceYear(int yearMade, double years) {
    return yearMade + years;
  }
}
