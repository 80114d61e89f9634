package org.rigleaf.figures;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.Answer;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Climate;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Load;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Stay;
import org.rigleaf.source.Unit;

/** Watt-hours by the hour that leave the house bank on a trip, and that reach it. */
final class BankDay {
  private final Rig rig;
  private final Trip trip;
  private final Inputs in;

  BankDay(Trip trip, Inputs in) {
    this.rig = trip.rig();
    this.trip = trip;
    this.in = in;
  }

  /** The bank as a store: full at the start, at its floor when what may be used is used. */
  Store store(BatteryBank bank) {
    double energy = in.of("energy", Batteries.ENERGY);
    double usable = energy * Batteries.usableShare(bank, in) * Batteries.coldFactor(bank, trip, in);
    double[] out = out();
    return new Store(
        energy, energy - usable, energy, charge(bank, out), out, Batteries.kept(bank, in));
  }

  // ---- out

  /** All that leaves the bank. */
  double[] out() {
    double[] sum = Hours.evenly(Hours.DAY * standing());
    for (LoadItem item : Loads.of(rig)) {
      sum = Hours.plus(sum, of(item));
    }
    return Hours.plus(sum, idle());
  }

  /** Watts that flow with every switch off: alarms, controls, the board of an absorption unit. */
  private double standing() {
    double amps = in.typical("standing", "standing-loads");
    boolean board = rig.climate().refrigerator().filter(r -> LpLife.onPropane(r)).isPresent();
    double more = board ? in.typical("board", "refrigerator.absorption-board") : 0;
    return (amps + more) * in.of("volts", Batteries.VOLTAGE);
  }

  /** One load by the hour; nothing if it does not run off the bank. */
  private double[] of(LoadItem item) {
    Optional<double[]> shares = counts(item) ? shares(item) : Optional.empty();
    return shares
        .map(s -> Hours.times(s, Loads.watts(item, rig, in) / efficiency(item)))
        .orElseGet(() -> Hours.evenly(0));
  }

  private boolean counts(LoadItem item) {
    boolean fed = item.mains() ? inverted(item, rig) && !plugged() : Loads.onHouseBank(item, rig);
    return fed && !item.converter() && trip.keeps(item.id());
  }

  private boolean plugged() {
    return trip.has(Stay.HookUp.ELECTRIC);
  }

  private static boolean inverted(LoadItem item, Rig rig) {
    return Source.inverter(rig).filter(s -> s.feeds(item)).isPresent();
  }

  private double efficiency(LoadItem item) {
    return item.mains() ? Inverters.efficiency(rig.electric().inverter().orElseThrow(), in) : 1;
  }

  /** The share of each hour in which a load runs; empty if nobody said how long. */
  private Optional<double[]> shares(LoadItem item) {
    Optional<Load> listed = listed(item, rig);
    if (listed.isPresent()) {
      return Optional.of(running(listed.get()));
    }
    return switch (item.gear()) {
      case "water.pump" -> Optional.of(pump());
      case "climate.furnace" -> Optional.of(blower());
      case "climate.refrigerator" -> Optional.of(Hours.evenly(Hours.DAY * duty()));
      default -> Optional.empty();
    };
  }

  /** The listed load with this id, if it says how long it runs. */
  private static Optional<Load> listed(LoadItem item, Rig rig) {
    return rig.electric().loads().stream()
        .filter(l -> Ids.last(l.id()).equals(item.id()))
        .filter(l -> l.runs().known() || always(l))
        .findFirst();
  }

  private static boolean always(Load load) {
    return load.when().filter(Load.When.ALWAYS::equals).isPresent();
  }

  private double[] running(Load load) {
    double hours =
        load.runs().known() ? in.of(Ids.last(load.id()) + "-runs", load.runs()) : Hours.DAY;
    return Hours.running(load.when().orElse(Load.When.EVENING), hours);
  }

  /** A pump runs for as long as its flow takes for the hour's water; not on a hose. */
  private double[] pump() {
    if (trip.has(Stay.HookUp.WATER)) {
      return Hours.evenly(0);
    }
    double[] gallons = WaterDay.of(trip, in).fresh(rig);
    double flow = in.of("pump-flow", rig.water().pump().orElseThrow().flow());
    return Hours.times(gallons, 1 / (60 * flow));
  }

  /** A blower runs for as long as the furnace must to make up for the hour's loss, if it heats. */
  private double[] blower() {
    if (!trip.keeps("furnace")) {
      return Hours.evenly(0);
    }
    Climate.Furnace furnace = rig.climate().furnace().orElseThrow();
    double output = Furnaces.output(furnace, trip, in);
    double[] losses = Furnaces.losses(in.of("loss", Furnaces.LOSS), trip, in);
    return Hours.each(h -> Math.min(1, losses[h] / output));
  }

  private double duty() {
    return in.typical("refrigerator-duty", "refrigerator.compressor-duty");
  }

  /** What the inverter takes while it is on and feeds nothing. */
  private double[] idle() {
    Optional<Electric.Inverter> inverter = rig.electric().inverter();
    if (inverter.isEmpty() || plugged() || !trip.keeps("inverter")) {
      return Hours.evenly(0);
    }
    double hours = inverter.get().on().known() ? in.of("on", inverter.get().on()) : Hours.DAY;
    return Hours.times(Hours.running(Load.When.EVENING, hours), idleWatts(inverter.get()));
  }

  private double idleWatts(Electric.Inverter inverter) {
    return inverter.idle().known()
        ? in.of("idle", inverter.idle())
        : in.typical("idle-share", "inverter.idle") * in.of("inverter", inverter.output());
  }

  /** Loads of the bank of which nobody said how long they run. */
  static List<String> notCounted(Rig rig) {
    return Loads.of(rig).stream()
        .filter(i -> i.mains() ? inverted(i, rig) : Loads.onHouseBank(i, rig))
        .filter(i -> i.gear().startsWith("electric.loads.") && listed(i, rig).isEmpty())
        .map(LoadItem::id)
        .toList();
  }

  // ---- in

  /** What the sun, the post and the generator bring, as far as the bank takes it. */
  private double[] charge(BatteryBank bank, double[] out) {
    double volts = in.of("volts", Batteries.VOLTAGE);
    double[] brought = Hours.plus(sun(), Hours.times(charging(), volts));
    double most = volts * Recharge.limit(bank, in);
    return Hours.each(h -> tooCold(bank, h) ? 0 : Math.min(brought[h], Math.max(0, out[h]) + most));
  }

  /** Lithium takes no charge in frost unless it is heated. */
  private boolean tooCold(BatteryBank bank, int hour) {
    if (bank.inside() == Answer.YES || !Batteries.freezes(bank)) {
      return false;
    }
    boolean known = trip.usual().isPresent() || rig.stay().filter(s -> s.low().known()).isPresent();
    return known
        && Batteries.frozen(Weather.outsideFahrenheit(hour + 0.5, trip.low(in), trip.high(in)));
  }

  /** Amperes of the converter by the hour: always on the post, or as long as the generator runs. */
  private double[] charging() {
    Optional<Electric.Converter> converter = rig.electric().converter();
    if (converter.isEmpty() || (!plugged() && trip.generator().isEmpty())) {
      return Hours.evenly(0);
    }
    double amps = in.of("charger", converter.get().output());
    double[] shares =
        plugged()
            ? Hours.each(h -> 1)
            : Hours.running(
                Load.When.DAY, in.of("generator-hours", trip.generator().orElseThrow()));
    return Hours.times(shares, amps);
  }

  /** The sun of a day as half a sine between its rise and its set. */
  private double[] sun() {
    if (rig.electric().solar().isEmpty()) {
      return Hours.evenly(0);
    }
    Optional<Month> month = trip.month();
    String part = month.map(Sun::name).orElse("");
    if (trip.usual().isPresent() && !in.has(Sun.MONTH, part)) {
      return Hours.evenly(0);
    }
    if (month.isEmpty()) {
      in.missing("stay.month");
      return Hours.evenly(0);
    }
    Fact latitude = Trip.fact(rig, Stay::latitude, "place.latitude", Unit.DEGREE);
    double hours = Sun.dayLengthHours(in.of("latitude", latitude), Sun.dayOfYear(month.get()));
    return daylight(in.of("sun", Sun.MONTH, part), hours);
  }

  /** A day's energy laid under half a sine around noon. */
  static double[] daylight(double wattHours, double dayHours) {
    return Hours.each(h -> wattHours * (reached(h + 1, dayHours) - reached(h, dayHours)));
  }

  /** The share of the day's sun that came by this hour. */
  private static double reached(double hour, double dayHours) {
    double since = Math.max(0, Math.min(dayHours, hour - 12 + dayHours / 2));
    return (1 - Math.cos(Math.PI * since / dayHours)) / 2;
  }
}
