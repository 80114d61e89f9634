package org.rigleaf.rig;

import static org.rigleaf.source.Unit.AMPERE_UNIT;
import static org.rigleaf.source.Unit.AWG;
import static org.rigleaf.source.Unit.FOOT;
import static org.rigleaf.source.Unit.HOUR_UNIT;
import static org.rigleaf.source.Unit.MINUTE_UNIT;
import static org.rigleaf.source.Unit.SHARE;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.List;
import java.util.Optional;

/**
 * Everything electric.
 *
 * <pre>
 * electric:
 *   shore: {service: 30 A, inlet: twist lock, cord: {length: 30 ft, gauge: 10 AWG}, at: street 19 ft}
 *   batteries: {type: flooded lead-acid, each: {voltage: 6 V, capacity: 215 Ah}, in-series: 2, strings: 1}
 *   loads: [{name: Microwave oven, on: 120 V, draws: 1350 W, runs: 15 min}]
 * </pre>
 *
 * @param shore the inlet and its cord
 * @param adapters adapters aboard
 * @param protector surge protector or full monitor ahead of the rig
 * @param breakers breakers of the panel, the main one named so
 * @param fuses 12 V fuses and what each feeds
 * @param panel the breaker and fuse panel
 * @param outlets outlets worth naming
 * @param batteries the house bank
 * @param otherBanks banks beside it, such as the engine battery
 * @param disconnect the battery switch
 * @param converter charger that makes 12 V from 120 V
 * @param solar panels and their controller
 * @param inverter makes 120 V from the bank
 * @param alternatorCharging charging from the engine
 * @param generator built-in or portable generator
 * @param transfer switch between shore and generator
 * @param loadShedding controller that cuts loads off by itself when the supply is small
 * @param batteryMonitor counts what goes into the bank and out of it
 * @param touchPanel panel of glass that switches things of the rig
 * @param loads what draws power and has no section of its own
 */
public record Electric(
    Optional<Shore> shore,
    List<Adapter> adapters,
    Optional<Protector> protector,
    List<Breaker> breakers,
    List<Fuse> fuses,
    Optional<Gear> panel,
    List<Outlet> outlets,
    Optional<BatteryBank> batteries,
    List<OtherBank> otherBanks,
    Optional<Disconnect> disconnect,
    Optional<Converter> converter,
    Optional<Solar> solar,
    Optional<Inverter> inverter,
    Optional<AlternatorCharging> alternatorCharging,
    Optional<Generator> generator,
    Optional<Transfer> transfer,
    Optional<LoadShedding> loadShedding,
    Optional<Gear> batteryMonitor,
    Optional<Gear> touchPanel,
    List<Load> loads) {

  static Electric read(Section s) {
    return new Electric(
        s.group("shore", Shore::read),
        s.items("adapters", "adapter", "from-post", Adapter::read),
        s.group("protector", Protector::read),
        s.items("breakers", "breaker", "name", Breaker::read),
        s.items("fuses", "fuse", "name", Fuse::read),
        s.group("panel", p -> p.gear(Letter.ELECTRICITY)),
        s.items("outlets", "outlet", "name", Outlet::read),
        s.group("batteries", BatteryBank::read),
        s.items("other-banks", "other bank", "name", OtherBank::read),
        s.group("disconnect", Disconnect::read),
        s.group("converter", Converter::read),
        s.group("solar", Solar::read),
        s.group("inverter", Inverter::read),
        s.group("alternator-charging", AlternatorCharging::read),
        s.group("generator", Generator::read),
        s.group("transfer", Transfer::read),
        s.group("load-shedding", LoadShedding::read),
        s.group("battery-monitor", m -> m.gear(Letter.ELECTRICITY)),
        s.group("touch-panel", p -> p.gear(Letter.ELECTRICITY)),
        s.items("loads", "load", "name", Load::read));
  }

  /** How the shore cord meets the rig. */
  public enum Inlet implements Choice {
    TWIST_LOCK,
    FIXED_CORD
  }

  /**
   * Shore power.
   *
   * @param service amperes of the inlet; 50 A has two legs of 120 V, anything else one
   */
  public record Shore(
      Gear gear,
      Fact service,
      Optional<Inlet> inlet,
      Optional<Cord> cord,
      Optional<Cord> extension) {
    static Shore read(Section s) {
      return new Shore(
          s.gear(Letter.ELECTRICITY),
          s.positive("service", AMPERE_UNIT),
          s.choice("inlet", Inlet.class),
          s.group("cord", Cord::read),
          s.group("extension", Cord::read));
    }
  }

  /**
   * A power cord.
   *
   * @param length feet, one way
   * @param gauge AWG number; 1/0 is written 0
   * @param rated amperes the cord may carry, if its jacket says so
   */
  public record Cord(Fact length, Fact gauge, Fact rated) {
    static Cord read(Section s) {
      return new Cord(
          s.positive("length", FOOT),
          s.between("gauge", AWG, 0, 18),
          s.positive("rated", AMPERE_UNIT));
    }
  }

  /** An adapter: the post it plugs into, the rig's plug it takes. */
  public record Adapter(
      String id, String name, Fact fromPost, Fact toRig, Fact rated, Place place) {
    static Adapter read(Section s) {
      return new Adapter(
          s.path(),
          s.name().orElse("adapter"),
          s.positive("from-post", AMPERE_UNIT),
          s.positive("to-rig", AMPERE_UNIT),
          s.positive("rated", AMPERE_UNIT),
          s.place());
    }
  }

  /** What a protector can do. */
  public enum ProtectorKind implements Choice {
    SURGE_ONLY,
    FULL
  }

  /** A protector; delay in minutes before it lets power through. */
  public record Protector(Gear gear, Optional<ProtectorKind> kind, Fact delay) {
    static Protector read(Section s) {
      return new Protector(
          s.gear(Letter.ELECTRICITY),
          s.choice("kind", ProtectorKind.class),
          s.notNegative("delay", MINUTE_UNIT));
    }
  }

  /** A breaker; the one named 'Main' limits the whole rig. */
  public record Breaker(String id, String name, Fact rating, List<Reference> feeds)
      implements Circuit {
    static Breaker read(Section s) {
      return new Breaker(
          s.path(),
          s.name().orElse("breaker"),
          s.positive("rating", AMPERE_UNIT),
          s.references("feeds"));
    }
  }

  /** A fuse of the 12 V side; its place if that is not the panel. */
  public record Fuse(String id, String name, Fact rating, List<Reference> feeds, Place place)
      implements Circuit {
    static Fuse read(Section s) {
      return new Fuse(
          s.path(),
          s.name().orElse("fuse"),
          s.positive("rating", AMPERE_UNIT),
          s.references("feeds"),
          s.place());
    }
  }

  /** An outlet worth naming; gfci: it guards others against shock. */
  public record Outlet(Gear gear, Answer gfci, List<Reference> protects) {
    static Outlet read(Section s) {
      return new Outlet(s.gear(Letter.ELECTRICITY), s.yes("gfci"), s.references("protects"));
    }
  }

  /**
   * A bank beside the house bank: the engine battery, or one of other volts; what it feeds.
   *
   * @param boost where the switch is that lends it the house bank
   */
  public record OtherBank(BatteryBank bank, List<Reference> feeds, Optional<String> boost) {
    static OtherBank read(Section s) {
      return new OtherBank(BatteryBank.read(s), s.references("feeds"), s.words("boost"));
    }
  }

  /** On or off. */
  public enum Switched implements Choice {
    ON,
    OFF
  }

  /** The battery switch: what it cuts, what stays live, how it stands on the road. */
  public record Disconnect(
      Gear gear, List<Reference> cuts, List<Reference> leaves, Optional<Switched> onTheRoad) {
    static Disconnect read(Section s) {
      return new Disconnect(
          s.gear(Letter.ELECTRICITY),
          s.references("cuts"),
          s.references("leaves"),
          s.choice("on-the-road", Switched.class));
    }
  }

  /** The converter: amperes out at 12 V, watts in at 120 V. */
  public record Converter(Gear gear, Fact output, Fact draws, Optional<String> charging) {
    static Converter read(Section s) {
      return new Converter(
          s.gear(Letter.ELECTRICITY),
          s.positive("output", AMPERE_UNIT),
          s.positive("draws", WATT_UNIT),
          s.words("charging"));
    }
  }

  /**
   * The inverter: watts it can give for hours, watts it takes when idle, what it feeds.
   *
   * @param on hours a day that it is switched on
   */
  public record Inverter(
      Gear gear,
      Fact output,
      Fact surge,
      Fact idle,
      Fact on,
      Fact efficiency,
      Fact fuse,
      List<Reference> feeds,
      Optional<String> switchPlace) {
    static Inverter read(Section s) {
      return new Inverter(
          s.gear(Letter.ELECTRICITY),
          s.positive("output", WATT_UNIT),
          s.positive("surge", WATT_UNIT),
          s.notNegative("idle", WATT_UNIT),
          s.between("on", HOUR_UNIT, 0, 24),
          s.between("efficiency", SHARE, 0.3, 1),
          s.positive("fuse", AMPERE_UNIT),
          s.references("feeds"),
          s.words("switch"));
    }
  }

  /** How the engine charges the house bank. */
  public enum EngineCharging implements Choice {
    DC_DC,
    DIRECT;

    @Override
    public String text() {
      return this == DC_DC ? "dc-dc" : "direct";
    }
  }

  /** Charging from the engine. */
  public record AlternatorCharging(Gear gear, Optional<EngineCharging> kind, Fact output) {
    static AlternatorCharging read(Section s) {
      return new AlternatorCharging(
          s.gear(Letter.ELECTRICITY),
          s.choice("kind", EngineCharging.class),
          s.positive("output", AMPERE_UNIT));
    }
  }

  /** How the transfer switch works. */
  public enum TransferKind implements Choice {
    AUTOMATIC,
    CORD_INTO_BOX
  }

  /** The transfer switch; delay in minutes. */
  public record Transfer(Gear gear, Optional<TransferKind> kind, Fact delay) {
    static Transfer read(Section s) {
      return new Transfer(
          s.gear(Letter.ELECTRICITY),
          s.choice("kind", TransferKind.class),
          s.notNegative("delay", MINUTE_UNIT));
    }
  }

  /** A load-shedding controller: what it cuts off, first to last. */
  public record LoadShedding(Gear gear, List<Reference> sheds) {
    static LoadShedding read(Section s) {
      return new LoadShedding(s.gear(Letter.ELECTRICITY), s.references("sheds"));
    }
  }
}
