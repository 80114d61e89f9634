package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;
import org.rigleaf.source.Unit;

/** What draws how much. */
class LoadsTest {
  private static final String RIG = "rig: {name: T, kind: travel trailer, length: 20 ft}\n";

  private static Figures rig(String sections) {
    return Figures.of(TestRigs.of(RIG + sections));
  }

  private static Figure figure(Figures figures, String id) {
    return figures.find(id).orElseThrow(() -> new AssertionError("no " + id));
  }

  // by hand, watts / volts: Sedge's bank is 2 x 6 V = 12 V, Cattail's 12.8 V;
  // Cattail's converter 55 A x 13.6 V / 0.85 = 880 W (13.6 V and 0.85 are typical values), / 120 V
  // = 7.3333 A
  @ParameterizedTest(name = "{0}: {1} draws {2} A")
  @CsvSource({
    "sedge,converter,6.5", // 780 / 120
    "sedge,microwave-oven,11.25", // 1350 / 120
    "sedge,coffee-maker,7.5", // 900 / 120
    "sedge,television,0.5", // 60 / 120
    "sedge,lights,2.33333", // 28 / 12
    "sedge,radio,1", // 12 / 12
    "sedge,pump,6", // as given
    "sedge,heater-element,12", // 1440 / 120
    "sedge,furnace-blower,5", // as given
    "sedge,roof-air-conditioner,12.08333", // 1450 / 120
    "sedge,refrigerator,2.70833", // 325 / 120
    "cattail,converter,7.33333",
    "cattail,lights,2.5", // 32 / 12.8
    "cattail,hair-dryer,10.41667", // 1250 / 120
    "cattail,cabin-air-conditioner,12.5", // 1500 / 120
    "cattail,refrigerator,2.5" // 300 / 120
  })
  void theLoadsOfTheDemoRigsDrawTheseAmperes(String name, String load, double amps) {
    Figures figures = Figures.of(TestRigs.demo(name));
    assertEquals(amps, figure(figures, "load." + load + ".current").number(), 1e-5);
  }

  @Test
  void aConverterWithoutWattsLeansOnTwoTypicalValues() {
    Figure converter = figure(Figures.of(TestRigs.demo("cattail")), "load.converter.current");
    assertEquals(Set.of("converter.voltage", "converter.efficiency"), converter.assumes());
  }

  @Test
  void aConvertersOwnWattsBeatTheSumFromItsAmperes() {
    Figures figures = rig("electric: {converter: {output: 55 A, draws: 600 W}}\n");
    assertEquals(5, figure(figures, "load.converter.current").number());
    assertEquals(Set.of(), figure(figures, "load.converter.current").assumes());
  }

  // 13.6 V for each 12 V of the bank: 55 A x 27.2 V / 0.85 = 1,760 W, / 120 V = 14.66667 A
  @ParameterizedTest
  @CsvSource({"12 V, 1, 7.33333", "12.8 V, 1, 7.33333", "12 V, 2, 14.66667", "25.6 V, 1, 14.66667"})
  void aConverterChargesEach12VoltsOfTheBankAt13Point6(String volts, int series, double amps) {
    Figures figures =
        rig(
            "electric: {converter: {output: 55 A}, batteries: {each: {voltage: "
                + volts
                + "}, in-series: "
                + series
                + "}}\n");
    assertEquals(amps, figure(figures, "load.converter.current").number(), 1e-5);
  }

  @Test
  void aTwelveVoltLoadWithoutABankIsReckonedAtTwelveVolts() {
    Figures figures = rig("electric: {loads: [{name: Fan, on: 12 V, draws: 36 W}]}\n");
    assertEquals(3, figure(figures, "load.fan.current").number());
  }

  @Test
  void aBankOf24VoltsHalvesTheAmperes() {
    Figures figures =
        rig(
            "electric: {batteries: {each: {voltage: 12 V}, in-series: 2},"
                + " loads: [{name: Fan, on: 12 V, draws: 36 W},"
                + " {name: Kettle, on: 120 V, draws: 1200 W}, {name: Lamp}]}\n");
    assertEquals(1.5, figure(figures, "load.fan.current").number());
    assertEquals(24, figure(figures, "load.fan.voltage").number());
    assertEquals(120, figure(figures, "load.kettle.voltage").number());
    assertTrue(figures.find("load.lamp.voltage").isEmpty()); // nobody said on what it runs
  }

  @Test
  void aCompressorRefrigeratorWithoutWattsTakesTheTypical60() {
    Figures figures = rig("climate: {refrigerator: {kind: compressor}}\n");
    Figure current = figure(figures, "load.refrigerator.current");
    assertEquals(5, current.number()); // 60 W / 12 V
    assertEquals(1, current.assumes().size());
  }

  @Test
  void aRefrigeratorThatNobodySaidRunsOn120VoltsIsNoLoad() {
    Figures figures = rig("climate: {refrigerator: {kind: absorption, runs-on: lp}}\n");
    assertTrue(figures.find("load.refrigerator.current").isEmpty());
    assertEquals(Set.of(), figures.missing("load.refrigerator.current")); // not even wanted
  }

  // an element or a plug says that it is one, by hand: 330 / 120 and 300 / 120
  @Test
  void anAbsorptionRefrigeratorIsA120VoltLoadByItsElementOrByWhatItRunsOn() {
    Figures element =
        rig("climate: {refrigerator: {kind: absorption, runs-on: lp, element: 330 W}}\n");
    assertEquals(2.75, figure(element, "load.refrigerator.current").number(), 1e-12);
    Figures said =
        rig("climate: {refrigerator: {kind: absorption, runs-on: [lp, 120 V], draws: 300 W}}\n");
    assertEquals(2.5, figure(said, "load.refrigerator.current").number(), 1e-12);
    Figures neither =
        rig("climate: {refrigerator: {kind: absorption, runs-on: lp, draws: 300 W}}\n");
    assertTrue(neither.find("load.refrigerator.current").isEmpty());
  }

  @Test
  void aHouseholdRefrigeratorIsA120VoltLoadWithoutSayingSo() {
    Figures figures = rig("climate: {refrigerator: {kind: household, draws: 150 W}}\n");
    assertEquals(1.25, figure(figures, "load.refrigerator.current").number(), 1e-12); // 150 / 120
  }

  // the section of a piece of gear beats a line in the list of loads that bears its name, unless
  // the
  // section says no draw: 600 / 120 = 5 A, 7 A as given, 60 / 12 = 5 A
  @Test
  void aThingListedTwiceCountsOnceByTheDrawOfItsOwnSection() {
    Figures converter =
        rig(
            "electric: {converter: {draws: 600 W},"
                + " loads: [{name: Converter, on: 120 V, draws: 720 W}]}\n");
    assertEquals(5, figure(converter, "load.converter.current").number(), 1e-12);
    String listed = "electric: {loads: [{name: Pump, on: 12 V, draws: 60 W}]}\n";
    assertEquals(
        7, figure(rig("water: {pump: {draws: 7 A}}\n" + listed), "load.pump.current").number());
    assertEquals(
        5,
        figure(rig("water: {pump: {flow: 3 gpm}}\n" + listed), "load.pump.current").number(),
        1e-12);
    Figures unknown =
        rig(
            "electric: {converter: {charging: yes},"
                + " loads: [{name: Converter, on: 120 V, draws: 720 W}]}\n");
    assertEquals(6, figure(unknown, "load.converter.current").number(), 1e-12); // 720 / 120
  }

  @Test
  void theWorkingNamesTheVoltsOfTheSupply() {
    String fan = "loads: [{name: Fan, on: 12 V, draws: 36 W}]";
    assertEquals(
        "{fan} ÷ 12 V", figure(rig("electric: {" + fan + "}\n"), "load.fan.current").formula());
    String bank = "electric: {batteries: {each: {voltage: 12 V}, in-series: 1}, ";
    Figure own = figure(rig(bank + fan + "}\n"), "load.fan.current");
    assertEquals("{fan} ÷ {volts}", own.formula());
    assertEquals(
        List.of(Unit.WATT_UNIT, Unit.VOLT_UNIT),
        own.inputs().stream().map(Input::unit).toList()); // a fact, then another figure
  }

  @Test
  void aLoadWithoutWattsIsAbsentAndSaysSo() {
    Figures figures = rig("water: {heater: {kind: storage, fuel: [lp, electric]}}\n");
    assertTrue(figures.find("load.heater-element.current").isEmpty());
    assertEquals(Set.of("water.heater.element"), figures.missing("load.heater-element.current"));
  }

  @Test
  void nonsenseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Loads.amps(100, 0));
    assertThrows(IllegalArgumentException.class, () -> Loads.converterWatts(50, 13.6, 0));
    assertThrows(IllegalArgumentException.class, () -> Loads.converterWatts(50, 13.6, 1.1));
    assertEquals(680, Loads.converterWatts(50, 13.6, 1), 1e-9); // nothing lost: 50 x 13.6
  }
}
