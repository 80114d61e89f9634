package org.rigleaf.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Generator;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Road;
import org.rigleaf.rig.Stay;
import org.rigleaf.rig.Waste;

/** The stores of a rig that a stay draws on or fills, each with the rule that makes it. */
final class Stores {
  /** Btu of a gallon of diesel, and of gasoline with ethanol (EIA, seen as others quote it). */
  private static final double DIESEL_BTU = 137_381;

  private static final double GASOLINE_BTU = 120_333;

  private Stores() {}

  /**
   * One kind of store.
   *
   * @param id as in figure ids: {@code bank}, {@code fresh}, {@code gray.kitchen}
   * @param gear id of the gear that it is
   * @param waste true if it counts the room that is left
   * @param make makes it for a trip
   */
  record Kind(String id, String gear, boolean waste, BiFunction<Trip, Inputs, Store> make) {
    /** True for what holds water, fresh or used. */
    boolean water() {
      return waste || id.equals("fresh");
    }
  }

  /** The stores of a rig, in the order of the pages. */
  static List<Kind> of(Rig rig) {
    List<Kind> all = new ArrayList<>();
    rig.electric()
        .batteries()
        .ifPresent(b -> all.add(kind("bank", b.gear().id(), (t, in) -> bank(b, t, in))));
    rig.water()
        .fresh()
        .ifPresent(f -> all.add(kind("fresh", f.gear().id(), (t, in) -> fresh(f.holds(), t, in))));
    rig.waste().gray().forEach(g -> all.add(gray(g)));
    rig.waste().black().ifPresent(b -> all.add(black(b)));
    toilet(rig).ifPresent(all::add);
    if (!Lp.containers(rig).isEmpty()) {
      all.add(kind("lp", "propane." + lpGear(rig), Stores::propane));
    }
    rig.road()
        .fuel()
        .filter(f -> Burns.burnsFuel(rig) || generator(rig).isPresent())
        .ifPresent(f -> all.add(kind("fuel", f.gear().id(), (t, in) -> fuel(f, t, in))));
    return all;
  }

  private static Kind kind(String id, String gear, BiFunction<Trip, Inputs, Store> make) {
    return new Kind(id, gear, false, make);
  }

  private static String lpGear(Rig rig) {
    return rig.propane().orElseThrow().tank().isPresent()
        ? "tank"
        : "cylinders." + Lp.containers(rig).get(0);
  }

  private static Store bank(BatteryBank bank, Trip trip, Inputs in) {
    return new BankDay(trip, in).store(bank);
  }

  /** Drawn to 95 per cent; on a hose not at all. */
  private static Store fresh(Fact holds, Trip trip, Inputs in) {
    double full = in.of("fresh", holds);
    double floor = full * (1 - in.typical("drawn", "fresh.drawn"));
    double[] out =
        trip.has(Stay.HookUp.WATER) ? Hours.evenly(0) : WaterDay.of(trip, in).fresh(trip.rig());
    return Store.drawn(full, floor, out);
  }

  // ---- waste

  private static Kind gray(Waste.Gray tank) {
    String id = "gray." + tank.gear().part();
    return new Kind(
        id,
        tank.gear().id(),
        true,
        (trip, in) ->
            Store.room(
                in.of("gray-" + tank.gear().part(), tank.holds()),
                0,
                0,
                sewer(trip, grayFills(tank, trip, in))));
  }

  /** What runs into a gray tank by the hour. */
  static double[] grayFills(Waste.Gray tank, Trip trip, Inputs in) {
    WaterDay day = WaterDay.of(trip, in);
    return Hours.plus(
        Hours.times(day.washing(), share(tank, Waste.Drain.KITCHEN, trip.rig(), in)),
        Hours.times(day.showers(), share(tank, Waste.Drain.BATH, trip.rig(), in)));
  }

  /** The same in symbols. */
  static String grayFormula(Waste.Gray tank, Rig rig, Inputs look) {
    return WaterDay.ofParty(
        part(tank, Waste.Drain.KITCHEN, "{washing}", rig, look),
        part(tank, Waste.Drain.BATH, WaterDay.showersFormula(rig), rig, look));
  }

  private static String part(
      Waste.Gray tank, Waste.Drain drain, String gallons, Rig rig, Inputs look) {
    double share = share(tank, drain, rig, look);
    if (share == 0 || gallons.isEmpty()) {
      return "";
    }
    return share == 1 ? gallons : gallons + " ÷ " + Math.round(1 / share);
  }

  /** A single tank of which nobody said what drains to it takes all; two alike share. */
  private static double share(Waste.Gray tank, Waste.Drain drain, Rig rig, Inputs in) {
    List<Waste.Gray> all = rig.waste().gray();
    if (all.size() == 1 && tank.drains().isEmpty()) {
      return 1;
    }
    all.stream()
        .filter(g -> g.drains().isEmpty())
        .forEach(g -> in.missing(g.gear().id() + ".drains"));
    long takers = all.stream().filter(g -> g.drains().contains(drain)).count();
    return tank.drains().contains(drain) ? 1.0 / takers : 0;
  }

  private static double[] sewer(Trip trip, double[] fills) {
    return trip.has(Stay.HookUp.SEWER) ? Hours.evenly(0) : fills;
  }

  private static Kind black(Waste.Black tank) {
    return new Kind("black", tank.gear().id(), true, (trip, in) -> black(tank, 0, trip, in));
  }

  /** The black tank, which starts with its starter water; ends where this share of it is left. */
  static Store black(Waste.Black tank, double endsWithShare, Trip trip, Inputs in) {
    double holds = in.of("black", tank.holds());
    double starter = in.typical("starter", "starter-water");
    double[] fills =
        WaterDay.ownTank(trip.rig()) ? Hours.evenly(0) : WaterDay.of(trip, in).flushes();
    return Store.room(holds, Math.min(starter, holds), holds * endsWithShare, sewer(trip, fills));
  }

  /** The tank of a cassette or portable toilet, if its size is told. */
  private static Optional<Kind> toilet(Rig rig) {
    return rig.waste()
        .toilet()
        .filter(t -> WaterDay.ownTank(rig))
        .map(
            t ->
                new Kind(
                    "toilet",
                    t.gear().id(),
                    true,
                    (trip, in) ->
                        Store.room(
                            in.of("toilet", t.holds()), 0, 0, WaterDay.of(trip, in).flushes())));
  }

  // ---- what burns

  private static Store propane(Trip trip, Inputs in) {
    double full =
        Lp.heatBtu(
            Lp.containers(trip.rig()).stream().mapToDouble(id -> in.of(id, Lp.FILL, id)).sum());
    return Store.drawn(full, 0, new Burns(trip, in).propane());
  }

  /** Gallons; the generator's pick-up, where there is one, is bare at the floor. */
  private static Store fuel(Road.Fuel fuel, Trip trip, Inputs in) {
    double full = in.of("fuel", fuel.holds());
    double floor =
        generator(trip.rig()).isPresent() ? full * in.of("stops-at", fuel.generatorStopsAt()) : 0;
    Burns burns = new Burns(trip, in);
    double[] heat =
        Burns.burnsFuel(trip.rig())
            ? Hours.times(burns.motorFuel(), 1 / btuPerGallon(fuel, in))
            : Hours.evenly(0);
    return Store.drawn(full, floor, Hours.plus(heat, burns.generatorGallons(false)));
  }

  private static double btuPerGallon(Road.Fuel fuel, Inputs in) {
    if (fuel.kind().isEmpty()) {
      in.missing(fuel.gear().id() + ".kind");
    }
    return fuel.kind().filter(Road.FuelKind.GASOLINE::equals).isPresent()
        ? GASOLINE_BTU
        : DIESEL_BTU;
  }

  private static Optional<Generator> generator(Rig rig) {
    return rig.electric().generator().filter(Generators::drinksMotorFuel);
  }
}
