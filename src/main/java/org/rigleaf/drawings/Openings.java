package org.rigleaf.drawings;

import java.util.List;
import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Body;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/** Draws what opens and folds out of the walls: slides out, awnings rolled up, door, step. */
final class Openings {
  static final double AWNING_OUT = 2.5;
  static final double AWNING_DEEP = 7;
  static final double STEP_DEEP = 15;
  private static final double HATCH = 5;
  private static final double DOOR_FT = 2.2;
  private static final double STEP_FT = 2;

  private final Svg svg;
  private final Plan plan;

  Openings(Svg svg, Plan plan) {
    this.svg = svg;
    this.plan = plan;
  }

  /** What is drawn before the walls. */
  void drawSlides(Rig rig) {
    rig.body().slides().stream()
        .filter(s -> Size.room(s.gear(), List.of(s.width(), s.depth())))
        .forEach(this::slide);
  }

  /** What hangs on the outside of the walls. */
  void drawOutside(Rig rig) {
    rig.body().awnings().stream()
        .filter(a -> Size.room(a.gear(), List.of(a.width())))
        .forEach(this::awning);
    rig.body().steps().map(Body.Steps::gear).filter(Openings::onSide).ifPresent(this::step);
  }

  /** The door, a gap in its wall. */
  void drawDoor(Rig rig) {
    rig.body().door().filter(Openings::onSide).ifPresent(this::door);
  }

  private static boolean onSide(Gear gear) {
    return Size.room(gear, List.of());
  }

  private static Spot spot(Gear gear) {
    return gear.place().spot().orElseThrow();
  }

  private static boolean street(Gear gear) {
    return spot(gear).face() == Face.STREET;
  }

  private static double aft(Gear gear) {
    return spot(gear).aft().orElseThrow();
  }

  private void slide(Body.Slide slide) {
    double aft = aft(slide.gear());
    double top = plan.y(aft);
    double low = plan.y(aft + slide.width().value());
    double deep = slide.depth().value() * plan.scale();
    double wall = plan.wall(street(slide.gear()), aft);
    double x = street(slide.gear()) ? wall - deep : wall;
    svg.rect(x, top, deep, low - top, 0, Look.line(0.9).dashed("4 2.5").filled(Svg.WHITE));
  }

  private void awning(Body.Awning awning) {
    double aft = aft(awning.gear());
    double top = plan.y(aft);
    double low = plan.y(aft + awning.width().value());
    boolean street = street(awning.gear());
    double near = plan.wall(street, aft) + (street ? -AWNING_OUT : AWNING_OUT);
    double far = near + (street ? -AWNING_DEEP : AWNING_DEEP);
    Look thin = Look.line(0.6).in(Svg.GRAY);
    svg.rect(Math.min(near, far), top, AWNING_DEEP, low - top, 0, thin.filled(Svg.WHITE));
    for (double y = top; y + HATCH <= low; y += HATCH) {
      svg.line(near, y + HATCH, far, y, thin);
    }
  }

  private void step(Gear steps) {
    double y = plan.y(aft(steps)) - STEP_FT * plan.scale() / 2;
    boolean street = street(steps);
    double wall = plan.wall(street, aft(steps));
    double x = street ? wall - STEP_DEEP : wall;
    svg.rect(x, y, STEP_DEEP, STEP_FT * plan.scale(), 0, Outline.PART.filled(Svg.WHITE));
    svg.line(x + STEP_DEEP / 2, y, x + STEP_DEEP / 2, y + STEP_FT * plan.scale(), Look.line(0.5));
  }

  /** A gap in the wall between two jambs. */
  private void door(Gear door) {
    double half = DOOR_FT * plan.scale() / 2;
    double x = plan.wall(street(door), aft(door));
    double y = plan.y(aft(door));
    svg.line(x, y - half, x, y + half, new Look(Svg.WHITE, 3, "", "none"));
    svg.line(x - 4, y - half, x + 4, y - half, Outline.WALL);
    svg.line(x - 4, y + half, x + 4, y + half, Outline.WALL);
  }
}
