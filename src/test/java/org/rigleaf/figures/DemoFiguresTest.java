package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/** The figures of the demo rigs, worked by hand; the tables hold id, value, unit, working. */
class DemoFiguresTest {
  private static final String SEDGE =
      """
      bank.voltage | 12 | V | 6 x 2
      bank.capacity | 215 | Ah | one string
      bank.energy | 2580 | Wh | 12 x 215
      bank.usable | 1122.3 | Wh | 38 F is 3.3333 C: 1 - 0.006 x 21.6667 = 0.87; 2580 x 0.5 x 0.87
      bank.life.lights | 40.082 | h | 28 W / 12 V = 2.3333 A, less than 10.75 A: 215 / 2.3333 x 0.5 x 0.87
      bank.life.pump | 15.588 | h | 215 / 6 x 0.435
      bank.life.furnace-blower | 18.705 | h | 215 / 5 x 0.435
      recharge.converter.current | 43 | A | 45 - 0.5, at most 0.20 x 215
      recharge.converter.to-80 | 1.3824 | h | from 1 - 1122.3 / 2580 = 0.565: 0.235 x 215 / 0.85 / 43
      recharge.converter.to-full | 3.9408 | h | 1.3824 + 43 / 38.7 x ln 10
      rest.50 | 12.24 | V | the table, 12 V
      sun.january | 247.09 | Wh | Ra 12.4846 x 0.5 / 3.6 x 190 x 0.75
      sun.may | 778.11 | Wh | Ra 39.3151 (44.1 N, J 135) x 0.5 / 3.6 x 142.5
      sun.december | 218.74 | Wh | Ra 11.0520 x 0.5 / 3.6 x 142.5
      sun.may.clear | 1011.55 | Wh | 39.3151 x 0.65 / 3.6 x 142.5
      sun.may.gray | 544.68 | Wh | 39.3151 x 0.35 / 3.6 x 142.5
      tank.fresh.weight | 348.6 | lb | 42 x 8.3
      tank.black.weight | 249 | lb | 30 x 8.3
      tank.gray.main.weight | 315.4 | lb | 38 x 8.3
      tank.heater.weight | 49.8 | lb | 6 x 8.3
      sanitize.bleach.5-25 | 5.9218 | fl oz | 42 + 6 + 0.0092 x 3 x 20.9167 = 48.5773; x 6400 / 52,500
      sanitize.bleach.8-25 | 3.7684 | fl oz | 48.5773 x 6400 / 82,500
      heater.first-hot.lp | 28.322 | min | 6 x 8.33 x 85 = 4248.3 Btu; x 60 / 9000
      heater.first-hot.electric | 51.877 | min | 4248.3 x 60 / (1440 x 3.412142 = 4913.48)
      heater.first-hot.both | 18.320 | min | 4248.3 x 60 / 13,913.48
      heater.recovery.lp | 12.711 | gal/h | 9000 / 708.05
      heater.recovery.electric | 6.9395 | gal/h | 4913.48 / 708.05
      lp.cylinder-1.fill | 20 | lb | its size
      lp.cylinder-2.gallons | 4.7619 | gal | 20 / 4.20
      lp.heat | 861920 | Btu | 40 x 21,548
      lp.furnace.life | 17.238 | h | 430,960 / 25,000
      lp.heater.life | 35.913 | h | 430,960 / 12,000
      lp.refrigerator.life | 359.13 | h | 430,960 / 1,200
      lp.range.life | 61.566 | h | 430,960 / 7,000
      lp.cylinder-1.full-weight | 37.4 | lb | 17.4 + 20
      lp.cylinder-1.scale.25 | 22.4 | lb | 17.4 + 5
      lp.cylinder-1.requalify | 2031-03-31 | date | March 2019 and 12 years
      level.side.1 | 1.2742 | in | 73 in x 0.0174551
      level.side.3 | 3.8258 | in | 73 in x 0.0524078
      level.nose.1 | 2.8714 | in | (13.5 + 16.25) / 2 - 1.16667 = 13.7083 ft = 164.5 in x 0.0174551
      level.nose.6 | 17.290 | in | 164.5 x 0.105104
      clearance.height | 11.25 | ft | 10.75 + 0.5
      weight.cargo | 1550 | lb | the label
      weight.water | 962.8 | lb | 42 + 30 + 38 + 6 = 116 gal x 8.3
      weight.margin | 1144 | lb | 1550 - 240 - 348.6 / 3 - 49.8
      hitch.weight | 646.246 | lb | 590 + (240 x 0.875 + 116.2 x 2.875 + 49.8 x 5.875) / 14.875
      hitch.share | 11.8447 | percent | 646.246 / (5050 + 240 + 116.2 + 49.8 = 5456)
      axle.1.load | 2404.877 | lb | (5456 - 646.246) / 2
      axle.2.margin | 1095.123 | lb | 3500 - 2404.877
      tire.1.margin | 1675.123 | lb | 2 x 2040 - 2404.877
      tow.payload | 358.754 | lb | 1560 - 340 - 120 - 95 - 646.246
      tow.combined | 3489 | lb | 15,000 - 5500 - 340 - 120 - 95 - 5456
      tire.1.age | 4.0794 | y | 2022-04-03 to 2026-05-02, 1490 days / 365.25
      tire.2.replace | 2028 | y | 2022 + 6
      tire.2.speed | 65 | mph | its mark
      torque.check.1 | 10 | mi | the manual
      torque.check.3 | 50 | mi | the manual
      reach.cord | 27 | ft | 30 - 3
      reach.water | 22.5 | ft | 25 - 2.5
      reach.sewer | 14 | ft | 15 - 1
      sewer.fall | 3.75 | in | 15 x 1/4
      fill.time | 14 | min | 42 / 3
      flush.overflow | 5 | min | 15 / 3
      heater.shower | 6.8 | min | 6 x 85 / 50 = 10.2 gal; / 1.5
      heater.scald | 6 | s | the row of 140 F
      tank.fresh.showers | 6.65 | count | 39.9 / 6
      tank.gray.main.showers | 6.3333 | count | 38 / 6
      winter.antifreeze | 1.0773 | gal | 0.0092 x 3 x 20.9167 = 0.5773; + 0.5
      site.length | 24.6667 | ft | 24 ft 8 in
      site.length.hitched | 44 | ft | 24 ft 8 in + 19 ft 4 in
      site.width | 18.5 | ft | slide 2.5 + 8 + awning 8
      """;

  private static final String CATTAIL =
      """
      bank.voltage | 12.8 | V | one battery
      bank.capacity | 200 | Ah | 2 x 100
      bank.energy | 2560 | Wh | 12.8 x 200
      bank.usable | 2048 | Wh | 2560 x 0.8
      bank.life.lights | 64 | h | 32 W / 12.8 V = 2.5 A: 200 / 2.5 x 0.8
      bank.life.coffee-maker | 1.6544 | h | 1000 / 0.9 / 12.8 = 86.806 A: 20 x (200 / 1736.11)^1.05 x 0.8
      bank.life.television | 26.331 | h | 70 / 0.9 / 12.8 = 6.0764 A: 200 / 6.0764 x 0.8
      recharge.converter.to-full | 2.9957 | h | 55 - 0.5 = 54.5 A from 20 %: 160 / 0.98 / 54.5
      recharge.generator.to-80 | 2.2468 | h | 3,486.6 W feed all of its 880 W: 120 / 0.98 / 54.5
      recharge.alternator.to-full | 5.5344 | h | 30 - 0.5 = 29.5 A: 160 / 0.98 / 29.5
      inverter.current | 185.19 | A | 2000 / (0.9 x 12.0)
      generator.until-bare | 68.75 | h | 55 x 0.75 / 0.6
      sun.july | 621.78 | Wh | Ra 40.8178 (38.6 N, J 196) x 0.5 / 3.6 x 200 x 0.75 x 13.6 / 18.6
      sun.july.gray | 435.24 | Wh | 621.78 x 0.35 / 0.5
      sun.december | 220.05 | Wh | Ra 14.4456 x 0.5 / 3.6 x 150 x 0.731183
      tank.fresh.weight | 323.7 | lb | 39 x 8.3
      tank.black.weight | 224.1 | lb | 27 x 8.3
      tank.gray.galley.weight | 182.6 | lb | 22 x 8.3
      tank.gray.bath.weight | 232.4 | lb | 28 x 8.3
      tank.heater.weight | 49.8 | lb | 6 x 8.3
      sanitize.bleach.6 | 4.8790 | fl oz | 39 + 6 + 0.0092 x 3 x 26.8333 = 45.7406; x 6400 / 60,000
      heater.first-hot.lp | 38.621 | min | 4248.3 x 60 / (8800 x 0.75 = 6600)
      heater.recovery.lp | 9.3214 | gal/h | 6600 / 708.05
      lp.tank.fill | 41 | lb | as stated
      lp.tank.gallons | 9.7619 | gal | 41 / 4.20
      lp.heat | 883468 | Btu | 41 x 21,548
      lp.furnace.life | 29.449 | h | 883,468 / 30,000
      lp.refrigerator.life | 631.05 | h | 883,468 / 1,400
      lp.range.life | 126.21 | h | 883,468 / 7,000, a typical burner
      level.side.2 | 2.4444 | in | 70 in x 0.0349208
      level.nose.2 | 6.7746 | in | 16 ft 2 in = 194 in x 0.0349208
      clearance.height | 11.75 | ft | 11.25 + 0.5
      weight.cargo | 3000 | lb | 14,500 - (3900 + 7600)
      weight.water | 1012.6 | lb | 39 + 27 + 22 + 28 + 6 = 122 gal x 8.3
      tire.1.age | 7.1266 | y | 2019-03-03 to 2026-04-18, 2603 days / 365.25
      tire.1.replace | 2025 | y | 2019 + 6
      tire.2.replace | 2029 | y | 2023 + 6
      torque.check.2 | 25 | mi | the manual
      reach.cord | 26 | ft | 28 - 2
      reach.water | 23 | ft | 25 - 2
      reach.sewer | 19 | ft | 20 - 1
      sewer.fall | 5 | in | 20 x 1/4
      fill.time | 13 | min | 39 / 3
      heater.shower | 6.8 | min | 10.2 / 1.5
      heater.scald | 6 | s | the row of 140 F
      tank.fresh.showers | 6.175 | count | 37.05 / 6
      tank.gray.bath.showers | 4.6667 | count | 28 / 6
      winter.antifreeze | 1.2406 | gal | 0.0092 x 3 x 26.8333 = 0.7406; + 0.5
      site.length | 26.8333 | ft | 26 ft 10 in
      site.width | 18.25 | ft | slide 2 + 8.25 + awning 8
      """;

  @Test
  void sedgeHasTheFiguresWorkedByHand() {
    check(TestRigs.demo("sedge"), SEDGE);
  }

  @Test
  void cattailHasTheFiguresWorkedByHand() {
    check(TestRigs.demo("cattail"), CATTAIL);
  }

  @Test
  void neitherRigPrintsAFigureOfGearItLacks() {
    Figures sedge = Figures.of(TestRigs.demo("sedge"));
    Figures cattail = Figures.of(TestRigs.demo("cattail"));
    assertEquals(
        List.of(),
        present(
            sedge,
            "lp.tank.fill",
            "lp.generator.life",
            "sun.june.clear",
            "heater.flow.lp",
            "lp.vapor.60",
            "winter.antifreeze.not-bypassed",
            "inverter.current",
            "generator.until-bare",
            "recharge.generator.to-80",
            "bank.life.microwave-oven"));
    assertEquals(
        List.of(),
        present(
            cattail,
            "rest.100",
            "bank.life.hair-dryer",
            "heater.first-hot.electric",
            "lp.cylinder-1.fill",
            "lp.tank.full-weight",
            "lp.generator.life",
            "level.nose.6",
            "weight.margin",
            "hitch.weight",
            "axle.1.load",
            "tow.payload",
            "tow.combined",
            "flush.overflow",
            "tank.gray.galley.showers",
            "site.length.hitched",
            "tire.1.speed",
            "heater.flow.lp"));
  }

  private static List<String> present(Figures figures, String... ids) {
    return Arrays.stream(ids).filter(id -> figures.find(id).isPresent()).toList();
  }

  /** All differences at once; the hand's five digits allow one part in twenty thousand. */
  private static void check(Rig rig, String table) {
    Figures figures = Figures.of(rig);
    List<String> wrong = new ArrayList<>();
    for (String line : table.lines().toList()) {
      String[] cells = line.split("\\s*\\|\\s*");
      String found =
          figures
              .find(cells[0])
              .map(f -> f.value().data() + " " + f.unit().symbol())
              .orElse("absent");
      String wanted = cells[1] + " " + cells[2];
      if (!found.equals(wanted) && !near(found, cells[1], cells[2])) {
        wrong.add(cells[0] + ": " + found + ", by hand " + wanted + " (" + cells[3] + ")");
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static boolean near(String found, String value, String unit) {
    String suffix = " " + unit;
    if (!found.endsWith(suffix) || unit.equals("date")) {
      return false;
    }
    double number = Double.parseDouble(found.substring(0, found.length() - suffix.length()));
    return Math.abs(number / Double.parseDouble(value) - 1) < 0.00005;
  }
}
