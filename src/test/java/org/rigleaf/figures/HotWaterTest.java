package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;

class HotWaterTest {
  private static final String HEATER = "water: {heater: {kind: storage}}\n";

  private static Figures rig(String sections) {
    return Figures.of(TestRigs.of("rig: {name: Reed, kind: travel trailer}\n" + sections));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void aShowerOf105DegreesIs77PercentHotWaterOf120And59PercentOf140() {
    // energy balance with 55 F cold (CALC)
    assertEquals(0.769, HotWater.hotShare(105, 55, 120), 0.0005);
    assertEquals(0.588, HotWater.hotShare(105, 55, 140), 0.0005);
    assertEquals(1, HotWater.hotShare(105, 55, 105), 1e-12);
    assertEquals(1, HotWater.hotShare(105, 55, 100), 1e-12); // too cool to mix: all of it hot
    assertThrows(IllegalArgumentException.class, () -> HotWater.hotShare(105, 55, 55));
  }

  @Test
  void tenGallonsOf140DegreesMakeSeventeenOfShower() {
    // energy balance, 10 x 85 / 50 = 17.0 (CALC); at 1.5 gal/min 17 / 1.5 = 11.333 min
    assertEquals(17.0, HotWater.mixedGallons(10, HotWater.hotShare(105, 55, 140)), 0.05);
    Figure figure =
        rig("water: {heater: {kind: storage, holds: 10 gal}}\n")
            .find("heater.shower")
            .orElseThrow();
    assertEquals(11.3333, figure.number(), 0.0001);
    assertEquals(
        Set.of("shower.mix", "water.cold", "heater.set-point", "shower.flow"), figure.assumes());
  }

  @Test
  void theHeatOfTheShowerIsTheHeatOfTheTank() {
    // second derivation: heat above cold before and after the mixing is the same
    for (double hot = 110; hot <= 180; hot += 7) {
      double mixed = HotWater.mixedGallons(6, HotWater.hotShare(105, 55, hot));
      assertEquals(6 * (hot - 55), mixed * (105 - 55), 1e-9);
    }
  }

  @Test
  void aGivenSetPointAndFlowBeatTheTypicalOnes() {
    Figures figures =
        rig(
            "water: {heater: {kind: combination, holds: 3 gal, set-point: 120 degF}}\n"
                + "stay: {habits: {shower: {minutes: 5, flow: 1 gpm}}}\n");
    assertEquals(3.9, number(figures, "heater.shower"), 1e-9); // 3 x 65 / 50 / 1
    assertEquals(
        Set.of("shower.mix", "water.cold"), figures.find("heater.shower").orElseThrow().assumes());
  }

  @Test
  void onlyATankGivesAShowerOfSomeLength() {
    for (String kind : new String[] {"on-demand", "hydronic"}) {
      Figures figures = rig("water: {heater: {kind: " + kind + ", fuel: lp}}\n");
      assertTrue(figures.find("heater.shower").isEmpty());
      assertEquals(Set.of(), figures.missing("heater.shower"));
    }
    assertEquals(
        Set.of("water.heater.holds"),
        rig("water: {heater: {kind: storage}}\n").missing("heater.shower"));
  }

  // 2024.hotenda.com/ask/1581, the safety alert's wording as widely quoted (SEEN-2): 150 F 2 s, 140
  // F 6 s,
  // 130 F 30 s, 120 F 5 min; between the rows the next hotter one
  @ParameterizedTest
  @CsvSource({
    "95, 300",
    "120, 300",
    "120.1, 30",
    "130, 30",
    "131, 6",
    "140, 6",
    "141, 2",
    "150, 2",
    "185, 2"
  })
  void hotterWaterBurnsSooner(double fahrenheit, double seconds) {
    assertEquals(seconds, HotWater.scaldSeconds(fahrenheit), 0);
  }

  @Test
  void aHeaterThatSaysNothingIsSetTo140() {
    Figures typical = rig("water: {heater: {kind: hydronic, fuel: diesel}}\n");
    assertEquals(6, number(typical, "heater.scald"), 0);
    assertEquals(Set.of("heater.set-point"), typical.find("heater.scald").orElseThrow().assumes());
    assertEquals("s", typical.find("heater.scald").orElseThrow().unit().symbol());
    Figures mild = rig("water: {heater: {kind: on-demand, set-point: 49 degC}}\n"); // 120.2 F
    assertEquals(30, number(mild, "heater.scald"), 0);
    assertTrue(rig("").find("heater.scald").isEmpty());
  }

  @Test
  void ninetyFivePercentOfTheFreshTankGoesToShowers() {
    Figures typical = rig("water: {fresh: {holds: 40 gal}, heater: {kind: storage}}\n");
    assertEquals(6.3333, number(typical, "tank.fresh.showers"), 0.0001); // 38 / (4 x 1.5)
    assertEquals(
        Set.of("fresh.drawn", "shower.minutes", "shower.flow"),
        typical.find("tank.fresh.showers").orElseThrow().assumes());
    Figures given =
        rig(
            "water: {fresh: {holds: 40 gal}, heater: {kind: storage}}\n"
                + "stay: {habits: {shower: {minutes: 5, flow: 2 gpm}}}\n");
    assertEquals(3.8, number(given, "tank.fresh.showers"), 1e-9); // 38 / 10
    assertEquals(
        Set.of("water.fresh.holds"),
        rig("water: {fresh: {at: under 9 ft}, heater: {kind: storage}}\n")
            .missing("tank.fresh.showers"));
  }

  @Test
  void aGrayTankTakesShowersIfTheBathDrainsToIt() {
    Figures two =
        rig(
            "waste: {gray: [{name: galley, holds: 20 gal, drains: [kitchen]},"
                + " {name: bath, holds: 30 gal, drains: [bath]}]}\n");
    assertEquals(5, number(two, "tank.gray.bath.showers"), 1e-9); // 30 / 6
    assertTrue(two.find("tank.gray.galley.showers").isEmpty());
    assertEquals(Set.of(), two.missing("tank.gray.galley.showers"));
    Figures one = rig(HEATER + "waste: {gray: {holds: 24 gal}}\n");
    assertEquals(4, number(one, "tank.gray.gray.showers"), 1e-9);
    Figures silent =
        rig(
            HEATER
                + "waste: {gray: [{name: left, holds: 20 gal}, {name: right, holds: 30 gal}]}\n");
    assertEquals(Set.of("waste.gray.left.drains"), silent.missing("tank.gray.left.showers"));
  }

  @Test
  void aRigWithNeitherHeaterNorBathDrainHasNoShower() {
    Figures figures =
        rig("water: {fresh: {holds: 10 gal}}\nwaste: {gray: {holds: 8 gal, drains: [kitchen]}}\n");
    assertTrue(figures.find("tank.fresh.showers").isEmpty());
    assertTrue(figures.find("tank.gray.gray.showers").isEmpty());
    assertEquals(Set.of(), figures.missing("tank.fresh.showers"));
  }

  @Test
  void showersTakenOneByOneEmptyTheTankAfterTheSameNumber() {
    // second derivation: 6 gal a shower until the next one finds too little; 38 gal of 40, 30 gal
    Figures figures =
        rig(
            "water: {fresh: {holds: 40 gal}, heater: {kind: storage}}\n"
                + "waste: {gray: {holds: 30 gal}}\n");
    assertEquals(taken(38), Math.floor(number(figures, "tank.fresh.showers")), 0);
    assertEquals(taken(30), Math.floor(number(figures, "tank.gray.gray.showers")), 0);
  }

  private static int taken(double gallons) {
    int showers = 0;
    for (double left = gallons; left >= 4 * 1.5; left -= 4 * 1.5) {
      showers++;
    }
    return showers;
  }
}
