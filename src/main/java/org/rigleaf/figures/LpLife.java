package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.BTU_PER_HOUR;
import static org.rigleaf.source.Unit.HOUR_UNIT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.rigleaf.rig.Climate;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Generator;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Water;

/** How long one container of propane keeps one appliance burning without a pause. */
final class LpLife {
  static final Entry LIFE =
      Entry.of(
              "lp.<appliance>.life",
              HOUR_UNIT,
              PUBLISHED,
              "heat of one container at 21,548 Btu a pound, over what the appliance uses in an hour")
          .rows(LpLife::lives);

  static final Entry ALL =
      Entry.of(
              "lp.all-burners",
              BTU_PER_HOUR,
              SECOND_DERIVATION,
              "rated inputs of all appliances that burn propane, the generator aside; all burners"
                  + " of the range, its oven not known")
          .rows(LpLife::all);

  static final Entry INPUT =
      Entry.of(
              "lp.<appliance>.input",
              BTU_PER_HOUR,
              SECOND_DERIVATION,
              "the rated input of its nameplate, or the typical value")
          .rows(
              (rig, rows) -> {
                if (!Lp.containers(rig).isEmpty()) {
                  burners(rig).forEach(b -> rows.number("{input}", b::input, b.part()));
                }
              });

  static final Entry WHOLE_LIFE =
      Entry.of(
              "lp.<appliance>.life.all",
              HOUR_UNIT,
              SECOND_DERIVATION,
              "heat of all containers over what the appliance uses in an hour")
          .rows(
              (rig, rows) -> {
                if (Lp.containers(rig).size() > 1) {
                  burners(rig)
                      .forEach(
                          b ->
                              rows.number(
                                  "{heat} ÷ {input}",
                                  in -> hours(in.of("heat", Lp.HEAT), b.input(in)),
                                  b.part()));
                }
              });

  static final List<Entry> ENTRIES = List.of(INPUT, LIFE, WHOLE_LIFE, ALL);

  private LpLife() {}

  /**
   * An appliance that burns propane.
   *
   * @param part in the figure's id
   * @param input rated Btu an hour
   * @param typical what stands in where the profile is silent, if anything may
   */
  record Burner(String part, Fact input, Optional<String> typical) {
    double input(Inputs in) {
      return input("input", in);
    }

    /** The same under the name of the appliance, for a sum of several. */
    double named(Inputs in) {
      return input(part, in);
    }

    private double input(String name, Inputs in) {
      return typical.map(id -> in.of(name, input, id)).orElseGet(() -> in.of(name, input));
    }
  }

  /** The appliances of the rig that burn propane, the generator aside. */
  static List<Burner> burners(Rig rig) {
    List<Burner> all = new ArrayList<>();
    Climate climate = rig.climate();
    climate
        .furnace()
        .filter(f -> f.burns(Climate.FurnaceFuel.LP))
        .ifPresent(f -> all.add(new Burner("furnace", f.input(), Optional.empty())));
    rig.water()
        .heater()
        .filter(h -> h.fuel().contains(Water.HeaterFuel.LP))
        .ifPresent(h -> all.add(new Burner("heater", h.burner(), Optional.empty())));
    climate
        .refrigerator()
        .filter(LpLife::onPropane)
        .ifPresent(
            r ->
                all.add(
                    new Burner(
                        "refrigerator",
                        r.burner(),
                        Optional.of("refrigerator.absorption-burner"))));
    climate
        .range()
        .ifPresent(r -> all.add(new Burner("range", r.burner(), Optional.of("range.burner"))));
    return all;
  }

  /** An absorption refrigerator of which nobody says what it runs on has a burner. */
  static boolean onPropane(Climate.Refrigerator refrigerator) {
    boolean absorption =
        refrigerator.kind().filter(Climate.RefrigeratorKind.ABSORPTION::equals).isPresent();
    return refrigerator.runsOn().isEmpty()
        ? absorption
        : refrigerator.runsOn().contains(Climate.RefrigeratorSupply.LP);
  }

  private static void all(Rig rig, Rows rows) {
    List<Burner> burners =
        burners(rig).stream().filter(b -> !b.part().equals("furnace") || apart(rig)).toList();
    if (!burners.isEmpty() && !Lp.containers(rig).isEmpty()) {
      rows.number(
          burners.stream().map(b -> times(b, rig)).collect(Collectors.joining(" + ")),
          in -> burners.stream().mapToDouble(b -> b.named(in) * count(b, rig, in)).sum());
    }
  }

  /** True unless the furnace is the boiler of the taps, whose burner then counts. */
  private static boolean apart(Rig rig) {
    return rig.climate()
        .furnace()
        .flatMap(f -> rig.water().heater().filter(h -> Device.oneBoiler(f, h)))
        .filter(h -> h.fuel().contains(Water.HeaterFuel.LP))
        .isEmpty();
  }

  private static Optional<Fact> several(Burner burner, Rig rig) {
    return rig.climate()
        .range()
        .filter(r -> burner.part().equals("range"))
        .map(Climate.Range::burners)
        .filter(Fact::known);
  }

  private static double count(Burner burner, Rig rig, Inputs in) {
    return several(burner, rig).map(f -> in.of("burners", f)).orElse(1.0);
  }

  private static String times(Burner burner, Rig rig) {
    String each = "{" + burner.part() + "}";
    return several(burner, rig).isPresent() ? "{burners} × " + each : each;
  }

  private static void lives(Rig rig, Rows rows) {
    List<String> ids = Lp.containers(rig);
    if (ids.isEmpty()) {
      return;
    }
    for (Burner burner : burners(rig)) {
      rows.number(
          one(ids) + " × 21,548 Btu/lb ÷ {input}",
          in -> Lp.lifeHours(least(ids, Lp.FILL, in), burner.input(in)),
          burner.part());
    }
    generator(rig)
        .ifPresent(
            g ->
                rows.number(
                    one(ids) + " ÷ {burns}",
                    in -> hours(least(ids, Lp.GALLONS, in), in.of("burns", g.fullLoad())),
                    "generator"));
  }

  private static Optional<Generator> generator(Rig rig) {
    return rig.electric()
        .generator()
        .filter(g -> g.fuel().filter(Generator.Fuel.LP::equals).isPresent());
  }

  private static String one(List<String> ids) {
    String names = Lp.braces(ids, ", ");
    return ids.size() == 1 ? names : "min(" + names + ")";
  }

  /** One container: the smallest, where they differ. */
  private static double least(List<String> ids, Entry entry, Inputs in) {
    return ids.stream().mapToDouble(id -> in.of(id, entry, id)).min().orElse(Double.NaN);
  }

  /**
   * Hours that a store lasts at a steady draw.
   *
   * @throws IllegalArgumentException without a draw
   */
  static double hours(double store, double drawPerHour) {
    if (drawPerHour <= 0) {
      throw new IllegalArgumentException("a draw must be above zero: " + drawPerHour);
    }
    return store / drawPerHour;
  }
}
