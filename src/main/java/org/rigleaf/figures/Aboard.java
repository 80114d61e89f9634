package org.rigleaf.figures;

import static org.rigleaf.source.Unit.FOOT;
import static org.rigleaf.source.Unit.SHARE;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Place;
import org.rigleaf.rig.Propane;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Road;

/** What rides in the rig on top of its unloaded weight: how heavy, and how far back. */
final class Aboard {
  /** How tanks travel where the profile is silent; named in the source of each figure. */
  static final String TANKS = "tanks as they travel, unsaid: fresh full, waste empty";

  /**
   * A weight aboard.
   *
   * @param formula its pounds, with {@code {names}} for inputs
   * @param spot where it is
   */
  record Item(String formula, ToDoubleFunction<Inputs> pounds, Along spot) {}

  /**
   * A place along the rig.
   *
   * @param formula feet back from the coupler, pin or front bumper, with names for inputs
   */
  record Along(String formula, ToDoubleFunction<Inputs> feet) {}

  private Aboard() {}

  /** Everything: cargo, water, propane the unloaded weight leaves out; in motorhomes more. */
  static List<Item> all(Rig rig) {
    return Stream.concat(loads(rig).stream(), propane(rig).stream()).toList();
  }

  /** What counts against the cargo rating: not the propane, which that rating has taken off. */
  static List<Item> loads(Rig rig) {
    return Stream.of(cargo(rig), water(rig), people(rig), towed(rig))
        .flatMap(List::stream)
        .toList();
  }

  /** The sum of weights. */
  static double pounds(List<Item> items, Inputs in) {
    return items.stream().mapToDouble(i -> i.pounds().applyAsDouble(in)).sum();
  }

  private static List<Item> cargo(Rig rig) {
    return rig.road().cargo().stream().map(c -> cargo(rig, c)).toList();
  }

  private static Item cargo(Rig rig, Road.Cargo c) {
    String name = "cargo." + Ids.last(c.id());
    return new Item(
        "{" + name + "}", in -> in.of(name, c.weight()), along(rig, name, c.place(), c.id()));
  }

  private static List<Item> water(Rig rig) {
    return Tanks.built(rig).stream().flatMap(t -> water(rig, t).stream()).toList();
  }

  /** The water of a tank on the road; empty if the tank is. */
  private static Optional<Item> water(Rig rig, Tanks.Tank tank) {
    Fact share = share(rig, tank.id());
    boolean full = !share.known() && List.of("fresh", "heater").contains(tank.id());
    Along spot = along(rig, tank.id(), tank.gear().place(), tank.gear().id());
    String name = "{" + tank.id() + "}";
    if (full) {
      return Optional.of(new Item(name, in -> full(tank, in), spot));
    }
    String part = tank.id() + "-share";
    return Optional.of(share)
        .filter(s -> s.known() && s.value() > 0)
        .map(
            s -> new Item(name + " × {" + part + "}", in -> full(tank, in) * in.of(part, s), spot));
  }

  private static double full(Tanks.Tank tank, Inputs in) {
    return in.of(tank.id(), Tanks.WEIGHT, tank.id());
  }

  /** How full a tank is on the road; unknown if nobody said. The heater is always full. */
  private static Fact share(Rig rig, String tank) {
    Road.TravelsWith travels = rig.road().travelsWith();
    return switch (tank.replaceFirst("\\..*", "")) {
      case "fresh" -> travels.fresh();
      case "heater" -> Fact.unknown("heater", SHARE);
      case "gray" -> travels.gray();
      default -> travels.black();
    };
  }

  /** The containers, full, where the unloaded weight leaves them out. */
  static List<Item> propane(Rig rig) {
    boolean leftOut =
        rig.road().weights().stream()
            .anyMatch(w -> w.unloadedIncludes().contains(Road.UnloadedWith.NOTHING));
    return leftOut ? containers(rig).map(g -> propane(rig, g)).toList() : List.of();
  }

  private static Stream<Gear> containers(Rig rig) {
    return Stream.concat(
        Lp.cylinders(rig).stream().map(Propane.Cylinder::gear),
        rig.propane().flatMap(Propane::tank).map(Propane.Tank::gear).stream());
  }

  private static Item propane(Rig rig, Gear container) {
    String id = container.part();
    return new Item(
        "{lp." + id + "}",
        in -> in.of("lp." + id, Lp.FILL, id),
        along(rig, "lp." + id, container.place(), container.id()));
  }

  /** The party on its seats: of a motorhome the people are part of the load. */
  private static List<Item> people(Rig rig) {
    if (!rig.identity().kind().motorized()) {
      return List.of();
    }
    Along seats = along(rig, "seats", rig.identity().seats(), "rig.seats");
    return List.of(new Item("{people} × {person}", in -> partyPounds(rig, in), seats));
  }

  private static double partyPounds(Rig rig, Inputs in) {
    return Trip.stay(rig).people(in) * in.typical("person", "person.weight");
  }

  /** What a motorhome tows rests on its rear bumper. */
  private static List<Item> towed(Rig rig) {
    Along bumper = new Along("{length}", in -> in.of("length", rig.identity().length()));
    return rig.road().towed().filter(t -> rig.identity().kind().motorized()).stream()
        .map(t -> new Item("{towed}", in -> in.of("towed", t.hitchWeight()), bumper))
        .toList();
  }

  /** Only a measured place counts; on the rear face it is told forward from the rear bumper. */
  private static Along along(Rig rig, String name, Place place, String path) {
    String at = name + "-at";
    Fact told = rig.facts().getOrDefault(path + ".at", Fact.unknown(path + ".at", FOOT));
    if (place.spot().filter(s -> s.face() == Face.REAR).isEmpty()) {
      return new Along("{" + at + "}", in -> in.of(at, told));
    }
    return new Along(
        "({length} − {" + at + "})",
        in -> in.of("length", rig.identity().length()) - in.of(at, told));
  }
}
