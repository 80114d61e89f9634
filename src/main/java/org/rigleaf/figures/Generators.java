package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.source.Unit.FOOT;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.List;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Stay;

/** What the generator gives where the rig stands. */
final class Generators {
  static final Entry STEADY =
      Entry.of(
              "generator.steady",
              WATT_UNIT,
              HOUSE_ASSUMPTION,
              "its rating less a share for each 1,000 ft, on a straight line from sea level")
          .rows(Generators::steady);

  static final List<Entry> ENTRIES = List.of(STEADY);

  private Generators() {}

  private static void steady(Rig rig, Rows rows) {
    rig.electric()
        .generator()
        .ifPresent(
            g ->
                rows.number(
                    "{rated} × (1 − {derate} × {elevation} / 1000 ft)", in -> steady(g, rig, in)));
  }

  private static double steady(Electric.Generator g, Rig rig, Inputs in) {
    Fact elevation =
        rig.stay().map(Stay::elevation).orElse(Fact.unknown("stay.place.elevation", FOOT));
    double loss = in.of("derate", g.derate(), "generator.derate");
    return steadyWatts(in.of("rated", g.rated()), loss, in.of("elevation", elevation));
  }

  /**
   * Watts at a height, on a straight line from sea level, never below zero.
   *
   * @throws IllegalArgumentException for a height below zero
   */
  static double steadyWatts(double ratedWatts, double lossPer1000Ft, double elevationFt) {
    if (elevationFt < 0) {
      throw new IllegalArgumentException("a height is not below the sea");
    }
    return Math.max(0, ratedWatts * (1 - lossPer1000Ft * elevationFt / 1000));
  }
}
