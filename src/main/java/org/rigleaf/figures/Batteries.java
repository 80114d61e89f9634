package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.AMPERE_HOUR;
import static org.rigleaf.source.Unit.VOLT_UNIT;
import static org.rigleaf.source.Unit.WATT_HOUR;

import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Rig;

/** The house bank: volts, amp-hours, energy, what of it may be used. */
final class Batteries {
  static final Entry VOLTAGE =
      Entry.of("bank.voltage", VOLT_UNIT, SECOND_DERIVATION, "batteries in series add their volts")
          .one(
              "{each} × {series}",
              Batteries::bank,
              (b, in) -> seriesVolts(in.of("each", b.voltage()), in.of("series", b.inSeries())));

  static final Entry CAPACITY =
      Entry.of(
              "bank.capacity",
              AMPERE_HOUR,
              SECOND_DERIVATION,
              "strings in parallel add their amp-hours")
          .one(
              "{each} × {strings}",
              Batteries::bank,
              (b, in) ->
                  parallelAmpHours(in.of("each", b.capacity()), in.of("strings", b.strings())));

  static final Entry ENERGY =
      Entry.of("bank.energy", WATT_HOUR, SECOND_DERIVATION, "volts times amp-hours")
          .one(
              "{volts} × {amp-hours}",
              Batteries::bank,
              (b, in) -> energyWh(in.of("volts", VOLTAGE), in.of("amp-hours", CAPACITY)));

  static final List<Entry> ENTRIES = List.of(VOLTAGE, CAPACITY, ENERGY);

  private Batteries() {}

  private static Optional<Electric.Batteries> bank(Rig rig) {
    return rig.electric().batteries();
  }

  /** Volts of a string of equal batteries. */
  static double seriesVolts(double eachVolts, double inSeries) {
    return eachVolts * inSeries;
  }

  /** Amp-hours of equal strings side by side. */
  static double parallelAmpHours(double eachAmpHours, double strings) {
    return eachAmpHours * strings;
  }

  /** Energy in watt-hours. */
  static double energyWh(double volts, double ampHours) {
    return volts * ampHours;
  }
}
