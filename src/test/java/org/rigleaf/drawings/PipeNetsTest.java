package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestRigs;
import org.rigleaf.drawings.Schematic.Box;
import org.rigleaf.drawings.Schematic.Link;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.figures.Amounts;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;

/** Whatever a rig names is reached in its nets, and each valve cuts what it should. */
class PipeNetsTest {
  static final SchematicWords KEY =
      new SchematicWords(
          each(Schematic.Line.values(), 1), each(Schematic.Line.values(), 9), shapes(), "shut");
  private static final Set<String> CARRIED = Set.of("cassette", "composting", "portable");

  private static Map<Schematic.Line, String> each(Schematic.Line[] all, int letters) {
    return Stream.of(all)
        .collect(
            Collectors.toMap(
                l -> l, l -> l.name().substring(0, Math.min(letters, l.name().length()))));
  }

  private static Map<Shape, String> shapes() {
    return Stream.of(Shape.values()).collect(Collectors.toMap(s -> s, Shape::name));
  }

  static NetWords words(Rig rig) {
    return new NetWords() {
      @Override
      public String phrase(String id, Map<String, String> values) {
        return Wording.english().phrase(id, values);
      }

      @Override
      public String name(String id) {
        String own = Optional.ofNullable(rig.texts().get(id + ".name")).orElse("");
        return own.isEmpty() ? Wording.english().gear(type(rig, id)).title() : own;
      }

      @Override
      public String amount(Fact fact) {
        return fact.written();
      }

      @Override
      public Amounts amounts() {
        return Amounts.US;
      }
    };
  }

  private static String type(Rig rig, String id) {
    return rig.gear(id).map(Gear::type).orElse(id);
  }

  static List<Rig> rigs() {
    return Stream.concat(
            TestRigs.fleet().map(TestRigs::demo),
            RandomRigs.all().stream().map(RandomRigs.Profile::rig))
        .toList();
  }

  private static List<Schematic> nets(Rig rig) {
    List<Schematic> all = new ArrayList<>();
    for (WaterNet.State state : WaterNet.State.values()) {
      all.addAll(WaterNet.of(rig, words(rig), state));
    }
    DrainsNet.of(rig, words(rig)).ifPresent(all::add);
    PropaneNet.of(rig, words(rig)).ifPresent(all::add);
    return all;
  }

  /** Ids of all that open pipes lead to, from boxes like these and past the ones taken out. */
  private static Set<String> reached(
      List<Schematic> nets, Predicate<Box> start, Set<String> without) {
    Set<String> seen = new HashSet<>();
    nets.forEach(n -> n.boxes().stream().filter(start).forEach(b -> seen.add(b.id())));
    seen.removeAll(without);
    List<Link> links =
        nets.stream().flatMap(n -> n.links().stream()).filter(l -> !l.shut()).toList();
    for (boolean more = true; more; ) {
      more = false;
      for (Link l : links) {
        more |= seen.contains(l.from()) && !without.contains(l.to()) && seen.add(l.to());
      }
    }
    return seen;
  }

  private static boolean brings(Box box) {
    return box.shape() == Shape.SOURCE || box.shape() == Shape.STORE;
  }

  private static Set<String> ids(List<Schematic> nets, Shape shape) {
    return nets.stream()
        .flatMap(n -> n.boxes().stream())
        .filter(b -> b.shape() == shape)
        .map(Box::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean flushed(Rig rig) {
    String kind = rig.texts().getOrDefault("waste.toilet.kind", "");
    return Set.of("gravity flush", "macerating", "vacuum", "cassette").contains(kind);
  }

  @Test
  void everyTapIsReachedInUseAndNoneButTheTankWhenItFills() {
    for (Rig rig : rigs()) {
      List<Schematic> use = WaterNet.of(rig, words(rig), WaterNet.State.USE);
      Set<String> wanted = new TreeSet<>(ids(use, Shape.LOAD));
      if (!use.isEmpty()) {
        rig.water().appliances().forEach(a -> wanted.add(a.gear().id()));
        rig.water().outsideShower().ifPresent(s -> wanted.add(s.id()));
        rig.water().heater().ifPresent(h -> wanted.add(h.gear().id()));
        if (flushed(rig)) {
          wanted.add("waste.toilet");
        }
      }
      Set<String> found = reached(use, PipeNetsTest::brings, Set.of());
      assertTrue(found.containsAll(wanted), wanted + " but " + found);
      List<Schematic> fill = WaterNet.of(rig, words(rig), WaterNet.State.FILL);
      Set<String> filled =
          reached(
              fill,
              b -> b.id().equals("site-tap"),
              Set.of("water.pump", "water.hand-pump", "mover"));
      assertEquals(!fill.isEmpty(), filled.contains("water.fresh"), () -> rig.texts().toString());
      assertTrue(!filled.contains("cold"), "water runs on while the tank fills");
    }
  }

  @Test
  void theShutOffOfAMachineCutsThatMachineAlone() {
    int valves = 0;
    for (Rig rig : rigs()) {
      List<Schematic> use = WaterNet.of(rig, words(rig), WaterNet.State.USE);
      for (var machine : rig.water().appliances()) {
        if (machine.shutOff().isPresent() && !use.isEmpty()) {
          valves++;
          Set<String> left =
              reached(use, PipeNetsTest::brings, Set.of(machine.shutOff().get().id()));
          Set<String> cut = new TreeSet<>(ids(use, Shape.LOAD));
          cut.removeAll(left);
          assertEquals(Set.of(machine.gear().id()), cut);
        }
      }
    }
    assertTrue(valves > 3, "too few valves to tell");
  }

  @Test
  void antifreezeReachesEveryTapAndNoHeaterThatIsBypassed() {
    int bypassed = 0;
    for (Rig rig : rigs()) {
      List<Schematic> winter = WaterNet.of(rig, words(rig), WaterNet.State.WINTER);
      if (winter.isEmpty()) {
        continue;
      }
      Set<String> pink = reached(winter, b -> b.id().equals("jug"), Set.of());
      Set<String> taps = new TreeSet<>(ids(winter, Shape.LOAD));
      rig.water().appliances().forEach(a -> taps.remove(a.gear().id())); // emptied by hand
      assertTrue(pink.containsAll(taps), taps + " but " + pink);
      boolean heater = rig.water().heater().isPresent();
      boolean round = rig.water().heater().flatMap(h -> h.bypass()).isPresent();
      bypassed += round ? 1 : 0;
      assertEquals(heater, pink.contains("hot"));
      assertEquals(heater && !round, pink.contains("water.heater"));
    }
    assertTrue(bypassed > 3, "too few bypasses to tell");
  }

  @Test
  void everyBurnerIsReachedAndTheValvesCutAll() {
    for (Rig rig : rigs()) {
      List<Schematic> net = PropaneNet.of(rig, words(rig)).stream().toList();
      if (net.isEmpty()) {
        continue;
      }
      Set<String> burners = burners(rig);
      Set<String> found = reached(net, PipeNetsTest::brings, Set.of());
      assertTrue(found.containsAll(burners), burners + " but " + found);
      Set<String> held = ids(net, Shape.STORE);
      rig.propane().flatMap(p -> p.shutOff()).ifPresent(s -> cutsAll(net, burners, Set.of(s.id())));
      Set<String> valves = new HashSet<>(ids(net, Shape.SWITCH));
      valves.remove("propane.shut-off");
      if (!held.contains("no-container")) {
        cutsAll(net, burners, valves);
      }
    }
  }

  private static void cutsAll(List<Schematic> net, Set<String> burners, Set<String> valves) {
    Set<String> left = reached(net, PipeNetsTest::brings, valves);
    assertTrue(left.stream().noneMatch(burners::contains), "still fed: " + left);
  }

  private static Set<String> burners(Rig rig) {
    Set<String> all = new TreeSet<>();
    for (String path : List.of("climate.range", "propane.outside-outlet")) {
      if (rig.gear(path).isPresent()) {
        all.add(path);
      }
    }
    if (rig.has("water.heater.fuel.lp")) {
      all.add("water.heater");
    }
    if (rig.has("climate.refrigerator.runs-on.lp")) {
      all.add("climate.refrigerator");
    }
    if (rig.has("climate.furnace.fuel.lp")) {
      all.add("climate.furnace");
    }
    if (rig.has("electric.generator.fuel.lp")) {
      all.add("electric.generator");
    }
    return all;
  }

  @Test
  void everyDrainEndsBehindTheHandleOfItsTank() {
    for (Rig rig : rigs()) {
      Optional<Schematic> net = DrainsNet.of(rig, words(rig));
      if (net.isEmpty()) {
        continue;
      }
      for (var gray : rig.waste().gray()) {
        String tank = gray.gear().id();
        gray.drains().forEach(d -> leads(net.get(), "drain-" + d.trait(), tank + ".handle"));
        says(net.get(), tank + ".handle", "GRAY");
      }
      String kind = rig.texts().getOrDefault("waste.toilet.kind", "");
      if (rig.waste().black().isPresent()) {
        says(net.get(), "waste.black.handle", "BLACK");
        if (rig.waste().toilet().isPresent() && !CARRIED.contains(kind)) {
          leads(net.get(), "waste.toilet", "waste.black.handle");
        }
      }
      for (Link l : net.get().links()) {
        assertEquals(l.from().endsWith(".handle"), l.shut(), l.toString());
      }
    }
  }

  private static void leads(Schematic net, String from, String to) {
    Set<String> found = reached(List.of(net), b -> b.id().equals(from), Set.of());
    assertTrue(found.contains(to), from + " leads to " + found);
  }

  private static void says(Schematic net, String id, String word) {
    Box box = net.boxes().stream().filter(b -> b.id().equals(id)).findFirst().orElseThrow();
    assertTrue(box.words().contains(word), box.toString());
    assertTrue(box.words().contains("shut"), box.toString());
  }

  @Test
  void everyShutValveSaysSoInWords() {
    for (Rig rig : rigs()) {
      for (Schematic net : nets(rig)) {
        for (Box box : net.boxes()) {
          assertTrue(
              box.shape() != Shape.SWITCH || silent(rig, box) || box.words().size() > 1,
              box.toString());
        }
      }
    }
  }

  /** A fill valve that no step of winter moves. */
  private static boolean silent(Rig rig, Box box) {
    return box.id().equals("water.fill.valve")
        && rig.water().fill().flatMap(f -> f.valve()).filter(v -> v.drawsFromJug()).isEmpty();
  }

  @Test
  void nothingCrossesABoxOnAnyRig() {
    List<String> faults = new ArrayList<>();
    for (Rig rig : rigs()) {
      for (Schematic net : nets(rig)) {
        for (Schematic part : SchematicParts.of(net, KEY)) {
          SchematicSketch sketch = new SchematicSketch(SchematicView.draw(part, KEY));
          sketch.complaints().forEach(c -> faults.add(rig.identity().name() + ": " + c));
          if (sketch.high() > Sheet.TALLEST) {
            faults.add("taller than a page: " + sketch.high());
          }
        }
      }
    }
    assertEquals(List.of(), faults.stream().limit(20).toList());
  }

  @Test
  void aLowPointOnNoPipeThatWasToldIsDrawnAlone() {
    Rig rig = TestRigs.demo("spikerush");
    List<Schematic> use = WaterNet.of(rig, words(rig), WaterNet.State.USE);
    String id = rig.water().winterizing().orElseThrow().lowPoints().get(0).id();
    assertTrue(
        use.stream()
            .flatMap(n -> n.links().stream())
            .noneMatch(l -> Arrays.asList(l.from(), l.to()).contains(id)));
    assertTrue(
        use.stream()
            .flatMap(n -> n.boxes().stream())
            .filter(b -> b.id().equals(id))
            .anyMatch(
                b -> String.join(" ", b.words()).toLowerCase(Locale.ROOT).contains("not told")));
  }
}
