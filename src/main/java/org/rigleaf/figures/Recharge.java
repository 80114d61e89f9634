package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.source.Unit.AMPERE_UNIT;
import static org.rigleaf.source.Unit.HOUR_UNIT;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Unit;

/**
 * How long a charger takes from the usable floor: full current up to a state of charge, then a
 * current that dies away, until 2 % of the capacity flows. No published form was found.
 */
final class Recharge {
  static final Entry CURRENT =
      entry(
              "recharge.<source>.current",
              AMPERE_UNIT,
              "what the charger gives less the standing loads, never above the bank's limit")
          .rows((rig, rows) -> Charger.of(rig).forEach(c -> current(c, rows)));

  static final Entry TO_80 =
      entry("recharge.<source>.to-80", HOUR_UNIT, "full current from the usable floor up to 80 %")
          .rows((rig, rows) -> hours(rig, rows, false));

  static final Entry TO_FULL =
      entry(
              "recharge.<source>.to-full",
              HOUR_UNIT,
              "full current to 80 % (lithium: 100 %), then a current that dies away down to 2 % of"
                  + " the capacity; charge lost on the first part only")
          .rows((rig, rows) -> hours(rig, rows, true));

  static final List<Entry> ENTRIES = List.of(CURRENT, TO_80, TO_FULL);

  /** The state of charge that people ask for first: house rule. */
  private static final double MOSTLY_FULL = 0.80;

  /** Where the current of a charging lead bank begins to fall; lithium takes all to the end. */
  private static final double LEAD_TAPERS_AT = 0.80;

  /** A bank is full when this share of its amp-hours still flows as amperes: house rule. */
  private static final double TAIL = 0.02;

  private static final String FLOOR = "(1 − {usable} ÷ {energy})";

  private Recharge() {}

  private static Entry.Draft entry(String pattern, Unit unit, String source) {
    return Entry.of(pattern, unit, HOUSE_ASSUMPTION, source);
  }

  private static void current(Charger charger, Rows rows) {
    BatteryBank bank = charger.bank();
    String limit = bank.chargeLimit().known() ? "{limit}" : "{limit} × {capacity}";
    rows.number(
        "min(" + charger.formula() + " − {standing}, " + limit + ")",
        in ->
            chargingAmps(
                charger.amps(in), in.typical("standing", "standing-loads"), limit(bank, in)),
        charger.id());
  }

  /** Amperes that a bank takes at most. */
  static double limit(BatteryBank bank, Inputs in) {
    boolean lead = Batteries.lead(bank, in);
    if (bank.chargeLimit().known()) {
      return in.of("limit", bank.chargeLimit());
    }
    return in.typical("limit", lead ? "charge-limit.lead" : "charge-limit.lithium")
        * in.of("capacity", Batteries.CAPACITY);
  }

  private static void hours(Rig rig, Rows rows, boolean full) {
    for (Charger charger : Charger.of(rig)) {
      BatteryBank bank = charger.bank();
      Inputs look = rows.look();
      if (frozen(rig, bank, look)) {
        never(
            rows,
            charger,
            Batteries.temperature(bank) + " ≤ 32 °F",
            in -> Batteries.fahrenheit(bank, Trip.stay(rig), in));
      } else if (trickles(amps(charger, look), ampHours(look))) {
        String formula = "{current} ≤ 0.02 × {capacity}";
        never(rows, charger, formula, in -> amps(charger, in) + ampHours(in));
      } else {
        boolean taper = full && Batteries.lead(bank, look);
        double target = full && !taper ? 1 : MOSTLY_FULL;
        rows.number(
            formula(target, taper, floor(look)),
            in -> hours(charger, target, taper, in),
            charger.id());
      }
    }
  }

  private static void never(
      Rows rows, Charger charger, String formula, ToDoubleFunction<Inputs> because) {
    rows.value(
        formula,
        in -> {
          because.applyAsDouble(in);
          return new Value.Word(Value.Words.NEVER);
        },
        charger.id());
  }

  /** True of lithium without a heater where the stay freezes it; of a place unsaid as outside. */
  private static boolean frozen(Rig rig, BatteryBank bank, Inputs in) {
    return Batteries.freezes(bank)
        && Batteries.temperatureKnown(rig, bank)
        && Batteries.frozen(Batteries.fahrenheit(bank, Trip.stay(rig), in));
  }

  private static double amps(Charger charger, Inputs in) {
    return in.of("current", CURRENT, charger.id());
  }

  private static double ampHours(Inputs in) {
    return in.of("capacity", Batteries.CAPACITY);
  }

  private static double floor(Inputs in) {
    return 1 - in.of("usable", Batteries.USABLE) / in.of("energy", Batteries.ENERGY);
  }

  private static double hours(Charger charger, double target, boolean taper, Inputs in) {
    double amps = amps(charger, in);
    double ampHours = ampHours(in);
    double floor = floor(in);
    double bulk = bulkHours(floor, target, ampHours, Batteries.kept(charger.bank(), in), amps);
    return taper ? bulk + taperHours(floor, ampHours, amps) : bulk;
  }

  private static String formula(double target, boolean taper, double floor) {
    String rise = target == 1 ? "(1 − " + FLOOR + ")" : "(0.80 − " + FLOOR + ")";
    String bulk =
        (floor > target ? "0" : rise) + " × {capacity} ÷ ({charge-efficiency} × {current})";
    return taper ? bulk + " + " + taperFormula(floor) : bulk;
  }

  private static String taperFormula(double floor) {
    String fall = "({current} − 0.02 × {capacity})";
    String start =
        floor > LEAD_TAPERS_AT
            ? "({current} − " + fall + " × (" + FLOOR + " − 0.80) ÷ 0.20)"
            : "{current}";
    return "0.20 × {capacity} ÷ " + fall + " × ln(" + start + " ÷ (0.02 × {capacity}))";
  }

  /** Amperes into the bank: what the charger gives less what flows elsewhere, up to a limit. */
  static double chargingAmps(double chargerAmps, double standingAmps, double limitAmps) {
    return Math.min(chargerAmps - standingAmps, limitAmps);
  }

  /** True if so few amperes flow that the bank never counts as full. */
  static boolean trickles(double amps, double capacityAmpHours) {
    return amps <= TAIL * capacityAmpHours;
  }

  /**
   * Hours at a steady current between two states of charge, with the share of the charge that the
   * bank keeps; none if it starts above.
   *
   * @param amps above zero
   * @throws IllegalArgumentException without a current
   */
  static double bulkHours(
      double fromShare, double toShare, double capacityAmpHours, double keptShare, double amps) {
    if (amps <= 0) {
      throw new IllegalArgumentException("no current charges nothing");
    }
    return Math.max(0, toShare - fromShare) * capacityAmpHours / (keptShare * amps);
  }

  /**
   * Hours of a lead bank's last part: the current falls as e^(-t/T) from 80 % of charge down to 2 %
   * of the capacity, T such that it brings the missing 20 %. A bank that starts above 80 % starts
   * on that curve.
   *
   * @param amps the current at 80 %
   * @throws IllegalArgumentException if the current trickles
   */
  static double taperHours(double fromShare, double capacityAmpHours, double amps) {
    if (trickles(amps, capacityAmpHours)) {
      throw new IllegalArgumentException("a trickle never fills a bank");
    }
    double tail = TAIL * capacityAmpHours;
    double missing = 1 - LEAD_TAPERS_AT;
    double start = amps - (amps - tail) * Math.max(0, fromShare - LEAD_TAPERS_AT) / missing;
    return missing * capacityAmpHours / (amps - tail) * Math.log(start / tail);
  }
}
