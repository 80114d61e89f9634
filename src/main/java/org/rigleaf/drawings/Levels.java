package org.rigleaf.drawings;

import java.util.stream.Stream;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;
import org.rigleaf.rig.Spot;

/**
 * How high the parts of a rig stand, in feet above the ground, as it stands in camp. The height is
 * the profile's where given; proportions of a usual rig of its kind fill in the rest and carry no
 * meaning of their own.
 *
 * @param top of the highest part of the rig
 * @param roof the skin of the roof
 * @param floor what one walks on inside
 * @param under the lower edge of the body
 * @param tire radius of a wheel
 * @param measured whether the profile gives the height
 */
record Levels(double top, double roof, double floor, double under, double tire, boolean measured) {
  private static final double LOWEST_ROOM = 4.5;

  static Levels of(Rig rig) {
    RigKind kind = rig.identity().kind();
    Fact height = rig.identity().height();
    double floor = floor(kind);
    double top = kind == RigKind.FOLDING_TRAILER ? raised(rig, floor) : tall(kind, height);
    double roof = Math.max(top - onRoof(rig), floor + LOWEST_ROOM);
    return new Levels(Math.max(top, roof), roof, floor, under(kind), tire(kind), height.known());
  }

  private static double tall(RigKind kind, Fact height) {
    return height.known() ? height.value() : usual(kind);
  }

  /** A folding trailer with its roof lifted: the height of the profile is the one it drives at. */
  private static double raised(Rig rig, double floor) {
    Fact inside = rig.identity().insideHeight();
    return floor + (inside.known() ? inside.value() : 6.5) + 0.5;
  }

  private static double usual(RigKind kind) {
    return switch (kind) {
      case CLASS_A -> 12.5;
      case FIFTH_WHEEL -> 12.8;
      case TOY_HAULER, TRUCK_CAMPER -> 11.5;
      case CLASS_B -> 9.3;
      default -> 10.8;
    };
  }

  private static double floor(RigKind kind) {
    return switch (kind) {
      case FIFTH_WHEEL, CLASS_A, TOY_HAULER -> 3;
      case TRUCK_CAMPER -> 3.4;
      case FOLDING_TRAILER, CLASS_B -> 1.9;
      default -> 2.4;
    };
  }

  private static double under(RigKind kind) {
    return switch (kind) {
      case FIFTH_WHEEL, TOY_HAULER -> 2;
      case TRUCK_CAMPER -> 3.1;
      case CLASS_B, FOLDING_TRAILER -> 1.2;
      default -> 1.5;
    };
  }

  private static double tire(RigKind kind) {
    return switch (kind) {
      case CLASS_A -> 1.6;
      case FOLDING_TRAILER -> 0.95;
      case TRAVEL_TRAILER -> 1.1;
      default -> 1.25;
    };
  }

  /** How far the highest part on the roof stands above it. */
  private static double onRoof(Rig rig) {
    return onRoof(rig, Stream.of(RoofPart.values())).max().orElse(0);
  }

  private static java.util.stream.DoubleStream onRoof(Rig rig, Stream<RoofPart> parts) {
    return parts
        .filter(p -> rig.gear().stream().anyMatch(g -> p.is(g) && placed(g)))
        .mapToDouble(RoofPart::high);
  }

  /** Gear on the roof with a measured spot, which is drawn. */
  static boolean placed(Gear gear) {
    return gear.place().spot().filter(s -> s.face() == Face.ROOF).flatMap(Spot::aft).isPresent();
  }
}
