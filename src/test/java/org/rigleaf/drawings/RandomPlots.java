package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Plots of any numbers and of words short, long, strange or missing, made up from a seed. */
final class RandomPlots {
  private static final String[] WORDS = {
    "",
    "Wh",
    "air conditioner",
    "<b>&\"'</svg>",
    "needs 20 %",
    "°F",
    "Wasser­bedarf",
    "WWWWWWWW",
    "iiii",
    "two people",
    "\u0000\u0007",
    "🚐",
    "x".repeat(90),
    "keeps up",
    "a day",
    "1,200"
  };

  private final Random random;

  RandomPlots(long seed) {
    random = new Random(seed);
  }

  /** One plot of each kind. */
  List<Drawing> next() {
    return List.of(bank(), sun(), lasts(), together(), level());
  }

  String words(int most) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(most + 1); i >= 0; i--) {
      text.append(WORDS[random.nextInt(WORDS.length)]).append(i > 0 ? " " : "");
    }
    return text.toString();
  }

  private List<String> list(int count, int most) {
    return IntStream.range(0, count).mapToObj(i -> words(most)).toList();
  }

  /** From thousandths to a million, small and large alike. */
  private double amount() {
    return random.nextInt(9) == 0 ? 0 : Math.pow(10, random.nextDouble() * 9 - 3);
  }

  private OptionalDouble perhaps(double value) {
    return random.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  Drawing bank() {
    List<BankPlot.Point> points = new ArrayList<>();
    double percent = random.nextInt(101);
    double jump = 1 + random.nextInt(25);
    for (int i = 0; i <= 24; i++) {
      points.add(new BankPlot.Point(15 + i, percent));
      percent = Plan.clamp(percent + jump * random.nextGaussian(), 0, 100);
    }
    int step = 1 + random.nextInt(6);
    List<BankPlot.Hour> hours =
        IntStream.range(0, 30 / step)
            .mapToObj(i -> new BankPlot.Hour(12 + i * step, words(1)))
            .toList();
    BankPlot.Words words =
        new BankPlot.Words(words(9), words(9), words(9), words(4), words(5), words(40));
    return BankPlot.draw(
        new BankPlot.Data(points, random.nextInt(101), hours, words), SamplePlots.ALT);
  }

  Drawing sun() {
    double usual = amount();
    List<SunPlot.Month> months =
        IntStream.range(0, 12)
            .mapToObj(i -> new SunPlot.Month(words(1), usual * random.nextDouble()))
            .toList();
    double need = random.nextBoolean() ? amount() : usual * random.nextDouble();
    SunPlot.Words words = new SunPlot.Words(words(9), words(9), words(9), words(9), words(40));
    return SunPlot.draw(new SunPlot.Data(months, perhaps(need), words), SamplePlots.ALT);
  }

  Drawing lasts() {
    int stores = 1 + random.nextInt(8);
    int groups = 1 + random.nextInt(3);
    List<LastsPlot.Panel> panels = new ArrayList<>();
    for (int p = random.nextInt(2); p >= 0; p--) {
      List<LastsPlot.Bar> bars = new ArrayList<>();
      for (int i = 0; i < stores * groups; i++) {
        if (random.nextInt(5) > 0) {
          double days = random.nextInt(7) == 0 ? Double.POSITIVE_INFINITY : amount();
          bars.add(new LastsPlot.Bar(i / groups, i % groups, days, words(2)));
        }
      }
      panels.add(new LastsPlot.Panel(words(5), bars));
    }
    LastsPlot.Words words = new LastsPlot.Words(words(9), words(9), words(40));
    return LastsPlot.draw(
        new LastsPlot.Data(list(stores, 4), list(groups, 2), panels, words), SamplePlots.ALT);
  }

  Drawing together() {
    int loads = 1 + random.nextInt(14);
    double limit = amount();
    List<TogetherPlot.Column> sets = new ArrayList<>();
    for (int i = random.nextInt(12); i >= 0; i--) {
      Set<Integer> on = new TreeSet<>();
      IntStream.range(0, loads).filter(l -> random.nextBoolean()).forEach(on::add);
      double watts = limit * random.nextDouble() * (random.nextInt(9) == 0 ? 3 : 1);
      sets.add(new TogetherPlot.Column(words(1), on, watts));
    }
    TogetherPlot.Words words = new TogetherPlot.Words(words(2), words(3), words(9), words(40));
    return TogetherPlot.draw(
        new TogetherPlot.Data(list(loads, 3), sets, limit, words), SamplePlots.ALT);
  }

  Drawing level() {
    List<LevelPlot.Series> series = new ArrayList<>();
    for (int s = random.nextInt(2); s >= 0; s--) {
      double inches = 30 + random.nextInt(300);
      int points = 2 + random.nextInt(9);
      series.add(
          new LevelPlot.Series(
              words(3),
              IntStream.rangeClosed(1, points)
                  .mapToObj(i -> i * 5.0 / points)
                  .map(d -> new LevelPlot.Point(d, inches * Math.tan(Math.toRadians(d))))
                  .toList()));
    }
    double block = 0.05 + 3 * random.nextDouble();
    LevelPlot.Words words = new LevelPlot.Words(words(9), words(9), words(40));
    return LevelPlot.draw(
        new LevelPlot.Data(series, perhaps(block), list(random.nextInt(30), 2), words),
        SamplePlots.ALT);
  }
}
