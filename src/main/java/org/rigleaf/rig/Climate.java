package org.rigleaf.rig;

import static org.rigleaf.source.Unit.BTU_PER_HOUR;
import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.DEGREE;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.List;
import java.util.Optional;

/**
 * Heat, cooling and kitchen.
 *
 * <pre>
 * climate:
 *   furnace: {input: 25000 Btu/h, blower: 5 A, at: curb 13 ft, thermostat: {where: beside the door}}
 *   refrigerator: {kind: absorption, tilt-limit: {side: 3 deg, long: 6 deg}, runs-on: [lp, 120 V], burner: 1200 Btu/h}
 * </pre>
 */
public record Climate(
    Optional<Furnace> furnace,
    List<AirConditioner> airConditioners,
    Optional<Refrigerator> refrigerator,
    Optional<Range> range,
    Optional<Gear> rangeHood,
    Optional<Gear> outsideKitchen,
    List<VentFan> ventFans,
    Optional<Gear> radiantHeater,
    Optional<Gear> dashAir) {

  static Climate read(Section s) {
    return new Climate(
        s.group("furnace", Furnace::read),
        s.items("air-conditioners", "air conditioner", "name", AirConditioner::read),
        s.group("refrigerator", Refrigerator::read),
        s.group("range", Range::read),
        s.group("range-hood", h -> h.gear(Letter.CLIMATE)),
        s.group("outside-kitchen", k -> k.gear(Letter.CLIMATE)),
        s.items("vent-fans", "vent fan", "name", VentFan::read),
        s.group("radiant-heater", h -> h.gear(Letter.CLIMATE)),
        s.group("dash-air", a -> a.gear(Letter.CLIMATE)));
  }

  /** How a furnace gives its heat. */
  public enum FurnaceKind implements Choice {
    DUCTED,
    WALL,
    AIR_HEATER,
    COMBINATION,
    HYDRONIC
  }

  /** What a furnace burns. */
  public enum FurnaceFuel implements Choice {
    LP,
    DIESEL,
    GASOLINE
  }

  /**
   * The furnace.
   *
   * @param fuel empty if nobody said; {@link #burns} then says propane, as of the usual furnace
   * @param input Btu/h that it burns
   * @param output Btu/h that reach the room, where the maker gives that
   */
  public record Furnace(
      Gear gear,
      Optional<FurnaceKind> kind,
      Optional<FurnaceFuel> fuel,
      Fact input,
      Fact output,
      Fact blower,
      Optional<Gear> thermostat) {
    /** True if it burns this. */
    public boolean burns(FurnaceFuel what) {
      return fuel.orElse(FurnaceFuel.LP) == what;
    }

    static Furnace read(Section s) {
      return new Furnace(
          s.gear(Letter.CLIMATE),
          s.choice("kind", FurnaceKind.class),
          s.choice("fuel", FurnaceFuel.class),
          s.positive("input", BTU_PER_HOUR),
          s.positive("output", BTU_PER_HOUR),
          s.draw("blower"),
          s.group("thermostat", t -> t.gear(Letter.CLIMATE)));
    }
  }

  /** How an air conditioner can give heat as well. */
  public enum Warmth implements Choice {
    HEAT_PUMP,
    STRIP
  }

  /** An air conditioner; cooling in Btu/h, running and starting watts. */
  public record AirConditioner(
      Gear gear,
      Fact cools,
      Fact draws,
      Fact starts,
      Optional<Warmth> warms,
      Answer softStarter,
      Answer continuous,
      Optional<Load.Leg> leg) {
    static AirConditioner read(Section s) {
      return new AirConditioner(
          s.gear(Letter.CLIMATE),
          s.positive("cools", BTU_PER_HOUR),
          s.draw("draws"),
          s.positive("starts", WATT_UNIT),
          s.choice("warms", Warmth.class),
          s.yes("soft-starter"),
          s.yes("continuous"),
          s.choice("leg", Load.Leg.class));
    }
  }

  /** Refrigerator kinds: three kinds share one word and want three routines. */
  public enum RefrigeratorKind implements Choice {
    ABSORPTION,
    COMPRESSOR,
    HOUSEHOLD
  }

  /** What a refrigerator runs on. */
  public enum RefrigeratorSupply implements Choice {
    LP("lp"),
    MAINS("120 V"),
    BATTERY("12 V");

    private final String text;

    RefrigeratorSupply(String text) {
      this.text = text;
    }

    @Override
    public String text() {
      return text;
    }
  }

  /** The refrigerator; tilt limits in degrees sideways and lengthways. */
  public record Refrigerator(
      Gear gear,
      Optional<RefrigeratorKind> kind,
      List<RefrigeratorSupply> runsOn,
      Fact element,
      Fact burner,
      Fact draws,
      Fact tiltSide,
      Fact tiltLong,
      Optional<Gear> outsidePanel) {
    static Refrigerator read(Section s) {
      Gear gear = s.gear(Letter.CLIMATE);
      Tilt tilt = s.part("tilt-limit", Tilt::read);
      return new Refrigerator(
          gear,
          s.choice("kind", RefrigeratorKind.class),
          s.choices("runs-on", RefrigeratorSupply.class),
          s.positive("element", WATT_UNIT),
          s.positive("burner", BTU_PER_HOUR),
          s.draw("draws"),
          tilt.side(),
          tilt.along(),
          s.group("outside-panel", p -> p.gear(Letter.CLIMATE)));
    }

    private record Tilt(Fact side, Fact along) {
      static Tilt read(Section s) {
        return new Tilt(s.between("side", DEGREE, 0.5, 15), s.between("long", DEGREE, 0.5, 15));
      }
    }
  }

  /** A fan in the roof or wall that moves air out or in. */
  public record VentFan(Gear gear, Optional<String> switchPlace) {
    static VentFan read(Section s) {
      return new VentFan(s.gear(Letter.CLIMATE), s.words("switch"));
    }
  }

  /** How a burner is lit. */
  public enum LitBy implements Choice {
    SPARK,
    MATCH,
    PILOT
  }

  /** The range. */
  public record Range(Gear gear, Fact burners, Fact burner, Answer oven, Optional<LitBy> litBy) {
    static Range read(Section s) {
      return new Range(
          s.gear(Letter.CLIMATE),
          s.between("burners", COUNT, 1, 6),
          s.positive("burner", BTU_PER_HOUR),
          s.yes("oven"),
          s.choice("lit-by", LitBy.class));
    }
  }
}
