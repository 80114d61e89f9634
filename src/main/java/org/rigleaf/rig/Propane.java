package org.rigleaf.rig;

import static org.rigleaf.source.Unit.GALLON;
import static org.rigleaf.source.Unit.INCH;
import static org.rigleaf.source.Unit.POUND;
import static org.rigleaf.source.Unit.YEAR_UNIT;

import java.util.List;
import java.util.Optional;
import org.rigleaf.source.PartialDate;

/**
 * Propane. {@code propane: none} says that there is none; silence leaves it open, and the gas page
 * stays.
 *
 * <pre>
 * propane:
 *   cylinders: {count: 2, size: 20 lb, tare: 17.4 lb, made: 2019-03, changeover: automatic, at: front 0 ft 8 in}
 * </pre>
 */
public record Propane(
    List<Cylinder> cylinders,
    Optional<Tank> tank,
    Optional<Electric.Switched> onTheRoad,
    Optional<Gear> shutOff,
    Optional<Gear> outsideOutlet) {

  static Propane read(Section s) {
    return new Propane(
        s.counted("cylinders", "cylinder", "name", Cylinder::read),
        s.group("tank", Tank::read),
        s.choice("on-the-road", Electric.Switched.class),
        s.group("shut-off", p -> p.gear(Letter.PROPANE)),
        s.group("outside-outlet", p -> p.gear(Letter.PROPANE)));
  }

  /** How a full bottle takes over from an empty one. */
  public enum Changeover implements Choice {
    AUTOMATIC,
    LEVER,
    NONE
  }

  /** The last test of a cylinder, which sets the years to the next. */
  public enum LastTest implements Choice {
    MADE,
    VOLUMETRIC,
    PROOF,
    VISUAL
  }

  /**
   * A portable cylinder.
   *
   * @param size nominal pounds of propane
   * @param waterCapacity pounds of water, stamped WC on the collar
   * @param filledTo pounds the filler puts in, if less
   * @param tare pounds empty, stamped TW
   * @param made month stamped on the collar
   */
  public record Cylinder(
      Gear gear,
      Fact size,
      Fact waterCapacity,
      Fact filledTo,
      Fact tare,
      Optional<PartialDate> made,
      Optional<PartialDate> tested,
      Fact interval,
      Optional<Changeover> changeover) {
    static Cylinder read(Section s) {
      return new Cylinder(
          s.gear(Letter.PROPANE),
          s.positive("size", POUND),
          s.positive("water-capacity", POUND),
          s.positive("filled-to", POUND),
          s.positive("tare", POUND),
          s.date("made"),
          s.date("tested"),
          s.positive("test-interval", YEAR_UNIT),
          s.choice("changeover", Changeover.class));
    }
  }

  /** A tank built into the rig: pounds it takes, or its water gallons. */
  public record Tank(
      Gear gear, Fact holds, Fact waterGallons, Fact diameter, Fact length, Optional<Gear> valve) {
    static Tank read(Section s) {
      return new Tank(
          s.gear(Letter.PROPANE),
          s.positive("holds", POUND),
          s.positive("water-gallons", GALLON),
          s.positive("diameter", INCH),
          s.positive("length", INCH),
          s.group("valve", v -> v.gear(Letter.PROPANE)));
    }
  }
}
