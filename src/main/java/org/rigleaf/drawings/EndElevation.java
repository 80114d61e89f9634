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

/** Draws the front or the rear of the rig, seen square on. */
final class EndElevation {
  private static final Look BODY = Outline.WALL.filled("#f4f4f4");
  private static final Look GLASS = Outline.PART.filled("#dcdcdc");
  private static final Look PANEL = Outline.PART.filled(Svg.WHITE);

  /** Usual height of a bumper, in feet. */
  private static final double BUMPER = 1.6;

  private final Pen pen;
  private final Rig rig;
  private final boolean rear;
  private final RigKind kind;
  private final double wide;
  private final Levels at;

  EndElevation(Svg svg, Board board, Rig rig, boolean rear) {
    this.pen = new Pen(svg, board);
    this.rig = rig;
    this.rear = rear;
    this.kind = rig.identity().kind();
    this.wide = Size.of(rig).width();
    this.at = Levels.of(rig);
  }

  void draw() {
    new RoofParts(pen, rig, at).across();
    wheels();
    rig.body().slides().forEach(this::slide);
    body();
    if (rear) {
      rear();
    } else {
      front();
    }
    pen.line(-1, 0, wide + 1, 0, Outline.PART);
  }

  private void wheels() {
    int axles = rig.identity().axles().size();
    if (axles > 0 && kind != RigKind.TRUCK_CAMPER) {
      new Wheels(pen, at.tire()).under(rig, rear ? axles - 1 : 0);
    }
  }

  /** A room pushed out sideways. */
  private void slide(Body.Slide slide) {
    if (slide.depth().known() && Size.room(slide.gear(), List.of(slide.depth()))) {
      boolean street = spot(slide.gear()).face() == Face.STREET;
      double wall = street ? 0.2 : wide - 0.2;
      double out = street ? -slide.depth().value() : wide + slide.depth().value();
      pen.open(slide.gear().id());
      pen.box(wall, out, at.floor(), WallParts.slideTop(at), 0, Outline.PART.filled(Svg.WHITE));
      pen.close();
    }
  }

  private void body() {
    double round = kind == RigKind.CLASS_B ? 1 : 0.4;
    double low = kind == RigKind.FIFTH_WHEEL && !rear ? Nose.OVER_TRUCK : at.under();
    pen.open("body");
    if (kind == RigKind.FOLDING_TRAILER) {
      pen.box(0.2, wide - 0.2, FoldingTrailer.BOX, at.roof() - 0.5, 0, PANEL);
      pen.box(0, wide, at.under(), FoldingTrailer.BOX, 0.2, BODY);
      pen.box(0, wide, at.roof() - 0.5, at.roof(), 0.2, BODY);
    } else {
      if (low > at.under()) {
        pen.box(0.2, wide - 0.2, at.under(), low, 0, PANEL);
      }
      pen.box(0, wide, low, at.roof(), round, BODY);
    }
    pen.close();
  }

  private void front() {
    switch (kind) {
      case CLASS_A -> windshield(0.3, at.under() + 3.2, Math.min(at.roof() - 1.4, 9.6));
      case CLASS_B -> cab(0.35, at.roof() * 0.5, at.roof() * 0.8);
      case CLASS_C -> classC();
      case FIFTH_WHEEL -> pin();
      case TRUCK_CAMPER -> Truck.front(pen, wide);
      default -> new Tongue(pen, rig, Size.of(rig)).front();
    }
  }

  private void windshield(double in, double low, double high) {
    pen.open("cab");
    pen.box(in, wide - in, low, high, 0.4, GLASS);
    pen.line(wide / 2, low, wide / 2, high, Outline.PART);
    lamps(in);
    pen.close();
  }

  /** A cab with hood, lamps and windshield, as wide as the body less a margin. */
  private void cab(double in, double low, double high) {
    pen.open("cab");
    pen.polygon(GLASS, in + 0.2, low, in + 0.6, high, wide - in - 0.6, high, wide - in - 0.2, low);
    pen.box(wide / 2 - 1.5, wide / 2 + 1.5, at.under() + 0.7, at.under() + 1.6, 0.1, PANEL);
    lamps(in);
    pen.close();
  }

  /** A cab narrower than the house, under its nose. */
  private void classC() {
    double in = wide * 0.1;
    double over = Math.min(6.3, at.roof() - 2.2);
    pen.open("body");
    pen.box(in, wide - in, at.under(), over, 0.3, Outline.WALL.filled(Svg.WHITE));
    pen.line(0, over, wide, over, Outline.WALL);
    pen.close();
    cab(in, 3.9, over - 0.2);
  }

  private void lamps(double in) {
    double up = at.under() + 1.2;
    pen.circle(in + 0.6, up, 0.35, PANEL).circle(wide - in - 0.6, up, 0.35, PANEL);
    pen.box(in, wide - in, at.under() - 0.1, at.under() + 0.4, 0.1, PANEL);
  }

  private void pin() {
    double middle = wide / 2;
    pen.open("pin");
    pen.box(middle - 0.7, middle + 0.7, Nose.OVER_TRUCK - 0.9, Nose.OVER_TRUCK, 0, PANEL);
    pen.box(middle - 0.15, middle + 0.15, Nose.OVER_TRUCK - 1.3, Nose.OVER_TRUCK - 0.9, 0, PANEL);
    pen.close();
    pen.open("landing-gear");
    for (double along : new double[] {1, wide - 1}) {
      pen.box(along - 0.15, along + 0.15, 0.14, at.under(), 0, PANEL);
      pen.box(along - 0.45, along + 0.45, 0, 0.14, 0, PANEL);
    }
    pen.close();
  }

  private void rear() {
    rig.body().ramp().ifPresent(this::ramp);
    rig.body().door().filter(this::onEnd).ifPresent(this::door);
    rig.safety().exits().stream().map(Safety.Exit::gear).filter(this::onEnd).forEach(this::exit);
    pen.open("lamps");
    for (double along : new double[] {0.35, wide - 0.75}) {
      pen.box(along, along + 0.4, at.under() + 0.6, at.under() + 1.2, 0.1, GLASS);
    }
    if (kind == RigKind.TRUCK_CAMPER) {
      Truck.rear(pen, wide);
    } else if (kind != RigKind.FOLDING_TRAILER) {
      pen.box(0.2, wide - 0.2, BUMPER - 0.25, BUMPER + 0.1, 0.1, PANEL);
    }
    pen.close();
  }

  private boolean onEnd(Gear gear) {
    return gear.place().spot().filter(s -> s.face() == Face.REAR).flatMap(Spot::across).isPresent();
  }

  private static Spot spot(Gear gear) {
    return gear.place().spot().orElseThrow();
  }

  private void ramp(Gear ramp) {
    double high = Math.min(at.roof() - 0.6, at.floor() + 7);
    pen.open(ramp.id());
    pen.box(0.4, wide - 0.4, at.floor(), high, 0.1, PANEL);
    List.of(1.2, wide - 1.2)
        .forEach(a -> pen.box(a - 0.3, a + 0.3, at.floor() - 0.1, at.floor() + 0.1, 0, PANEL));
    pen.close();
  }

  private void door(Gear door) {
    double from = spot(door).across().orElseThrow() - WallParts.DOOR_WIDE / 2;
    double high = Math.min(at.floor() + WallParts.DOOR_HIGH, at.roof() - 0.4);
    pen.open(door.id());
    pen.box(
        from, from + WallParts.DOOR_WIDE, at.floor(), high, 0.15, Outline.WALL.filled(Svg.WHITE));
    pen.box(from + 0.5, from + WallParts.DOOR_WIDE - 0.5, high - 1.9, high - 0.5, 0.1, GLASS);
    pen.close();
  }

  private void exit(Gear exit) {
    Optional<Double> up = spot(exit).up().filter(u -> u > at.floor() + WallParts.WINDOW_SILL);
    up.ifPresentOrElse(u -> window(exit, u), () -> door(exit));
  }

  private void window(Gear exit, double height) {
    double along = spot(exit).across().orElseThrow();
    double up = Plan.clamp(height, at.under() + 1, at.roof() - 1);
    pen.open(exit.id());
    pen.box(along - 1.3, along + 1.3, up - 0.7, up + 0.7, 0.2, GLASS);
    pen.close();
  }
}
