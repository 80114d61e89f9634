package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.source.Unit.AMPERE_UNIT;

import java.util.List;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Rig;

/** What the inverter takes out of the house bank. */
final class Inverters {
  /** The most that flows: full output while the bank is low. */
  static final Entry CURRENT =
      Entry.of(
              "inverter.current",
              AMPERE_UNIT,
              HOUSE_ASSUMPTION,
              "output over efficiency and the volts of a low bank: 10.5 V lead, 12.0 V lithium, a"
                  + " 12 V bank")
          .rows((rig, rows) -> Batteries.bank(rig).ifPresent(b -> current(rig, b, rows)));

  static final List<Entry> ENTRIES = List.of(CURRENT);

  /** Volts of a low bank of 12 V under load: common practice, no source. */
  private static final double LOW_LEAD_VOLTS = 10.5;

  private static final double LOW_LITHIUM_VOLTS = 12.0;

  private Inverters() {}

  private static void current(Rig rig, BatteryBank bank, Rows rows) {
    boolean lithium = bank.type().filter(BatteryBank.Chemistry.LITHIUM::equals).isPresent();
    String low = (lithium ? "12.0 V" : "10.5 V") + Batteries.timesTwelves(bank);
    rig.electric()
        .inverter()
        .ifPresent(
            i ->
                rows.number(
                    "{output} ÷ ({inverter-efficiency} × " + low + ")",
                    in ->
                        bankAmps(
                            in.of("output", i.output()),
                            efficiency(i, in),
                            lowVolts(Batteries.lead(bank, in), in.of("bank", Batteries.VOLTAGE)))));
  }

  /** The share of the bank's power that comes out as 120 V. */
  static double efficiency(Electric.Inverter inverter, Inputs in) {
    return in.of("inverter-efficiency", inverter.efficiency(), "inverter.efficiency");
  }

  /** Volts of a low bank under load, by its nominal volts. */
  static double lowVolts(boolean lead, double bankVolts) {
    return (lead ? LOW_LEAD_VOLTS : LOW_LITHIUM_VOLTS) * Batteries.twelves(bankVolts);
  }

  /**
   * Amperes out of a bank for watts at 120 V.
   *
   * @throws IllegalArgumentException for volts or an efficiency not above zero, or one above 1
   */
  static double bankAmps(double outputWatts, double efficiency, double bankVolts) {
    if (efficiency <= 0 || efficiency > 1 || bankVolts <= 0) {
      throw new IllegalArgumentException("no inverter: " + efficiency + " at " + bankVolts + " V");
    }
    return outputWatts / (efficiency * bankVolts);
  }
}
