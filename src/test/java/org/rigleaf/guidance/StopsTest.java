package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/** The stops of the walk-through, on random rigs and on the demo fleet. */
class StopsTest {
  /** Gear that a newcomer never touches, and why. */
  private static final Map<String, String> NOT_SHOWN =
      Map.of(
          "waste.traps", "nothing to do there",
          "electric.converter", "works by itself",
          "electric.alternator-charging", "works by itself",
          "water.winterizing.low-points", "for whoever winterizes the rig");

  private static final List<Face> ROUND =
      List.of(Face.FRONT, Face.CURB, Face.REAR, Face.STREET, Face.ROOF, Face.UNDER, Face.INSIDE);
  private static final Pattern OPEN =
      Pattern.compile(
          "\\b([Ww]hat|[Ww]hen|[Ww]here|[Ww]hich|[Hh]ow|Show me|Tell me|Walk round with me)\\b");
  private static final Pattern YES_OR_NO =
      Pattern.compile("(^|[.?] )(Do|Does|Did|Is|Are|Can|Could|Will|Would|Have|Has|Should) ");

  private final List<String> faults = new ArrayList<>();

  private interface Check {
    void on(String name, Rig rig, List<Stop> stops);
  }

  private void everyRig(Check check) {
    Stream<Map.Entry<String, Rig>> rigs =
        Stream.concat(
            RandomRigs.all().stream().map(p -> Map.entry(p.name(), p.rig())),
            TestRigs.fleet().map(n -> Map.entry(n, TestRigs.demo(n))));
    rigs.forEach(
        r -> {
          Guide guide =
              new Guide(r.getValue(), Figures.of(r.getValue()), Wording.english(), Map.of());
          List<Stop> stops = Stops.of(r.getValue(), Wording.english(), guide);
          check.on(r.getKey(), r.getValue(), stops);
        });
    assertEquals(List.of(), faults.stream().distinct().limit(30).toList());
  }

  @Test
  void whatSavesALifeComesFirst() {
    everyRig(
        (name, rig, stops) -> {
          Set<String> traits = Traits.of(rig);
          List<String> expected = new ArrayList<>();
          if (!traits.contains("safety.exits.none")) {
            expected.add("exits");
          }
          if (!traits.contains("safety.extinguishers.none")) {
            expected.add("extinguisher");
          }
          if (!traits.contains("propane.none")) {
            expected.add("gas");
          }
          String power = traits.contains("mains") ? "breaker" : "fuses";
          expected.add(traits.contains("electric.panel.none") ? "no-panel" : power);
          List<String> first = stops.stream().limit(expected.size()).map(Stop::id).toList();
          if (!first.equals(expected) || stops.get(expected.size()).first()) {
            faults.add(name + ": " + first);
          }
        });
  }

  /** Front, curb side backward, rear, street side forward, roof, under, then inside. */
  @Test
  void theOtherStopsFollowTheWayRoundTheRig() {
    everyRig(
        (name, rig, stops) -> {
          Optional<Stop> last = Optional.empty();
          for (Stop stop :
              stops.stream().filter(s -> !s.first() && spot(rig, s) != null).toList()) {
            if (last.isPresent() && before(rig, stop, last.get())) {
              faults.add(name + ": " + last.get().id() + " before " + stop.id());
            }
            last = Optional.of(stop);
          }
          for (int i = 0; i < stops.size(); i++) {
            if (stops.get(i).number() != i + 1) {
              faults.add(name + ": number " + stops.get(i).number());
            }
          }
        });
  }

  private static Spot spot(Rig rig, Stop stop) {
    return stop.gear().stream()
        .findFirst()
        .flatMap(t -> rig.gear(t.gear()))
        .flatMap(g -> g.place().spot())
        .orElse(null);
  }

  private static boolean before(Rig rig, Stop one, Stop other) {
    Face first = one.inside() ? Face.INSIDE : spot(rig, one).face();
    Face second = other.inside() ? Face.INSIDE : spot(rig, other).face();
    if (first != second) {
      return ROUND.indexOf(first) < ROUND.indexOf(second);
    }
    Optional<Double> here = spot(rig, one).aft();
    Optional<Double> there = spot(rig, other).aft();
    boolean measured = here.isPresent() && there.isPresent();
    return measured && (first == Face.STREET ? here.get() > there.get() : here.get() < there.get());
  }

  @Test
  void inRainTheSameStopsBeginInside() {
    everyRig(
        (name, rig, stops) -> {
          List<Stop> rain = Stops.inRain(stops);
          boolean same = rain.size() == stops.size() && new HashSet<>(rain).containsAll(stops);
          int outside = (int) rain.stream().takeWhile(Stop::inside).count();
          boolean inside = rain.stream().skip(outside).noneMatch(Stop::inside);
          List<Integer> numbers = rain.stream().limit(outside).map(Stop::number).toList();
          if (!same || !inside || !numbers.equals(numbers.stream().sorted().toList())) {
            faults.add(name + ": " + rain.stream().map(Stop::id).toList());
          }
        });
  }

  /** A third of the rig inside, reckoned anew from the place in the profile. */
  @Test
  void aStopInsideStandsUnderTheThirdOfTheRigWhereItIs() {
    List<String> thirds = List.of("front", "middle", "rear");
    everyRig(
        (name, rig, stops) -> {
          for (Stop stop : stops) {
            Spot spot = stop.first() || !stop.inside() ? null : spot(rig, stop);
            Optional<Double> aft = spot == null ? Optional.empty() : spot.aft();
            if (aft.isEmpty() || !rig.identity().length().known()) {
              continue;
            }
            double share = aft.get() / rig.identity().length().value();
            String third = thirds.get(share < 1 / 3.0 ? 0 : share < 2 / 3.0 ? 1 : 2);
            if (!stop.leg().equals("Inside, " + third)) {
              faults.add(name + ": " + stop.id() + " " + stop.leg() + " not " + third);
            }
          }
        });
  }

  @Test
  void everyPieceOfGearWorthShowingIsShownOnceWithItsCode() {
    everyRig(
        (name, rig, stops) -> {
          for (Gear gear : rig.gear()) {
            List<String> codes =
                stops.stream()
                    .flatMap(s -> s.gear().stream())
                    .filter(t -> t.gear().equals(gear.id()))
                    .map(Stop.Thing::code)
                    .toList();
            List<String> wanted =
                NOT_SHOWN.containsKey(gear.type())
                    ? List.of()
                    : List.of(rig.codes().get(gear.id()));
            if (!new TreeSet<>(codes).equals(new TreeSet<>(wanted))) {
              faults.add(gear.type() + " " + codes.size() + " in " + name.split(" ")[0]);
            }
          }
        });
  }

  @Test
  void aStopSaysFewThingsAndAsksAnOpenQuestion() {
    everyRig(
        (name, rig, stops) -> {
          for (Stop stop : stops) {
            String say = stop.say().plain();
            String ask = stop.ask().plain();
            String all = say + stop.show().plain() + ask;
            long sentences = Pattern.compile("[.?](\\s|$)").matcher(say).results().count();
            boolean open = OPEN.matcher(ask).find() && !YES_OR_NO.matcher(ask).find();
            boolean bare = say.isEmpty() || stop.show().empty() || stop.minutes() < 1;
            if (sentences > 4 || !open || bare || all.contains("{") || all.contains("null")) {
              faults.add(
                  stop.id() + ": " + sentences + " " + say + " show " + stop.show().plain() + ask);
            }
          }
        });
  }
}
