package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.LOADS;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Unit;

/** Which 120 V loads run at once on each plug, the generator and the inverter. */
final class Together {
  /** Only sets with a load above this are worth a line of the table: house rule. */
  private static final double BIG_WATTS = 1000;

  /** Lines of the table: house rule. */
  private static final int MOST_SETS = 12;

  /** Sets that run at once and to which no other load can be added. */
  static final Entry SETS =
      entry("together.<a>.<n>", LOADS).rows((rig, rows) -> sets(rig, rows, false));

  /** How many more such sets there are than the table shows. */
  static final Entry REST =
      entry("together.<a>.rest", COUNT).rows((rig, rows) -> rest(rig, rows, false));

  /** The sets of a hot afternoon. */
  static final Entry HOT =
      entry("together.<a>.hot.<n>", LOADS).rows((rig, rows) -> sets(rig, rows, true));

  static final Entry HOT_REST =
      entry("together.<a>.hot.rest", COUNT).rows((rig, rows) -> rest(rig, rows, true));

  /** Watts to which the sets of a source are held. */
  static final Entry LIMIT = entry("together.<a>.limit", WATT_UNIT).rows(Together::limits);

  /** Loads that are on all the time and counted in every set. */
  static final Entry ALWAYS = entry("together.<a>.always", LOADS).rows(Together::always);

  /** Loads that do not run here even alone. */
  static final Entry NEVER = entry("together.<a>.never", LOADS).rows(Together::never);

  /** Pairs of loads of which each runs, but not both at once. */
  static final Entry APART = entry("together.<a>.apart.<n>", LOADS).rows(Together::apart);

  static final List<Entry> ENTRIES =
      List.of(SETS, REST, HOT, HOT_REST, LIMIT, ALWAYS, NEVER, APART);

  private Together() {}

  private static Entry.Draft entry(String pattern, Unit unit) {
    return Entry.of(
        pattern,
        unit,
        SECOND_DERIVATION,
        "every set of loads tried; continuous loads count 125 %: NEC 210.20(A)");
  }

  private static void sets(Rig rig, Rows rows, boolean hot) {
    each(
        rig,
        rows,
        hot,
        table -> {
          List<Integer> sets = bigSets(table);
          List<Integer> shown = sets.subList(0, Math.min(MOST_SETS, sets.size()));
          numbered(
              table, rows, shown, set -> table.sum(set) + " ≤ " + table.source().limitFormula());
        },
        "1");
  }

  private static void rest(Rig rig, Rows rows, boolean hot) {
    each(
        rig,
        rows,
        hot,
        table -> {
          int all = bigSets(table).size();
          int rest = all - MOST_SETS;
          if (rest > 0) {
            rows.number(
                all + " − " + MOST_SETS,
                in -> {
                  LoadTable.of(table.source(), hot, in);
                  return rest;
                },
                table.source().id());
          }
        });
  }

  private static void limits(Rig rig, Rows rows) {
    for (Source source : Source.of(rig)) {
      rows.number(source.limitFormula(), in -> source.limits(in).allWatts(), source.id());
    }
  }

  private static List<Integer> bigSets(LoadTable table) {
    List<Integer> big =
        table.search().largest().stream()
            .filter(
                set ->
                    table.items(set).stream().anyMatch(i -> table.watts().get(i.id()) > BIG_WATTS))
            .toList();
    return table.sorted(big);
  }

  private static void always(Rig rig, Rows rows) {
    each(
        rig,
        rows,
        false,
        table -> {
          if (!table.always().isEmpty()) {
            List<String> ids = table.always().stream().map(LoadItem::id).toList();
            rows.value(
                table.sum(0),
                in -> {
                  LoadTable.of(table.source(), false, in);
                  return new Value.Loads(ids);
                },
                table.source().id());
          }
        });
  }

  private static void never(Rig rig, Rows rows) {
    each(
        rig,
        rows,
        false,
        table -> {
          List<Integer> ones = table.inOrder(table.search().never());
          if (!ones.isEmpty()) {
            int all = ones.stream().mapToInt(Integer::intValue).sum();
            String formula = ones.stream().map(table::tooMuch).collect(Collectors.joining("; "));
            rows.value(formula, in -> loads(table, all, in), table.source().id());
          }
        });
  }

  private static void apart(Rig rig, Rows rows) {
    each(
        rig,
        rows,
        false,
        table -> numbered(table, rows, table.sorted(table.search().apart()), table::tooMuch),
        "1");
  }

  /**
   * Hands on a table a source; one that lacks a fact makes a single absent figure. Without an air
   * conditioner a hot afternoon is like any other.
   */
  private static void each(
      Rig rig, Rows rows, boolean hot, Consumer<LoadTable> use, String... absent) {
    boolean cools = Loads.of(rig).stream().anyMatch(LoadItem::cools);
    for (Source source : hot && !cools ? List.<Source>of() : Source.of(rig)) {
      Inputs look = rows.look();
      LoadTable table = LoadTable.of(source, hot, look);
      if (look.missing().isEmpty()) {
        use.accept(table);
      } else {
        String[] parts =
            Stream.concat(Stream.of(source.id()), Arrays.stream(absent)).toArray(String[]::new);
        rows.value("", in -> loads(LoadTable.of(source, hot, in), 0, in), parts);
      }
    }
  }

  private static void numbered(
      LoadTable table, Rows rows, List<Integer> sets, Function<Integer, String> formula) {
    for (int i = 0; i < sets.size(); i++) {
      int set = sets.get(i);
      rows.value(
          formula.apply(set),
          in -> loads(table, set, in),
          table.source().id(),
          String.valueOf(i + 1));
    }
  }

  /** A set as a figure's value; every load of the source is its input, since all were tried. */
  private static Value loads(LoadTable table, int set, Inputs in) {
    LoadTable.of(table.source(), table.hot(), in);
    return new Value.Loads(table.ids(set));
  }
}
