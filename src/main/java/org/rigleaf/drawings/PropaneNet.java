package org.rigleaf.drawings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.rig.Climate;
import org.rigleaf.rig.Generator;
import org.rigleaf.rig.Propane;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Water;

/** The way of the propane from its containers through every valve to what burns it. */
public final class PropaneNet {
  private static final int HELD = 0;
  private static final int VALVES = 1;
  private static final int REGULATOR = 2;
  private static final int BURNS = 3;
  private static final String REGULATED = "regulator";

  private final Rig rig;
  private final Propane propane;
  private final PipeWords words;
  private final Pipes pipes;
  private String from = REGULATED;

  private PropaneNet(Rig rig, Propane propane, NetWords words) {
    this.rig = rig;
    this.propane = propane;
    this.words = new PipeWords(words);
    this.pipes = new Pipes(rig, this.words);
  }

  /** The net; empty if nobody says that the rig has propane. */
  public static Optional<Schematic> of(Rig rig, NetWords words) {
    return rig.propane().map(p -> new PropaneNet(rig, p, words).draw());
  }

  private Schematic draw() {
    pipes.thing(changeover(), REGULATED, Shape.DEVICE, REGULATOR);
    propane.cylinders().forEach(this::cylinder);
    propane.tank().ifPresent(this::tank);
    if (propane.cylinders().isEmpty() && propane.tank().isEmpty()) {
      pipes.thing("no-container", Shape.STORE, HELD);
      pipes.open("no-container", REGULATED, Line.PROPANE);
    }
    if (propane.shutOff().isPresent()) {
      from = pipes.gear("propane.shut-off", Shape.SWITCH, REGULATOR, words.say("shuts-all"));
      pipes.open(REGULATED, from, Line.PROPANE);
    }
    burners();
    return pipes.schematic(words.say("propane-alt", Map.of("rig", Pipes.shortName(rig))));
  }

  /** The phrase for what stands between the containers and the pipes. */
  private String changeover() {
    return propane.cylinders().stream()
        .flatMap(c -> c.changeover().stream())
        .findFirst()
        .filter(c -> c != Propane.Changeover.NONE)
        .map(c -> "changeover-" + c.trait())
        .orElse(REGULATED);
  }

  private void cylinder(Propane.Cylinder c) {
    String id = c.gear().id();
    pipes.gear(id, Shape.STORE, HELD, words.amount(c.size()));
    valve(id, pipes.part(id + ".valve", words.say("its-valve"), Shape.SWITCH, VALVES, turn()));
  }

  private void tank(Propane.Tank t) {
    String id = "propane.tank";
    pipes.gear(id, Shape.STORE, HELD, words.amount(t.holds()));
    String valve =
        t.valve().isPresent()
            ? pipes.gear("propane.tank.valve", Shape.SWITCH, VALVES, turn())
            : pipes.part(id + ".valve", words.say("its-valve"), Shape.SWITCH, VALVES, turn());
    valve(id, valve);
  }

  private String turn() {
    return words.say("turn-right");
  }

  private void valve(String container, String valve) {
    pipes.open(container, valve, Line.PROPANE);
    pipes.open(valve, REGULATED, Line.PROPANE);
  }

  // ---- what burns it

  private void burners() {
    Climate climate = rig.climate();
    climate.furnace().filter(f -> f.burns(Climate.FurnaceFuel.LP)).ifPresent(this::furnace);
    rig.water().heater().ifPresent(this::heater);
    climate.refrigerator().ifPresent(this::refrigerator);
    climate.range().ifPresent(r -> burner("climate.range"));
    rig.electric()
        .generator()
        .filter(g -> g.fuel().filter(Generator.Fuel.LP::equals).isPresent())
        .ifPresent(g -> burner("electric.generator"));
    propane.outsideOutlet().ifPresent(o -> burner("propane.outside-outlet", words.say("low")));
    climate.outsideKitchen().ifPresent(k -> loose("climate.outside-kitchen", "fuel-not-told"));
    climate.radiantHeater().ifPresent(h -> loose("climate.radiant-heater", "not-on-pipes"));
  }

  private void furnace(Climate.Furnace furnace) {
    burner(
        "climate.furnace",
        words.amount(furnace.input()),
        furnace.fuel().isEmpty() ? words.say("taken-as-propane") : "");
  }

  private void heater(Water.Heater heater) {
    if (heater.fuel().contains(Water.HeaterFuel.LP)) {
      burner("water.heater", words.amount(heater.burner()));
    } else if (heater.fuel().isEmpty()) {
      loose("water.heater", "fuel-not-told");
    }
  }

  /** An absorption refrigerator of which nobody says what it runs on is taken to burn propane. */
  private void refrigerator(Climate.Refrigerator r) {
    boolean absorption = r.kind().filter(Climate.RefrigeratorKind.ABSORPTION::equals).isPresent();
    List<Climate.RefrigeratorSupply> on = r.runsOn();
    if (on.contains(Climate.RefrigeratorSupply.LP)) {
      burner("climate.refrigerator", words.amount(r.burner()));
    } else if (on.isEmpty() && absorption) {
      burner("climate.refrigerator", words.amount(r.burner()), words.say("taken-as-propane"));
    } else if (on.isEmpty() && r.kind().isEmpty()) {
      loose("climate.refrigerator", "fuel-not-told");
    }
  }

  private void burner(String gear, String... lines) {
    pipes.gear(gear, Shape.LOAD, BURNS, lines);
    pipes.open(from, gear, Line.PROPANE);
  }

  private void loose(String gear, String why) {
    pipes.loose(gear, Shape.LOAD, BURNS, words.say(why));
  }
}
