package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.POUND;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Collectors;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Road;
import org.rigleaf.rig.Stay;

/** What is left of the ratings of the vehicle that tows or carries the rig. */
final class Tow {
  static final Entry PAYLOAD =
      Entry.of(
              "tow.payload",
              POUND,
              PUBLISHED,
              "49 CFR 575.6(a)(5): label less people and load; the hitch weight of a trailer, and"
                  + " all of a camper, are load")
          .rows(Tow::payload);

  static final Entry REAR_AXLE =
      Entry.of(
              "tow.rear-axle",
              POUND,
              SECOND_DERIVATION,
              "rating less the scale's reading with people and load, less the hitch by the lever"
                  + " of ball and wheelbase; a pin rests over the axle")
          .rows(Tow::rearAxle);

  static final Entry COMBINED =
      Entry.of(
              "tow.combined",
              POUND,
              SECOND_DERIVATION,
              "combined rating less both vehicles as they travel; the hitch weight counts once")
          .rows(Tow::combined);

  static final List<Entry> ENTRIES = List.of(PAYLOAD, REAR_AXLE, COMBINED);

  private static final String LOAD = "{people} − {bed-cargo} − {hardware}";

  private Tow() {}

  private static void payload(Rig rig, Rows rows) {
    List<Aboard.Item> aboard = Aboard.all(rig);
    if (rig.identity().kind().towable()) {
      number(
          rig,
          rows,
          "{label} − " + LOAD + " − {hitch}",
          (v, in) -> payload(v, in, in.of("hitch", Balance.HITCH)));
    } else if (!rig.identity().kind().motorized()) {
      String camper = aboard.stream().map(i -> " − " + i.formula()).collect(Collectors.joining());
      number(
          rig,
          rows,
          "{label} − " + LOAD + " − " + Weights.unloadedFormula(rig) + camper,
          (v, in) -> payload(v, in, Weights.unloaded(rig, in) + Aboard.pounds(aboard, in)));
    }
  }

  private static double payload(Road.TowVehicle v, Inputs in, double rigPounds) {
    return Weights.marginPounds(in.of("label", v.payloadLabel()), load(v, in) + rigPounds);
  }

  private static double load(Road.TowVehicle v, Inputs in) {
    return in.of("people", v.people()) + in.of("bed-cargo", v.bedCargo()) + hardware(v, in);
  }

  private static double hardware(Road.TowVehicle v, Inputs in) {
    return in.of("hardware", v.hitchHardware());
  }

  private static void rearAxle(Rig rig, Rows rows) {
    if (rig.identity().kind().ballCoupled()) {
      number(
          rig,
          rows,
          "{rating} − {weighs} − ({hitch} + {hardware}) × ({wheelbase} + {overhang})"
              + " ÷ {wheelbase}",
          (v, in) -> rearAxle(v, in, Tow::lever));
    } else if (rig.identity().kind().towable()) {
      number(
          rig,
          rows,
          "{rating} − {weighs} − ({hitch} + {hardware})",
          (v, in) -> rearAxle(v, in, (w, i) -> 1));
    }
  }

  private static double lever(Road.TowVehicle v, Inputs in) {
    return lever(in.of("wheelbase", v.wheelbase()), in.of("overhang", v.overhang()));
  }

  private static double rearAxle(
      Road.TowVehicle v, Inputs in, ToDoubleBiFunction<Road.TowVehicle, Inputs> lever) {
    double free =
        Weights.marginPounds(in.of("rating", v.rearRating()), in.of("weighs", v.rearWeighs()));
    double atHitch = in.of("hitch", Balance.HITCH) + hardware(v, in);
    return Weights.marginPounds(free, atHitch * lever.applyAsDouble(v, in));
  }

  private static void combined(Rig rig, Rows rows) {
    if (rig.identity().kind().towable()) {
      number(
          rig,
          rows,
          "{combined} − {weighs} − " + LOAD + " − (" + Balance.axlesFormula(rig) + " + {hitch})",
          (v, in) ->
              Weights.marginPounds(
                  in.of("combined", v.combinedRating()),
                  in.of("weighs", v.weighs())
                      + load(v, in)
                      + Balance.axlePounds(rig, in)
                      + in.of("hitch", Balance.HITCH)));
    } else if (rig.identity().kind().motorized()) {
      rig.road().towed().ifPresent(t -> combined(rig, t, rows));
    }
  }

  /** The axles of a motorhome carry the hitch weight of what it tows already. */
  private static void combined(Rig rig, Road.Towed towed, Rows rows) {
    rows.number(
        "{combined} − (" + Balance.axlesFormula(rig) + ") − ({towed} − {towed-hitch})",
        in ->
            Weights.marginPounds(
                in.of("combined", Weights.of(rig, "gcwr", Road.Weights::gcwr)),
                Balance.axlePounds(rig, in)
                    + in.of("towed", towed.weighs())
                    - in.of("towed-hitch", towed.hitchWeight())));
  }

  /** A figure of the tow vehicle or truck: that of the stay, else the usual one. */
  private static void number(
      Rig rig, Rows rows, String formula, ToDoubleBiFunction<Road.TowVehicle, Inputs> value) {
    Optional<Road.TowVehicle> vehicle =
        rig.stay().flatMap(Stay::towVehicle).or(() -> rig.road().towVehicle());
    if (vehicle.isPresent() || !rig.has("road.tow-vehicle.none")) {
      rows.number(
          formula,
          in -> {
            if (vehicle.isEmpty()) {
              in.missing("road.tow-vehicle");
            }
            return vehicle.map(v -> value.applyAsDouble(v, in)).orElse(Double.NaN);
          });
    }
  }

  /**
   * Pounds on the rear axle for each pound on the ball: the front axle is the pivot.
   *
   * @param overhangFeet from the rear axle back to the ball
   * @throws IllegalArgumentException without a wheelbase
   */
  static double lever(double wheelbaseFeet, double overhangFeet) {
    return Beam.rearPounds(wheelbaseFeet + overhangFeet, wheelbaseFeet);
  }
}
