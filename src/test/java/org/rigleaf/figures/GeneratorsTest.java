package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;

/** The generator at its height, and its fuel. */
class GeneratorsTest {
  private static Figures at(String place, String more) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: T, kind: class c, length: 24 ft}\n"
                + place
                + "electric: {generator: {rated: 4000 W"
                + more
                + "}}\n"));
  }

  // 4000 x (1 - 0.035 x 6) = 3160, by hand
  @Test
  void at6000FeetAFourKilowattGeneratorGives3160Watts() {
    Figures figures = at("stay: {place: {elevation: 6000 ft}}\n", "");
    assertEquals(3160, figures.find("generator.steady").orElseThrow().number(), 1e-9);
  }

  // 4000 x (1 - 0.03 x 5) = 3400, by hand
  @Test
  void itsMakersDerateWins() {
    Figures figures =
        at("stay: {place: {elevation: 5000 ft}}\n", ", derate-per-1000-ft: 3 percent");
    Figure steady = figures.find("generator.steady").orElseThrow();
    assertEquals(3400, steady.number(), 1e-9);
    assertEquals(Set.of(), steady.assumes());
  }

  @Test
  void atTheSeaItGivesItsRating() {
    assertEquals(4000, Generators.steadyWatts(4000, 0.035, 0));
  }

  @Test
  void anUnknownHeightIsNeverAssumed() {
    Figures figures = at("", "");
    assertTrue(figures.find("generator.steady").isEmpty());
    assertEquals(Set.of("stay.place.elevation"), figures.missing("generator.steady"));
  }

  // Cattail at 900 ft: 3600 x (1 - 0.035 x 0.9) = 3486.6, by hand
  @Test
  void cattailsGeneratorGives3487WattsAt900Feet() {
    Figures figures = Figures.of(TestRigs.demo("cattail"));
    assertEquals(3486.6, figures.find("generator.steady").orElseThrow().number(), 1e-9);
  }

  private static Figures motorhome(String generator, String more) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: T, kind: class c, length: 24 ft}\nelectric: {generator: {"
                + generator
                + "}}\n"
                + more));
  }

  private static final String BURNS = "burns: {half-load: 0.3 gal/h, full-load: 0.5 gal/h}, fuel: ";
  private static final String TANK = "road: {fuel: {holds: 40 gal, generator-stops-at: 1/4";

  // 40 gal less a quarter are 30 gal, / 0.5 gal/h = 60 h, by hand
  @Test
  void thirtyGallonsAboveThePickUpRunAGeneratorFor60Hours() {
    for (String kind : new String[] {"", ", kind: gasoline"}) {
      Figures figures = motorhome(BURNS + "gasoline", TANK + kind + "}}\n");
      assertEquals(60, figures.find("generator.until-bare").orElseThrow().number(), 1e-9);
    }
    Figures diesel = motorhome(BURNS + "diesel", TANK + ", kind: diesel}}\n");
    assertEquals(60, diesel.find("generator.until-bare").orElseThrow().number(), 1e-9);
  }

  // two cylinders of 21 lb at 4.20 lb/gal are 10 gal, / 0.5 gal/h = 20 h, by hand
  @Test
  void aPropaneGeneratorRunsOnAllContainers() {
    String cylinders = "propane: {cylinders: {count: 2, size: 21 lb}}\n";
    Figures figures = motorhome(BURNS + "lp", cylinders + TANK + "}}\n");
    assertEquals(20, figures.find("generator.until-bare").orElseThrow().number(), 1e-9);
  }

  // a tank of 1.5 gal / 0.5 gal/h = 3 h, by hand; the tank of the rig's own engine is another
  @Test
  void aPortableGeneratorRunsOnItsOwnTank() {
    String portable = "kind: portable, holds: 1.5 gal, " + BURNS + "gasoline";
    Figures figures = motorhome(portable, TANK + "}}\n");
    assertEquals(3, figures.find("generator.until-bare").orElseThrow().number(), 1e-9);
    assertTrue(figures.find("fuel.days").isEmpty());
    assertEquals(
        Set.of("electric.generator.holds"),
        motorhome("kind: portable, " + BURNS + "gasoline", "").missing("generator.until-bare"));
  }

  @Test
  void aTankOfAnotherFuelOrNoneAtAllSaysNothing() {
    for (Figures figures :
        new Figures[] {
          motorhome(BURNS + "gasoline", TANK + ", kind: diesel}}\n"),
          motorhome(BURNS + "gasoline", "road: {fuel: none}\n"),
          motorhome(BURNS + "lp", TANK + "}}\n")
        }) {
      assertTrue(figures.find("generator.until-bare").isEmpty());
      assertEquals(Set.of(), figures.missing("generator.until-bare"));
    }
  }

  @Test
  void whatItsFuelLacksIsNamed() {
    assertEquals(
        Set.of("road.fuel.holds", "road.fuel.generator-stops-at"),
        motorhome(BURNS + "gasoline", "").missing("generator.until-bare"));
    assertEquals(
        Set.of(
            "electric.generator.fuel",
            "electric.generator.burns.full-load",
            "road.fuel.generator-stops-at"),
        motorhome("rated: 4000 W", "road: {fuel: {holds: 40 gal, kind: diesel}}\n")
            .missing("generator.until-bare"));
  }

  // straight line from 0.3 gal/h at 2,000 W to 0.5 gal/h at 4,000 W, by hand
  @ParameterizedTest
  @CsvSource({
    "0, 0.3",
    "1000, 0.3",
    "2000, 0.3",
    "2500, 0.35",
    "3000, 0.4",
    "4000, 0.5",
    "5000, 0.5"
  })
  void theBurnIsAStraightLineAboveHalfLoadAndFlatBelow(double watts, double gallonsPerHour) {
    assertEquals(gallonsPerHour, Generators.burnGallonsPerHour(watts, 4000, 0.3, 0.5), 1e-9);
  }

  // 5,000 W at the sea on two legs of 120 V x 30 A = 3,600 W each: the kettle and the toaster fit a
  // leg each (3,000 + 1,900 W); with both on leg a 4,900 W are more than 3,600; the kettle and the
  // heater fit the legs but not the 5,000 W
  @Test
  void onTwoLegsAGeneratorIsHeldToItsWattsAndEachLegToTheMainBreaker() {
    String rig =
        "rig: {name: T, kind: class a, length: 34 ft}\nstay: {place: {elevation: 0 ft}}\nelectric:"
            + " {shore: {service: 50 A}, breakers: {name: Main, rating: 30 A}, generator: {rated:"
            + " 5000 W}, loads: [{name: Kettle, on: 120 V, draws: 3000 W, leg: a}, {name: Toaster,"
            + " on: 120 V, draws: 1900 W, leg: %s}, {name: Heater, on: 120 V, draws: 2100 W, leg: b}]}";
    assertEquals("kettle toaster", largest(rig.formatted("b")));
    assertEquals("toaster heater", largest(rig.formatted("a")));
  }

  private static String largest(String yaml) {
    Figures figures = Figures.of(TestRigs.of(yaml));
    return figures.find("together.generator.1").orElseThrow().value().data();
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Generators.steadyWatts(4000, 0.035, -10));
    assertThrows(IllegalArgumentException.class, () -> Generators.runHours(10, 0));
    assertThrows(
        IllegalArgumentException.class, () -> Generators.burnGallonsPerHour(-1, 4000, 0.3, 0.5));
    assertThrows(
        IllegalArgumentException.class, () -> Generators.burnGallonsPerHour(100, 0, 0.3, 0.5));
  }

  @Test
  void burnedSpoonBySpoonTheFuelAboveThePickUpIsGoneWhenTheFigureSays() {
    // second derivation: 40 gal less 0.5 gal an hour, every hundredth of an hour, until 10 are left
    double hours = 0;
    for (double left = 40; left > 10; left -= 0.005) {
      hours += 0.01;
    }
    Figures figures = motorhome(BURNS + "gasoline", TANK + "}}\n");
    assertEquals(hours, figures.find("generator.until-bare").orElseThrow().number(), 0.02);
  }
}
