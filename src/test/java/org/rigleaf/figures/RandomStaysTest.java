package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.RigFormat;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/**
 * What must hold on every rig and stay: books balance, more never lasts less, units do not matter.
 */
class RandomStaysTest {
  private static final double ROUNDING = 1e-9;

  private record Run(Stores.Kind kind, Ledger ledger) {}

  private static List<Run> runs(Rig rig) {
    List<Trip> trips = new ArrayList<>(List.of(Trip.stay(rig)));
    for (Trip.Night night : Trip.Night.values()) {
      Trip.PARTIES.forEach(people -> trips.add(Trip.usual(rig, people, night)));
    }
    Figures figures = Figures.of(rig);
    List<Run> runs = new ArrayList<>();
    for (Stores.Kind kind : Stores.of(rig)) {
      for (Trip trip : trips) {
        Inputs in = new Rows(Endurance.BANK_DAYS, figures).look();
        Ledger ledger = Endurance.run(kind, trip, in);
        if (in.missing().isEmpty()) {
          runs.add(new Run(kind, ledger));
        }
      }
    }
    return runs;
  }

  @Test
  void energyWaterAndPropaneBalanceOnEveryStay() {
    int checked = 0;
    for (RandomRigs.Profile profile : RandomRigs.all()) {
      for (Run run : runs(profile.rig())) {
        Ledger l = run.ledger();
        double end = l.level()[l.level().length - 1];
        double book = l.store().start() + l.brought() - l.taken() - l.spilled() + l.lacked();
        String what = profile.name() + " " + run.kind().id();
        assertEquals(book, end, Math.max(1, Math.abs(l.taken())) * ROUNDING, what);
        assertEquals(
            Ledger.DAYS * Hours.sum(l.store().out()),
            l.taken(),
            Math.max(1, Math.abs(l.taken())) * ROUNDING,
            what);
        assertTrue(Arrays.stream(l.level()).allMatch(v -> v >= 0 && v <= l.store().full()), what);
        checked++;
      }
    }
    assertTrue(
        checked > 4 * RandomRigs.all().size(), "only " + checked + " stays were there to check");
  }

  /** What the taps give is what the tanks get, but for what is drunk and cooked with. */
  @Test
  void waterThatLeavesTheFreshTankComesToTheWasteTanks() {
    int checked = 0;
    for (Rig rig : demoAndRandomRigs()) {
      boolean allDrained =
          rig.waste().gray().size() == 1 && rig.waste().gray().get(0).drains().size() != 1;
      if (!allDrained) {
        continue;
      }
      Inputs in = new Rows(Endurance.BANK_DAYS, Figures.of(rig)).look();
      Trip trip = Trip.stay(rig);
      WaterDay day = WaterDay.of(trip, in);
      double gray = Hours.sum(Stores.grayFills(rig.waste().gray().get(0), trip, in));
      double flushed = WaterDay.flushesFresh(rig) ? Hours.sum(day.flushes()) : 0;
      assertEquals(
          Hours.sum(day.fresh(rig)),
          Hours.sum(day.drinking()) + gray + flushed,
          1e-9,
          rig.identity().name());
      checked++;
    }
    assertTrue(checked > 5, "only " + checked + " rigs were there to check");
  }

  private static List<Rig> demoAndRandomRigs() {
    List<Rig> rigs = new ArrayList<>(TestRigs.fleet().map(TestRigs::demo).toList());
    RandomRigs.all().forEach(p -> rigs.add(p.rig()));
    return rigs;
  }

  @Test
  void moreBatteryNeverLastsLess() {
    int checked = 0;
    for (Rig rig : demoAndRandomRigs()) {
      for (Stores.Kind bank : Stores.of(rig).stream().filter(k -> k.id().equals("bank")).toList()) {
        Inputs in = new Rows(Endurance.BANK_DAYS, Figures.of(rig)).look();
        Store store = bank.make().apply(Trip.usual(rig, 2, Trip.Night.COLD), in);
        if (in.missing().isEmpty()) {
          assertTrue(days(bigger(store)) >= days(store) - 1e-9, rig.identity().name());
          checked++;
        }
      }
    }
    assertTrue(checked > 5, "only " + checked + " rigs were there to check");
  }

  /** The same day with a bank half as large again. */
  private static Store bigger(Store s) {
    return new Store(1.5 * s.start(), 1.5 * s.floor(), 1.5 * s.full(), s.in(), s.out(), s.kept());
  }

  private static double days(Store store) {
    return Ledger.of(store).days().orElse(Ledger.DAYS);
  }

  @Test
  void aProfileInMetricUnitsGivesTheSameFigures() {
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    for (RandomRigs.Profile profile : RandomRigs.all()) {
      Figures metric = Figures.of(TestRigs.of(RigFormat.yaml(MetricProfile.of(profile.tree()))));
      for (Figure us : Figures.of(profile.rig()).all()) {
        String there = metric.find(us.id()).map(f -> same(us, f)).orElse("absent");
        if (!there.isEmpty()) {
          wrong.add(profile.name() + " " + us.id() + ": " + us.value().data() + ", " + there);
        }
        compared++;
      }
    }
    assertEquals(List.of(), wrong.stream().limit(20).toList());
    assertTrue(
        compared > 50 * RandomRigs.all().size(),
        "only " + compared + " figures were there to compare");
  }

  private static String same(Figure us, Figure metric) {
    if (us.value() instanceof Value.Number a && metric.value() instanceof Value.Number b) {
      double slack = 1e-7 * Math.max(1, Math.abs(a.number()));
      return Math.abs(a.number() - b.number()) <= slack ? "" : b.data();
    }
    return us.value().equals(metric.value()) ? "" : metric.value().data();
  }
}
