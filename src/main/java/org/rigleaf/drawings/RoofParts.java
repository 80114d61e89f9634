package org.rigleaf.drawings;

import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/** Draws what stands on the roof, where the profile gives its place. */
final class RoofParts {
  private static final double ACROSS = 2.4;

  private final Pen pen;
  private final Rig rig;
  private final Levels at;

  RoofParts(Pen pen, Rig rig, Levels at) {
    this.pen = pen;
    this.rig = rig;
    this.at = at;
  }

  void beside() {
    placed().forEach(g -> draw(g, spot(g).aft().orElseThrow(), 1));
  }

  /** From an end; several of a kind that stand behind each other are drawn once. */
  void across() {
    double middle = Size.of(rig).width() / 2;
    placed().forEach(g -> draw(g, spot(g).across().orElse(middle), 0));
  }

  private void draw(Gear gear, double along, double beside) {
    RoofPart part = RoofPart.of(gear).orElseThrow();
    double wide = beside > 0 ? part.length() : Math.min(part.length(), ACROSS);
    part.draw(pen, along, at.roof(), wide);
  }

  private java.util.stream.Stream<Gear> placed() {
    return rig.gear().stream().filter(g -> RoofPart.of(g).isPresent() && Levels.placed(g));
  }

  private static Spot spot(Gear gear) {
    return gear.place().spot().orElseThrow();
  }
}
