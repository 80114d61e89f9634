package org.rigleaf.figures;

import static org.rigleaf.figures.Check.INDEPENDENT_PROGRAM;
import static org.rigleaf.source.Unit.POUND;

import java.util.ArrayList;
import java.util.List;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Water;

/** What full tanks weigh. */
final class Tanks {
  /** Pounds of a gallon of water as weight labels reckon it (49 CFR 571.110 S9.3.4, 2015 text). */
  static final double LABEL_POUNDS_PER_GALLON = 8.3;

  static final Entry WEIGHT =
      Entry.of(
              "tank.<id>.weight",
              POUND,
              INDEPENDENT_PROGRAM,
              "49 CFR 571.110 S9.3: 8.3 lb a gallon, as on the weight label")
          .each(
              "{holds} × 8.3 lb/gal",
              Tanks::of,
              Tank::id,
              (tank, in) -> waterPounds(in.of("holds", tank.holds())));

  static final List<Entry> ENTRIES = List.of(WEIGHT);

  private Tanks() {}

  /**
   * A tank of the rig.
   *
   * @param id as it stands in figure ids: {@code fresh}, {@code gray.kitchen}
   * @param holds gallons
   * @param gear what it is, and where
   */
  record Tank(String id, Fact holds, Gear gear) {}

  /** Fresh, black, each gray, a toilet with a tank of its own, the heater if it stores water. */
  static List<Tank> of(Rig rig) {
    List<Tank> tanks = new ArrayList<>();
    rig.water().fresh().ifPresent(t -> tanks.add(new Tank("fresh", t.holds(), t.gear())));
    rig.waste().black().ifPresent(t -> tanks.add(new Tank("black", t.holds(), t.gear())));
    rig.waste().gray().forEach(t -> tanks.add(new Tank(grayId(t.gear()), t.holds(), t.gear())));
    rig.waste()
        .toilet()
        .filter(t -> WaterDay.ownTank(rig))
        .ifPresent(t -> tanks.add(new Tank("toilet", t.holds(), t.gear())));
    rig.water()
        .heater()
        .filter(Tanks::stores)
        .ifPresent(t -> tanks.add(new Tank("heater", t.holds(), t.gear())));
    return tanks;
  }

  /** The tanks that are part of the rig: a portable toilet is carried out by hand. */
  static List<Tank> built(Rig rig) {
    boolean carried = rig.has("waste.toilet.kind.portable");
    return of(rig).stream().filter(t -> !carried || !t.id().equals("toilet")).toList();
  }

  /** The id of a gray tank as it stands in figure ids. */
  static String grayId(Gear gear) {
    return "gray." + gear.part();
  }

  /** True unless the heater is of a kind that heats water as it runs and says no gallons. */
  static boolean stores(Water.Heater heater) {
    return heater.holds().known()
        || heater
            .kind()
            .map(k -> k == Water.HeaterKind.STORAGE || k == Water.HeaterKind.COMBINATION)
            .orElse(true);
  }

  /**
   * Pounds of water, as on a weight label.
   *
   * @throws IllegalArgumentException for less than nothing
   */
  static double waterPounds(double gallons) {
    if (gallons < 0) {
      throw new IllegalArgumentException("a tank cannot hold " + gallons + " gal");
    }
    return gallons * LABEL_POUNDS_PER_GALLON;
  }
}
