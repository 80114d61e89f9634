package org.rigleaf.figures;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.rigleaf.figures.Value.Words;
import org.rigleaf.rig.Climate;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Load;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Water;

/**
 * A piece of gear and all ways to run it.
 *
 * @param gear its id
 * @param ways each enough by itself
 * @param load the 120 V load that it is, if it is one
 * @param unknown the fact that would say how it runs, if nobody said
 */
record Device(String gear, List<Way> ways, Optional<LoadItem> load, Optional<String> unknown) {
  /** The part of its figures' ids. */
  String part() {
    return Ids.last(gear);
  }

  /** A supply that a piece of gear needs. */
  enum Need {
    PROPANE("LP"),
    BATTERY("12 V"),
    MAINS("120 V"),
    ENGINE("engine");

    private final String symbol;

    Need(String symbol) {
      this.symbol = symbol;
    }
  }

  /** One way to run a piece of gear: it needs all of these, and then does this much. */
  record Way(List<Need> needs, Words gives) {
    static Way full(Need... needs) {
      return new Way(List.of(needs), Words.YES);
    }

    String formula() {
      return needs.stream().map(n -> n.symbol).collect(Collectors.joining(" and "));
    }
  }

  /** All devices of a rig that need a supply. */
  static List<Device> of(Rig rig) {
    List<Device> all = new ArrayList<>();
    rig.climate().furnace().ifPresent(f -> all.add(furnace(f, rig)));
    rig.water().heater().ifPresent(h -> all.add(heater(h, rig)));
    rig.climate().refrigerator().ifPresent(r -> all.add(refrigerator(r, rig)));
    rig.climate().airConditioners().forEach(a -> all.add(onMains(a.gear().id(), rig)));
    rig.climate().range().ifPresent(r -> all.add(device(r.gear().id(), Way.full(Need.PROPANE))));
    rig.water().pump().ifPresent(p -> all.add(device(p.gear().id(), Way.full(Need.BATTERY))));
    rig.electric().loads().forEach(l -> all.add(load(l, rig)));
    rig.electric().outlets().forEach(o -> all.add(onMains(o.gear().id(), rig)));
    return all;
  }

  private static Device device(String gear, Way... ways) {
    return new Device(gear, List.of(ways), Optional.empty(), Optional.empty());
  }

  private static Device onMains(String gear, Rig rig) {
    return new Device(gear, List.of(Way.full(Need.MAINS)), load(gear, rig), Optional.empty());
  }

  private static Optional<LoadItem> load(String gear, Rig rig) {
    return Loads.of(rig).stream().filter(i -> i.gear().equals(gear) && i.mains()).findFirst();
  }

  private static Device load(Load l, Rig rig) {
    if (l.on().isEmpty()) {
      return new Device(l.id(), List.of(), Optional.empty(), Optional.of(l.id() + ".on"));
    }
    return l.on().get() == Load.Supply.MAINS
        ? onMains(l.id(), rig)
        : device(l.id(), Way.full(Need.BATTERY));
  }

  /**
   * Its fan or pump and the board that lights it want 12 V, whatever it burns. One that shares its
   * boiler with the taps also warms by whatever else warms that boiler.
   */
  private static Device furnace(Climate.Furnace f, Rig rig) {
    boolean propane = f.burns(Climate.FurnaceFuel.LP);
    List<Way> ways = new ArrayList<>();
    ways.add(propane ? Way.full(Need.PROPANE, Need.BATTERY) : Way.full(Need.BATTERY));
    Optional<Water.Heater> boiler = rig.water().heater().filter(h -> oneBoiler(f, h));
    boiler.ifPresent(h -> ways.addAll(withoutFlame(h)));
    Optional<LoadItem> element = boiler.flatMap(h -> load(h.gear().id(), rig));
    return new Device(f.gear().id(), ways, element, Optional.empty());
  }

  static boolean oneBoiler(Climate.Furnace f, Water.Heater h) {
    return switch (h.kind().orElse(Water.HeaterKind.STORAGE)) {
      case HYDRONIC -> f.kind().filter(Climate.FurnaceKind.HYDRONIC::equals).isPresent();
      case COMBINATION -> f.kind().filter(Climate.FurnaceKind.COMBINATION::equals).isPresent();
      default -> false;
    };
  }

  /** Burners light by a board on 12 V. */
  private static Device heater(Water.Heater h, Rig rig) {
    List<Way> ways = new ArrayList<>();
    if (h.fuel().contains(Water.HeaterFuel.LP)) {
      ways.add(Way.full(Need.PROPANE, Need.BATTERY));
    }
    if (h.fuel().contains(Water.HeaterFuel.DIESEL)) {
      ways.add(Way.full(Need.BATTERY));
    }
    ways.addAll(withoutFlame(h));
    Optional<String> unknown = Optional.of(h.gear().id() + ".fuel").filter(u -> h.fuel().isEmpty());
    return new Device(h.gear().id(), ways, load(h.gear().id(), rig), unknown);
  }

  /**
   * An element or the engine's heat is enough by itself for a tank; a boiler has a board and pump
   * on 12 V.
   */
  private static List<Way> withoutFlame(Water.Heater h) {
    boolean board =
        h.kind()
            .filter(k -> k == Water.HeaterKind.HYDRONIC || k == Water.HeaterKind.COMBINATION)
            .isPresent();
    List<Way> ways = new ArrayList<>();
    if (h.fuel().contains(Water.HeaterFuel.ENGINE)) {
      ways.add(board ? Way.full(Need.ENGINE, Need.BATTERY) : Way.full(Need.ENGINE));
    }
    if (h.fuel().contains(Water.HeaterFuel.ELECTRIC)) {
      ways.add(board ? Way.full(Need.MAINS, Need.BATTERY) : Way.full(Need.MAINS));
    }
    return ways;
  }

  private static Device refrigerator(Climate.Refrigerator r, Rig rig) {
    List<Climate.RefrigeratorSupply> on = r.runsOn();
    Climate.RefrigeratorKind kind = r.kind().orElse(Climate.RefrigeratorKind.ABSORPTION);
    List<Way> ways = new ArrayList<>();
    Optional<String> unknown = Optional.empty();
    switch (kind) {
      case COMPRESSOR -> {
        ways.add(Way.full(Need.BATTERY));
        if (on.contains(Climate.RefrigeratorSupply.MAINS)) {
          ways.add(Way.full(Need.MAINS));
        }
      }
      case HOUSEHOLD -> ways.add(Way.full(Need.MAINS));
      default -> {
        ways.addAll(absorption(on));
        unknown = Optional.of(r.gear().id() + ".runs-on").filter(u -> on.isEmpty());
      }
    }
    return new Device(r.gear().id(), ways, load(r.gear().id(), rig), unknown);
  }

  /** Its board wants 12 V on every supply; its 12 V element only keeps what is cold. */
  private static List<Way> absorption(List<Climate.RefrigeratorSupply> on) {
    return Arrays.stream(Climate.RefrigeratorSupply.values())
        .filter(on::contains)
        .map(
            s ->
                switch (s) {
                  case LP -> Way.full(Need.PROPANE, Need.BATTERY);
                  case MAINS -> Way.full(Need.MAINS, Need.BATTERY);
                  case BATTERY -> new Way(List.of(Need.BATTERY), Words.PART);
                })
        .toList();
  }
}
