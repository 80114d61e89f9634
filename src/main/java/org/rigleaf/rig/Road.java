package org.rigleaf.rig;

import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.FOOT;
import static org.rigleaf.source.Unit.GALLON;
import static org.rigleaf.source.Unit.INCH;
import static org.rigleaf.source.Unit.MILE;
import static org.rigleaf.source.Unit.MILE_PER_HOUR;
import static org.rigleaf.source.Unit.POUND;
import static org.rigleaf.source.Unit.PSI;

import java.util.List;
import java.util.Optional;
import org.rigleaf.source.PartialDate;

/**
 * Weights, tires, hitch, brakes, fuel.
 *
 * <pre>
 * road:
 *   weights: {gvwr: 6600 lb, cargo-label: 1550 lb, unloaded: 5050 lb}
 *   tires: [{axle: both, count: 4, size: ST205/75R14, pressure: 65 psi, made: week 14 of 2022}]
 * </pre>
 */
public record Road(
    Optional<Fuel> fuel,
    Optional<Weights> weights,
    List<Cargo> cargo,
    TravelsWith travelsWith,
    List<Tires> tires,
    Optional<Hitch> hitch,
    Optional<BrakeKind> brakes,
    Optional<Breakaway> breakaway,
    Optional<TowVehicle> towVehicle,
    Optional<Towed> towed,
    Optional<Gear> tireMonitor,
    Optional<Camera> camera,
    List<Fact> torqueChecks) {

  static Road read(Section s) {
    return new Road(
        s.group("fuel", Fuel::read),
        s.group("weights", Weights::read),
        s.items("cargo", "cargo", "what", Cargo::read),
        s.part("travels-with", TravelsWith::read),
        s.items("tires", "tires", "axle", Tires::read),
        s.group("hitch", Hitch::read),
        s.part("brakes", b -> b.choice("kind", BrakeKind.class)),
        s.group("breakaway", Breakaway::read),
        s.group("tow-vehicle", TowVehicle::read),
        s.group("towed", Towed::read),
        s.group("tire-monitor", m -> m.gear(Letter.ROAD)),
        s.group("camera", Camera::read),
        s.quantities("torque-checks", MILE));
  }

  /** The camera that looks back; its place is that of its screen. */
  public record Camera(Gear gear, Optional<String> switchPlace) {
    static Camera read(Section s) {
      return new Camera(s.gear(Letter.ROAD), s.words("switch"));
    }
  }

  /** Motor fuel. */
  public enum FuelKind implements Choice {
    GASOLINE,
    DIESEL
  }

  /** Motor fuel tank; the share at which the generator's pick-up is bare. */
  public record Fuel(Gear gear, Optional<FuelKind> kind, Fact holds, Fact generatorStopsAt) {
    static Fuel read(Section s) {
      return new Fuel(
          s.gear(Letter.ROAD),
          s.choice("kind", FuelKind.class),
          s.positive("holds", GALLON),
          s.share("generator-stops-at"));
    }
  }

  /** A motor vehicle's axle: its rating and its weight unloaded. */
  public record AxleWeight(Fact rating, Fact unloaded) {
    static AxleWeight read(Section s) {
      return new AxleWeight(s.positive("rating", POUND), s.positive("unloaded", POUND));
    }
  }

  /** What the unloaded weight counts in; by the US rule full propane, unless nothing. */
  public enum UnloadedWith implements Choice {
    LP,
    NOTHING
  }

  /** Label weights. */
  public record Weights(
      Fact gvwr,
      Fact gcwr,
      Fact cargoLabel,
      Fact unloaded,
      List<UnloadedWith> unloadedIncludes,
      Fact hitchUnloaded,
      List<Fact> axleRatings,
      AxleWeight front,
      AxleWeight rear) {
    static Weights read(Section s) {
      return new Weights(
          s.positive("gvwr", POUND),
          s.positive("gcwr", POUND),
          s.positive("cargo-label", POUND),
          s.positive("unloaded", POUND),
          s.choices("unloaded-includes", UnloadedWith.class),
          s.positive("hitch-unloaded", POUND),
          s.quantities("axle-ratings", POUND),
          s.part("front", AxleWeight::read),
          s.part("rear", AxleWeight::read));
    }
  }

  /** A piece of cargo that travels along. */
  public record Cargo(String id, String what, Fact weight, Place place) {
    static Cargo read(Section s) {
      return new Cargo(s.path(), s.name().orElse("cargo"), s.positive("weight", POUND), s.place());
    }
  }

  /** How full the tanks are on the road. */
  public record TravelsWith(Fact fresh, Fact black, Fact gray) {
    static TravelsWith read(Section s) {
      return new TravelsWith(s.share("fresh"), s.share("black"), s.share("gray"));
    }
  }

  /** Tires of one axle or of all alike. */
  public record Tires(
      String id,
      String axle,
      Fact count,
      Answer dual,
      Optional<String> size,
      Fact pressure,
      Fact carries,
      Optional<PartialDate> made,
      Fact speedMark,
      Optional<String> torque) {
    static Tires read(Section s) {
      return new Tires(
          s.path(),
          s.name().orElse("tires"),
          s.between("count", COUNT, 1, 12),
          s.yes("dual"),
          s.words("size"),
          s.positive("pressure", PSI),
          s.positive("carries", POUND),
          s.date("made"),
          s.positive("speed-mark", MILE_PER_HOUR),
          s.words("torque"));
    }
  }

  /** Bars between tow vehicle and tongue. */
  public enum Bar implements Choice {
    WEIGHT_DISTRIBUTION,
    FRICTION,
    NONE
  }

  /** The hitch: ball size, bars, chains. */
  public record Hitch(Fact ball, List<Bar> bars, Fact chains) {
    static Hitch read(Section s) {
      return new Hitch(
          s.positive("ball", INCH), s.choices("bars", Bar.class), s.between("chains", COUNT, 0, 4));
    }
  }

  /** Trailer brakes. */
  public enum BrakeKind implements Choice {
    ELECTRIC,
    SURGE,
    HYDRAULIC,
    AIR,
    NONE
  }

  /** Which battery feeds the breakaway switch. */
  public enum BreakawayBattery implements Choice {
    HOUSE,
    OWN
  }

  /** The breakaway switch. */
  public record Breakaway(Gear gear, Optional<BreakawayBattery> battery) {
    static Breakaway read(Section s) {
      return new Breakaway(s.gear(Letter.ROAD), s.choice("battery", BreakawayBattery.class));
    }
  }

  /**
   * The tow vehicle, or the truck that carries a camper.
   *
   * @param weighs pounds, full of fuel and empty of people and load
   * @param rearWeighs the rear axle on a scale with people and load aboard, nothing hitched
   * @param overhang from the rear axle back to the ball
   */
  public record TowVehicle(
      Optional<String> name,
      Fact gvwr,
      Fact combinedRating,
      Fact weighs,
      Fact payloadLabel,
      Fact hitchRating,
      Fact people,
      Fact bedCargo,
      Fact hitchHardware,
      Fact rearRating,
      Fact rearWeighs,
      Fact length,
      Fact height,
      Fact wheelbase,
      Fact overhang,
      Optional<String> brakeController) {
    static TowVehicle read(Section s) {
      Fact[] rear =
          s.part(
              "rear-axle",
              r -> new Fact[] {r.positive("rating", POUND), r.positive("weighs", POUND)});
      return new TowVehicle(
          s.words("name"),
          s.positive("gvwr", POUND),
          s.positive("combined-rating", POUND),
          s.positive("weighs", POUND),
          s.positive("payload-label", POUND),
          s.positive("hitch-rating", POUND),
          s.notNegative("people", POUND),
          s.notNegative("bed-cargo", POUND),
          s.notNegative("hitch-hardware", POUND),
          rear[0],
          rear[1],
          s.positive("length", FOOT),
          s.between("height", FOOT, 3, 15),
          s.positive("wheelbase", FOOT),
          s.notNegative("overhang", FOOT),
          s.words("brake-controller"));
    }
  }

  /**
   * What a motorhome tows: a car on its own wheels, or a trailer that rests on the hitch.
   *
   * @param setting how the car's manual sets gear and key for the road
   */
  public record Towed(
      Gear gear,
      Fact weighs,
      Fact hitchWeight,
      Fact length,
      Optional<BrakeKind> brakes,
      Optional<String> setting) {
    /** A trailer presses on the hitch; a car on its own wheels does not. */
    public boolean onItsOwnWheels() {
      return !hitchWeight.known() || hitchWeight.value() == 0;
    }

    static Towed read(Section s) {
      return new Towed(
          s.gear(Letter.ROAD),
          s.positive("weighs", POUND),
          s.notNegative("hitch-weight", POUND),
          s.positive("length", FOOT),
          s.choice("brakes", BrakeKind.class),
          s.words("setting"));
    }
  }
}
