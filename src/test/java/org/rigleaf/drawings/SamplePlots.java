package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.rigleaf.drawings.LastsPlot.Bar;

/** One sample of each plot, of made-up numbers. */
final class SamplePlots {
  static final String ALT = "A sample plot of made-up numbers.";
  private static final double[] CHARGE = {
    90, 92, 93, 91, 86, 78, 71, 65, 60, 56, 52, 49, 46, 43, 40, 37, 34, 33, 38, 47, 58, 69, 79, 86,
    90
  };

  private SamplePlots() {}

  static Map<String, Drawing> all() {
    Map<String, Drawing> all = new TreeMap<>();
    all.put("bank", bank());
    all.put("sun", sun(OptionalDouble.of(1100)));
    all.put("sun-no-need", sun(OptionalDouble.empty()));
    all.put("lasts", lasts());
    all.put("together", together());
    all.put("level", level(OptionalDouble.of(1.5)));
    all.put("level-no-blocks", level(OptionalDouble.empty()));
    return all;
  }

  static Drawing bank() {
    List<BankPlot.Point> points =
        IntStream.range(0, CHARGE.length)
            .mapToObj(i -> new BankPlot.Point(15 + i, CHARGE[i]))
            .toList();
    List<BankPlot.Hour> hours = new ArrayList<>();
    String[] names = {"3 pm", "6 pm", "9 pm", "midnight", "3 am", "6 am", "9 am", "noon", "3 pm"};
    for (int i = 0; i < names.length; i++) {
      hours.add(new BankPlot.Hour(15 + 3 * i, names[i]));
    }
    return BankPlot.draw(
        new BankPlot.Data(
            points,
            20,
            hours,
            new BankPlot.Words(
                "Charge of the battery bank, %",
                "time of day",
                "keep above 20\u00a0% or the bank ages",
                "night",
                "lowest: 33 % at 8 am",
                "A mild night, two people, furnace on low.")),
        ALT);
  }

  static Drawing sun(OptionalDouble need) {
    String[] names = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");
    double[] wh = {420, 610, 900, 1180, 1390, 1520, 1550, 1360, 1080, 760, 480, 370};
    List<SunPlot.Month> months =
        IntStream.range(0, 12).mapToObj(i -> new SunPlot.Month(names[i], wh[i])).toList();
    return SunPlot.draw(
        new SunPlot.Data(
            months,
            need,
            new SunPlot.Words(
                "Energy from the panels on a usual day, Wh",
                "A day needs 1,100 Wh",
                "sun covers the day",
                "sun falls short: use a plug",
                "")),
        ALT);
  }

  static Drawing lasts() {
    double forever = Double.POSITIVE_INFINITY;
    double[][] mild = {
      {6.2, 3.1, 1.6}, {9, 4.5, 2.3}, {14, 7, 3.5}, {forever, 45, 5}, {21, 18, 15}
    };
    double[][] cold = {{6.2, 3.1, 1.6}, {9, 4.5, 2.3}, {14, 7, 3.5}, {1.4, 1.3, 1.1}, {3.2, 3, -1}};
    return LastsPlot.draw(
        new LastsPlot.Data(
            List.of("Fresh water", "Gray tank, kitchen", "Black tank", "Battery bank", "Propane"),
            List.of("1 person", "2 people", "4 people"),
            List.of(
                new LastsPlot.Panel("Mild night, 50 °F", bars(mild)),
                new LastsPlot.Panel("Cold night, 20 °F", bars(cold))),
            new LastsPlot.Words("How long each store lasts", "days", "")),
        ALT);
  }

  private static List<Bar> bars(double[][] days) {
    List<Bar> bars = new ArrayList<>();
    for (int s = 0; s < days.length; s++) {
      for (int g = 0; g < days[s].length; g++) {
        if (days[s][g] >= 0) {
          double d = days[s][g];
          String text = d > 30 ? "keeps up" : Svg.number(d);
          bars.add(new Bar(s, g, d, text));
        }
      }
    }
    return bars;
  }

  static Drawing together() {
    List<String> loads =
        List.of(
            "Converter",
            "Refrigerator",
            "Air conditioner, front",
            "Water heater",
            "Microwave",
            "Hair dryer",
            "Coffee maker",
            "Toaster",
            "Space heater",
            "Television");
    List<TogetherPlot.Column> sets =
        List.of(
            new TogetherPlot.Column("1", Set.of(0, 1, 2, 9), 2960),
            new TogetherPlot.Column("2", Set.of(0, 1, 3, 6, 9), 3480),
            new TogetherPlot.Column("3", Set.of(0, 1, 4, 7), 3300),
            new TogetherPlot.Column("4", Set.of(0, 1, 5, 9), 2800),
            new TogetherPlot.Column("5", Set.of(0, 1, 8, 6), 3420),
            new TogetherPlot.Column("6", Set.of(0, 1, 3, 8), 3550),
            new TogetherPlot.Column("7", Set.of(0, 1, 7, 6, 9), 2600));
    return TogetherPlot.draw(
        new TogetherPlot.Data(
            loads,
            sets,
            3600,
            new TogetherPlot.Words(
                "Set",
                "Watts in all",
                "limit of the 30 A plug: 3,600 W",
                "Loads without a dot are off.")),
        ALT);
  }

  static Drawing level(OptionalDouble block) {
    List<String> blocks =
        IntStream.rangeClosed(1, 20).mapToObj(n -> n == 1 ? "1 block" : n + " blocks").toList();
    return LevelPlot.draw(
        new LevelPlot.Data(
            List.of(lift("side to side", 84), lift("nose", 216)),
            block,
            block.isPresent() ? blocks : List.of(),
            new LevelPlot.Words(
                "Lift the low side, inches",
                "slope of the ground, degrees",
                "Blocks are 1.5 in thick.")),
        ALT);
  }

  static LevelPlot.Series lift(String name, double inches) {
    return new LevelPlot.Series(
        name,
        DoubleStream.iterate(0.5, d -> d <= 5, d -> d + 0.5)
            .mapToObj(d -> new LevelPlot.Point(d, inches * Math.tan(Math.toRadians(d))))
            .toList());
  }
}
