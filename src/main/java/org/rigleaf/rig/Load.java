package org.rigleaf.rig;

import static org.rigleaf.source.Unit.HOUR_UNIT;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.Optional;

/**
 * Something that draws power.
 *
 * @param kind what it is, if it asks for steps of its own
 * @param draws watts, or amperes at its own supply
 * @param runs hours a day
 * @param continuous runs three hours or more at a stretch
 * @param starts watts while a motor starts
 */
public record Load(
    String id,
    String name,
    Optional<Kind> kind,
    Optional<Supply> on,
    Fact draws,
    Fact runs,
    Optional<When> when,
    Answer continuous,
    Fact starts,
    Optional<Leg> leg,
    Place place,
    Optional<String> note) {
  static Load read(Section s) {
    return new Load(
        s.path(),
        s.name().orElse("load"),
        s.choice("kind", Kind.class),
        s.choice("on", Supply.class),
        s.draw("draws"),
        s.between("runs", HOUR_UNIT, 0, 24),
        s.choice("when", When.class),
        s.yes("continuous"),
        s.positive("starts", WATT_UNIT),
        s.choice("leg", Leg.class),
        s.place(),
        s.words("note"));
  }

  /** The supply a load runs on. */
  public enum Supply implements Choice {
    MAINS("120 V"),
    BATTERY("12 V");

    private final String text;

    Supply(String text) {
      this.text = text;
    }

    @Override
    public String text() {
      return text;
    }
  }

  /** When a load runs. */
  public enum When implements Choice {
    MORNING,
    DAY,
    EVENING,
    NIGHT,
    ALWAYS
  }

  /** The leg of a two-leg panel. */
  public enum Leg implements Choice {
    A,
    B
  }

  /** Loads that ask for steps of their own. */
  public enum Kind implements Choice {
    MICROWAVE,
    INDUCTION,
    PLUG_HEATER,
    TELEVISION
  }
}
