package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.GALLON;

import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Water;

/** Antifreeze that fills the fresh-water side for the winter. */
final class Winter {
  private static final String SOURCE =
      "pipes by published volume; their length and the water in pump, filter and traps by common"
          + " practice";

  static final Entry ANTIFREEZE =
      Entry.of("winter.antifreeze", GALLON, HOUSE_ASSUMPTION, SOURCE)
          .rows(
              (rig, rows) -> {
                if (plumbed(rig)) {
                  antifreeze(rig, stored(rig).filter(h -> noBypass(rig)), rows);
                }
              });

  static final Entry NOT_BYPASSED =
      Entry.of(
              "winter.antifreeze.not-bypassed",
              GALLON,
              HOUSE_ASSUMPTION,
              SOURCE + "; and the whole heater")
          .rows((rig, rows) -> unsure(rig).ifPresent(h -> antifreeze(rig, Optional.of(h), rows)));

  static final Entry JUGS =
      Entry.of(
              "winter.antifreeze.jugs",
              COUNT,
              SECOND_DERIVATION,
              "whole jugs of one gallon; a heater that cannot be bypassed counted")
          .rows(
              (rig, rows) -> {
                if (plumbed(rig)) {
                  Entry most = unsure(rig).isPresent() ? NOT_BYPASSED : ANTIFREEZE;
                  boolean poured = rig.water().fresh().isPresent() && !drawsFromJug(rig);
                  rows.number(
                      poured ? "ceil({gallons} + {undrawn})" : "ceil({gallons})",
                      in ->
                          jugs(
                              in.of("gallons", most)
                                  + (poured ? in.of("undrawn", Fills.UNDRAWN) : 0)));
                }
              });

  static final List<Entry> ENTRIES = List.of(ANTIFREEZE, NOT_BYPASSED, JUGS);

  private Winter() {}

  private static boolean plumbed(Rig rig) {
    Water water = rig.water();
    return water.fresh().isPresent()
        || water.cityInlet().isPresent()
        || water.pump().isPresent()
        || water.heater().isPresent()
        || water.lines().known();
  }

  private static Optional<Water.Heater> stored(Rig rig) {
    return rig.water().heater().filter(Tanks::stores);
  }

  /** A heater of which nobody says whether it has a bypass. */
  private static Optional<Water.Heater> unsure(Rig rig) {
    return stored(rig).filter(h -> h.bypass().isEmpty() && !noBypass(rig));
  }

  /** True where the pump can draw from a jug; else antifreeze goes through the tank. */
  private static boolean drawsFromJug(Rig rig) {
    return rig.has("water.winterizing.siphon")
        || rig.water()
            .fill()
            .flatMap(Water.Fill::valve)
            .filter(Water.Valve::drawsFromJug)
            .isPresent();
  }

  /** Jugs of one gallon that hold so much. */
  static double jugs(double gallons) {
    return Math.ceil(gallons);
  }

  private static boolean noBypass(Rig rig) {
    return rig.has("water.heater.bypass.none");
  }

  private static void antifreeze(Rig rig, Optional<Water.Heater> heater, Rows rows) {
    rows.number(
        Pipes.formula(rig) + " + {fittings}" + heater.map(h -> " + {heater}").orElse(""),
        in ->
            Pipes.gallons(rig, in)
                + in.typical("fittings", "pipe.fittings")
                + heater.map(h -> in.of("heater", h.holds())).orElse(0.0));
  }
}
