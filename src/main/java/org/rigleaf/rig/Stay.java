package org.rigleaf.rig;

import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.DEGREE;
import static org.rigleaf.source.Unit.FAHRENHEIT;
import static org.rigleaf.source.Unit.FOOT;
import static org.rigleaf.source.Unit.GALLON;
import static org.rigleaf.source.Unit.GALLON_PER_MINUTE;
import static org.rigleaf.source.Unit.HOUR_UNIT;
import static org.rigleaf.source.Unit.MINUTE_UNIT;

import java.time.Month;
import java.util.List;
import java.util.Optional;

/**
 * What the figures on a stay assume.
 *
 * <pre>
 * stay:
 *   people: 2
 *   outside: {low: 38 degF, high: 70 degF}
 *   place: {latitude: 44.1, elevation: 2400 ft, sunshine: 0.5}
 * </pre>
 *
 * @param hookUps supplies at the site
 * @param generator hours a day that it runs
 * @param towVehicle the one of this trip, if another than the rig's usual one
 * @param sunshine share of the possible sunshine, one value or twelve from January
 */
public record Stay(
    Fact people,
    Fact nights,
    List<HookUp> hookUps,
    Fact low,
    Fact high,
    Fact inside,
    Fact latitude,
    Fact elevation,
    List<Fact> sunshine,
    Optional<Month> month,
    Fact generator,
    Habits habits,
    Optional<Road.TowVehicle> towVehicle) {

  static Stay read(Section s) {
    Fact[] outside =
        s.part(
            "outside",
            o ->
                new Fact[] {
                  o.between("low", FAHRENHEIT, -60, 130), o.between("high", FAHRENHEIT, -60, 130)
                });
    Ground ground = s.part("place", Ground::read);
    return new Stay(
        s.between("people", COUNT, 1, 20),
        s.between("nights", COUNT, 1, 365),
        s.choices("hook-ups", HookUp.class),
        outside[0],
        outside[1],
        s.between("inside", FAHRENHEIT, 40, 90),
        ground.latitude(),
        ground.elevation(),
        ground.sunshine(),
        s.month("month"),
        s.between("generator", HOUR_UNIT, 0, 24),
        s.part("habits", Habits::read),
        s.group("tow-vehicle", Road.TowVehicle::read));
  }

  /** A supply at the site. */
  public enum HookUp implements Choice {
    ELECTRIC,
    WATER,
    SEWER
  }

  private record Ground(Fact latitude, Fact elevation, List<Fact> sunshine) {
    static Ground read(Section s) {
      return new Ground(
          s.bare("latitude", DEGREE, -66, 66),
          s.between("elevation", FOOT, 0, 15_000),
          s.shares("sunshine"));
    }
  }

  /** A person's day with water. */
  public record Habits(
      Fact drinking,
      Fact washing,
      Fact showers,
      Fact showerMinutes,
      Fact showerFlow,
      Fact flushes) {
    static Habits read(Section s) {
      Fact[] shower =
          s.part(
              "shower",
              h ->
                  new Fact[] {
                    h.bare("minutes", MINUTE_UNIT, 0.5, 60), h.positive("flow", GALLON_PER_MINUTE)
                  });
      return new Habits(
          s.notNegative("drinking-and-cooking", GALLON),
          s.notNegative("washing", GALLON),
          s.between("showers-a-day", COUNT, 0, 10),
          shower[0],
          shower[1],
          s.between("flushes", COUNT, 0, 50));
    }
  }
}
