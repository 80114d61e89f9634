package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.DAY_UNIT;
import static org.rigleaf.source.Unit.WORD;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.rigleaf.rig.Rig;

/** Which store ends the stay first, and what to give up to stay longer. */
final class FirstLimit {
  static final Entry WATER = store("water.first-limit", Stores.Kind::water);
  static final Entry WATER_AFTER = after("water.first-limit.after", Stores.Kind::water);
  static final Entry STAY = store("stay.first-limit", k -> true);
  static final Entry STAY_AFTER = after("stay.first-limit.after", k -> true);

  static final Entry GAIN =
      Entry.of(
              "gain.<what>",
              DAY_UNIT,
              SECOND_DERIVATION,
              "the ledger run again without it; days to the first limit, more than before")
          .rows(FirstLimit::gains);

  static final List<Entry> ENTRIES = List.of(WATER, WATER_AFTER, STAY, STAY_AFTER, GAIN);

  private FirstLimit() {}

  /** A store and the days it lasts. */
  private record Limit(Stores.Kind kind, double days) {}

  private static Optional<Limit> first(List<Stores.Kind> kinds, Trip trip, Inputs in) {
    return kinds.stream()
        .flatMap(k -> limit(k, trip, in).stream())
        .min(Comparator.comparingDouble(Limit::days));
  }

  private static Optional<Limit> limit(Stores.Kind kind, Trip trip, Inputs in) {
    OptionalDouble days = Endurance.run(kind, trip, in).days();
    return days.isPresent() ? Optional.of(new Limit(kind, days.getAsDouble())) : Optional.empty();
  }

  private static Entry store(String id, Predicate<Stores.Kind> which) {
    return Entry.of(id, WORD, SECOND_DERIVATION, Endurance.SOURCE)
        .rows(
            (rig, rows) ->
                least(rig, rows, which, l -> new Value.Thing(l.kind().id(), l.kind().gear())));
  }

  private static Entry after(String id, Predicate<Stores.Kind> which) {
    return Entry.of(id, DAY_UNIT, SECOND_DERIVATION, Endurance.SOURCE)
        .rows((rig, rows) -> least(rig, rows, which, l -> new Value.Number(l.days())));
  }

  private static void least(
      Rig rig, Rows rows, Predicate<Stores.Kind> which, Function<Limit, Value> value) {
    List<Stores.Kind> kinds = Stores.of(rig).stream().filter(which).toList();
    if (!kinds.isEmpty()) {
      rows.value(
          "the least of the days of all stores, read off the ledger",
          in ->
              first(kinds, Trip.stay(rig), in)
                  .map(value)
                  .orElse(new Value.Word(Value.Words.KEEPS_UP)));
    }
  }

  /** Runs the stay again without each load and habit; a line where that gains time. */
  private static void gains(Rig rig, Rows rows) {
    List<Stores.Kind> kinds = Stores.of(rig);
    Trip stay = Trip.stay(rig);
    Inputs look = rows.look();
    Optional<Limit> before = first(kinds, stay, look);
    if (!look.missing().isEmpty() || before.isEmpty()) {
      return;
    }
    for (String what : candidates(rig)) {
      if (days(kinds, stay.giving(what), look) > before.get().days()) {
        rows.number(
            "days without it − days with it, both read off the ledger",
            in -> days(kinds, stay.giving(what), in) - days(kinds, stay, in),
            what);
      }
    }
  }

  /** Days to the first limit; where there is none, all that the ledger looks at. */
  private static double days(List<Stores.Kind> kinds, Trip trip, Inputs in) {
    return first(kinds, trip, in).map(Limit::days).orElse((double) Ledger.DAYS);
  }

  /** What one could do without: habits, and loads that draw on the bank. */
  private static Set<String> candidates(Rig rig) {
    Set<String> all = new LinkedHashSet<>(List.of("showers", "washing", "furnace", "inverter"));
    Loads.of(rig).stream().map(LoadItem::id).forEach(all::add);
    all.removeAll(List.of("pump", "converter", "refrigerator", "furnace-blower"));
    return all;
  }
}
