package org.rigleaf.rig;

import static org.rigleaf.source.Unit.VOLT_UNIT;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.Optional;

/** Solar: count and watts of the panels, their voltage at the most power. */
public record Solar(
    Gear gear,
    Fact panels,
    Fact each,
    Optional<Controller> controller,
    Optional<Tilt> tilt,
    Fact vmp) {
  static Solar read(Section s) {
    Section.Several panels = s.several("panels", WATT_UNIT);
    return new Solar(
        s.gear(Letter.ELECTRICITY),
        panels.count(),
        panels.each(),
        s.choice("controller", Controller.class),
        s.choice("tilt", Tilt.class),
        s.positive("vmp", VOLT_UNIT));
  }

  /** Solar charge controller. */
  public enum Controller implements Choice {
    MPPT,
    PWM
  }

  /** How the panels lie. */
  public enum Tilt implements Choice {
    FLAT
  }
}
