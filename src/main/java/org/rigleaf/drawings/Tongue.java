package org.rigleaf.drawings;

import java.util.List;
import java.util.stream.Stream;
import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Propane;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/** Draws what a trailer carries ahead of its body: frame, coupler, jack, cylinders. */
final class Tongue {
  private static final double FRAME = 1.5;
  private static final double DEEP = 0.4;
  private static final double CYLINDER_WIDE = 1;
  private static final double CYLINDER_HIGH = 1.7;
  private static final double POST = 2.9;

  /** Where the middle of a cylinder is, in feet above the ground. */
  static final double CYLINDER = FRAME + CYLINDER_HIGH / 2;

  static final double JACK_HEAD = POST - 0.1;
  private static final Look LIGHT = Outline.PART.filled(Svg.WHITE);

  private final Pen pen;
  private final Rig rig;
  private final Size size;

  Tongue(Pen pen, Rig rig, Size size) {
    this.pen = pen;
    this.rig = rig;
    this.size = size;
  }

  void beside() {
    pen.open("frame");
    pen.box(0.3, size.starts() + 0.6, FRAME - DEEP, FRAME, 0, LIGHT);
    pen.path(
        LIGHT,
        Path.from(0.9, FRAME - 0.3)
            .to(0.9, FRAME + 0.15)
            .to(0.2, FRAME + 0.3)
            .bend(0, FRAME + 0.2, 0, FRAME - 0.3)
            .close());
    pen.close();
    cylinders().forEach(this::cylinder);
    jack();
  }

  /** From the front: the A-frame end on, the coupler in its middle. */
  void front() {
    double middle = size.width() / 2;
    double half = size.width() * 0.32;
    pen.open("frame");
    pen.box(middle - half, middle + half, FRAME - DEEP, FRAME, 0, LIGHT);
    cylinders().forEach(this::cylinderAcross);
    pen.box(middle - 0.25, middle + 0.25, FRAME - 0.35, FRAME + 0.3, 0.12, LIGHT);
    pen.close();
    if (rig.body().tongueJack().isPresent()) {
      post(middle + 0.01);
    }
  }

  private void jack() {
    if (rig.body().tongueJack().isPresent()) {
      Fact aft = rig.identity().jack();
      double usual = Math.min(1.2, size.starts() / 2);
      post(Plan.clamp(aft.known() ? aft.value() : usual, 0, size.starts()));
    }
  }

  private void post(double along) {
    pen.open("jack");
    pen.box(along - 0.12, along + 0.12, 0.12, POST, 0, LIGHT);
    pen.box(along - 0.22, along + 0.22, POST - 0.4, POST + 0.2, 0.1, LIGHT);
    pen.box(along - 0.4, along + 0.4, 0, 0.14, 0, LIGHT);
    pen.close();
  }

  /** Propane containers that stand ahead of the body by a measured place. */
  private List<Spot> cylinders() {
    Stream<Gear> gear =
        rig.propane().stream().flatMap(p -> p.cylinders().stream()).map(Propane.Cylinder::gear);
    return gear.flatMap(g -> g.place().spot().stream())
        .filter(s -> s.face() == Face.FRONT)
        .filter(s -> s.aft().filter(a -> a < size.starts()).isPresent())
        .toList();
  }

  private void cylinder(Spot spot) {
    bottle(spot.aft().orElseThrow());
  }

  private void cylinderAcross(Spot spot) {
    bottle(spot.across().orElse(size.width() / 2));
  }

  private void bottle(double middle) {
    double left = middle - CYLINDER_WIDE / 2;
    pen.open("propane.cylinders");
    pen.box(left, left + CYLINDER_WIDE, FRAME, FRAME + CYLINDER_HIGH - 0.3, 0.3, LIGHT);
    pen.box(left + 0.2, left + 0.8, FRAME + CYLINDER_HIGH - 0.3, FRAME + CYLINDER_HIGH, 0.1, LIGHT);
    pen.close();
  }
}
