package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;

/** What works when: read off the profiles by hand, and off small rigs made for one fact each. */
class WorksOnTest {
  private static Figures rig(String kind, String sections) {
    return Figures.of(
        TestRigs.of("rig: {name: T, kind: " + kind + ", length: 20 ft}\n" + sections));
  }

  private static Figures trailer(String sections) {
    return rig("travel trailer", sections);
  }

  private static String word(Figures figures, String gear, String state) {
    String id = "works-on." + gear + "." + state;
    return figures.find(id).map(f -> f.value().data()).orElse("absent");
  }

  // Sedge: propane closed on the road, battery switch on; 15 A never carry microwave, element or
  // air conditioner (TogetherTest); the refrigerator and the heater change to 120 V without propane
  @ParameterizedTest(
      name = "Sedge''s {0}: battery {1}, 30 A {2}, 15 A {3}, no propane {4}, road {5}")
  @CsvSource({
    "furnace,yes,yes,yes,no,no",
    "heater,yes,yes,yes,yes,no",
    "refrigerator,yes,yes,yes,yes,no",
    "roof-air-conditioner,no,yes,no,yes,no",
    "range,yes,yes,yes,no,no",
    "pump,yes,yes,yes,yes,yes",
    "lights,yes,yes,yes,yes,yes",
    "microwave-oven,no,yes,no,yes,no",
    "coffee-maker,no,yes,yes,yes,no",
    "television,no,yes,yes,yes,no",
    "bath-outlet,no,yes,yes,yes,no"
  })
  void onSedgeThisWorks(
      String gear, String battery, String on30, String on15, String noPropane, String road) {
    Figures figures = Figures.of(TestRigs.demo("sedge"));
    assertEquals(battery, word(figures, gear, "battery"));
    assertEquals(on30, word(figures, gear, "30"));
    assertEquals(on15, word(figures, gear, "15"));
    assertEquals(noPropane, word(figures, gear, "propane-off"));
    assertEquals(road, word(figures, gear, "towing"));
  }

  // Cattail: the inverter feeds the television and the galley outlets; its heater burns propane
  // only
  @ParameterizedTest(name = "Cattail''s {0}: generator {1}, inverter {2}, no propane {3}")
  @CsvSource({
    "furnace,yes,yes,no",
    "heater,yes,yes,no",
    "refrigerator,yes,yes,yes",
    "cabin-air-conditioner,yes,no,yes",
    "television,yes,yes,yes",
    "galley-outlet,yes,yes,yes",
    "microwave-oven,yes,no,yes"
  })
  void onCattailThisWorks(String gear, String generator, String inverter, String noPropane) {
    Figures figures = Figures.of(TestRigs.demo("cattail"));
    assertEquals(generator, word(figures, gear, "generator"));
    assertEquals(inverter, word(figures, gear, "inverter"));
    assertEquals(noPropane, word(figures, gear, "propane-off"));
  }

  @Test
  void aFurnaceNeedsTwelveVoltsAsWellAsPropane() {
    String furnace =
        "propane: {cylinders: {size: 20 lb}}\nclimate: {furnace: {input: 20000 Btu/h}}\n";
    assertEquals(
        "no", word(trailer(furnace + "electric: {shore: {service: 30 A}}\n"), "furnace", "30"));
    assertEquals(
        "yes",
        word(
            trailer(furnace + "electric: {shore: {service: 30 A}, converter: {draws: 600 W}}\n"),
            "furnace",
            "30"));
  }

  // A gasoline heater needs 12 V alone; the inverter feeds plate, water heater and laptop, and the
  // battery switch stays on for the road. On 15 A the converter (800 W) and the laptop (65 W) are
  // always on and leave 935 W of 1,800: neither 1,400 nor 1,500 W fit
  @ParameterizedTest(name = "Bogbean''s {0}: battery {1}, 30 A {2}, 15 A {3}, inverter {4}")
  @CsvSource({
    "furnace,yes,yes,yes,yes,yes",
    "heater,no,yes,no,yes,yes",
    "refrigerator,yes,yes,yes,yes,yes",
    "induction-plate,no,yes,no,yes,yes",
    "laptop,no,yes,yes,yes,yes"
  })
  void onBogbeanThisWorks(
      String gear, String battery, String on30, String on15, String inverter, String road) {
    Figures figures = Figures.of(TestRigs.demo("bogbean"));
    assertEquals(battery, word(figures, gear, "battery"));
    assertEquals(on30, word(figures, gear, "30"));
    assertEquals(on15, word(figures, gear, "15"));
    assertEquals(inverter, word(figures, gear, "inverter"));
    assertEquals(road, word(figures, gear, "towing"));
  }

  // Spikerush: boiler on diesel, element or engine; range on propane, which is shut on the road;
  // refrigerator on the inverter, washer and coffee maker not
  @ParameterizedTest(name = "Spikerush''s {0}: battery {1}, no propane {2}, road {3}")
  @CsvSource({
    "furnace,yes,yes,yes",
    "heater,yes,yes,yes",
    "range,yes,no,no",
    "refrigerator,no,yes,yes",
    "washer,no,yes,no",
    "coffee-maker,no,yes,no"
  })
  void onSpikerushThisWorks(String gear, String battery, String noPropane, String road) {
    Figures figures = Figures.of(TestRigs.demo("spikerush"));
    assertEquals(battery, word(figures, gear, "battery"));
    assertEquals(noPropane, word(figures, gear, "propane-off"));
    assertEquals(road, word(figures, gear, "towing"));
  }

  @Test
  void aDieselAirHeaterNeedsTwelveVoltsAlone() {
    String heater = "climate: {furnace: {kind: air heater, fuel: diesel}}\n";
    String bank = "electric: {batteries: {type: agm}}\n";
    assertEquals("yes", word(rig("class b", heater + bank), "furnace", "towing"));
    assertEquals("no", word(rig("class b", heater), "furnace", "towing"));
  }

  @Test
  void aFurnaceThatSharesItsBoilerWithTheTapsAlsoWarmsByItsElement() {
    String rest =
        "propane: {cylinders: {size: 20 lb}}\n"
            + "electric: {shore: {service: 30 A}, batteries: {type: agm}}\n"
            + "water: {heater: {kind: combination, fuel: [lp, electric], element: 850 W}}\n"
            + "climate: {furnace: {fuel: lp, kind: ";
    assertEquals("yes", word(trailer(rest + "combination}}\n"), "furnace", "propane-off"));
    assertEquals("no", word(trailer(rest + "ducted}}\n"), "furnace", "propane-off"));
    assertEquals("no", word(trailer(rest + "hydronic}}\n"), "furnace", "propane-off"));
  }

  @Test
  void aHydronicFurnaceWarmsByTheEngineOnTheRoad() {
    String boiler =
        "propane: {on-the-road: off}\n"
            + "climate: {furnace: {kind: hydronic, fuel: lp}}\n"
            + "water: {heater: {kind: hydronic, fuel: [lp, engine]}}\n";
    String bank = "electric: {batteries: {type: agm}}\n";
    assertEquals("yes", word(rig("class a", boiler + bank), "furnace", "towing"));
    assertEquals("yes", word(rig("class a", boiler + bank), "heater", "towing"));
    assertEquals("no", word(rig("class a", boiler), "heater", "towing"), "no 12 V for its pump");
  }

  @Test
  void anElementInABoilerNeedsTwelveVoltsTooAndOneInATankDoesNot() {
    String shore = "electric: {shore: {service: 30 A}}\n";
    String heater = "water: {heater: {fuel: [electric], element: 1400 W, kind: ";
    assertEquals("yes", word(trailer(shore + heater + "storage}}\n"), "heater", "30"));
    assertEquals("no", word(trailer(shore + heater + "combination}}\n"), "heater", "30"));
    assertEquals("no", word(trailer(shore + heater + "hydronic}}\n"), "heater", "30"));
  }

  @Test
  void onTheRoadTheInverterRunsWhatItFeedsWhileTheBatterySwitchIsOn() {
    String start =
        "climate: {refrigerator: {kind: household, draws: 150 W}}\n"
            + "electric: {batteries: {type: lithium}, ";
    String inverter = "inverter: {output: 1000 W, feeds: [refrigerator]}, ";
    String on = "disconnect: {on-the-road: on}}\n";
    String off = "disconnect: {on-the-road: off}}\n";
    assertEquals("yes", word(rig("class a", start + inverter + on), "refrigerator", "towing"));
    assertEquals("no", word(rig("class a", start + inverter + off), "refrigerator", "towing"));
    assertEquals("no", word(rig("class a", start + on), "refrigerator", "towing"));
  }

  @Test
  void anAbsorptionRefrigeratorOn12VoltsOnlyKeepsWhatIsCold() {
    Figures figures =
        trailer(
            "electric: {batteries: {type: agm}}\n"
                + "climate: {refrigerator: {kind: absorption, runs-on: [12 V]}}\n");
    assertEquals("part", word(figures, "refrigerator", "battery"));
  }

  @Test
  void anAbsorptionRefrigeratorOn120VoltsNeedsItsBoardsTwelve() {
    String fridge =
        "climate: {refrigerator: {kind: absorption, runs-on: [120 V], element: 320 W}}\n";
    assertEquals(
        "no", word(trailer(fridge + "electric: {shore: {service: 30 A}}\n"), "refrigerator", "30"));
    assertEquals(
        "yes",
        word(
            trailer(fridge + "electric: {shore: {service: 30 A}, batteries: {type: agm}}\n"),
            "refrigerator",
            "30"));
  }

  @Test
  void aHouseholdRefrigeratorLivesOnTheInverterThatFeedsIt() {
    String fridge = "climate: {refrigerator: {kind: household, draws: 150 W}}\n";
    String inverter = "electric: {batteries: {type: lithium}, inverter: {output: 1000 W, feeds: [";
    Figures fed = trailer(fridge + inverter + "refrigerator]}}\n");
    assertEquals("yes", word(fed, "refrigerator", "inverter"));
    assertEquals("no", word(fed, "refrigerator", "battery"));
    Figures other = trailer(fridge + inverter + "\"television\"]}}\n");
    assertEquals("no", word(other, "refrigerator", "inverter"));
  }

  @Test
  void aCompressorRefrigeratorNeedsTheBankAlone() {
    Figures figures =
        trailer(
            "electric: {batteries: {type: lithium}}\nclimate: {refrigerator: {kind: compressor}}\n");
    assertEquals("yes", word(figures, "refrigerator", "battery"));
    assertEquals("yes", word(figures, "refrigerator", "towing"));
  }

  @Test
  void aCompressorRefrigeratorLivesOnAPlugAloneOnlyIfItRunsOn120VoltsToo() {
    String shore = "electric: {shore: {service: 30 A}}\nclimate: {refrigerator: {kind: compressor";
    assertEquals(
        "yes", word(trailer(shore + ", runs-on: [12 V, 120 V]}}\n"), "refrigerator", "30"));
    assertEquals("no", word(trailer(shore + ", runs-on: [12 V]}}\n"), "refrigerator", "30"));
  }

  @Test
  void anAbsorptionRefrigeratorOfUnknownSuppliesSaysNothing() {
    String fridge = "electric: {batteries: {type: agm}}\nclimate: {refrigerator: {kind: absorption";
    Figures unknown = trailer(fridge + "}}\n");
    assertEquals("absent", word(unknown, "refrigerator", "battery"));
    assertEquals(
        Set.of("climate.refrigerator.runs-on"), unknown.missing("works-on.refrigerator.battery"));
    assertEquals("yes", word(trailer(fridge + ", runs-on: lp}}\n"), "refrigerator", "battery"));
  }

  @Test
  void aListedLoadOfUnknownSupplySaysNothing() {
    Figures figures =
        trailer("electric: {batteries: {type: agm}, loads: [{name: Fan, draws: 9 W}]}\n");
    assertEquals("absent", word(figures, "fan", "battery"));
    assertEquals(Set.of("electric.loads.fan.on"), figures.missing("works-on.fan.battery"));
  }

  @Test
  void theWorkingSaysEachWayToRunAThing() {
    Figures figures =
        trailer("propane: none\nwater: {heater: {kind: storage, fuel: [lp, electric]}}\n");
    assertEquals(
        "LP and 12 V, or 120 V", figures.find("works-on.heater.towing").orElseThrow().formula());
  }

  // 1800 W fit 20 A (2400 W); on a hot afternoon 1800 x 1.25 x 1.25 = 2812 W do not
  @Test
  void anAirConditionerThatFailsOnlyOnHotAfternoonsWorksInPart() {
    Figures figures =
        trailer(
            "electric: {shore: {service: 20 A}}\n"
                + "climate: {air-conditioners: {draws: 1800 W, continuous: yes}}\n");
    assertEquals("part", word(figures, "air-conditioner", "20"));
  }

  @Test
  void withTheBatterySwitchOffOnTheRoadOnlyWhatItLeavesWorks() {
    Figures figures =
        trailer(
            "electric: {batteries: {type: agm}, disconnect: {on-the-road: off, leaves: [Radio]},"
                + " loads: [{name: Radio, on: 12 V, draws: 12 W}, {name: Lights, on: 12 V, draws: 9 W}]}\n");
    assertEquals("yes", word(figures, "radio", "towing"));
    assertEquals("no", word(figures, "lights", "towing"));
    assertEquals("yes", word(figures, "lights", "battery"));
  }

  @Test
  void onTheRoadNothingIsGuessedOfPropaneAndTheBatterySwitch() {
    Figures figures = Figures.of(TestRigs.smallest());
    assertEquals("absent", word(figures, "furnace", "towing"));
    assertEquals(
        Set.of("propane.on-the-road", "electric.disconnect.on-the-road"),
        figures.missing("works-on.furnace.towing"));
  }

  @Test
  void aHeaterOfUnknownFuelSaysNothing() {
    Figures figures =
        trailer("electric: {batteries: {type: agm}}\nwater: {heater: {kind: storage}}\n");
    assertEquals("absent", word(figures, "heater", "battery"));
    assertEquals(Set.of("water.heater.fuel"), figures.missing("works-on.heater.battery"));
  }

  @Test
  void aHeaterWarmedByTheEngineWorksOnTheRoadOfAMotorhome() {
    String heater =
        "electric: {batteries: {type: agm}}\nwater: {heater: {kind: storage, fuel: [engine]}}\n";
    assertEquals("yes", word(rig("class b", heater), "heater", "towing"));
    assertEquals("no", word(rig("class b", heater), "heater", "battery"));
    assertEquals("no", word(trailer(heater), "heater", "towing"));
  }

  @Test
  void aFurnaceWorksOnTheRoadIfPropaneIsLeftOn() {
    String furnace =
        "electric: {batteries: {type: agm}}\nclimate: {furnace: {input: 20000 Btu/h}}\n"
            + "propane: {cylinders: {size: 20 lb}, on-the-road: ";
    assertEquals("yes", word(trailer(furnace + "on}\n"), "furnace", "towing"));
    assertEquals("no", word(trailer(furnace + "off}\n"), "furnace", "towing"));
  }

  @Test
  void withPropaneOffTheBestSourceIsAPlugNeverTheInverter() {
    Figures figures =
        trailer(
            "propane: {cylinders: {size: 20 lb}}\nelectric: {batteries: {type: lithium},"
                + " inverter: {output: 1000 W, feeds: [Television]},"
                + " loads: [{name: Television, on: 120 V, draws: 60 W}]}\n");
    assertEquals("yes", word(figures, "television", "inverter"));
    assertEquals("no", word(figures, "television", "propane-off"));
  }

  @Test
  void aConverterMakesNo12VoltsFromAnInverterThatLivesOffTheBank() {
    Figures figures =
        trailer(
            "electric: {converter: {draws: 600 W}, inverter: {output: 1000 W, feeds: [\"tv\"]},"
                + " loads: [{name: Fan, on: 12 V, draws: 9 W}]}\n");
    assertEquals("no", word(figures, "fan", "inverter"));
  }

  @Test
  void aRigWithoutPropaneHasNoColumnForItsAbsence() {
    Figures figures =
        trailer("propane: none\nelectric: {loads: [{name: Fan, on: 12 V, draws: 9 W}]}\n");
    assertTrue(figures.all().stream().noneMatch(f -> f.id().endsWith(".propane-off")));
  }

  /** Plugging in takes nothing away: what the bank alone runs, a plug runs too. */
  @Test
  void whatWorksOnTheBatteryWorksOnEveryPlug() {
    for (String name : TestRigs.fleet().toList()) {
      Figures figures = Figures.of(TestRigs.demo(name));
      List<String> plugs =
          figures.all().stream()
              .map(Figure::id)
              .filter(id -> id.matches("shore\\.\\d+\\.power"))
              .map(id -> id.split("\\.")[1])
              .toList();
      Map<String, String> words =
          figures.all().stream()
              .filter(f -> f.id().startsWith("works-on."))
              .collect(
                  Collectors.toMap(Figure::id, f -> f.value().data(), (a, b) -> a, TreeMap::new));
      words.forEach(
          (id, word) -> {
            if (id.endsWith(".battery") && word.equals("yes")) {
              plugs.forEach(
                  plug -> assertEquals("yes", words.get(id.replace(".battery", "." + plug)), id));
            }
          });
    }
  }
}
