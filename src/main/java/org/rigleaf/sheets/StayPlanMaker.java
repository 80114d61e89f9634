package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rigleaf.figures.Figures;
import org.rigleaf.figures.StayHours;
import org.rigleaf.figures.StayHours.Course;
import org.rigleaf.guidance.Wording;
import org.rigleaf.guidance.Words;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Unit;

/** Plans a stay: what ends first, what to give up for it, and each store hour by hour. */
public final class StayPlanMaker {
  private static final int DAY = 24;
  private static final int ARRIVAL = 15; // the ledger begins at 15:00
  private static final int LEAVING = 12; // the last day is told until noon

  private final Rig rig;
  private final Figures figures;
  private final BinderMaker maker;
  private final Wording wording;

  /** A maker for the stay of this rig. */
  public StayPlanMaker(Rig rig, Figures figures, BinderMaker maker, Wording wording) {
    this.rig = rig;
    this.figures = figures;
    this.maker = maker;
    this.wording = wording;
  }

  /** The plan on this paper; empty if nobody says what stay it is. */
  public Optional<StayPlan> plan(Paper paper, boolean draft) {
    if (rig.stay().isEmpty()) {
      return Optional.empty();
    }
    int nights = StayHours.nights(rig);
    int hours = nights == 0 ? 0 : nights * DAY + LEAVING - ARRIVAL;
    List<Course> courses = StayHours.of(rig, figures, hours);
    return Optional.of(
        new StayPlan(
            rig.identity().name(),
            wording.phrase("kind-" + rig.identity().kind().trait()),
            maker.edition(),
            draft ? wording.phrase("draft") : "",
            maker.blocks(wording.stay()),
            courses.stream().map(this::head).toList(),
            courses.isEmpty() || nights == 0 ? List.of() : days(courses, nights),
            paper));
  }

  private Words head(Course course) {
    String name = wording.find("store-" + course.id()).orElseGet(() -> maker.name(course.gear()));
    String what = wording.phrase(course.waste() ? "stay-filled" : "stay-left");
    return Words.of(name + ", " + what);
  }

  private List<StayPlan.Day> days(List<Course> courses, int nights) {
    List<StayPlan.Day> days = new ArrayList<>();
    for (int day = 0; day <= nights; day++) {
      int from = day == 0 ? ARRIVAL : 0;
      int to = day == nights ? LEAVING : DAY - 1;
      List<StayPlan.Hour> hours = new ArrayList<>();
      for (int hour = from; hour <= to; hour++) {
        int entry = day * DAY + hour - ARRIVAL;
        hours.add(
            new StayPlan.Hour(
                String.format(Locale.ROOT, "%d:00", hour),
                courses.stream().map(c -> cell(c, entry)).toList()));
      }
      days.add(new StayPlan.Day(day + 1, hours));
    }
    return days;
  }

  private StayPlan.Cell cell(Course course, int entry) {
    String text =
        wording.amounts().text(Math.rint(course.percent().get(entry)), Unit.PERCENT_SHARE);
    boolean ended = course.ends().filter(e -> e <= entry).isPresent();
    return new StayPlan.Cell(text, ended, course.ends().filter(e -> e == entry).isPresent());
  }
}
