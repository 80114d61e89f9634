package org.rigleaf.rig;

import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.HOUR_UNIT;
import static org.rigleaf.source.Unit.POUND;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.source.PartialDate;

/**
 * What changes without a new edition, from the file beside the profile.
 *
 * <pre>
 * last-done: {roof-seals: 2026-03-12, wheel-bearings: {on: 2026-04, miles: 16020}}
 * readings: {miles: 18240, generator-hours: 61}
 * weighed: {date: 2026-05-01, axles: 4980 lb, hitch: 640 lb}
 * </pre>
 *
 * @param lastDone when a task was last done, by the task
 * @param weighed the last time on a scale
 */
public record Log(
    Map<String, Done> lastDone, Optional<Readings> readings, Optional<Weighed> weighed) {
  static Log read(Section s, Set<String> tasks) {
    return new Log(
        s.byKey("last-done", tasks, "docs/profile.md lists the tasks", Done::read),
        s.group("readings", Readings::read),
        s.group("weighed", Weighed::read));
  }

  /** When a task was last done, and what the meters showed on that day. */
  public record Done(PartialDate on, Readings at) {
    private static Optional<Done> read(Section s, String task) {
      if (s.grouped(task)) {
        return s.group(task, Done::whole).flatMap(done -> done);
      }
      return s.date(task).map(d -> new Done(d, Readings.unknown(s.path() + "." + task)));
    }

    private static Optional<Done> whole(Section s) {
      Readings at = Readings.read(s);
      return s.requiredDate("on").map(d -> new Done(d, at));
    }
  }

  /** What the meters show. */
  public record Readings(Fact miles, Fact generatorHours) {
    static Readings read(Section s) {
      return new Readings(
          s.bare("miles", COUNT, 0, 2_000_000), s.bare("generator-hours", HOUR_UNIT, 0, 100_000));
    }

    private static Readings unknown(String path) {
      return new Readings(
          Fact.unknown(path + ".miles", COUNT), Fact.unknown(path + ".generator-hours", HOUR_UNIT));
    }
  }

  /**
   * A scale's reading, ready for the road.
   *
   * @param axles pounds on all axles of a trailer together, or on each, front to rear
   * @param hitch pounds on the ball or the pin
   */
  public record Weighed(Optional<PartialDate> date, List<Fact> axles, Fact hitch) {
    static Weighed read(Section s) {
      return new Weighed(s.date("date"), s.quantities("axles", POUND), s.positive("hitch", POUND));
    }
  }
}
