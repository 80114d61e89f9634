package org.rigleaf.rig;

import static org.rigleaf.source.Unit.GALLON;
import static org.rigleaf.source.Unit.GALLON_PER_MINUTE;

import java.util.List;
import java.util.Optional;

/**
 * Toilet, waste tanks and their outlet.
 *
 * <pre>
 * waste:
 *   black: {holds: 30 gal, at: under 18 ft, flush-inlet: {at: street 18 ft}, handle: {at: street 17 ft, opens: pull}}
 *   gray: [{name: main, holds: 38 gal, drains: [kitchen, bath], handle: {at: street 17 ft 6 in, opens: pull}}]
 * </pre>
 */
public record Waste(
    Optional<Toilet> toilet,
    Optional<Black> black,
    List<Gray> gray,
    Optional<Gear> outlet,
    Optional<Macerator> macerator,
    List<Gear> traps,
    Optional<Monitor> monitor) {

  static Waste read(Section s) {
    return new Waste(
        s.group("toilet", Toilet::read),
        s.group("black", Black::read),
        s.items("gray", "gray", "name", Gray::read),
        s.group("outlet", o -> o.gear(Letter.DRAINS)),
        s.group("macerator", Macerator::read),
        s.items("traps", "trap", "name", t -> t.gear(Letter.DRAINS)),
        s.group("monitor", Monitor::read));
  }

  /**
   * The pump that grinds what the tanks hold and sends it through a thin hose; where its switch is.
   */
  public record Macerator(Gear gear, Optional<String> switchAt) {
    static Macerator read(Section s) {
      return new Macerator(s.gear(Letter.DRAINS), s.words("switch"));
    }
  }

  /** Toilet kinds. */
  public enum ToiletKind implements Choice {
    GRAVITY_FLUSH,
    MACERATING,
    VACUUM,
    CASSETTE,
    COMPOSTING,
    PORTABLE
  }

  /** The toilet; flush in gallons; a cassette or portable one holds its own waste. */
  public record Toilet(Gear gear, Optional<ToiletKind> kind, Fact flush, Fact holds) {
    static Toilet read(Section s) {
      return new Toilet(
          s.gear(Letter.DRAINS),
          s.choice("kind", ToiletKind.class),
          s.positive("flush", GALLON),
          s.positive("holds", GALLON));
    }
  }

  /** How a dump valve opens. */
  public enum Opens implements Choice {
    PULL,
    TURN,
    ELECTRIC
  }

  /** The handle of a dump valve. */
  public record Handle(Gear gear, Optional<Opens> opens) {
    static Handle read(Section s) {
      return new Handle(s.gear(Letter.DRAINS), s.choice("opens", Opens.class));
    }
  }

  /** The inlet that rinses the black tank; flow at the site's tap. */
  public record FlushInlet(Gear gear, Fact flow) {
    static FlushInlet read(Section s) {
      return new FlushInlet(s.gear(Letter.DRAINS), s.positive("flow", GALLON_PER_MINUTE));
    }
  }

  /** The black tank. */
  public record Black(
      Gear gear, Fact holds, Optional<FlushInlet> flushInlet, Optional<Handle> handle) {
    static Black read(Section s) {
      return new Black(
          s.gear(Letter.DRAINS),
          s.positive("holds", GALLON),
          s.group("flush-inlet", FlushInlet::read),
          s.group("handle", Handle::read));
    }
  }

  /** Where waste water comes from. */
  public enum Drain implements Choice {
    KITCHEN,
    BATH
  }

  /** A gray tank and what drains into it. */
  public record Gray(Gear gear, Fact holds, List<Drain> drains, Optional<Handle> handle) {
    static Gray read(Section s) {
      return new Gray(
          s.gear(Letter.DRAINS),
          s.positive("holds", GALLON),
          s.choices("drains", Drain.class),
          s.group("handle", Handle::read));
    }
  }

  /** The panel that shows the tanks: its lamps, and what they mean, in sentences. */
  public record Monitor(Gear gear, List<String> lamps, List<String> lampsMean) {
    static Monitor read(Section s) {
      return new Monitor(s.gear(Letter.DRAINS), s.list("lamps"), s.list("lamps-mean"));
    }
  }
}
