package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.AMPERE_HOUR;
import static org.rigleaf.source.Unit.GALLON;
import static org.rigleaf.source.Unit.GALLON_PER_MINUTE;
import static org.rigleaf.source.Unit.INCH;
import static org.rigleaf.source.Unit.MINUTE_UNIT;

import java.util.List;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Waste;
import org.rigleaf.rig.Water;

/** Filling the fresh tank, rinsing the black one, and the fall of the sewer hose. */
final class Fills {
  static final Entry FILL_TIME =
      Entry.of("fill.time", MINUTE_UNIT, SECOND_DERIVATION, "gallons over gallons a minute")
          .rows((rig, rows) -> rig.water().fresh().ifPresent(f -> fillTime(rig, f, rows)));

  static final Entry PUMPED =
      Entry.of(
              "pump.ten-gallons",
              AMPERE_HOUR,
              SECOND_DERIVATION,
              "minutes for 10 gal at the pump's flow, times its current")
          .rows((rig, rows) -> rig.water().pump().ifPresent(p -> pumped(p, rows)));

  static final Entry UNDRAWN =
      Entry.of(
              "tank.fresh.undrawn",
              GALLON,
              SECOND_DERIVATION,
              "what is left where the pump draws air: the tank less the share drawn from it")
          .rows((rig, rows) -> rig.water().fresh().ifPresent(f -> undrawn(f, rows)));

  static final Entry SEWER_FALL =
      Entry.of(
              "sewer.fall",
              INCH,
              PUBLISHED,
              "a quarter inch a foot, as the residential plumbing code (IRC P3005.3) wants it for a"
                  + " 3 in pipe; the IPC, table 704.1, allows half of that")
          .rows(
              (rig, rows) ->
                  Reach.sewerHoseLength(rig)
                      .ifPresent(
                          hose ->
                              rows.number(
                                  "{fall} × {hose}",
                                  in ->
                                      fallInches(
                                          in.of("hose", hose),
                                          in.typical("fall", "sewer-hose.fall")))));

  static final Entry FLUSH_OVERFLOW =
      Entry.of(
              "flush.overflow",
              MINUTE_UNIT,
              HOUSE_ASSUMPTION,
              "half the black tank over the flow, rounded down to whole minutes, at least one: a"
                  + " warning, never a time to flush by")
          .rows((rig, rows) -> rig.waste().black().ifPresent(b -> flush(b, rows)));

  static final List<Entry> ENTRIES =
      List.of(FILL_TIME, PUMPED, UNDRAWN, SEWER_FALL, FLUSH_OVERFLOW);

  private Fills() {}

  private static void fillTime(Rig rig, Water.Fresh fresh, Rows rows) {
    Fact flow =
        rig.water()
            .fill()
            .map(Water.Fill::flow)
            .orElse(Fact.unknown("water.fill.flow", GALLON_PER_MINUTE));
    rows.number(
        "{holds} ÷ {flow}",
        in -> fillMinutes(in.of("holds", fresh.holds()), in.of("flow", flow, "fill.flow")));
  }

  private static void pumped(Water.Pump pump, Rows rows) {
    rows.number(
        "10 ÷ {flow} ÷ 60 × {current}",
        in ->
            fillMinutes(10, in.of("flow", pump.flow()))
                / 60
                * in.of("current", Loads.CURRENT, "pump"));
  }

  private static void undrawn(Water.Fresh fresh, Rows rows) {
    rows.number(
        "{holds} × (1 − {drawn})",
        in -> in.of("holds", fresh.holds()) * (1 - in.typical("drawn", "fresh.drawn")));
  }

  private static void flush(Waste.Black black, Rows rows) {
    black
        .flushInlet()
        .ifPresent(
            inlet ->
                rows.number(
                    "max(1, floor({holds} ÷ 2 ÷ {flow}))",
                    in ->
                        overflowMinutes(
                            in.of("holds", black.holds()),
                            in.of("flow", inlet.flow(), "flush-port.flow"))));
  }

  /**
   * Minutes until this much water has run.
   *
   * @throws IllegalArgumentException without a flow
   */
  static double fillMinutes(double gallons, double gallonsPerMinute) {
    if (gallonsPerMinute <= 0) {
      throw new IllegalArgumentException("a flow must be above zero: " + gallonsPerMinute);
    }
    return gallons / gallonsPerMinute;
  }

  /** Inches that the far end of a hose must lie lower. */
  static double fallInches(double hoseFeet, double inchesPerFoot) {
    return hoseFeet * inchesPerFoot;
  }

  /**
   * Whole minutes under which a black tank that is half full can overflow while it is flushed.
   * Below one minute one is said: 'in under 1 minute' is still true, and no page says 0.
   *
   * @throws IllegalArgumentException without a flow
   */
  static double overflowMinutes(double gallons, double gallonsPerMinute) {
    return Math.max(1, Math.floor(fillMinutes(gallons / 2, gallonsPerMinute)));
  }
}
