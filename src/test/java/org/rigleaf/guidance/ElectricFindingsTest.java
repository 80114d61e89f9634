package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Rig;

/** Motors that will not start, inverters beyond their bank, extinguishers past their date. */
class ElectricFindingsTest {
  private static final List<String> THESE =
      List.of(
          "generator-cannot-start",
          "inverter-cannot-start",
          "inverter-beyond-fuse",
          "inverter-beyond-bank",
          "extinguisher-past-date");

  private static List<Finding> found(Rig rig) {
    Figures figures = Figures.of(rig);
    Guide guide = new Guide(rig, figures, Wording.english(), Map.of());
    return Findings.of(rig, figures, Wording.english(), guide).stream()
        .filter(f -> THESE.contains(f.id()))
        .toList();
  }

  /** Ids with what they are about. */
  private static List<String> ids(String sections) {
    String rig = "rig: {name: T, kind: class c, length: 24 ft}\nedition: {date: 2026-06-15}\n";
    return found(TestRigs.of(rig + sections)).stream().map(f -> f.id() + " " + f.about()).toList();
  }

  private static final String COOLER =
      "climate: {air-conditioners: {name: Cooler, draws: 1500 W, starts: 5000 W, soft-starter: %s}}\n";

  // with a soft starter 0.45 x 5,000 W = 2,250 W (common practice, no source)
  @ParameterizedTest
  @CsvSource({"4999 W, no, 1", "5000 W, no, 0", "2249 W, yes, 1", "2250 W, yes, 0"})
  void anAirConditionerThatTakesMoreThanTheSurgeCannotBeTrustedToStart(
      String surge, String soft, int count) {
    String generator = "electric: {generator: {rated: 2000 W, surge: " + surge + "}}\n";
    List<String> wanted = List.of("generator-cannot-start climate.air-conditioners.cooler");
    assertEquals(wanted.subList(0, count), ids(generator + COOLER.formatted(soft)));
  }

  private static final String PUMP =
      "loads: [{name: Compressor, on: 120 V, draws: 700 W, starts: 2100 W}, {name: Fan, on: 12 V,"
          + " draws: 60 W, starts: 9000 W}]";

  @Test
  void aLoadThatTakesMoreThanTheSurgeCannotBeTrustedToStartEither() {
    List<String> wanted = List.of("generator-cannot-start electric.loads.compressor");
    assertEquals(wanted, ids("electric: {generator: {surge: 2000 W}, " + PUMP + "}\n"));
    assertEquals(List.of(), ids("electric: {generator: {surge: 2100 W}, " + PUMP + "}\n"));
  }

  @Test
  void theInverterIsAskedOnlyForTheMotorsThatItFeeds() {
    List<String> wanted = List.of("inverter-cannot-start electric.loads.compressor");
    String surge = "electric: {inverter: {surge: 2000 W, feeds: %s}, " + PUMP + "}\n";
    assertEquals(wanted, ids(surge.formatted("Compressor")));
    assertEquals(List.of(), ids(surge.formatted("\"galley outlets\"")));
    assertEquals(List.of(), ids(surge.formatted("Compressor").replace("2000", "2100")));
  }

  @Test
  void anUnknownSurgeOrStartIsNoFinding() {
    assertEquals(List.of(), ids("electric: {generator: {rated: 2000 W}, " + PUMP + "}\n"));
    assertEquals(
        List.of(),
        ids("electric: {generator: {surge: 9 W}, loads: {name: Saw, on: 120 V, draws: 900 W}}\n"));
  }

  // 2,000 W / (0.90 x 12.0 V) = 185.2 A
  @ParameterizedTest
  @CsvSource({
    "'', '', 0",
    "', fuse: 185 A', '', inverter-beyond-fuse",
    "', fuse: 186 A', '', 0",
    "'', ', discharge-limit: 185 A', inverter-beyond-bank",
    "'', ', discharge-limit: 186 A', 0"
  })
  void anInverterAtFullPowerIsHeldAgainstFuseAndBank(String fuse, String limit, String id) {
    String electric =
        "electric: {batteries: {type: lithium, each: {voltage: 12.8 V}, in-series: 1"
            + limit
            + "}, inverter: {output: 2000 W"
            + fuse
            + "}}\n";
    List<String> wanted = id.equals("0") ? List.of() : List.of(id + " electric.inverter");
    assertEquals(wanted, ids(electric));
  }

  @ParameterizedTest
  @CsvSource({"2026-06-14, 1", "2026-06-15, 0", "2026-05, 1", "2026-06, 0", "2025, 1"})
  void anExtinguisherIsPastItsDateWhenTheDayOfTheEditionIs(String date, int count) {
    String kit = "safety: {extinguishers: {name: Door, replace-by: " + date + "}}\n";
    List<String> wanted = List.of("extinguisher-past-date safety.extinguishers.door");
    assertEquals(wanted.subList(0, count), ids(kit));
  }

  @Test
  void theTextNamesTheThingAndItsNumbers() {
    String sections =
        "rig: {name: T, kind: class c, length: 24 ft}\nelectric: {batteries: {type: lithium, each:"
            + " {voltage: 12 V}, in-series: 1}, inverter: {output: 2000 W, surge: 2000 W, fuse: 150"
            + " A, feeds: Compressor}, "
            + PUMP
            + "}\n";
    String text =
        String.join(" ", found(TestRigs.of(sections)).stream().map(f -> f.text().plain()).toList());
    for (String part :
        List.of("Compressor", "2,100 W", "2,000 W", "Inverter", "185.2 A", "150 A")) {
      assertTrue(text.contains(part), part + " in: " + text);
    }
  }

  @Test
  void cattailsGeneratorCannotBeTrustedWithItsAirConditionerAndSedgeHasNoSuchFinding() {
    // 5,200 W to start, 4,000 W surge; the inverter's 185 A stay below fuse (250 A), bank (200 A)
    assertEquals(
        List.of("generator-cannot-start"),
        found(TestRigs.demo("cattail")).stream().map(Finding::id).toList());
    assertEquals(List.of(), found(TestRigs.demo("sedge")));
  }
}
