package org.rigleaf.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Stay;
import org.rigleaf.source.Unit;

/** The stay's ledger read off at every hour, for a plan of the trip. */
public final class StayHours {
  /** Nights that are told hour by hour at most: two weeks. */
  static final int MOST_NIGHTS = 14;

  private StayHours() {}

  /**
   * One store through the stay.
   *
   * @param id as in figure ids
   * @param gear id of the gear that it is
   * @param waste true if the shares are how full it is; else how much is left
   * @param percent at 15:00 of the first day and at every hour from there
   * @param ends the hour, counted likewise, at which it can give or take no more; empty if it lasts
   */
  public record Course(
      String id, String gear, boolean waste, List<Double> percent, Optional<Integer> ends) {
    /** Copies the list. */
    public Course {
      percent = List.copyOf(percent);
    }
  }

  /** Nights of the stay that are told; none if nobody says how many it has. */
  public static int nights(Rig rig) {
    Fact nights = Trip.fact(rig, Stay::nights, "nights", Unit.COUNT);
    return nights.known() ? (int) Math.min(MOST_NIGHTS, nights.value()) : 0;
  }

  /**
   * The stores of a rig whose facts are known, in the order of the pages.
   *
   * @param hours how many are told after 15:00 of the first day
   */
  public static List<Course> of(Rig rig, Figures figures, int hours) {
    List<Course> courses = new ArrayList<>();
    for (Stores.Kind kind : Stores.of(rig)) {
      course(kind, rig, new Inputs(figures), hours).ifPresent(courses::add);
    }
    return courses;
  }

  private static Optional<Course> course(Stores.Kind kind, Rig rig, Inputs in, int hours) {
    Ledger run;
    try {
      run = Endurance.run(kind, Trip.stay(rig), in);
    } catch (IllegalArgumentException e) {
      if (in.missing().isEmpty()) {
        throw e;
      }
      return Optional.empty();
    }
    return in.missing().isEmpty() ? Optional.of(course(kind, run, hours)) : Optional.empty();
  }

  private static Course course(Stores.Kind kind, Ledger run, int hours) {
    List<Double> percent = new ArrayList<>();
    for (int i = 0; i <= hours; i++) {
      double left = 100 * run.level()[i] / run.store().full();
      percent.add(kind.waste() ? 100 - left : left);
    }
    Optional<Integer> ends =
        run.days().stream()
            .mapToObj(d -> (int) Math.ceil(d * Hours.DAY - 1e-9))
            .filter(h -> h <= hours)
            .findFirst();
    return new Course(kind.id(), kind.gear(), kind.waste(), percent, ends);
  }
}
