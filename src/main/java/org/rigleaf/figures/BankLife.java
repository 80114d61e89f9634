package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.source.Unit.HOUR_UNIT;

import java.util.List;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;

/**
 * How long the full house bank runs one load and nothing else, down to where one should stop. The
 * form with the rated hours is used; the one-hour form, which takes the label's amp-hours for those
 * of a one-hour discharge, gives a quarter to a third less and is not.
 */
final class BankLife {
  static final Entry LIFE =
      Entry.of(
              "bank.life.<load>",
              HOUR_UNIT,
              PUBLISHED,
              "Peukert's law by the rated hours, never more than amp-hours over amperes; usable"
                  + " share and cold as for the usable energy")
          .rows((rig, rows) -> Batteries.bank(rig).ifPresent(b -> lives(rig, b, rows)));

  static final List<Entry> ENTRIES = List.of(LIFE);

  private BankLife() {}

  private static void lives(Rig rig, BatteryBank bank, Rows rows) {
    for (LoadItem item : Loads.of(rig)) {
      if (drains(item, rig)) {
        String amps = ampsFormula(item);
        String hours = "{capacity} ÷ " + amps;
        String law = "{hours} × ({capacity} ÷ (" + amps + " × {hours}))^{peukert}";
        rows.number(
            "min(" + hours + ", " + law + ") × " + Batteries.usableFormula(rig, bank),
            in -> life(item, rig, bank, in),
            item.id());
      }
    }
  }

  /** On the house bank itself, or fed by the inverter, or said to run on nobody knows what. */
  private static boolean drains(LoadItem item, Rig rig) {
    return item.mains()
        ? Source.inverter(rig).filter(s -> s.feeds(item)).isPresent()
        : Loads.onHouseBank(item, rig) || item.supply().isEmpty();
  }

  private static double life(LoadItem item, Rig rig, BatteryBank bank, Inputs in) {
    double ampHours = in.of("capacity", Batteries.CAPACITY);
    double amps = amps(item, rig, in);
    Fact hours = bank.ratedHours().with(h -> h, HOUR_UNIT);
    double rated = in.of("hours", hours, "batteries.rated-hours");
    double exponent = in.of("peukert", bank.peukert(), peukertId(bank));
    return dischargeHours(ampHours, rated, amps, exponent)
        * Batteries.usableShare(bank, in)
        * Batteries.coldFactor(rig, bank, in);
  }

  private static String peukertId(BatteryBank bank) {
    return switch (bank.type().orElse(BatteryBank.Chemistry.FLOODED_LEAD_ACID)) {
      case FLOODED_LEAD_ACID -> "peukert.flooded";
      case AGM, GEL -> "peukert.agm-gel";
      case LITHIUM -> "peukert.lithium";
    };
  }

  /** Amperes that a load takes out of the bank, through the inverter if it runs on 120 V. */
  private static double amps(LoadItem item, Rig rig, Inputs in) {
    double amps = in.of("current", Loads.CURRENT, item.id());
    if (!item.mains()) {
      return amps;
    }
    double efficiency = Inverters.efficiency(rig.electric().inverter().orElseThrow(), in);
    return Inverters.bankAmps(Shore.VOLTS * amps, efficiency, in.of("volts", Batteries.VOLTAGE));
  }

  private static String ampsFormula(LoadItem item) {
    return item.mains() ? "(120 V × {current} ÷ ({inverter-efficiency} × {volts}))" : "{current}";
  }

  /**
   * Hours from full to empty at a steady current: H (C / (I H))^k, Peukert's law for a capacity
   * rated at H hours, and C / I where that is less.
   *
   * @param exponent Peukert's k, 1 for a battery that gives as much at any current
   * @throws IllegalArgumentException for a current, capacity or rated hours not above zero
   */
  static double dischargeHours(
      double capacityAmpHours, double ratedHours, double amps, double exponent) {
    if (capacityAmpHours <= 0 || ratedHours <= 0 || amps <= 0) {
      throw new IllegalArgumentException("a discharge has amp-hours, hours and amperes above zero");
    }
    double law = ratedHours * Math.pow(capacityAmpHours / (amps * ratedHours), exponent);
    return Math.min(capacityAmpHours / amps, law);
  }
}
