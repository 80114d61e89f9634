package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rigleaf.drawings.Schematic.Box;
import org.rigleaf.drawings.Schematic.Link;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.figures.Feeds;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Rig;

/** On the demo rigs and random ones: every load hangs where it is fed, and nothing crosses. */
class ElectricNetsTest {
  private static final Optional<String> NONE = Optional.empty();

  private static List<Schematic> nets(Rig rig) {
    NetWords words = PipeNetsTest.words(rig);
    return Stream.of(
            MainsNet.of(rig, words), BatteryNet.of(rig, words), BankNet.of(rig, words, NONE, NONE))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Set<String> ids(Schematic net) {
    return net.boxes().stream().map(Box::id).collect(Collectors.toSet());
  }

  @Test
  void everythingOn120VoltsAndOnTheBatteryIsInItsNet() {
    List<String> lost = new ArrayList<>();
    int loads = 0;
    for (Rig rig : PipeNetsTest.rigs()) {
      NetWords words = PipeNetsTest.words(rig);
      Optional<Schematic> mains = MainsNet.of(rig, words);
      Optional<Schematic> battery = BatteryNet.of(rig, words);
      List<String> on = mains.isPresent() ? Feeds.onMains(rig) : List.of();
      List<String> off = battery.isPresent() ? Feeds.onBattery(rig) : List.of();
      String name = rig.identity().name() + ": ";
      on.stream().filter(id -> !ids(mains.get()).contains(id)).forEach(i -> lost.add(name + i));
      off.stream().filter(id -> !ids(battery.get()).contains(id)).forEach(i -> lost.add(name + i));
      loads += on.size() + off.size();
    }
    assertEquals(List.of(), lost);
    assertTrue(loads > 100, loads + " loads");
  }

  @Test
  void everyBreakerStandsOnceByItsName() {
    List<String> wrong = new ArrayList<>();
    for (Rig rig : PipeNetsTest.rigs()) {
      MainsNet.of(rig, PipeNetsTest.words(rig))
          .ifPresent(net -> breakers(rig).forEach(b -> once(net, b, wrong)));
    }
    assertEquals(List.of(), wrong);
  }

  /** All but the main one, which stands on the panel. */
  private static List<Electric.Breaker> breakers(Rig rig) {
    List<Electric.Breaker> all = rig.electric().breakers();
    return rig.electric().panel().isEmpty()
        ? List.of()
        : all.stream().filter(b -> !b.feeds().isEmpty() && !b.id().endsWith(".main")).toList();
  }

  private static void once(Schematic net, Electric.Breaker breaker, List<String> wrong) {
    long found = net.boxes().stream().filter(b -> b.id().equals(breaker.id())).count();
    if (found != 1) {
      wrong.add(breaker.id() + ": " + found);
    }
  }

  /** A load that no line reaches from a source would look as if it worked by itself. */
  @Test
  void everyLoadHangsOnSomething() {
    List<String> loose = new ArrayList<>();
    for (Rig rig : PipeNetsTest.rigs()) {
      for (Schematic net : nets(rig)) {
        Set<String> linked = new HashSet<>();
        net.links().forEach(l -> Stream.of(l.from(), l.to()).forEach(linked::add));
        net.boxes().stream()
            .filter(b -> b.shape() == Shape.LOAD && !linked.contains(b.id()))
            .forEach(b -> loose.add(rig.identity().name() + ": " + b.id()));
      }
    }
    assertEquals(List.of(), loose);
  }

  @Test
  void theBankIsWiredAsItIsTold() {
    int drawn = 0;
    for (Rig rig : PipeNetsTest.rigs()) {
      Optional<Schematic> net = BankNet.of(rig, PipeNetsTest.words(rig), NONE, NONE);
      if (net.isPresent()) {
        BatteryBank bank = rig.electric().batteries().orElseThrow();
        int series = (int) bank.inSeries().value();
        int strings = (int) bank.strings().value();
        assertEquals(series * strings + 2, net.get().boxes().size(), "batteries, plus and minus");
        assertEquals(strings * (series + 1), net.get().links().size(), "each string end to end");
        assertEquals(series + 1, longest(net.get()), "wires from minus to plus");
        drawn++;
      }
    }
    assertTrue(drawn > 3, drawn + " banks");
  }

  /** Links on the way from the one box that nothing leads to. */
  private static int longest(Schematic net) {
    Set<String> at = new HashSet<>(ids(net));
    net.links().forEach(l -> at.remove(l.to()));
    assertEquals(1, at.size(), "one start");
    int steps = 0;
    while (true) {
      Set<String> here = Set.copyOf(at);
      Set<String> next =
          net.links().stream()
              .filter(l -> here.contains(l.from()))
              .map(Link::to)
              .collect(Collectors.toSet());
      if (next.isEmpty()) {
        return steps;
      }
      at.clear();
      at.addAll(next);
      steps++;
    }
  }

  @Test
  void noLineRunsThroughABoxAndEveryPartFitsAPage() {
    List<String> faults = new ArrayList<>();
    for (Rig rig : PipeNetsTest.rigs()) {
      for (Schematic net : nets(rig)) {
        for (Schematic part : SchematicParts.of(net, PipeNetsTest.KEY)) {
          SchematicSketch sketch = new SchematicSketch(SchematicView.draw(part, PipeNetsTest.KEY));
          sketch.complaints().forEach(c -> faults.add(rig.identity().name() + ": " + c));
          if (sketch.high() > Sheet.TALLEST) {
            faults.add(rig.identity().name() + " is taller than a page: " + sketch.high());
          }
        }
      }
    }
    assertEquals(List.of(), faults.stream().limit(20).toList());
  }
}
