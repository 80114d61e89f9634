package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.source.Unit.FLUID_OUNCE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Water;

/** Household bleach that brings the whole fresh-water side to 50 parts in a million. */
final class Sanitize {
  static final Entry BLEACH =
      Entry.of(
              "sanitize.bleach.<strength>",
              FLUID_OUNCE,
              PUBLISHED,
              "50 mg/L by volume, as a state drinking-water program's tank sheet prints it (AWWA"
                  + " C652 methods); pipes by published volume")
          .rows((rig, rows) -> rig.water().fresh().ifPresent(f -> bleach(rig, f, rows)));

  static final List<Entry> ENTRIES = List.of(BLEACH);

  /** Per cent of hypochlorite on the label, by its part of the id. */
  private static final Map<String, Double> STRENGTHS = strengths();

  /** Chlorine wanted: the sheet's 50 mg/L for some hours. */
  private static final double WANTED_PPM = 50;

  private static final double PPM_PER_PERCENT = 10_000;

  private static final double FLUID_OUNCES_PER_GALLON = 128;

  private Sanitize() {}

  private static void bleach(Rig rig, Water.Fresh fresh, Rows rows) {
    boolean heater = rig.water().heater().filter(Tanks::stores).isPresent();
    String volume = "({fresh} + " + (heater ? "{heater} + " : "") + Pipes.formula(rig) + ")";
    STRENGTHS.forEach(
        (part, percent) ->
            rows.number(
                volume + " × 128 × 50 ÷ (" + part.replace('-', '.') + " × 10,000)",
                in ->
                    bleachFluidOunces(
                        in.of("fresh", fresh.holds())
                            + heaterGallons(rig, in)
                            + Pipes.gallons(rig, in),
                        percent),
                part));
  }

  /** The heater counts: its bypass stands at normal while the rig is sanitized. */
  private static double heaterGallons(Rig rig, Inputs in) {
    return rig.water()
        .heater()
        .filter(Tanks::stores)
        .map(h -> in.of("heater", h.holds()))
        .orElse(0.0);
  }

  private static Map<String, Double> strengths() {
    Map<String, Double> strengths = new LinkedHashMap<>();
    strengths.put("5-25", 5.25);
    strengths.put("6", 6.0);
    strengths.put("7-5", 7.5);
    strengths.put("8-25", 8.25);
    return strengths;
  }

  /**
   * Bleach for this much water, the bleach itself not counted.
   *
   * @param percent hypochlorite on the label
   * @throws IllegalArgumentException unless the strength is that of a bleach, 1 to 15 per cent
   */
  static double bleachFluidOunces(double waterGallons, double percent) {
    if (percent < 1 || percent > 15) {
      throw new IllegalArgumentException("no household bleach has " + percent + " per cent");
    }
    return waterGallons * FLUID_OUNCES_PER_GALLON * WANTED_PPM / (percent * PPM_PER_PERCENT);
  }
}
