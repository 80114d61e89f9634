package org.rigleaf.drawings;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.rigleaf.rig.Body;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Identity;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;
import org.rigleaf.rig.Spot;

/**
 * The rig in feet, as far as the plan needs it; typical proportions stand in for what nobody
 * measured, and then {@code toScale} is false.
 *
 * @param length from coupler, king pin or front bumper to rear bumper
 * @param width over the walls
 * @param starts where the body begins
 * @param ends where the body ends
 * @param streetSlides how far slides reach out on the street side
 * @param curbSlides the same on the curb side
 */
record Size(
    RigKind kind,
    double length,
    double width,
    double starts,
    double ends,
    double streetSlides,
    double curbSlides,
    boolean toScale) {
  private static final double TYPICAL_TONGUE_FT = 3.5;
  private static final double ROOM_BEHIND_LAST_GEAR_FT = 1;
  private static final double ROOM_BEHIND_LAST_AXLE_FT = 4;

  static Size of(Rig rig) {
    Identity id = rig.identity();
    double length = id.length().known() ? id.length().value() : typicalLength(rig);
    double width = id.width().known() ? id.width().value() : typicalWidth(id.kind());
    double starts = Math.min(starts(id, length), length / 2);
    double ends = id.bodyLength().known() ? starts + id.bodyLength().value() : length;
    boolean measured =
        id.length().known()
            && id.width().known()
            && (!id.kind().ballCoupled() || id.bodyStarts().known() || id.bodyLength().known());
    return new Size(
        id.kind(),
        length,
        width,
        starts,
        Math.min(length, ends),
        reach(rig, Face.STREET),
        reach(rig, Face.CURB),
        measured);
  }

  private static double starts(Identity id, double length) {
    if (id.bodyStarts().known()) {
      return id.bodyStarts().value();
    }
    if (!id.kind().ballCoupled()) {
      return 0;
    }
    return id.bodyLength().known()
        ? Math.max(0, length - id.bodyLength().value())
        : TYPICAL_TONGUE_FT;
  }

  private static double typicalLength(Rig rig) {
    double usual =
        switch (rig.identity().kind()) {
          case CLASS_A, FIFTH_WHEEL -> 32;
          case CLASS_C -> 26;
          case CLASS_B -> 20;
          case TRUCK_CAMPER -> 12;
          case FOLDING_TRAILER -> 16;
          default -> 23;
        };
    DoubleStream gear =
        rig.gear().stream()
            .flatMap(g -> g.place().spot().stream())
            .filter(s -> s.face() != Face.REAR)
            .flatMap(s -> s.aft().stream())
            .mapToDouble(a -> a + ROOM_BEHIND_LAST_GEAR_FT);
    DoubleStream axles =
        rig.identity().axles().stream()
            .filter(Fact::known)
            .mapToDouble(a -> a.value() + ROOM_BEHIND_LAST_AXLE_FT);
    return Math.max(usual, DoubleStream.concat(gear, axles).max().orElse(0));
  }

  private static double typicalWidth(RigKind kind) {
    return kind == RigKind.CLASS_B || kind == RigKind.FOLDING_TRAILER ? 6.8 : 8;
  }

  private static double reach(Rig rig, Face face) {
    return rig.body().slides().stream()
        .filter(s -> face(s.gear()).equals(Optional.of(face)) && room(s.gear(), sizes(s)))
        .mapToDouble(s -> s.depth().value())
        .max()
        .orElse(0);
  }

  private static List<Fact> sizes(Body.Slide slide) {
    return List.of(slide.width(), slide.depth());
  }

  private static Optional<Face> face(Gear gear) {
    return gear.place().spot().map(Spot::face);
  }

  /**
   * True if gear on a side wall has a measured spot and all these sizes, so that it has a shape.
   */
  static boolean room(Gear gear, List<Fact> sizes) {
    return gear.place()
            .spot()
            .filter(s -> s.face() == Face.STREET || s.face() == Face.CURB)
            .flatMap(Spot::aft)
            .isPresent()
        && sizes.stream().allMatch(Fact::known);
  }
}
