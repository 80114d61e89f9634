package org.rigleaf.figures;

import java.util.Optional;
import org.rigleaf.rig.Climate;
import org.rigleaf.rig.Generator;
import org.rigleaf.rig.Load;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Stay;
import org.rigleaf.rig.Water;

/** Btu by the hour that a trip burns: furnace, water heater, refrigerator, range. */
final class Burns {
  private final Rig rig;
  private final Trip trip;
  private final Inputs in;

  Burns(Trip trip, Inputs in) {
    this.rig = trip.rig();
    this.trip = trip;
    this.in = in;
  }

  /** Btu of propane. */
  double[] propane() {
    double[] heat =
        Hours.plus(
            furnace(Climate.FurnaceFuel.LP), water(Water.HeaterFuel.LP, "heater.efficiency-lp"));
    double[] engine = Hours.times(generatorGallons(true), Lp.heatBtu(Lp.POUNDS_PER_GALLON));
    return Hours.plus(Hours.plus(heat, engine), Hours.plus(refrigerator(), range()));
  }

  /** Btu of motor fuel in heaters. */
  double[] motorFuel() {
    return Hours.plus(
        Hours.plus(furnace(Climate.FurnaceFuel.DIESEL), furnace(Climate.FurnaceFuel.GASOLINE)),
        water(Water.HeaterFuel.DIESEL, "heater.efficiency-fuel"));
  }

  /** Gallons that a generator of propane, or of motor fuel, burns in the hours of the stay. */
  double[] generatorGallons(boolean propane) {
    Optional<Generator> generator =
        rig.electric()
            .generator()
            .filter(propane ? Generators::burnsPropane : Generators::drinksMotorFuel);
    if (generator.isEmpty() || trip.generator().isEmpty()) {
      return Hours.evenly(0);
    }
    double hours = in.of("generator-hours", trip.generator().get());
    return Hours.times(Hours.running(Load.When.DAY, hours), GeneratorDay.gallonsPerHour(rig, in));
  }

  /** True if a heater burns motor fuel. */
  static boolean burnsFuel(Rig rig) {
    boolean furnace =
        rig.climate().furnace().filter(f -> !f.burns(Climate.FurnaceFuel.LP)).isPresent();
    return furnace
        || rig.water().heater().filter(h -> h.fuel().contains(Water.HeaterFuel.DIESEL)).isPresent();
  }

  /**
   * What the furnace burns to make up for the loss, at most all it can. Height takes from what it
   * can give, not from the heat of a Btu.
   */
  private double[] furnace(Climate.FurnaceFuel fuel) {
    Optional<Climate.Furnace> furnace = rig.climate().furnace().filter(f -> f.burns(fuel));
    if (furnace.isEmpty() || !trip.keeps("furnace")) {
      return Hours.evenly(0);
    }
    double share = in.typical("furnace-efficiency", "furnace.efficiency");
    double most = Furnaces.output(furnace.get(), trip, in);
    double[] losses = Furnaces.losses(in.of("loss", Furnaces.LOSS), trip, in);
    return Hours.each(h -> Math.min(losses[h], most) / share);
  }

  /** What the heater burns for washing and showers; on the post an electric element does it. */
  private double[] water(Water.HeaterFuel fuel, String efficiency) {
    Optional<Water.Heater> heater = rig.water().heater().filter(h -> h.fuel().contains(fuel));
    boolean element =
        trip.has(Stay.HookUp.ELECTRIC)
            && heater.filter(h -> h.fuel().contains(Water.HeaterFuel.ELECTRIC)).isPresent();
    if (heater.isEmpty() || element) {
      return Hours.evenly(0);
    }
    double share = in.of("heater-efficiency", heater.get().efficiency(), efficiency);
    double mix = in.typical("mix", "shower.mix");
    double cold = in.typical("cold", "water.cold");
    return Hours.times(WaterDay.of(trip, in).warm(), WaterDay.warmBtu(1, mix, cold) / share);
  }

  private double[] refrigerator() {
    Optional<Climate.Refrigerator> burning =
        rig.climate().refrigerator().filter(LpLife::onPropane).filter(r -> !onPost(r));
    if (burning.isEmpty()) {
      return Hours.evenly(0);
    }
    double burner = in.of("refrigerator", burning.get().burner(), "refrigerator.absorption-burner");
    return Hours.evenly(Hours.DAY * burner * in.typical("duty", "refrigerator.absorption-duty"));
  }

  private boolean onPost(Climate.Refrigerator r) {
    return trip.has(Stay.HookUp.ELECTRIC) && r.runsOn().contains(Climate.RefrigeratorSupply.MAINS);
  }

  private double[] range() {
    if (rig.climate().range().isEmpty()) {
      return Hours.evenly(0);
    }
    double burner = in.of("burner", rig.climate().range().get().burner(), "range.burner");
    return Hours.cooking(burner * in.typical("cooking", "range.hours"));
  }
}
