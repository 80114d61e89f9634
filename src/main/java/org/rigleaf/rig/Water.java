package org.rigleaf.rig;

import static org.rigleaf.source.Unit.BTU_PER_HOUR;
import static org.rigleaf.source.Unit.FAHRENHEIT;
import static org.rigleaf.source.Unit.GALLON;
import static org.rigleaf.source.Unit.GALLON_PER_MINUTE;
import static org.rigleaf.source.Unit.SHARE;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Fresh and hot water.
 *
 * <pre>
 * water:
 *   fresh: {holds: 42 gal, at: under 12 ft}
 *   heater: {kind: storage, holds: 6 gal, fuel: [lp, electric], burner: 12000 Btu/h, element: 1440 W}
 * </pre>
 */
public record Water(
    Optional<Gear> cityInlet,
    Optional<Fill> fill,
    Optional<Fresh> fresh,
    Optional<Pump> pump,
    Optional<Gear> handPump,
    Optional<Filter> filter,
    Optional<Heater> heater,
    Optional<Winterizing> winterizing,
    Optional<Gear> outsideShower,
    List<Appliance> appliances,
    Optional<TankHeaters> tankHeaters,
    Fact lines) {

  static Water read(Section s) {
    return new Water(
        s.group("city-inlet", c -> c.gear(Letter.WATER)),
        s.group("fill", Fill::read),
        s.group("fresh", Fresh::read),
        s.group("pump", Pump::read),
        s.group("hand-pump", p -> p.gear(Letter.WATER)),
        s.group("filter", Filter::read),
        s.group("heater", Heater::read),
        s.group("winterizing", Winterizing::read),
        s.group("outside-shower", c -> c.gear(Letter.WATER)),
        s.items("appliances", "appliance", "name", Appliance::read),
        s.group("tank-heaters", TankHeaters::read),
        s.positive("lines", GALLON));
  }

  /** What takes water by a hose or pipe of its own. */
  public enum ApplianceKind implements Choice {
    WASHER,
    ICE_MAKER,
    DISHWASHER,
    FILTER_TAP
  }

  /** A machine on the water pipes, and the valve that shuts its water off. */
  public record Appliance(Gear gear, Optional<ApplianceKind> kind, Optional<Gear> shutOff) {
    static Appliance read(Section s) {
      return new Appliance(
          s.gear(Letter.WATER),
          s.choice("kind", ApplianceKind.class),
          s.group("shut-off", v -> v.gear(Letter.WATER)));
    }
  }

  /** Heat pads under tanks and along pipes. */
  public record TankHeaters(Gear gear, Optional<String> switchPlace) {
    static TankHeaters read(Section s) {
      return new TankHeaters(s.gear(Letter.WATER), s.words("switch"));
    }
  }

  /** How the fresh tank is filled. */
  public enum FillStyle implements Choice {
    GRAVITY,
    PRESSURE
  }

  /** The filler; a pressure fill has a valve with named positions; flow at the site's tap. */
  public record Fill(Gear gear, Optional<FillStyle> style, Fact flow, Optional<Valve> valve) {
    static Fill read(Section s) {
      return new Fill(
          s.gear(Letter.WATER),
          s.choice("style", FillStyle.class),
          s.positive("flow", GALLON_PER_MINUTE),
          s.group("valve", Valve::read));
    }
  }

  /**
   * A valve whose positions have names on the panel; the page prints the position of each use.
   *
   * @param winter the position that draws antifreeze from a jug
   */
  public record Valve(
      Gear gear,
      List<String> positions,
      Optional<String> city,
      Optional<String> filling,
      Optional<String> tank,
      Optional<String> winter) {
    static Valve read(Section s) {
      return new Valve(
          s.gear(Letter.WATER),
          s.list("positions"),
          s.words("for-city"),
          s.words("for-filling"),
          s.words("for-tank"),
          s.words("for-winter"));
    }

    /** True if one of its positions lets the pump draw antifreeze from a jug. */
    public boolean drawsFromJug() {
      return winter().isPresent()
          || positions().stream().anyMatch(p -> p.toLowerCase(Locale.ROOT).contains("winter"));
    }
  }

  /** The fresh tank. */
  public record Fresh(Gear gear, Fact holds) {
    static Fresh read(Section s) {
      return new Fresh(s.gear(Letter.WATER), s.positive("holds", GALLON));
    }
  }

  /** The pump and its switches. */
  public record Pump(Gear gear, Fact flow, Fact draws, List<String> switches) {
    static Pump read(Section s) {
      return new Pump(
          s.gear(Letter.WATER),
          s.positive("flow", GALLON_PER_MINUTE),
          s.draw("draws"),
          s.list("switches"));
    }
  }

  /** The water filter. */
  public record Filter(Gear gear, Optional<String> style, Answer bypass) {
    static Filter read(Section s) {
      return new Filter(s.gear(Letter.WATER), s.words("style"), s.yes("bypass"));
    }
  }

  /** How a water heater works. */
  public enum HeaterKind implements Choice {
    STORAGE,
    ON_DEMAND,
    COMBINATION,
    HYDRONIC;

    @Override
    public String text() {
      return this == ON_DEMAND ? "on-demand" : Choice.super.text();
    }
  }

  /** What a water heater runs on. */
  public enum HeaterFuel implements Choice {
    LP,
    ELECTRIC,
    ENGINE,
    DIESEL
  }

  /**
   * Valves that lead water round the heater, and how their handles stand for use and for winter.
   */
  public record Bypass(Gear gear, Optional<String> normal, Optional<String> winter) {
    static Bypass read(Section s) {
      return new Bypass(s.gear(Letter.WATER), s.words("normal"), s.words("winter"));
    }
  }

  /** The water heater: burner in Btu/h, element in watts, set point in degF, least flow in gpm. */
  public record Heater(
      Gear gear,
      Optional<HeaterKind> kind,
      Fact holds,
      List<HeaterFuel> fuel,
      Fact burner,
      Fact element,
      Fact setPoint,
      Fact leastFlow,
      Fact efficiency,
      Answer anode,
      Optional<Bypass> bypass,
      Optional<String> switches) {
    static Heater read(Section s) {
      return new Heater(
          s.gear(Letter.WATER),
          s.choice("kind", HeaterKind.class),
          s.positive("holds", GALLON),
          s.choices("fuel", HeaterFuel.class),
          s.positive("burner", BTU_PER_HOUR),
          s.positive("element", WATT_UNIT),
          s.between("set-point", FAHRENHEIT, 90, 190),
          s.between("least-flow", GALLON_PER_MINUTE, 0.1, 3),
          s.between("efficiency", SHARE, 0.3, 1),
          s.yes("anode"),
          s.group("bypass", Bypass::read),
          s.words("switches"));
    }
  }

  /** What helps against frost: an antifreeze pick-up hose, low-point drains. */
  public record Winterizing(Answer siphon, List<Gear> lowPoints) {
    static Winterizing read(Section s) {
      return new Winterizing(
          s.yes("siphon"), s.items("low-points", "low point", "name", p -> p.gear(Letter.WATER)));
    }
  }
}
