package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.DAY_UNIT;
import static org.rigleaf.source.Unit.PERCENT_SHARE;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Stay;
import org.rigleaf.rig.Waste;
import org.rigleaf.source.Unit;

/** How long the stores of a rig last: read off the ledger of the stay, hour by hour. */
final class Endurance {
  static final String SOURCE =
      "the stay's ledger, hour by hour from 15:00, all stores full and waste tanks empty";
  private static final String OFF_THE_PLUG = SOURCE + "; no hook-ups";
  private static final String USUAL_SOURCE =
      "the same ledger without any hook-up, low and high 60/80 F and 25/45 F";

  /** Midnights that are worked out at most: two weeks. */
  private static final int MOST_NIGHTS = 14;

  static final Entry BANK_DAYS = days("bank.days", "bank", Trip::offThePlug, OFF_THE_PLUG);

  static final Entry BANK_NIGHT =
      Entry.of("bank.night", PERCENT_SHARE, SECOND_DERIVATION, OFF_THE_PLUG + "; 20:00 to 08:00")
          .rows(Endurance::night);

  static final Entry BANK_HOUR =
      Entry.of("bank.hour.<hour>", PERCENT_SHARE, SECOND_DERIVATION, OFF_THE_PLUG)
          .rows(Endurance::hours);

  static final Entry TANK_DAYS =
      Entry.of("tank.<id>.endurance", DAY_UNIT, SECOND_DERIVATION, SOURCE)
          .rows(
              (rig, rows) ->
                  kinds(rig, Stores.Kind::water)
                      .forEach(
                          k ->
                              rows.value(
                                  hourly(k.waste()), in -> length(run(k, rig, in)), k.id())));

  static final Entry TWO_THIRDS =
      Entry.of("tank.black.two-thirds", DAY_UNIT, SECOND_DERIVATION, SOURCE)
          .rows(
              (rig, rows) ->
                  rig.waste()
                      .black()
                      .ifPresent(
                          b ->
                              rows.value(
                                  "read off the ledger, hour by hour, until it is two thirds full",
                                  in -> length(twoThirds(b, rig, in)))));

  static final Entry LP_DAYS = days("lp.days", "lp", Trip::stay, SOURCE);
  static final Entry FUEL_DAYS = days("fuel.days", "fuel", Trip::stay, SOURCE);

  static final Entry MIDNIGHT =
      Entry.of(
              "ledger.<midnight>.<store>",
              PERCENT_SHARE,
              SECOND_DERIVATION,
              SOURCE + "; left in a store, filled of a waste tank")
          .rows(Endurance::midnights);

  static final Entry MILD = usual(Trip.Night.MILD);
  static final Entry COLD = usual(Trip.Night.COLD);

  static final List<Entry> ENTRIES =
      List.of(
          BANK_DAYS,
          BANK_NIGHT,
          BANK_HOUR,
          TANK_DAYS,
          TWO_THIRDS,
          LP_DAYS,
          FUEL_DAYS,
          MIDNIGHT,
          MILD,
          COLD);

  private Endurance() {}

  private static List<Stores.Kind> kinds(Rig rig, Predicate<Stores.Kind> which) {
    return Stores.of(rig).stream().filter(which).toList();
  }

  private static Ledger run(Stores.Kind kind, Rig rig, Inputs in) {
    return run(kind, Trip.stay(rig), in);
  }

  /** The ledger of one store on a trip. */
  static Ledger run(Stores.Kind kind, Trip trip, Inputs in) {
    List<?> key = List.of(kind.id(), trip.usual(), trip.without());
    return in.once(Ledger.class, key, once -> Ledger.of(kind.make().apply(trip, once)));
  }

  private static Ledger twoThirds(Waste.Black tank, Rig rig, Inputs in) {
    return Ledger.of(Stores.black(tank, 1 / 3.0, Trip.offThePlug(rig), in)); // its handle is shut
  }

  private static String hourly(boolean waste) {
    String end = waste ? "until it is full" : "down to what must stay in it";
    return "read off the ledger, hour by hour, " + end;
  }

  private static Value length(Ledger ledger) {
    OptionalDouble days = ledger.days();
    return days.isPresent()
        ? new Value.Number(days.getAsDouble())
        : new Value.Word(Value.Words.KEEPS_UP);
  }

  private static Entry days(String id, String store, Function<Rig, Trip> trip, String source) {
    return Entry.of(id, DAY_UNIT, SECOND_DERIVATION, source)
        .rows(
            (rig, rows) ->
                kinds(rig, k -> k.id().equals(store))
                    .forEach(
                        k ->
                            rows.value(
                                hourly(k.waste()), in -> length(run(k, trip.apply(rig), in)))));
  }

  private static void night(Rig rig, Rows rows) {
    for (Stores.Kind bank : kinds(rig, k -> k.id().equals("bank"))) {
      rows.number(
          "100 × least charge of the first night, read off the ledger, ÷ {energy}",
          in ->
              100
                  * run(bank, Trip.offThePlug(rig), in).leastOfFirstNight()
                  / in.of("energy", Batteries.ENERGY));
    }
  }

  /** The charge through the first day and night without hook-ups, by hours after 15:00. */
  private static void hours(Rig rig, Rows rows) {
    for (Stores.Kind bank : kinds(rig, k -> k.id().equals("bank"))) {
      for (int hour = 0; hour <= Hours.DAY; hour++) {
        int entry = hour;
        rows.number(
            "100 × charge " + hour + " hours after 15:00, read off the ledger, ÷ {energy}",
            in ->
                100
                    * run(bank, Trip.offThePlug(rig), in).level()[entry]
                    / in.of("energy", Batteries.ENERGY),
            Integer.toString(hour));
      }
    }
  }

  private static void midnights(Rig rig, Rows rows) {
    Fact nights = Trip.fact(rig, Stay::nights, "nights", Unit.COUNT);
    int shown = nights.known() ? (int) Math.min(MOST_NIGHTS, nights.value()) : 0;
    for (Stores.Kind kind : kinds(rig, k -> true)) {
      for (int n = 1; n <= shown; n++) {
        int midnight = n;
        rows.number(
            "100 × what it holds at midnight " + n + ", read off the ledger, ÷ what it can hold",
            in -> percent(kind, run(kind, rig, in), midnight),
            Integer.toString(n),
            kind.id());
      }
    }
  }

  private static double percent(Stores.Kind kind, Ledger run, int midnight) {
    double left = 100 * run.midnight(midnight) / run.store().full();
    return kind.waste() ? 100 - left : left;
  }

  private static Entry usual(Trip.Night night) {
    String pattern = "lasts." + night.id() + ".<store>.<people>";
    return Entry.of(pattern, DAY_UNIT, HOUSE_ASSUMPTION, USUAL_SOURCE)
        .rows((rig, rows) -> kinds(rig, k -> true).forEach(k -> usual(k, rig, night, rows)));
  }

  private static void usual(Stores.Kind kind, Rig rig, Trip.Night night, Rows rows) {
    for (int people : Trip.PARTIES) {
      Trip trip = Trip.usual(rig, people, night);
      rows.value(
          hourly(kind.waste()),
          in -> length(run(kind, trip, in)),
          kind.id(),
          Integer.toString(people));
    }
  }
}
