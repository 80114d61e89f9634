package org.rigleaf.rig;

import static org.rigleaf.source.Unit.AMPERE_HOUR;
import static org.rigleaf.source.Unit.AMPERE_UNIT;
import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.SHARE;
import static org.rigleaf.source.Unit.VOLT_UNIT;

import java.util.Optional;

/**
 * The house bank.
 *
 * @param voltage volts of one battery
 * @param capacity Ah of one battery
 * @param ratedHours hours of the discharge at which the Ah hold
 * @param inSeries batteries in one string
 * @param strings strings side by side
 * @param usable share of the energy one may take out, if the keeper sets it
 * @param peukert exponent of the loss at high current, from the maker's sheet
 */
public record BatteryBank(
    Gear gear,
    Optional<Chemistry> type,
    Fact voltage,
    Fact capacity,
    Fact ratedHours,
    Fact inSeries,
    Fact strings,
    Answer inside,
    Answer heated,
    Fact chargeLimit,
    Fact dischargeLimit,
    Fact usable,
    Fact peukert) {
  static BatteryBank read(Section s) {
    Gear gear = s.gear(Letter.ELECTRICITY);
    Each each = s.part("each", Each::read);
    return new BatteryBank(
        gear,
        s.choice("type", Chemistry.class),
        each.voltage(),
        each.capacity(),
        each.ratedHours(),
        s.between("in-series", COUNT, 1, 24),
        s.between("strings", COUNT, 1, 24),
        s.yes("inside"),
        s.yes("heated"),
        s.positive("charge-limit", AMPERE_UNIT),
        s.positive("discharge-limit", AMPERE_UNIT),
        s.between("usable", SHARE, 0.01, 1),
        s.bare("peukert", COUNT, 1, 1.5));
  }

  private record Each(Fact voltage, Fact capacity, Fact ratedHours) {
    static Each read(Section s) {
      return new Each(
          s.positive("voltage", VOLT_UNIT),
          s.positive("capacity", AMPERE_HOUR),
          s.positive("rated-hours", COUNT));
    }
  }

  /** Battery chemistry. */
  public enum Chemistry implements Choice {
    FLOODED_LEAD_ACID,
    AGM,
    GEL,
    LITHIUM;

    @Override
    public String text() {
      return this == FLOODED_LEAD_ACID ? "flooded lead-acid" : Choice.super.text();
    }

    /** True for all lead batteries. */
    public boolean lead() {
      return this != LITHIUM;
    }
  }
}
