package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/** What a page prints as the working of a figure must give the figure. */
class WorkingTest {
  /**
   * Workings that are not plain arithmetic: the sun's path, wire, calendar days, a table, a mean.
   */
  private static final Set<Entry> NOT_ARITHMETIC =
      Stream.concat(
              Sun.ENTRIES.stream(), Stream.of(Shore.DROP, Tires.AGE, HotWater.SCALD, Furnaces.DUTY))
          .collect(Collectors.toSet());

  private static final Set<Entry> THESE =
      Stream.of(
              Shore.ENTRIES,
              Loads.ENTRIES,
              Batteries.ENTRIES,
              OtherBanks.ENTRIES,
              BankLife.ENTRIES,
              Recharge.ENTRIES,
              Inverters.ENTRIES,
              Generators.ENTRIES,
              Sun.ENTRIES,
              Furnaces.ENTRIES,
              List.of(DailyUse.USE),
              GeneratorDay.ENTRIES,
              Tanks.ENTRIES,
              Reach.ENTRIES,
              Fills.ENTRIES,
              Sanitize.ENTRIES,
              WaterHeater.ENTRIES,
              HotWater.ENTRIES,
              Winter.ENTRIES,
              Lp.ENTRIES,
              LpLife.ENTRIES,
              Cylinders.ENTRIES,
              Vapor.ENTRIES,
              Ground.ENTRIES,
              Weights.ENTRIES,
              Balance.ENTRIES,
              Axles.ENTRIES,
              Tow.ENTRIES,
              Site.ENTRIES,
              Tires.ENTRIES)
          .flatMap(List::stream)
          .collect(Collectors.toSet());

  /** A 24 V lead bank outside in the cold, a second bank, a generator too small for its charger. */
  private static final String OFF_THE_PLUG =
      """
      rig: {name: Bistort, kind: toy hauler, length: 30 ft}
      stay: {outside: {low: 14 degF}, place: {elevation: 5000 ft}}
      electric:
        shore: {service: 50 A}
        batteries: {type: agm, each: {voltage: 6 V, capacity: 225 Ah, rated-hours: 10}, in-series: 4, strings: 1, inside: no, usable: 20 percent, peukert: 1.15, charge-limit: 40 A}
        other-banks: {name: Winch battery, type: agm, each: {voltage: 12 V, capacity: 95 Ah}, in-series: 1, strings: 1, inside: no, feeds: Winch}
        converter: {output: 60 A}
        alternator-charging: {kind: dc-dc, output: 30 A}
        inverter: {output: 2000 W, efficiency: 88 percent, feeds: Kettle}
        generator: {rated: 1600 W, fuel: lp, burns: {half-load: 0.3 gal/h, full-load: 0.5 gal/h}}
        loads: [{name: Kettle, on: 120 V, draws: 9 A}, {name: Winch, on: 12 V, draws: 600 W}, {name: Lights, on: 12 V, draws: 30 W}]
      propane: {cylinders: {count: 2, size: 30 lb}}
      """;

  private static List<Figure> figures() {
    Stream<Rig> fleet = TestRigs.fleet().map(TestRigs::demo);
    Stream<Rig> others =
        Stream.of(
            TestRigs.smallest(),
            TestRigs.of(OFF_THE_PLUG),
            TestRigs.of(BalanceTest.MOTORHOME),
            TestRigs.of(BalanceTest.TRAILER),
            TestRigs.of(TowTest.CAMPER),
            TestRigs.of(TowTest.FIFTH_WHEEL, TowTest.WEIGHED));
    Stream<Rig> random = RandomRigs.all().stream().map(RandomRigs.Profile::rig);
    return Stream.of(fleet, others, random)
        .flatMap(s -> s)
        .flatMap(r -> Figures.of(r).all().stream())
        .filter(f -> THESE.contains(f.entry()))
        .toList();
  }

  @Test
  void everyNameInAWorkingIsOneOfItsInputs() {
    List<String> wrong = new ArrayList<>();
    for (Figure figure : figures()) {
      String left = filled(figure);
      if (left.contains("{")) {
        wrong.add(figure.id() + ": " + left);
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void aCalculatorThatTypesInTheWorkingGetsTheFigure() {
    List<String> wrong = new ArrayList<>();
    for (Figure figure : figures()) {
      boolean arithmetic = !NOT_ARITHMETIC.contains(figure.entry());
      if (arithmetic && figure.value() instanceof Value.Number n) {
        double typed = new Calculator(filled(figure)).value();
        if (Math.abs(typed - n.number()) > 1e-9 * Math.abs(n.number())) {
          wrong.add(figure.id() + ": " + filled(figure) + " = " + typed + ", not " + n.number());
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** Two sides of a working that compares, worked out. */
  private record Comparison(String text, double sum, double limit) {}

  /** What the tables of the demo rigs compare; loads that never run are compared one by one. */
  private static List<Comparison> comparisons(String sign, Entry... entries) {
    List<Comparison> all =
        Stream.of("sedge", "cattail")
            .flatMap(name -> Figures.of(TestRigs.demo(name)).all().stream())
            .filter(f -> List.of(entries).contains(f.entry()))
            .flatMap(f -> Stream.of(filled(f).split("; ")))
            .map(text -> comparison(text, text.split(sign)))
            .toList();
    assertTrue(all.size() > 10, "only " + all.size() + " comparisons"); // else nothing is proved
    return all;
  }

  private static Comparison comparison(String text, String... sides) {
    return new Comparison(text, new Calculator(sides[0]).value(), new Calculator(sides[1]).value());
  }

  @Test
  void whatRunsTogetherKeepsItsLimitWhenTypedIn() {
    List<Comparison> sets = comparisons(" ≤ ", Together.SETS, Together.HOT);
    assertEquals(List.of(), sets.stream().filter(c -> c.sum() > c.limit()).toList());
  }

  @Test
  void whatNeverRunsAndWhatRunsOnlyApartBreaksItsLimitWhenTypedIn() {
    List<Comparison> sets = comparisons(" > ", Together.NEVER, Together.APART);
    assertEquals(List.of(), sets.stream().filter(c -> c.sum() <= c.limit()).toList());
  }

  private static String filled(Figure figure) {
    String text = figure.formula();
    for (Input input : figure.inputs()) {
      text = text.replace("{" + input.name() + "}", Double.toString(input.value()));
    }
    return text;
  }

  /**
   * Plus, minus, times, over, powers, brackets, min, max, ceil, floor, ln, tan of degrees; no
   * units.
   */
  private static final class Calculator {
    private final String text;
    private int at;

    Calculator(String text) {
      this.text =
          text.replaceAll("(\\d),(\\d)", "$1$2")
              .replaceAll(" (lb/gal|Btu/lb|V|ft|MJ/kWh|mi)(?= |$|[)⌋])", "")
              .replaceAll("[ °]", "");
    }

    double value() {
      double sum = sum();
      if (at < text.length()) {
        throw new AssertionError("cannot read " + text + " at " + at);
      }
      return sum;
    }

    private boolean next(String token) {
      boolean there = text.startsWith(token, at);
      at += there ? token.length() : 0;
      return there;
    }

    private double sum() {
      double sum = product();
      while (true) {
        if (next("+")) {
          sum += product();
        } else if (next("−")) {
          sum -= product();
        } else {
          return sum;
        }
      }
    }

    private double product() {
      double product = power();
      while (true) {
        if (next("×")) {
          product *= power();
        } else if (next("÷") || next("/")) {
          product /= power();
        } else {
          return product;
        }
      }
    }

    private double power() {
      double base = factor();
      return next("^") ? Math.pow(base, factor()) : base;
    }

    private double factor() {
      if (next("tan(")) {
        return Math.tan(Math.toRadians(closed()));
      }
      if (next("ceil(")) {
        return Math.ceil(closed());
      }
      if (next("floor(")) {
        return Math.floor(closed());
      }
      if (next("ln(")) {
        return Math.log(closed());
      }
      if (next("⌊")) {
        double whole = Math.floor(sum());
        next("⌋");
        return whole;
      }
      if (next("min(")) {
        return list(Math::min);
      }
      if (next("max(")) {
        return list(Math::max);
      }
      return next("(") ? closed() : number();
    }

    private double list(DoubleBinaryOperator choose) {
      double chosen = sum();
      while (next(",")) {
        chosen = choose.applyAsDouble(chosen, sum());
      }
      next(")");
      return chosen;
    }

    private double closed() {
      double inside = sum();
      next(")");
      return inside;
    }

    private double number() {
      int start = at;
      while (at < text.length() && "0123456789.E".indexOf(text.charAt(at)) >= 0) {
        at++;
      }
      return Double.parseDouble(text.substring(start, at));
    }
  }
}
