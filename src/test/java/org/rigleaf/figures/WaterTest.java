package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;

class WaterTest {
  private static final double ATMOSPHERE_MPA = 0.101325;
  private static final double GALLON_M3 = 0.003785411784; // exact by definition
  private static final double POUND_KG = 0.45359237; // exact by definition

  private static Figures rig(String water) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: Reed, kind: travel trailer, length: 20 ft, body: {length: 16 ft}}\n"
                + water));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void fiftyGallonsWeigh415PoundsOnTheLabel() {
    // 49 CFR 571.110 S9.3.4(e) prints 8.3 lb/gal (SEEN); 50 x 8.3 (CALC)
    assertEquals(415, Tanks.waterPounds(50), 1e-9);
    assertEquals(0, Tanks.waterPounds(0));
    assertThrows(IllegalArgumentException.class, () -> Tanks.waterPounds(-1));
  }

  @Test
  void waterAt60FahrenheitIsHalfAPercentHeavierThanItsLabel() throws OutOfRangeException {
    // the library IF97 gives 8.3372 lb/gal (RAN); the label rounds to 8.3, 0.45 % apart
    double kgPerM3 = new IF97(IF97.UnitSystem.DEFAULT).densityPT(ATMOSPHERE_MPA, kelvin(60));
    double poundsPerGallon = kgPerM3 * GALLON_M3 / POUND_KG;
    assertEquals(8.3372, poundsPerGallon, 0.001);
    assertEquals(1.0045, poundsPerGallon / Tanks.waterPounds(1), 0.0005);
  }

  private static double kelvin(double fahrenheit) {
    return (fahrenheit - 32) / 1.8 + 273.15;
  }

  @Test
  void everyTankHasAWeightByItsOwnId() {
    Figures figures =
        rig(
            "water: {fresh: {holds: 10 gal}, heater: {kind: storage, holds: 6 gal}}\n"
                + "waste: {black: {holds: 20 gal}, gray: [{name: Kitchen, holds: 30 gal}, {name: Bath, holds: 40 gal}]}\n");
    assertEquals(83, number(figures, "tank.fresh.weight"), 1e-9);
    assertEquals(49.8, number(figures, "tank.heater.weight"), 1e-9);
    assertEquals(166, number(figures, "tank.black.weight"), 1e-9);
    assertEquals(249, number(figures, "tank.gray.kitchen.weight"), 1e-9);
    assertEquals(332, number(figures, "tank.gray.bath.weight"), 1e-9);
  }

  @Test
  void aHeaterThatHeatsAsItRunsHasNoWeightOfWaterAndAnUnknownTankIsNotZero() {
    Figures onDemand = rig("water: {heater: {kind: on-demand}}\n");
    assertTrue(onDemand.find("tank.heater.weight").isEmpty());
    assertEquals(Set.of(), onDemand.missing("tank.heater.weight"));
    Figures unknown = rig("water: {heater: {kind: storage}}\n");
    assertEquals(Set.of("water.heater.holds"), unknown.missing("tank.heater.weight"));
  }

  @Test
  void halfAGallonOfFivePercentBleachBrings500GallonsTo50PartsInAMillion() {
    // Oregon drinking-water program, tank sheet of 2009 (scribd.com/document/401363792): 0.50 gal
    // at
    // 5 % and 0.20 gal at 12.5 % (SEEN);
    // 64 and 25.6 fl oz
    assertEquals(64, Sanitize.bleachFluidOunces(500, 5), 1e-9);
    assertEquals(25.6, Sanitize.bleachFluidOunces(500, 12.5), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> Sanitize.bleachFluidOunces(50, 0.5));
    assertThrows(IllegalArgumentException.class, () -> Sanitize.bleachFluidOunces(50, 15.5));
    // the ends of what counts as bleach: 50 x 128 x 50 / 10,000 = 32, and a fifteenth of it
    assertEquals(32, Sanitize.bleachFluidOunces(50, 1), 1e-9);
    assertEquals(32 / 15.0, Sanitize.bleachFluidOunces(50, 15), 1e-9);
  }

  @Test
  void theQuarterCupOfTheOldRuleIsTooMuchForBleachOfToday() {
    // a quarter cup (2 fl oz) in 15 gal is 54.7, 62.5, 85.9 ppm (CALC, +-0.3)
    assertEquals(2 * 50 / 54.7, Sanitize.bleachFluidOunces(15, 5.25), 0.01);
    assertEquals(2 * 50 / 62.5, Sanitize.bleachFluidOunces(15, 6), 0.01);
    assertEquals(2 * 50 / 85.9, Sanitize.bleachFluidOunces(15, 8.25), 0.01);
  }

  @Test
  void aHundredFeetOfHalfInchPipeHold0Point92Gallons() {
    // book.pipefittercalculator.com prints 0.92 (SEEN); the plumbing code's 1.18 fl oz/ft (SEEN-2)
    assertEquals(0.92, Pipes.pipeGallons(100, 0.92), 1e-9);
    assertEquals(1.18, Pipes.pipeGallons(1, 0.92) * 128, 0.005);
    // the mean inside width 0.475 in gives it, the 0.485 in printed beside it gives 0.960
    assertEquals(0.92, Math.PI / 4 * 0.475 * 0.475 * 1200 / 231, 0.001);
    assertEquals(0.960, Math.PI / 4 * 0.485 * 0.485 * 1200 / 231, 0.001);
    assertEquals(0, Pipes.pipeGallons(0, 0.92));
    assertThrows(IllegalArgumentException.class, () -> Pipes.pipeGallons(-1, 0.92));
  }

  @Test
  void bleachIsForTankHeaterAndLinesAndWithoutAHeaterThereIsNoHotPipe() {
    // 40 + 6 + 0.92 / 100 x 3 x 16 = 46.4416 gal; x 128 x 50 / 60,000 = 4.95377
    Figures warm = rig("water: {fresh: {holds: 40 gal}, heater: {kind: storage, holds: 6 gal}}\n");
    assertEquals(4.95377, number(warm, "sanitize.bleach.6"), 0.00001);
    // 40 + 0.92 / 100 x 1.5 x 16 = 40.2208 gal; x 128 x 50 / 60,000 = 4.29022
    Figures cold = rig("water: {fresh: {holds: 40 gal}}\n");
    assertEquals(4.29022, number(cold, "sanitize.bleach.6"), 0.00001);
    assertTrue(cold.find("sanitize.bleach.6").orElseThrow().assumes().contains("pipe.cold"));
    // the keeper's own 2 gal of lines: 42 x 128 x 50 / 60,000 = 4.48
    Figure told =
        rig("water: {fresh: {holds: 40 gal}, lines: 2 gal}\n")
            .find("sanitize.bleach.6")
            .orElseThrow();
    assertEquals(4.48, told.number(), 1e-9);
    assertEquals(Set.of(), told.assumes());
  }

  @Test
  void whateverTheBleachTheChlorineIsTheSame() {
    // conservation: ounces x per cent is one number for a rig
    Figures figures = rig("water: {fresh: {holds: 40 gal}}\n");
    double chlorine = number(figures, "sanitize.bleach.6") * 6;
    assertEquals(chlorine, number(figures, "sanitize.bleach.5-25") * 5.25, 1e-9);
    assertEquals(chlorine, number(figures, "sanitize.bleach.7-5") * 7.5, 1e-9);
    assertEquals(chlorine, number(figures, "sanitize.bleach.8-25") * 8.25, 1e-9);
  }

  @Test
  void aRigWithoutAFreshTankGetsNoBleachAndAHeaterOfUnknownSizeHoldsItBack() {
    assertTrue(rig("water: {pump: {flow: 3 gpm}}\n").find("sanitize.bleach.6").isEmpty());
    Figures unknown = rig("water: {fresh: {holds: 40 gal}, heater: {kind: storage}}\n");
    assertEquals(Set.of("water.heater.holds"), unknown.missing("sanitize.bleach.6"));
    assertTrue(
        rig("water: {fresh: {holds: 40 gal}, heater: {kind: on-demand}}\n")
            .find("sanitize.bleach.6")
            .isPresent());
  }
}
