package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/** What a page prints as the working of a figure must give the figure. */
class WorkingTest {
  /** Figures whose working is not plain arithmetic: the sun's path, calendar days. */
  private static final Set<String> NOT_ARITHMETIC = Set.of("sun", "tire");

  private static final Set<Entry> THESE =
      Stream.of(
              Loads.ENTRIES,
              Batteries.ENTRIES,
              Sun.ENTRIES,
              Generators.ENTRIES,
              Tanks.ENTRIES,
              Sanitize.ENTRIES,
              WaterHeater.ENTRIES,
              Lp.ENTRIES,
              LpLife.ENTRIES,
              Cylinders.ENTRIES,
              Ground.ENTRIES,
              Tires.ENTRIES)
          .flatMap(List::stream)
          .collect(Collectors.toSet());

  private static List<Figure> figures() {
    List<Rig> rigs = List.of(TestRigs.demo("sedge"), TestRigs.demo("cattail"), TestRigs.smallest());
    return rigs.stream()
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
      boolean arithmetic = !NOT_ARITHMETIC.contains(figure.id().split("\\.")[0]);
      if (arithmetic && figure.value() instanceof Value.Number n) {
        double typed = new Calculator(filled(figure)).value();
        if (Math.abs(typed / n.number() - 1) > 1e-9) {
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

  /** Plus, minus, times, over, brackets, min, tan of degrees; units are skipped. */
  private static final class Calculator {
    private final String text;
    private int at;

    Calculator(String text) {
      this.text =
          text.replaceAll("(\\d),(\\d)", "$1$2")
              .replaceAll(" (lb/gal|Btu/lb|V|MJ/kWh|ft)(?= |$|\\))", "")
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
      double product = factor();
      while (true) {
        if (next("×")) {
          product *= factor();
        } else if (next("÷") || next("/")) {
          product /= factor();
        } else {
          return product;
        }
      }
    }

    private double factor() {
      if (next("tan(")) {
        return Math.tan(Math.toRadians(closed()));
      }
      if (next("min(")) {
        double least = sum();
        while (next(",")) {
          least = Math.min(least, sum());
        }
        next(")");
        return least;
      }
      return next("(") ? closed() : number();
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
