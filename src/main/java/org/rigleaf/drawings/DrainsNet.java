package org.rigleaf.drawings;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Waste;
import org.rigleaf.rig.Water;

/** The way of used water from drain and toilet through tanks and handles to the outlet. */
public final class DrainsNet {
  private static final int DRAINS = 0;
  private static final int TANKS = 1;
  private static final int HANDLES = 2;
  private static final int OUT = 3;
  private static final String OUTLET = "waste.outlet";
  private static final String MACERATOR = "waste.macerator";
  private static final Set<Waste.ToiletKind> CARRIED =
      Set.of(Waste.ToiletKind.CASSETTE, Waste.ToiletKind.COMPOSTING, Waste.ToiletKind.PORTABLE);
  private static final Set<Water.ApplianceKind> DRAINED =
      Set.of(Water.ApplianceKind.WASHER, Water.ApplianceKind.DISHWASHER);

  private final Rig rig;
  private final Waste waste;
  private final PipeWords words;
  private final Pipes pipes;
  private String out = "";

  private DrainsNet(Rig rig, NetWords words) {
    this.rig = rig;
    this.waste = rig.waste();
    this.words = new PipeWords(words);
    this.pipes = new Pipes(rig, this.words);
  }

  /** The net; empty if the rig has no tank for used water. */
  public static Optional<Schematic> of(Rig rig, NetWords words) {
    boolean there = rig.waste().black().isPresent() || !rig.waste().gray().isEmpty();
    return there ? Optional.of(new DrainsNet(rig, words).draw()) : Optional.empty();
  }

  private Schematic draw() {
    outlet();
    waste.toilet().ifPresent(this::toilet);
    waste.black().ifPresent(this::black);
    waste.gray().forEach(this::gray);
    waste.traps().stream().filter(t -> !pipes.has(t.id())).forEach(this::trap);
    rig.water().appliances().stream()
        .filter(a -> a.kind().filter(DRAINED::contains).isPresent())
        .forEach(this::machine);
    return pipes.schematic(words.say("drains-alt", Map.of("rig", Pipes.shortName(rig))));
  }

  /** Whatever lets the waste out: outlet, pump, or a place that nobody told. */
  private void outlet() {
    if (waste.outlet().isPresent()) {
      out = pipes.gear(OUTLET, Shape.DEVICE, OUT, words.say("capped"));
    }
    if (waste.macerator().isPresent()) {
      pipes.gear(MACERATOR, Shape.DEVICE, OUT);
      if (!out.isEmpty()) {
        pipes.open(OUTLET, MACERATOR, Line.WASTE);
      }
    }
    if (out.isEmpty()) {
      out = waste.macerator().isPresent() ? MACERATOR : pipes.thing("no-outlet", Shape.DEVICE, OUT);
    }
  }

  private void toilet(Waste.Toilet toilet) {
    boolean carried = toilet.kind().filter(CARRIED::contains).isPresent();
    pipes.gear(
        "waste.toilet",
        carried ? Shape.STORE : Shape.LOAD,
        DRAINS,
        carried ? words.amount(toilet.holds()) : "",
        carried ? words.say("carried-out") : "");
    if (!carried && waste.black().isPresent()) {
      pipes.open("waste.toilet", "waste.black", Line.WASTE);
    }
  }

  private void black(Waste.Black black) {
    pipes.gear("waste.black", Shape.STORE, TANKS, words.amount(black.holds()));
    black
        .flushInlet()
        .ifPresent(
            f -> {
              pipes.gear("waste.black.flush-inlet", Shape.SOURCE, DRAINS, words.say("rinse-hose"));
              pipes.open("waste.black.flush-inlet", "waste.black", Line.COLD);
            });
    handle("waste.black", black.handle(), "black");
  }

  private void gray(Waste.Gray gray) {
    String id = gray.gear().id();
    pipes.below(DRAINS, TANKS);
    pipes.gear(
        id,
        Shape.STORE,
        TANKS,
        words.amount(gray.holds()),
        gray.drains().isEmpty() ? words.say("drains-not-told") : "");
    gray.drains().forEach(d -> drain(d, id));
    handle(id, gray.handle(), "gray");
  }

  /** From a drain to its tank, through the traps that its name is part of. */
  private void drain(Waste.Drain drain, String tank) {
    String from = "drain-" + drain.trait();
    if (!pipes.has(from)) {
      pipes.thing(from, Shape.LOAD, DRAINS);
    }
    List<Gear> through = waste.traps().stream().filter(t -> on(t, drain)).toList();
    for (Gear trap : through) {
      if (!pipes.has(trap.id())) {
        pipes.gear(trap.id(), Shape.DEVICE, DRAINS);
      }
      pipes.open(from, trap.id(), Line.WASTE);
      pipes.open(trap.id(), tank, Line.WASTE);
    }
    if (through.isEmpty() || drain == Waste.Drain.BATH) {
      pipes.open(from, tank, Line.WASTE);
    }
  }

  private boolean on(Gear trap, Waste.Drain drain) {
    String name = words.name(trap.id()).toLowerCase(Locale.ROOT);
    boolean shower = drain == Waste.Drain.BATH && name.contains("shower");
    return name.contains(drain.trait()) || shower;
  }

  private void handle(String tank, Optional<Waste.Handle> handle, String color) {
    String opens =
        handle.flatMap(Waste.Handle::opens).map(o -> words.say("opens-" + o.trait())).orElse("");
    String id =
        handle.isPresent()
            ? pipes.gear(
                tank + ".handle", Shape.SWITCH, HANDLES, words.say(color), opens, words.say("shut"))
            : pipes.part(
                tank + ".handle",
                words.say("handle-not-told"),
                Shape.SWITCH,
                HANDLES,
                words.say(color),
                words.say("shut"));
    pipes.open(tank, id, Line.WASTE);
    pipes.shut(id, out, Line.WASTE);
  }

  private void trap(Gear trap) {
    pipes.gear(trap.id(), Shape.DEVICE, DRAINS);
  }

  /** A machine drains into the one gray tank; into which of several, nobody says. */
  private void machine(Water.Appliance machine) {
    String id = machine.gear().id();
    pipes.gear(id, Shape.LOAD, DRAINS);
    if (waste.gray().size() == 1) {
      pipes.open(id, waste.gray().get(0).gear().id(), Line.WASTE);
    }
  }
}
