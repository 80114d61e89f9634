package org.rigleaf.drawings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Waste;
import org.rigleaf.rig.Water;

/** The cold and hot pipes, the heater between them, and all that takes water from them. */
final class WaterTaps {
  static final String COLD = "cold";
  static final String HOT = "hot";
  private static final String HEATER = "water.heater";
  private static final String BYPASS = "water.heater.bypass";
  private static final int TAPS = 3;
  private static final int LONGEST = 24; // of what the keeper says of handles, in a box
  private static final Set<Waste.ToiletKind> FLUSHED =
      Set.of(
          Waste.ToiletKind.GRAVITY_FLUSH,
          Waste.ToiletKind.MACERATING,
          Waste.ToiletKind.VACUUM,
          Waste.ToiletKind.CASSETTE);
  private static final Set<Water.ApplianceKind> COLD_ONLY =
      Set.of(Water.ApplianceKind.ICE_MAKER, Water.ApplianceKind.FILTER_TAP);

  private final Rig rig;
  private final Water water;
  private final Pipes pipes;
  private final PipeWords words;
  private final boolean winter;

  WaterTaps(Rig rig, Pipes pipes, WaterNet.State state) {
    this.rig = rig;
    this.water = rig.water();
    this.pipes = pipes;
    this.words = pipes.words;
    this.winter = state == WaterNet.State.WINTER;
  }

  void draw() {
    pipes.thing(COLD, Shape.DEVICE, WaterNet.PIPES);
    water.heater().ifPresent(this::heater);
    taps();
    water.outsideShower().ifPresent(s -> load("water.outside-shower", true));
    rig.waste()
        .toilet()
        .filter(t -> t.kind().filter(FLUSHED::contains).isPresent())
        .ifPresent(t -> load("waste.toilet", false));
    water.appliances().forEach(this::appliance);
    water.winterizing().map(Water.Winterizing::lowPoints).orElse(List.of()).forEach(this::lowPoint);
  }

  // ---- hot water

  private void heater(Water.Heater heater) {
    Optional<Water.Bypass> bypass = heater.bypass();
    bypass.ifPresent(this::bypass);
    boolean dry = winter && bypass.isPresent();
    String filled =
        bypass.isPresent() || !winter
            ? ""
            : words.say(rig.has("water.heater.bypass.none") ? "fills-too" : "bypass-not-told");
    String holds = winter ? filled : words.amount(heater.holds());
    pipes.gear(HEATER, Shape.DEVICE, WaterNet.PIPES, dry ? words.say("empty") : holds);
    pipes.thing(HOT, Shape.DEVICE, WaterNet.PIPES);
    pipes.link(bypass.isPresent() ? BYPASS : COLD, HEATER, Line.COLD, dry);
    pipes.link(HEATER, HOT, Line.HOT, dry);
  }

  private void bypass(Water.Bypass bypass) {
    pipes.gear(
        BYPASS,
        Shape.SWITCH,
        WaterNet.PIPES,
        words.say(winter ? "past-heater" : "through-heater"),
        handles(winter ? bypass.winter() : bypass.normal()));
    pipes.open(COLD, BYPASS, Line.COLD);
    pipes.link(BYPASS, HOT, Line.HOT, !winter);
  }

  /** How the handles stand, a line to fill in, or where it is written if it is long. */
  private String handles(Optional<String> position) {
    return position.isEmpty()
        ? words.say("handles-blank")
        : position.filter(p -> p.length() <= LONGEST).orElseGet(() -> words.say("handles-below"));
  }

  // ---- what takes water

  private void load(String gear, boolean warm) {
    pipes.gear(gear, Shape.LOAD, TAPS);
    feed(gear, warm);
  }

  private void feed(String id, boolean warm) {
    pipes.open(COLD, id, Line.COLD);
    if (warm && water.heater().isPresent()) {
      pipes.open(HOT, id, Line.HOT);
    }
  }

  /** Taps where sinks are known by their drains; else taps as such. */
  private void taps() {
    List<Waste.Drain> drains =
        rig.waste().gray().stream().flatMap(g -> g.drains().stream()).distinct().sorted().toList();
    for (Waste.Drain drain : drains) {
      feed(pipes.thing("tap-" + drain.trait(), Shape.LOAD, TAPS), true);
    }
    if (drains.isEmpty()) {
      feed(pipes.thing("taps", Shape.LOAD, TAPS), true);
    }
  }

  /** Whether a washer takes hot water too, nobody says. */
  private void appliance(Water.Appliance appliance) {
    String id = appliance.gear().id();
    boolean cold = appliance.kind().filter(COLD_ONLY::contains).isPresent();
    String hot = cold || water.heater().isEmpty() ? "" : words.say("hot-not-told");
    appliance
        .shutOff()
        .ifPresent(
            v ->
                pipes.gear(v.id(), Shape.SWITCH, TAPS, words.say(winter ? "shut" : "open-to-use")));
    pipes.gear(
        id, Shape.LOAD, TAPS, hot, appliance.shutOff().isPresent() ? "" : words.say("no-shut-off"));
    String from = appliance.shutOff().map(Gear::id).orElse(COLD);
    if (!from.equals(COLD)) {
      pipes.open(COLD, from, Line.COLD);
    }
    pipes.link(from, id, Line.COLD, winter && !from.equals(COLD));
  }

  /** A drain whose name says neither cold nor hot is on no pipe that anybody told. */
  private void lowPoint(Gear drain) {
    pipes.gear(drain.id(), Shape.SWITCH, TAPS, words.say("shut"));
    String name = words.name(drain.id()).toLowerCase(Locale.ROOT);
    if (name.contains("cold")) {
      pipes.shut(COLD, drain.id(), Line.COLD);
    } else if (name.contains("hot") && water.heater().isPresent()) {
      pipes.shut(HOT, drain.id(), Line.HOT);
    }
  }
}
