package org.rigleaf.drawings;

import java.util.List;
import java.util.Optional;
import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Body;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;
import org.rigleaf.rig.Safety;
import org.rigleaf.rig.Spot;

/** Draws what stands in a long wall or hangs on it, where the profile gives its place. */
final class WallParts {
  static final double DOOR_WIDE = 2.2;
  static final double DOOR_HIGH = 6;
  private static final double WINDOW_WIDE = 2.4;
  private static final double WINDOW_HIGH = 1.4;
  private static final double IN = 0.6; // of the ends of the wall
  static final double WINDOW_SILL = 1.5;
  private static final double ROLL = 0.4;
  private static final double UNDER_ROOF = 0.25;

  /** How far the middle of a rolled awning hangs under the roof. */
  static final double AWNING_DOWN = UNDER_ROOF + ROLL / 2;

  private static final Look PANEL = Outline.PART.filled(Svg.WHITE);
  private static final Look GLASS = Outline.PART.filled("#dcdcdc");
  private static final Look THIN = Look.line(0.5).in(Svg.GRAY);

  private final Pen pen;
  private final Rig rig;
  private final Levels at;
  private final boolean street;

  WallParts(Pen pen, Rig rig, Levels at, boolean street) {
    this.pen = pen;
    this.rig = rig;
    this.at = at;
    this.street = street;
  }

  void draw() {
    Body body = rig.body();
    body.slides().stream().filter(s -> here(s.gear()) && s.width().known()).forEach(this::slide);
    body.door().filter(this::here).ifPresent(this::door);
    rig.safety().exits().stream().map(Safety.Exit::gear).filter(this::here).forEach(this::exit);
    body.awnings().stream().filter(a -> here(a.gear()) && a.width().known()).forEach(this::awning);
    body.steps().map(Body.Steps::gear).filter(this::here).ifPresent(this::steps);
  }

  private boolean here(Gear gear) {
    return onWall(gear, street);
  }

  /** True if gear has a measured spot on this long wall. */
  static boolean onWall(Gear gear, boolean street) {
    return Size.room(gear, List.of()) && spot(gear).face() == (street ? Face.STREET : Face.CURB);
  }

  private static Spot spot(Gear gear) {
    return gear.place().spot().orElseThrow();
  }

  private static double aft(Gear gear) {
    return spot(gear).aft().orElseThrow();
  }

  /** A room pushed out towards the reader: its front wall with a lip round it. */
  private void slide(Body.Slide slide) {
    double from = aft(slide.gear());
    double to = ends(from + slide.width().value());
    double low = floor(from);
    double high = slideTop(at);
    pen.open(slide.gear().id());
    pen.box(from, to, low, high, 0, Outline.WALL.filled(Svg.WHITE));
    pen.box(from + 0.2, to - 0.2, low + 0.2, high - 0.2, 0, THIN);
    pen.close();
  }

  /** Nothing is drawn beyond the rear of the rig. */
  private double ends(double aft) {
    return Math.min(aft, Size.of(rig).ends());
  }

  /** The upper edge of a slide. */
  static double slideTop(Levels at) {
    return Math.min(at.roof() - 0.6, at.floor() + 6.6);
  }

  /** The floor there: the front part of a fifth wheel stands higher. */
  private double floor(double aft) {
    boolean raised = rig.identity().kind() == RigKind.FIFTH_WHEEL && aft < Nose.ends(rig);
    return raised ? Nose.OVER_TRUCK + 0.2 : at.floor();
  }

  private void door(Gear door) {
    Size size = Size.of(rig);
    double from = Plan.clamp(aft(door) - DOOR_WIDE / 2, size.starts(), size.ends() - DOOR_WIDE);
    double high = Math.min(at.floor() + DOOR_HIGH, at.roof() - 0.4);
    pen.open(door.id());
    pen.box(from, from + DOOR_WIDE, at.floor(), high, 0.15, Outline.WALL.filled(Svg.WHITE));
    pen.box(from + 0.5, from + DOOR_WIDE - 0.5, high - 1.9, high - 0.5, 0.1, GLASS);
    pen.circle(from + 0.3, at.floor() + 2.9, 0.1, Outline.PART);
    pen.close();
  }

  /** A way out: a window where its height is given and high enough, otherwise a door. */
  private void exit(Gear exit) {
    Optional<Double> up = spot(exit).up().filter(u -> u > at.floor() + WINDOW_SILL);
    up.ifPresentOrElse(u -> window(exit, u), () -> door(exit));
  }

  private void window(Gear exit, double up) {
    Size size = Size.of(rig);
    double from =
        Plan.clamp(aft(exit) - WINDOW_WIDE / 2, size.starts() + IN, size.ends() - WINDOW_WIDE - IN);
    double middle = Plan.clamp(up, at.under() + WINDOW_HIGH, at.roof() - WINDOW_HIGH);
    pen.open(exit.id());
    pen.box(
        from, from + WINDOW_WIDE, middle - WINDOW_HIGH / 2, middle + WINDOW_HIGH / 2, 0.2, GLASS);
    pen.close();
  }

  /** Rolled up against the top of the wall. */
  private void awning(Body.Awning awning) {
    double from = aft(awning.gear());
    double to = ends(from + awning.width().value());
    double high = at.roof() - UNDER_ROOF;
    pen.open(awning.gear().id());
    pen.box(from, to, high - ROLL, high, 0.15, PANEL);
    for (double along = from + 1; along < to; along++) {
      pen.line(along, high - ROLL, along - 0.3, high, THIN);
    }
    pen.close();
  }

  private void steps(Gear steps) {
    double half = DOOR_WIDE / 2;
    double middle = aft(steps);
    pen.open(steps.id());
    for (double up = at.floor() / 3; up < at.floor() - 0.2; up += at.floor() / 3) {
      pen.box(middle - half, middle + half, up - 0.12, up, 0, PANEL);
    }
    pen.line(middle - half + 0.2, at.floor() / 3, middle - half + 0.2, at.floor(), Outline.PART);
    pen.line(middle + half - 0.2, at.floor() / 3, middle + half - 0.2, at.floor(), Outline.PART);
    pen.close();
  }
}
