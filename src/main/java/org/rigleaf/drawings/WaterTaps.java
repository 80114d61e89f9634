package org.rigleaf.drawings;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
  private static final int LONGEST = 15; // of a piece of what the keeper says of handles
  private static final int MOST_PIECES = 2; // in a box
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

  WaterTaps(Rig rig, Pipes pipes, boolean winter) {
    this.rig = rig;
    this.water = rig.water();
    this.pipes = pipes;
    this.words = pipes.words;
    this.winter = winter;
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
    if (!many()) {
      lowPoints().forEach(d -> lowPoint(pipes, d, TAPS));
    }
  }

  private List<Gear> lowPoints() {
    return water.winterizing().map(Water.Winterizing::lowPoints).orElse(List.of());
  }

  private boolean many() {
    return !water.appliances().isEmpty() || lowPoints().size() > 1;
  }

  /** Machines and drains in a drawing of their own, where they would not fit beside the taps. */
  Optional<Schematic> apart() {
    if (!many()) {
      return Optional.empty();
    }
    Pipes apart = new Pipes(rig, words);
    apart.thing(COLD, Shape.DEVICE, 0);
    if (water.heater().isPresent() && lowPoints().stream().anyMatch(this::hot)) {
      apart.thing(HOT, Shape.DEVICE, 0);
    }
    water.appliances().forEach(a -> appliance(apart, a));
    lowPoints().forEach(d -> lowPoint(apart, d, 1));
    String alt = words.say("machines-alt", Map.of("rig", Pipes.shortName(rig)));
    return Optional.of(apart.schematic(alt));
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
    String leads = words.say(winter ? "past-heater" : "through-heater");
    List<String> handles = handles(winter ? bypass.winter() : bypass.normal());
    pipes.gear(
        BYPASS,
        Shape.SWITCH,
        WaterNet.PIPES,
        Stream.concat(Stream.of(leads), handles.stream()).toArray(String[]::new));
    pipes.open(COLD, BYPASS, Line.COLD);
    pipes.link(BYPASS, HOT, Line.HOT, !winter);
  }

  /** How the handles stand, a line to fill in, or where it is written if it is long. */
  private List<String> handles(Optional<String> position) {
    if (position.isEmpty()) {
      return List.of(words.say("handles-blank"));
    }
    List<String> pieces = Pipes.pieces(position.get(), LONGEST);
    boolean fits =
        pieces.size() <= MOST_PIECES && pieces.stream().allMatch(p -> p.length() <= LONGEST);
    return fits ? pieces : List.of(words.say("handles-below"));
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
  private void appliance(Pipes apart, Water.Appliance appliance) {
    boolean cold = appliance.kind().filter(COLD_ONLY::contains).isPresent();
    String hot = cold || water.heater().isEmpty() ? "" : words.say("hot-not-told");
    String machine = appliance.gear().id();
    if (appliance.shutOff().isEmpty()) {
      apart.gear(machine, Shape.LOAD, 1, hot, words.say("no-shut-off"));
      apart.open(COLD, machine, Line.COLD);
      return;
    }
    String valve = appliance.shutOff().get().id();
    apart.below(2, 1);
    apart.gear(valve, Shape.SWITCH, 1, words.say(winter ? "shut" : "open-to-use"));
    apart.gear(machine, Shape.LOAD, 2, hot);
    apart.open(COLD, valve, Line.COLD);
    apart.link(valve, machine, Line.COLD, winter);
  }

  private boolean hot(Gear drain) {
    String name = words.name(drain.id()).toLowerCase(Locale.ROOT);
    return name.contains("hot") && !name.contains("cold") && water.heater().isPresent();
  }

  /** A drain whose name says neither cold nor hot is on no pipe that anybody told. */
  private void lowPoint(Pipes on, Gear drain, int column) {
    on.gear(drain.id(), Shape.SWITCH, column, words.say("shut"));
    if (hot(drain)) {
      on.shut(HOT, drain.id(), Line.HOT);
    } else if (words.name(drain.id()).toLowerCase(Locale.ROOT).contains("cold")) {
      on.shut(COLD, drain.id(), Line.COLD);
    }
  }
}
