package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class WaterHeaterTest {
  private static Figures rig(String heater) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: Reed, kind: travel trailer}\nwater: {heater: {" + heater + "}}\n"));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void fortyThousandBtuAt80PercentHeat55GallonsAnHourBySeventyDegrees() {
    // calculatorhub.com and scoutmytool.com, among three that agree: 54.88 gal (SEEN, printed to
    // 0.01); boneyardtools.com: 48 at 80 F (SEEN)
    assertEquals(54.88, WaterHeater.recoveryGallonsPerHour(70, 32_000), 0.01);
    assertEquals(48, WaterHeater.recoveryGallonsPerHour(80, 32_000), 0.05);
    // so a tank of 54.88 gal is hot after an hour
    assertEquals(60, WaterHeater.firstHotMinutes(54.88, 70, 32_000), 0.02);
  }

  @Test
  void fourAndAHalfKilowattsHeat26GallonsAnHourBySeventyDegrees() {
    // tools.gera.services: about 26 (SEEN; 26.3), 1 kWh 3,412.14 Btu (SEEN and GNU units)
    assertEquals(3412.1416, WaterHeater.electricBtuPerHour(1000), 0.001);
    double gallons = WaterHeater.recoveryGallonsPerHour(70, WaterHeater.electricBtuPerHour(4500));
    assertEquals(26.3, gallons, 0.05);
  }

  @Test
  void aBtuAPoundAndDegreeIsRightToAFewThousandths() throws OutOfRangeException {
    // IF97: 89.90 Btu/lb from 50 to 140 F (RAN), against 90; 1 kJ/kg is 0.429923 Btu/lb
    IF97 steam = new IF97(IF97.UnitSystem.DEFAULT);
    double rise =
        steam.specificEnthalpyPT(0.101325, (140 - 32) / 1.8 + 273.15)
            - steam.specificEnthalpyPT(0.101325, (50 - 32) / 1.8 + 273.15);
    assertEquals(89.90, rise * 0.429923, 0.02);
  }

  private static final String BOTH =
      "kind: storage, holds: 10 gal, fuel: [lp, electric], burner: 12000 Btu/h, element: 1400 W";

  @Test
  void burnerAndElementTogetherAddTheirGallonsAndAreFirst() {
    Figures figures = rig(BOTH);
    double lp = number(figures, "heater.recovery.lp");
    double electric = number(figures, "heater.recovery.electric");
    assertEquals(lp + electric, number(figures, "heater.recovery.both"), 1e-9);
    // conservation: the first tank takes its gallons over the recovery
    assertEquals(10 / lp * 60, number(figures, "heater.first-hot.lp"), 1e-9);
    assertEquals(10 / (lp + electric) * 60, number(figures, "heater.first-hot.both"), 1e-9);
    // 10 x 8.33 x (140 - 55) x 60 / (12,000 x 0.75) = 47.2033
    assertEquals(47.2033, number(figures, "heater.first-hot.lp"), 0.0001);
  }

  @Test
  void aGivenSetPointAndEfficiencyBeatTheTypicalOnes() {
    // 10 x 8.33 x (120 - 55) x 60 / (12,000 x 0.8) = 33.8406
    Figure figure =
        rig(BOTH + ", set-point: 120 degF, efficiency: 0.8")
            .find("heater.first-hot.lp")
            .orElseThrow();
    assertEquals(33.8406, figure.number(), 0.0001);
    assertEquals(Set.of("water.cold"), figure.assumes());
  }

  @Test
  void onlyHeatersWithATankHaveThese() {
    Figures onDemand = rig("kind: on-demand, fuel: [lp], burner: 42000 Btu/h");
    assertTrue(onDemand.find("heater.first-hot.lp").isEmpty());
    assertTrue(onDemand.find("heater.recovery.lp").isEmpty());
    Figures gasOnly = rig("kind: storage, holds: 6 gal, fuel: [lp], burner: 8800 Btu/h");
    assertTrue(gasOnly.find("heater.first-hot.electric").isEmpty());
    assertTrue(gasOnly.find("heater.first-hot.both").isEmpty());
    Figures unknown = rig("kind: storage, fuel: [lp], burner: 8800 Btu/h");
    assertEquals(Set.of("water.heater.holds"), unknown.missing("heater.first-hot.lp"));
    assertTrue(unknown.find("heater.recovery.lp").isPresent());
  }

  @Test
  void waterThatIsHotAlreadyIsNonsense() {
    assertThrows(IllegalArgumentException.class, () -> WaterHeater.recoveryGallonsPerHour(0, 9000));
    assertThrows(IllegalArgumentException.class, () -> WaterHeater.firstHotMinutes(6, 85, 0));
  }

  @Test
  void fortyTwoThousandBtuWarmThreeQuartersOfAGallonAMinuteBy85Degrees() {
    // calculatorhub.com: 54.88 gal an hour at 70 F (SEEN) are 0.9147 a minute
    assertEquals(0.9147, WaterHeater.flowGallonsPerMinute(70, 32_000), 0.0002);
    // 42,000 x 0.75 / (8.33 x 85) / 60 = 0.741473
    Figure flow =
        rig("kind: on-demand, fuel: [lp], burner: 42000 Btu/h")
            .find("heater.flow.lp")
            .orElseThrow();
    assertEquals(0.741473, flow.number(), 0.000001);
    assertEquals(Set.of("heater.efficiency-lp", "heater.set-point", "water.cold"), flow.assumes());
    assertTrue(rig(BOTH).find("heater.flow.lp").isEmpty());
    assertTrue(rig("fuel: [lp], burner: 42000 Btu/h").find("heater.flow.lp").isEmpty());
    assertEquals(
        Set.of("water.heater.burner"),
        rig("kind: on-demand, fuel: [lp]").missing("heater.flow.lp"));
  }

  @Test
  void aDieselBurnerIsNoPropaneBurnerWhateverTheKind() {
    Figures combination =
        rig(
            "kind: combination, holds: 3 gal, fuel: [diesel, electric], burner: 13000 Btu/h,"
                + " element: 1000 W");
    assertTrue(combination.find("heater.first-hot.lp").isEmpty());
    assertTrue(combination.find("heater.first-hot.both").isEmpty());
    // 1000 x 3.412142 / (8.33 x 85) = 4.81907
    assertEquals(4.81907, number(combination, "heater.recovery.electric"), 0.00001);
    for (String fuel : new String[] {"diesel", "electric", "engine"}) {
      Figures hydronic =
          rig("kind: hydronic, fuel: [" + fuel + "], burner: 50000 Btu/h, element: 1650 W");
      assertEquals(
          java.util.List.of("heater.scald"),
          hydronic.all().stream().map(Figure::id).filter(i -> i.startsWith("heater.")).toList());
      assertTrue(hydronic.find("lp.heater.life").isEmpty());
    }
  }
}
