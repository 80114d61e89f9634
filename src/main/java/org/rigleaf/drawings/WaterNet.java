package org.rigleaf.drawings;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Water;

/**
 * The way of the water from the site's tap, the filler or the antifreeze jug to the taps, with
 * every valve as it stands in one state.
 */
public final class WaterNet {
  /** What the valves are set for. */
  public enum State {
    /** Water from the site or from the tank. */
    USE,
    /** Water into the tank through a valve. */
    FILL,
    /** Antifreeze into the lines. */
    WINTER
  }

  static final int PIPES = 2;
  private static final int IN = 0;
  private static final int TANK = 1;
  private static final int LONGEST = 12; // of the name of a position, in a box
  private static final String INLET = "water.city-inlet";
  private static final String FILL = "water.fill";
  private static final String VALVE = "water.fill.valve";
  private static final String FRESH = "water.fresh";
  private static final String REGULATOR = "kit.regulator";
  private static final String PICK_UP = "pick-up";

  private final Rig rig;
  private final Water water;
  private final State state;
  private final PipeWords words;
  private final Pipes pipes;
  private final Optional<Water.Valve> valve;
  private final boolean city;
  private final boolean ported; // the filler is a port on the fill valve

  private WaterNet(Rig rig, NetWords words, State state) {
    this.rig = rig;
    this.water = rig.water();
    this.state = state;
    this.words = new PipeWords(words);
    this.pipes = new Pipes(rig, this.words);
    this.valve = water.fill().flatMap(Water.Fill::valve);
    this.city = water.cityInlet().isPresent();
    this.ported = valve.isPresent() && (pressure() || !city);
  }

  private boolean pressure() {
    return water
        .fill()
        .flatMap(Water.Fill::style)
        .filter(Water.FillStyle.PRESSURE::equals)
        .isPresent();
  }

  /**
   * The net in this state, machines and drains in a drawing of their own where they are many; none
   * if the rig has no such state.
   */
  public static List<Schematic> of(Rig rig, NetWords words, State state) {
    Water water = rig.water();
    boolean plumbed =
        water.fresh().isPresent() || water.fill().isPresent() || water.cityInlet().isPresent();
    boolean there =
        switch (state) {
          case USE -> plumbed;
          case FILL -> water.fill().flatMap(Water.Fill::valve).isPresent();
          case WINTER -> plumbed && water.pump().isPresent();
        };
    return there ? new WaterNet(rig, words, state).draw() : List.of();
  }

  private List<Schematic> draw() {
    String first = water.filter().isPresent() ? "water.filter" : WaterTaps.COLD;
    if (state != State.WINTER && (city || ported)) {
      tap();
    }
    inlet(first);
    valve.ifPresent(v -> valve(v, first));
    if (water.fresh().isPresent() || water.fill().isPresent() || water.pump().isPresent()) {
      tank(first);
    }
    water.filter().ifPresent(this::filter);
    WaterTaps taps = new WaterTaps(rig, pipes, winter());
    taps.draw();
    String alt = "water-alt-" + state.name().toLowerCase(Locale.ROOT);
    Schematic whole = pipes.schematic(words.say(alt, Map.of("rig", Pipes.shortName(rig))));
    return Stream.concat(
            Stream.of(whole), state == State.FILL ? Stream.empty() : taps.apart().stream())
        .toList();
  }

  // ---- what comes in

  private void tap() {
    pipes.thing("site-tap", Shape.SOURCE, IN);
    if (!rig.has("kit.regulator.none")) {
      String set = pipes.fact("kit.regulator.set");
      String listed = rig.has(REGULATOR) ? "" : words.say("not-listed");
      pipes.gear(REGULATOR, Shape.DEVICE, IN, set, listed);
      pipes.open("site-tap", REGULATOR, Line.COLD);
    }
  }

  private void hose(String port) {
    pipes.open(pipes.has(REGULATOR) ? REGULATOR : "site-tap", port, Line.COLD);
  }

  private void inlet(String first) {
    if (!city) {
      return;
    }
    boolean hose = state == State.USE || state == State.FILL && !ported;
    pipes.gear(INLET, Shape.SOURCE, IN, hose ? "" : words.say("hose-off"));
    if (hose) {
      hose(INLET);
    }
    pipes.link(INLET, valve.isPresent() ? VALVE : first, Line.COLD, !hose);
  }

  private void valve(Water.Valve v, String first) {
    switch (state) {
      case USE ->
          pipes.gear(
              VALVE,
              Shape.SWITCH,
              TANK,
              points("for-site", v.city()),
              points("for-tank", v.tank()));
      case FILL -> pipes.gear(VALVE, Shape.SWITCH, TANK, points("points-to", v.filling()));
      case WINTER ->
          pipes.gear(
              VALVE, Shape.SWITCH, TANK, v.drawsFromJug() ? points("points-to", v.winter()) : "");
    }
    pipes.link(VALVE, first, Line.COLD, state == State.FILL || winter() && v.drawsFromJug());
  }

  private String points(String phrase, Optional<String> position) {
    boolean longer = position.filter(p -> p.length() > LONGEST).isPresent();
    return longer
        ? words.say("handles-below")
        : words.say(phrase, Map.of("position", words.orBlank(position)));
  }

  private boolean winter() {
    return state == State.WINTER;
  }

  // ---- the tank and what moves the water on

  private void tank(String first) {
    if (!(winter() && fromJug())) {
      filler();
    }
    String holds = water.fresh().map(f -> words.amount(f.holds())).orElse(words.say("not-listed"));
    pipes.gear(FRESH, Shape.STORE, TANK, winter() && fromJug() ? words.say("empty") : holds);
    valve.ifPresent(v -> pipes.link(VALVE, FRESH, Line.COLD, state != State.FILL));
    if (pipes.has(FILL) && !ported) {
      pipes.open(FILL, FRESH, Line.COLD);
    }
    String mover = mover();
    pipes.link(FRESH, mover, Line.COLD, winter() && fromJug());
    pipes.open(mover, first, Line.COLD);
    if (siphon()) {
      pickUp();
    }
    if (winter()) {
      jug();
    }
  }

  private void filler() {
    if (water.fill().isEmpty()) {
      return;
    }
    pipes.gear(FILL, Shape.SOURCE, IN);
    if (ported) {
      pipes.link(FILL, VALVE, Line.COLD, state == State.USE);
      if (state == State.FILL) {
        hose(FILL);
      }
    }
  }

  private String mover() {
    if (water.pump().isPresent()) {
      return pump();
    }
    return water.handPump().isPresent()
        ? pipes.gear("water.hand-pump", Shape.DEVICE, TANK)
        : pipes.thing("mover", Shape.DEVICE, TANK);
  }

  private String pump() {
    return pipes.gear(
        "water.pump",
        Shape.DEVICE,
        TANK,
        switch (state) {
          case USE -> words.say("pump-use");
          case FILL -> "";
          case WINTER -> words.say("on");
        });
  }

  private boolean siphon() {
    return rig.has("water.winterizing.siphon") && water.pump().isPresent();
  }

  private boolean fromJug() {
    return siphon() || valve.filter(Water.Valve::drawsFromJug).isPresent();
  }

  private void pickUp() {
    pipes.thing(PICK_UP, Shape.SWITCH, IN, words.say(winter() ? "to-jug" : "to-tank"));
    pipes.link(PICK_UP, "water.pump", Line.COLD, !winter());
  }

  /** The jug stands at the pick-up hose, at the valve, at the filler or at the tank itself. */
  private void jug() {
    pipes.thing("jug", Shape.SOURCE, IN);
    if (siphon()) {
      pipes.open("jug", PICK_UP, Line.COLD);
    } else if (fromJug()) {
      pipes.open("jug", VALVE, Line.COLD);
      pipes.open(VALVE, "water.pump", Line.COLD);
    } else {
      pipes.open("jug", pipes.has(FILL) ? FILL : FRESH, Line.COLD);
    }
  }

  private void filter(Water.Filter filter) {
    String bypass = rig.has("water.filter.bypass") ? words.say("has-bypass") : "";
    pipes.gear("water.filter", Shape.DEVICE, PIPES, winter() ? words.say("cartridge-out") : bypass);
    pipes.open("water.filter", WaterTaps.COLD, Line.COLD);
  }
}
