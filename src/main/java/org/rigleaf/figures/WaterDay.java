package org.rigleaf.figures;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Stay;
import org.rigleaf.rig.Waste;
import org.rigleaf.rig.Water;
import org.rigleaf.source.Unit;

/**
 * Gallons of water by the hour that a party uses.
 *
 * @param drinking and cooking; drains nowhere
 * @param washing drains by the kitchen
 * @param showers drains by the bath
 * @param flushes what the toilet takes, from the fresh tank or its own
 */
record WaterDay(double[] drinking, double[] washing, double[] showers, double[] flushes) {

  /** The day of a trip. */
  static WaterDay of(Trip trip, Inputs in) {
    double people = trip.people(in);
    return new WaterDay(
        Hours.evenly(people * drinking(trip.rig(), in)),
        Hours.washing(people * (trip.keeps("washing") ? washing(trip.rig(), in) : 0)),
        Hours.washing(people * (trip.keeps("showers") ? showers(trip.rig(), in) : 0)),
        Hours.evenly(people * flushes(trip.rig(), in)));
  }

  private static Fact habit(Rig rig, Function<Stay.Habits, Fact> key, String path, Unit unit) {
    return Trip.fact(rig, s -> key.apply(s.habits()), "habits." + path, unit);
  }

  private static double drinking(Rig rig, Inputs in) {
    Fact fact = habit(rig, Stay.Habits::drinking, "drinking-and-cooking", Unit.GALLON);
    return in.of("drinking", fact, "drinking-and-cooking");
  }

  private static double washing(Rig rig, Inputs in) {
    return in.of("washing", habit(rig, Stay.Habits::washing, "washing", Unit.GALLON), "washing");
  }

  /** Gallons a person and day. Showers need a water heater or a tank for what drains from them. */
  private static double showers(Rig rig, Inputs in) {
    if (!hasShower(rig)) {
      return 0;
    }
    Fact count = habit(rig, Stay.Habits::showers, "showers-a-day", Unit.COUNT);
    return in.of("showers", count, "shower.count") * showerGallons(rig, in);
  }

  static boolean hasShower(Rig rig) {
    return rig.water().heater().isPresent()
        || rig.waste().gray().stream().anyMatch(g -> g.drains().contains(Waste.Drain.BATH));
  }

  /** Gallons of one shower. */
  static double showerGallons(Rig rig, Inputs in) {
    Fact minutes = habit(rig, Stay.Habits::showerMinutes, "shower.minutes", Unit.MINUTE_UNIT);
    Fact flow = habit(rig, Stay.Habits::showerFlow, "shower.flow", Unit.GALLON_PER_MINUTE);
    return in.of("minutes", minutes, "shower.minutes") * in.of("flow", flow, "shower.flow");
  }

  /** Gallons a person and day that a toilet flushes; a dry one none. */
  private static double flushes(Rig rig, Inputs in) {
    if (!flushes(rig)) {
      return 0;
    }
    Fact count = habit(rig, Stay.Habits::flushes, "flushes", Unit.COUNT);
    Fact volume =
        rig.waste()
            .toilet()
            .map(Waste.Toilet::flush)
            .orElse(Fact.unknown("waste.toilet.flush", Unit.GALLON));
    return in.of("flushes", count, "flush.count") * in.of("flush", volume, "flush.volume");
  }

  private static boolean flushes(Rig rig) {
    return rig.waste()
        .toilet()
        .map(t -> t.kind().filter(Waste.ToiletKind.COMPOSTING::equals).isEmpty())
        .orElse(rig.waste().black().isPresent());
  }

  /** True if the toilet flushes from the fresh tank, and not from water of its own. */
  static boolean flushesFresh(Rig rig) {
    return flushes(rig) && !ownTank(rig);
  }

  /** A cassette or portable toilet. */
  static boolean ownTank(Rig rig) {
    return rig.waste()
        .toilet()
        .flatMap(Waste.Toilet::kind)
        .filter(k -> k == Waste.ToiletKind.CASSETTE || k == Waste.ToiletKind.PORTABLE)
        .isPresent();
  }

  /** The gallons of a person's showers, in symbols; empty where there are none. */
  static String showersFormula(Rig rig) {
    return hasShower(rig) ? "{showers} × {minutes} × {flow}" : "";
  }

  /** What a party flushes, in symbols. */
  static String flushFormula(Rig rig) {
    return flushes(rig) ? "{people} × {flushes} × {flush}" : "0";
  }

  /** What the fresh tank gives, in symbols. */
  static String freshFormula(Rig rig) {
    String flushed = flushesFresh(rig) ? "{flushes} × {flush}" : "";
    return ofParty("{drinking}", "{washing}", showersFormula(rig), flushed);
  }

  /** People times the sum of what each takes. */
  static String ofParty(String... each) {
    List<String> terms = Stream.of(each).filter(s -> !s.isEmpty()).toList();
    String sum = String.join(" + ", terms);
    return terms.isEmpty() ? "0" : "{people} × " + (terms.size() == 1 ? sum : "(" + sum + ")");
  }

  /** What the fresh tank or the site's tap gives. */
  double[] fresh(Rig rig) {
    double[] taps = Hours.plus(drinking, Hours.plus(washing, showers));
    return flushesFresh(rig) ? Hours.plus(taps, flushes) : taps;
  }

  /** Water from the hot tap at the mix's warmth: washing and showers. */
  double[] warm() {
    return Hours.plus(washing, showers);
  }

  /** Btu that a gallon of warm water takes: 8.33 lb from cold to the mix. */
  static double warmBtu(double gallons, double mixFahrenheit, double coldFahrenheit) {
    return gallons * WaterHeater.HEAT_POUNDS_PER_GALLON * (mixFahrenheit - coldFahrenheit);
  }

  /** True if a heater warms the water. */
  static boolean warms(Water.Heater heater, Water.HeaterFuel fuel) {
    return heater.fuel().contains(fuel);
  }
}
