package org.rigleaf.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Rig;

/**
 * A thing that charges the house bank at a steady current: the converter on shore power, the same
 * on the generator, the engine.
 *
 * @param id the part of its figures' ids
 * @param bank the house bank
 * @param rig the rig
 */
record Charger(String id, BatteryBank bank, Rig rig) {
  private static final String CONVERTER = "converter";
  private static final String ALTERNATOR = "alternator";

  /** All chargers of a rig; none without a bank. */
  static List<Charger> of(Rig rig) {
    Electric electric = rig.electric();
    List<String> ids = new ArrayList<>();
    if (electric.converter().isPresent()) {
      ids.add(CONVERTER);
      electric.generator().ifPresent(g -> ids.add(Source.GENERATOR));
    }
    electric.alternatorCharging().ifPresent(a -> ids.add(ALTERNATOR));
    Optional<BatteryBank> bank = Batteries.bank(rig);
    return bank.stream().flatMap(b -> ids.stream().map(i -> new Charger(i, b, rig))).toList();
  }

  /** Amperes that it gives. */
  double amps(Inputs in) {
    Electric electric = rig.electric();
    if (id.equals(ALTERNATOR)) {
      return in.of("charger", electric.alternatorCharging().orElseThrow().output());
    }
    double amps = in.of("charger", electric.converter().orElseThrow().output());
    return id.equals(CONVERTER)
        ? amps
        : fedAmps(amps, Loads.watts(converter(), rig, in), in.of("steady", Generators.STEADY));
  }

  /** How {@link #amps} works, in symbols. */
  String formula() {
    boolean fed = id.equals(Source.GENERATOR);
    return "{charger}"
        + (fed ? " × min(1, {steady} ÷ (" + Loads.wattsFormula(converter(), rig) + "))" : "");
  }

  private LoadItem converter() {
    return Loads.converter(rig.electric().converter().orElseThrow());
  }

  /**
   * Amperes out of a charger whose source gives fewer watts than it wants: cut down alike.
   *
   * @throws IllegalArgumentException for a charger that takes no watts
   */
  static double fedAmps(double outputAmps, double wantedWatts, double givenWatts) {
    if (wantedWatts <= 0) {
      throw new IllegalArgumentException("a charger takes more than 0 W");
    }
    return outputAmps * Math.min(1, givenWatts / wantedWatts);
  }
}
