package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.source.Unit.BTU_PER_HOUR;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rigleaf.rig.Propane;

/** How much vapor a fixed propane tank gives in the cold. */
final class Vapor {
  static final Entry VAPOR =
      Entry.of(
              "lp.vapor.<percent>",
              BTU_PER_HOUR,
              PUBLISHED,
              "a standby-generator maker's manual, TP-6727, figure 1, page 63: diameter times length"
                  + " in inches times a factor, at 0 F; an estimate")
          .rows((rig, rows) -> rig.propane().flatMap(Propane::tank).ifPresent(t -> vapor(t, rows)));

  static final List<Entry> ENTRIES = List.of(VAPOR);

  /** Factor of that figure by per cent full. */
  private static final Map<Integer, Integer> FACTORS = factors();

  private Vapor() {}

  private static void vapor(Propane.Tank tank, Rows rows) {
    FACTORS.forEach(
        (percent, factor) ->
            rows.number(
                "{diameter} × {length} × " + factor,
                in ->
                    vaporBtuPerHour(
                        in.of("diameter", tank.diameter()), in.of("length", tank.length()), factor),
                percent.toString()));
  }

  private static Map<Integer, Integer> factors() {
    Map<Integer, Integer> factors = new LinkedHashMap<>();
    factors.put(60, 100);
    factors.put(50, 90);
    factors.put(40, 80);
    factors.put(30, 70);
    factors.put(20, 60);
    factors.put(10, 45);
    return factors;
  }

  /**
   * Heat in the vapor that a lying tank makes by itself at 0 degrees F.
   *
   * @param factor Btu an hour for each square inch of diameter times length, by how full it is
   * @throws IllegalArgumentException for a tank without size
   */
  static double vaporBtuPerHour(double diameterInches, double lengthInches, double factor) {
    if (diameterInches <= 0 || lengthInches <= 0) {
      throw new IllegalArgumentException("a tank has a diameter and a length");
    }
    return diameterInches * lengthInches * factor;
  }
}
