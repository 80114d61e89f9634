package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.GALLON_PER_MINUTE;
import static org.rigleaf.source.Unit.MINUTE_UNIT;
import static org.rigleaf.source.Unit.SECOND_UNIT;

import java.util.List;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Waste;
import org.rigleaf.rig.Water;

/** Showers: how long the hot water runs, how many a tank gives or takes, how soon it burns. */
final class HotWater {
  static final Entry SHOWER =
      Entry.of(
              "heater.shower",
              MINUTE_UNIT,
              SECOND_DERIVATION,
              "hot and cold mixed: hot share = (mix - cold) / (hot - cold); one full tank, nothing"
                  + " heated meanwhile")
          .rows((rig, rows) -> WaterHeater.storage(rig).ifPresent(h -> shower(rig, h, rows)));

  static final Entry SCALD =
      Entry.of(
              "heater.scald",
              SECOND_UNIT,
              PUBLISHED,
              "Consumer Product Safety Commission's alert as widely quoted: deep burns of an adult"
                  + " at 120 F in 5 min, 130 F 30 s, 140 F 6 s, 150 F 2 s; the next hotter row."
                  + " Other tables differ by a second or two at 140 F and above")
          .one(
              "table at {set-point}",
              rig -> rig.water().heater(),
              (h, in) -> scaldSeconds(in.of("set-point", h.setPoint(), "heater.set-point")));

  static final Entry SHOWERS =
      Entry.of(
              "tank.<id>.showers",
              COUNT,
              SECOND_DERIVATION,
              "what the pump can draw of the fresh tank, or a gray tank that takes the shower, over"
                  + " minutes times flow")
          .rows(
              (rig, rows) -> {
                if (WaterDay.hasShower(rig)) {
                  showers(rig, rows);
                }
              });

  static final List<Entry> ENTRIES = List.of(SHOWER, SCALD, SHOWERS);

  private HotWater() {}

  private static void shower(Rig rig, Water.Heater heater, Rows rows) {
    rows.number(
        "{holds} ÷ min(1, ({mix} − {cold}) ÷ ({set-point} − {cold})) ÷ {flow}",
        in ->
            mixedGallons(
                    in.of("holds", heater.holds()),
                    hotShare(
                        in.typical("mix", "shower.mix"),
                        in.typical("cold", "water.cold"),
                        in.of("set-point", heater.setPoint(), "heater.set-point")))
                / flow(rig, in));
  }

  private static void showers(Rig rig, Rows rows) {
    rig.water()
        .fresh()
        .ifPresent(
            f ->
                rows.number(
                    "{drawn} × {holds} ÷ ({minutes} × {flow})",
                    in ->
                        in.typical("drawn", "fresh.drawn")
                            * in.of("holds", f.holds())
                            / WaterDay.showerGallons(rig, in),
                    "fresh"));
    rig.waste().gray().stream()
        .filter(g -> g.drains().isEmpty() || g.drains().contains(Waste.Drain.BATH))
        .forEach(
            g ->
                rows.number(
                    "{holds} ÷ ({minutes} × {flow})",
                    in -> grayShowers(g, rig, in),
                    Tanks.grayId(g.gear())));
  }

  /** The only gray tank takes the shower; of several, those that are said to. */
  private static double grayShowers(Waste.Gray gray, Rig rig, Inputs in) {
    if (gray.drains().isEmpty() && rig.waste().gray().size() > 1) {
      in.missing(gray.gear().id() + ".drains");
    }
    return in.of("holds", gray.holds()) / WaterDay.showerGallons(rig, in);
  }

  private static double flow(Rig rig, Inputs in) {
    Fact flow =
        Trip.fact(rig, s -> s.habits().showerFlow(), "habits.shower.flow", GALLON_PER_MINUTE);
    return in.of("flow", flow, "shower.flow");
  }

  /**
   * Share of hot water in a mix; all of it where it is no hotter than the mix.
   *
   * @throws IllegalArgumentException if the hot water is cold
   */
  static double hotShare(double mixFahrenheit, double coldFahrenheit, double hotFahrenheit) {
    if (hotFahrenheit <= coldFahrenheit) {
      throw new IllegalArgumentException("hot water of " + hotFahrenheit + " F");
    }
    return Math.min(1, (mixFahrenheit - coldFahrenheit) / (hotFahrenheit - coldFahrenheit));
  }

  /** Gallons at the shower that a tank of hot water gives. */
  static double mixedGallons(double hotGallons, double hotShare) {
    return hotGallons / hotShare;
  }

  /** Seconds in which water burns an adult deeply, by the next hotter row of the table. */
  static double scaldSeconds(double fahrenheit) {
    if (fahrenheit <= 120) {
      return 300;
    }
    if (fahrenheit <= 130) {
      return 30;
    }
    return fahrenheit <= 140 ? 6 : 2;
  }
}
