package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.GALLON;
import static org.rigleaf.source.Unit.LOADS;
import static org.rigleaf.source.Unit.WATT_HOUR;

import java.util.List;
import java.util.function.Function;
import org.rigleaf.rig.Rig;

/** What a day of the stay takes from the bank and sends through the tanks. */
final class DailyUse {
  static final Entry ENERGY =
      Entry.of("day.energy", WATT_HOUR, SECOND_DERIVATION, "all that leaves the bank in a day")
          .rows(DailyUse::energy);

  static final Entry NOT_COUNTED =
      Entry.of("day.not-counted", LOADS, SECOND_DERIVATION, "loads of which nobody said how long")
          .rows(DailyUse::notCounted);

  static final Entry USE =
      Entry.of("use.<id>", GALLON, SECOND_DERIVATION, "people times habits, a day")
          .rows(DailyUse::uses);

  static final List<Entry> ENTRIES = List.of(ENERGY, NOT_COUNTED, USE);

  private DailyUse() {}

  private static void energy(Rig rig, Rows rows) {
    if (rig.electric().batteries().isPresent()) {
      rows.number(
          "read off the ledger: watts × hours of each load, summed over 24 hours",
          in -> Hours.sum(new BankDay(Trip.offThePlug(rig), in).out()));
    }
  }

  private static void notCounted(Rig rig, Rows rows) {
    List<String> loads = BankDay.notCounted(rig);
    if (rig.electric().batteries().isPresent() && !loads.isEmpty()) {
      rows.value("no hours given", in -> new Value.Loads(loads));
    }
  }

  private static void uses(Rig rig, Rows rows) {
    Trip trip = Trip.stay(rig);
    boolean fresh = rig.water().fresh().isPresent();
    use(rows, "fresh", fresh, WaterDay.freshFormula(rig), in -> WaterDay.of(trip, in).fresh(rig));
    rig.waste()
        .gray()
        .forEach(
            g ->
                use(
                    rows,
                    "gray." + g.gear().part(),
                    true,
                    Stores.grayFormula(g, rig, rows.look()),
                    in -> Stores.grayFills(g, trip, in)));
    boolean own = WaterDay.ownTank(rig);
    boolean black = rig.waste().black().isPresent() && !own;
    String flushed = WaterDay.flushFormula(rig);
    use(rows, "black", black, flushed, in -> WaterDay.of(trip, in).flushes());
    use(rows, "toilet", own, flushed, in -> WaterDay.of(trip, in).flushes());
  }

  private static void use(
      Rows rows, String id, boolean there, String formula, Function<Inputs, double[]> day) {
    if (there) {
      rows.number(formula, in -> Hours.sum(day.apply(in)), id);
    }
  }
}
