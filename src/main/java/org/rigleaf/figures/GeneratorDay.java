package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.source.Unit.GALLON;
import static org.rigleaf.source.Unit.HOUR_UNIT;

import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.Generator;
import org.rigleaf.rig.Rig;

/** The generator as the bank's charger: hours and fuel to put back what a day takes. */
final class GeneratorDay {
  static final Entry RECHARGE =
      Entry.of(
              "generator.recharge",
              HOUR_UNIT,
              HOUSE_ASSUMPTION,
              "the day's energy over what the converter brings at full current, up to 80 % of charge")
          .rows(GeneratorDay::recharge);

  static final Entry FUEL =
      Entry.of(
              "generator.fuel",
              GALLON,
              HOUSE_ASSUMPTION,
              "those hours times the burn at the converter's load")
          .rows(GeneratorDay::fuel);

  static final List<Entry> ENTRIES = List.of(RECHARGE, FUEL);

  private GeneratorDay() {}

  private static Optional<Charger> charger(Rig rig) {
    return Charger.of(rig).stream().filter(c -> c.id().equals(Source.GENERATOR)).findFirst();
  }

  private static void recharge(Rig rig, Rows rows) {
    Optional<Charger> charger = charger(rig);
    if (charger.isEmpty()) {
      return;
    }
    Inputs look = rows.look();
    if (look.of("current", Recharge.CURRENT, Source.GENERATOR) <= 0) {
      rows.value("{current} ≤ 0", in -> never(in));
    } else {
      rows.number(
          "{day} ÷ ({charge-efficiency} × {current} × {volts})",
          in ->
              rechargeHours(
                  in.of("day", DailyUse.ENERGY),
                  Batteries.kept(charger.get().bank(), in),
                  in.of("current", Recharge.CURRENT, Source.GENERATOR),
                  in.of("volts", Batteries.VOLTAGE)));
    }
  }

  private static Value never(Inputs in) {
    in.of("current", Recharge.CURRENT, Source.GENERATOR);
    return new Value.Word(Value.Words.NEVER);
  }

  private static void fuel(Rig rig, Rows rows) {
    if (rows.look().has(RECHARGE)) {
      rows.number(
          "{recharge} × " + burnFormula(rig),
          in -> in.of("recharge", RECHARGE) * gallonsPerHour(rig, in));
    }
  }

  private static Optional<LoadItem> converter(Rig rig) {
    return rig.electric().converter().map(Loads::converter);
  }

  private static String burnFormula(Rig rig) {
    String load = converter(rig).map(c -> Loads.wattsFormula(c, rig)).orElse("0");
    return "max({half-load}, {half-load} + ({full-load} − {half-load}) × (2 × min(1, ("
        + load
        + ") ÷ {steady}) − 1))";
  }

  /** What the generator burns while it runs for the converter alone. */
  static double gallonsPerHour(Rig rig, Inputs in) {
    Generator generator = rig.electric().generator().orElseThrow();
    return Generators.burnGallonsPerHour(
        converter(rig).map(c -> Loads.watts(c, rig, in)).orElse(0.0),
        in.of("steady", Generators.STEADY),
        in.of("half-load", generator.halfLoad()),
        in.of("full-load", generator.fullLoad()));
  }

  /**
   * Hours at a steady current that bring a day's energy.
   *
   * @param keptShare of the charge that stays in the bank
   * @throws IllegalArgumentException without a current
   */
  static double rechargeHours(double dayWh, double keptShare, double amps, double volts) {
    if (amps <= 0) {
      throw new IllegalArgumentException("no current charges nothing");
    }
    return dayWh / (keptShare * amps * volts);
  }
}
