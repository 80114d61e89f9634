package org.rigleaf.drawings;

import org.rigleaf.rig.Body;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;

/** Draws a long side of the rig, seen square on, as it stands in camp. */
final class SideElevation {
  private final Pen pen;
  private final Rig rig;
  private final boolean street;

  SideElevation(Svg svg, Board board, Rig rig, boolean street) {
    this.pen = new Pen(svg, board);
    this.rig = rig;
    this.street = street;
  }

  void draw() {
    Levels levels = Levels.of(rig);
    Size size = Size.of(rig);
    new RoofParts(pen, rig, levels).beside();
    switch (rig.identity().kind()) {
      case CLASS_A -> new Motorhomes(pen, size, levels).classA();
      case CLASS_B -> new Motorhomes(pen, size, levels).van();
      case CLASS_C -> new Motorhomes(pen, size, levels).classC();
      case TRUCK_CAMPER -> new Truck(pen, size, levels).camper();
      case FIFTH_WHEEL -> new Towables(pen, size, levels).fifthWheel(Nose.ends(rig));
      case FOLDING_TRAILER -> new FoldingTrailer(pen, rig, size, levels).draw();
      case TRAVEL_TRAILER, TOY_HAULER -> new Towables(pen, size, levels).trailer();
    }
    if (rig.identity().kind().ballCoupled()) {
      new Tongue(pen, rig, size).beside();
    }
    if (rig.identity().kind() != RigKind.TRUCK_CAMPER) { // it rides on the truck's
      new Wheels(pen, levels.tire()).beside(rig);
    }
    new WallParts(pen, rig, levels, street).draw();
    pen.line(-ahead(rig), 0, size.length() + behind(rig), 0, Outline.PART);
  }

  /** How far the drawing reaches ahead of the rig's own length, in feet: a truck, a bed end. */
  static double ahead(Rig rig) {
    return rig.identity().kind() == RigKind.TRUCK_CAMPER
        ? Truck.AHEAD
        : Math.max(0, FoldingTrailer.reach(rig, true) - Size.of(rig).starts());
  }

  /** How far it reaches behind it. */
  static double behind(Rig rig) {
    return rig.identity().kind() == RigKind.TRUCK_CAMPER
        ? Truck.behind(Size.of(rig))
        : FoldingTrailer.reach(rig, false);
  }

  /** The side that the entry door is on; the curb side if nobody said. */
  static boolean doorOnStreet(Rig rig) {
    return rig.body().door().map(d -> WallParts.onWall(d, true)).orElse(false);
  }

  /** Whether a room is pushed out at this side. */
  static boolean slides(Rig rig, boolean street) {
    return rig.body().slides().stream()
        .map(Body.Slide::gear)
        .anyMatch(g -> WallParts.onWall(g, street));
  }
}
