package org.rigleaf.figures;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The register: every entry of every trade, in the order of the pages. */
public final class Register {
  /** All entries. A doubled pattern stops the program at once. */
  public static final List<Entry> ENTRIES = all();

  private Register() {}

  private static List<Entry> all() {
    List<Entry> all =
        Stream.of(
                Shore.ENTRIES,
                Loads.ENTRIES,
                Together.ENTRIES,
                Batteries.ENTRIES,
                OtherBanks.ENTRIES,
                BankLife.ENTRIES,
                Recharge.ENTRIES,
                Inverters.ENTRIES,
                Sun.ENTRIES,
                Generators.ENTRIES,
                Furnaces.ENTRIES,
                FurnaceNight.ENTRIES,
                DailyUse.ENTRIES,
                GeneratorDay.ENTRIES,
                Endurance.ENTRIES,
                FirstLimit.ENTRIES,
                WorksOn.ENTRIES,
                Reach.ENTRIES,
                Tanks.ENTRIES,
                Fills.ENTRIES,
                WaterHeater.ENTRIES,
                HotWater.ENTRIES,
                Sanitize.ENTRIES,
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
            .toList();
    Map<String, Long> counts =
        all.stream().collect(Collectors.groupingBy(Entry::pattern, Collectors.counting()));
    counts.entrySet().removeIf(e -> e.getValue() == 1);
    if (!counts.isEmpty()) {
      throw new IllegalStateException("doubled figures: " + counts.keySet());
    }
    return all;
  }
}
