package org.rigleaf.drawings;

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

/** Puts a dot on the plan where each piece of gear is. */
final class Sites {
  /** How far inside gear keeps from the wall, so that nobody looks for it outside. */
  private static final double INSET = 8;

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
    Apart apart = new Apart(sites::within);
    gear.forEach(g -> apart.place(sites.site(g, MapWords.code(rig, g))));
    return apart.placed();
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

  /** The rig without a drawing, to ask how far back things are. */
  static Sites on(Rig rig, Plan plan) {
    return new Sites(rig, plan);
  }

  /** How far back it is, in feet; that of a third is its middle. */
  double aft(Gear gear) {
    return aft(gear, gear.place().spot().orElseThrow());
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

  private boolean within(Site site) {
    return site.y() >= plan.top()
        && site.y() <= plan.bottom()
        && (site.along() || (site.x() >= plan.left() && site.x() <= plan.right()));
  }
}
