package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.rigleaf.rig.Body;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/** Puts a dot where each piece of gear is; gear at one spot gets neighboring dots. */
final class Sites {
  /** How far inside gear keeps from the wall, so that nobody looks for it outside. */
  private static final double INSET = 8;

  private static final double APART = 9;

  private final Plan plan;
  private final Map<String, Body.Slide> slides;
  private final Map<String, Body.Awning> awnings;

  private Sites(Rig rig, Plan plan) {
    this.plan = plan;
    this.slides = byId(rig.body().slides(), s -> s.gear().id());
    this.awnings = byId(rig.body().awnings(), a -> a.gear().id());
  }

  private static <T> Map<String, T> byId(List<T> items, Function<T, String> id) {
    return items.stream().collect(Collectors.toMap(id, i -> i, (first, second) -> first));
  }

  /** A dot for each of these pieces of gear, in their order; each has a spot. */
  static List<Site> of(Rig rig, List<Gear> gear, Plan plan) {
    Sites sites = new Sites(rig, plan);
    List<Site> placed = new ArrayList<>();
    for (Gear g : gear) {
      placed.add(sites.apart(sites.site(g, PlanView.code(rig, g)), placed));
    }
    return placed;
  }

  /** The side that a label belongs to: -1 street, 1 curb, 0 whichever is nearer. */
  static int home(Gear gear) {
    Face face = gear.place().spot().orElseThrow().face();
    return face == Face.STREET ? -1 : face == Face.CURB ? 1 : 0;
  }

  private Site site(Gear gear, String code) {
    Spot spot = gear.place().spot().orElseThrow();
    int home = home(gear);
    double aft = aft(gear, spot);
    double x = home == 0 ? free(spot, aft) : plan.wall(home < 0, aft) + home * outward(gear);
    return new Site(gear, code, Mark.of(spot), home, home != 0, x, y(spot, aft));
  }

  private double aft(Gear gear, Spot spot) {
    double length = plan.size().length();
    double given = spot.aft().orElse(0.0);
    return switch (spot.face()) {
      case FRONT -> front(spot);
      case REAR -> length - Math.min(given, length);
      default ->
          spot.zone().isPresent()
              ? Math.max(length * (2 * spot.zone().get().ordinal() + 1) / 6, plan.size().starts())
              : given + along(gear) / 2;
    };
  }

  /** On the A-frame or on the front wall, never behind it; a motorhome's front wall is its hood. */
  private double front(Spot spot) {
    double wall = plan.size().starts();
    double given = spot.aft().orElse(wall);
    return plan.size().kind().ballCoupled() ? Math.min(given, wall) : given;
  }

  /**
   * Length along the wall of gear that is drawn as a shape, in feet: its place is its front end.
   */
  private double along(Gear gear) {
    Optional<Fact> slide = Optional.ofNullable(slides.get(gear.id())).map(Body.Slide::width);
    Optional<Fact> awning = Optional.ofNullable(awnings.get(gear.id())).map(Body.Awning::width);
    return slide.or(() -> awning).filter(Fact::known).map(Fact::value).orElse(0.0);
  }

  /** How far outside the wall the dot stands, in points: in the middle of what is drawn there. */
  private double outward(Gear gear) {
    Body.Slide slide = slides.get(gear.id());
    if (slide != null && Size.room(gear, List.of(slide.width(), slide.depth()))) {
      return slide.depth().value() * plan.scale() / 2;
    }
    Body.Awning awning = awnings.get(gear.id());
    if (awning != null && Size.room(gear, List.of(awning.width()))) {
      return Openings.AWNING_OUT + Openings.AWNING_DEEP / 2;
    }
    return gear.type().equals("body.steps") ? Openings.STEP_DEEP : 0;
  }

  private double free(Spot spot, double aft) {
    double x = plan.x(spot.across().orElse(plan.size().width() / 2));
    boolean end = spot.face() == Face.FRONT || spot.face() == Face.REAR;
    double half = plan.half(end ? aft : Math.max(aft, plan.size().starts()));
    double room = end ? plan.size().width() * plan.scale() / 2 : Math.max(0, half - INSET);
    return Plan.clamp(x, plan.middle() - room, plan.middle() + room);
  }

  private double y(Spot spot, double aft) {
    double y = plan.y(aft);
    boolean within =
        spot.face() == Face.INSIDE || spot.face() == Face.ROOF || spot.zone().isPresent();
    boolean end = spot.face() == Face.FRONT || spot.face() == Face.REAR;
    return within && !end ? Plan.clamp(y, plan.bodyTop() + INSET, plan.bodyBottom() - INSET) : y;
  }

  /** The nearest spot clear of other dots; where a wall is too full, dots stand closer. */
  private Site apart(Site site, List<Site> placed) {
    return apart(site, placed, APART)
        .or(() -> apart(site, placed, APART / 3))
        .or(() -> apart(site, placed, APART / 9))
        .orElse(site);
  }

  private Optional<Site> apart(Site site, List<Site> placed, double distance) {
    for (int ring = 0; ring < 60; ring++) {
      for (int turn = 0; turn < (ring == 0 ? 1 : 8); turn++) {
        Site tried = shifted(site, ring * distance / 2, turn);
        if (free(tried, placed, distance)) {
          return Optional.of(tried);
        }
      }
    }
    return Optional.empty();
  }

  /** Along a wall: back, then forward. Elsewhere: sideways first, then back, then slanting. */
  private Site shifted(Site site, double by, int turn) {
    if (site.along()) {
      return site.moved(site.x(), site.y() + (turn % 2 == 0 ? by : -by));
    }
    double[][] turns = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}};
    return site.moved(site.x() + by * turns[turn][0], site.y() + by * turns[turn][1]);
  }

  private boolean free(Site site, List<Site> placed, double distance) {
    boolean inside =
        site.y() >= plan.top()
            && site.y() <= plan.bottom()
            && (site.along() || (site.x() >= plan.left() && site.x() <= plan.right()));
    return inside
        && placed.stream()
            .allMatch(p -> Math.hypot(p.x() - site.x(), p.y() - site.y()) >= distance * 0.95);
  }
}
