package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.AMPERE_HOUR;
import static org.rigleaf.source.Unit.POUND;

import java.util.List;
import org.rigleaf.rig.Climate;
import org.rigleaf.rig.Rig;

/**
 * What a furnace takes in a night, by how hard it works: a table for nights of which nobody knows
 * the cold beforehand.
 */
final class FurnaceNight {
  private static final String SHARES =
      "a night from 20:00 to 08:00, the furnace running 30, 50 or 80 % of it";

  static final Entry GAS =
      Entry.of(
              "furnace.night.<duty>.gas",
              POUND,
              SECOND_DERIVATION,
              SHARES + "; rated input over 21,548 Btu a pound")
          .rows(FurnaceNight::gas);

  static final Entry BANK =
      Entry.of(
              "furnace.night.<duty>.bank",
              AMPERE_HOUR,
              SECOND_DERIVATION,
              SHARES + "; the current of its blower")
          .rows(FurnaceNight::bank);

  static final List<Entry> ENTRIES = List.of(GAS, BANK);

  private static final List<Integer> DUTIES = List.of(30, 50, 80);

  private static final double NIGHT_HOURS = 12;

  private FurnaceNight() {}

  private static void gas(Rig rig, Rows rows) {
    Furnaces.furnace(rig)
        .filter(f -> f.burns(Climate.FurnaceFuel.LP))
        .filter(f -> !Lp.containers(rig).isEmpty())
        .ifPresent(
            f ->
                DUTIES.forEach(
                    duty ->
                        rows.number(
                            hours(duty) + " × {input} ÷ 21,548 Btu/lb",
                            in -> pounds(duty, in.of("input", f.input())),
                            duty.toString())));
  }

  private static void bank(Rig rig, Rows rows) {
    boolean blows = Loads.of(rig).stream().anyMatch(i -> i.id().equals("furnace-blower"));
    if (blows && Batteries.bank(rig).isPresent()) {
      DUTIES.forEach(
          duty ->
              rows.number(
                  hours(duty) + " × {blower}",
                  in -> nightHours(duty) * in.of("blower", Loads.CURRENT, "furnace-blower"),
                  duty.toString()));
    }
  }

  private static String hours(int percent) {
    return "12 × " + percent + " ÷ 100";
  }

  private static double nightHours(double percent) {
    return NIGHT_HOURS * percent / 100;
  }

  /** Pounds of propane of a night at a share of the time. */
  static double pounds(double percent, double inputBtuPerHour) {
    return nightHours(percent) * inputBtuPerHour / Lp.heatBtu(1);
  }
}
