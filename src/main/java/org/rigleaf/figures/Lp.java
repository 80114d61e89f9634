package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.source.Unit.BTU;
import static org.rigleaf.source.Unit.GALLON;
import static org.rigleaf.source.Unit.POUND;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rigleaf.rig.Propane;
import org.rigleaf.rig.Rig;

/** Propane: what each container takes, in pounds, gallons and heat. */
final class Lp {
  static final Entry FILL =
      Entry.of(
              "lp.<id>.fill",
              POUND,
              PUBLISHED,
              "29 CFR 1910.110 table H-27: 42 % of the water capacity by weight; fixed tank 80 % by"
                  + " volume")
          .rows(Lp::fills);

  static final Entry GALLONS =
      Entry.of("lp.<id>.gallons", GALLON, PUBLISHED, "commercial propane at 60 F: 4.20 lb a gallon")
          .each(
              "{fill} ÷ 4.20 lb/gal",
              Lp::containers,
              id -> id,
              (id, in) -> gallons(in.of("fill", FILL, id)));

  static final Entry HEAT =
      Entry.of("lp.heat", BTU, PUBLISHED, "commercial propane: 21,548 Btu a pound").rows(Lp::heat);

  static final List<Entry> ENTRIES = List.of(FILL, GALLONS, HEAT);

  /** Share of its water capacity, by weight, that a cylinder may take (29 CFR 1910.110 H-27). */
  private static final double FILLING_DENSITY = 0.42;

  /** Share of a fixed tank's volume where its stop valve closes. */
  private static final double TANK_STOP = 0.80;

  /** Commercial propane at 60 F (NFPA 58 annex B as reproduced, seen in two copies). */
  static final double POUNDS_PER_GALLON = 4.20;

  /**
   * Commercial propane after vaporizing (the same row). The row's 91,502 Btu a gallon disagrees
   * with it by 1.1 %; heat by weight is the one used, everywhere.
   */
  private static final double BTU_PER_POUND = 21_548;

  private Lp() {}

  /** The cylinders, which may be none. */
  static List<Propane.Cylinder> cylinders(Rig rig) {
    return rig.propane().map(Propane::cylinders).orElse(List.of());
  }

  private static Optional<Propane.Tank> tank(Rig rig) {
    return rig.propane().flatMap(Propane::tank);
  }

  /** The ids of all containers: the cylinders, then the fixed tank. */
  static List<String> containers(Rig rig) {
    return Stream.concat(
            cylinders(rig).stream().map(c -> c.gear().part()),
            tank(rig).stream().map(t -> t.gear().part()))
        .toList();
  }

  private static void fills(Rig rig, Rows rows) {
    cylinders(rig).forEach(c -> rows.number(formula(c), in -> fill(c, in), c.gear().part()));
    tank(rig).ifPresent(t -> rows.number(formula(t), in -> fill(t, in), t.gear().part()));
  }

  private static String formula(Propane.Cylinder c) {
    String most = c.waterCapacity().known() ? "0.42 × {water-capacity}" : "{size}";
    if (c.filledTo().known()) {
      return rated(c) ? "min({filled-to}, " + most + ")" : "{filled-to}";
    }
    return most;
  }

  private static boolean rated(Propane.Cylinder c) {
    return c.waterCapacity().known() || c.size().known();
  }

  /** Never more than the cylinder may take, whatever it is said to be filled to. */
  private static double fill(Propane.Cylinder c, Inputs in) {
    if (!c.filledTo().known()) {
      return most(c, in);
    }
    double filled = in.of("filled-to", c.filledTo());
    return rated(c) ? Math.min(filled, most(c, in)) : filled;
  }

  private static double most(Propane.Cylinder c, Inputs in) {
    return c.waterCapacity().known()
        ? cylinderPounds(in.of("water-capacity", c.waterCapacity()))
        : in.of("size", c.size());
  }

  private static String formula(Propane.Tank t) {
    return t.holds().known() ? "{holds}" : "0.80 × {gallons} × 4.20 lb/gal";
  }

  private static double fill(Propane.Tank t, Inputs in) {
    return t.holds().known()
        ? in.of("holds", t.holds())
        : tankPounds(in.of("gallons", t.waterGallons()));
  }

  private static void heat(Rig rig, Rows rows) {
    List<String> ids = containers(rig);
    if (!ids.isEmpty()) {
      rows.number(
          "(" + braces(ids, " + ") + ") × 21,548 Btu/lb",
          in -> heatBtu(ids.stream().mapToDouble(id -> in.of(id, FILL, id)).sum()));
    }
  }

  /** The names of inputs as a formula holds them, with a sign between. */
  static String braces(List<String> names, String between) {
    return names.stream().map(n -> "{" + n + "}").collect(Collectors.joining(between));
  }

  /** Pounds of propane that a cylinder takes, by the water capacity stamped on its collar. */
  static double cylinderPounds(double waterCapacityPounds) {
    return positive(waterCapacityPounds) * FILLING_DENSITY;
  }

  /** Pounds of propane that a fixed tank takes, by its gallons of water. */
  static double tankPounds(double waterGallons) {
    return positive(waterGallons) * TANK_STOP * POUNDS_PER_GALLON;
  }

  /** Gallons of liquid propane at 60 F. */
  static double gallons(double pounds) {
    return positive(pounds) / POUNDS_PER_GALLON;
  }

  /** Heat of propane, Btu. */
  static double heatBtu(double pounds) {
    return positive(pounds) * BTU_PER_POUND;
  }

  /**
   * Hours that propane lasts at a steady input.
   *
   * @throws IllegalArgumentException without an input
   */
  static double lifeHours(double pounds, double inputBtuPerHour) {
    return heatBtu(pounds) / positive(inputBtuPerHour);
  }

  private static double positive(double value) {
    if (value <= 0) {
      throw new IllegalArgumentException("must be above zero: " + value);
    }
    return value;
  }
}
