package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.TestRigs;

/**
 * Which loads run at once: by hand for small rigs, by an enumeration of its own for random ones.
 */
class TogetherTest {
  private static final String RIG = "rig: {name: T, kind: travel trailer, length: 20 ft}\n";

  private static Figures rig(String electric) {
    return Figures.of(TestRigs.of(RIG + "electric: {" + electric + "}\n"));
  }

  /** The figures whose ids are a prefix and a number, in their order. */
  private static List<String> all(Figures figures, String prefix) {
    return figures.all().stream()
        .filter(f -> f.id().matches(prefix.replace(".", "\\.") + "\\.\\d+"))
        .map(f -> f.value().data())
        .toList();
  }

  private static String load(String name, int watts, String more) {
    return "{name: " + name + ", on: 120 V, draws: " + watts + " W" + more + "}";
  }

  // Sedge, amperes by hand. Always on: converter 780/120 = 6.5 and television 0.5, together 7.
  // Choices: air conditioner 1450/120 x 1.25 (continuous) = 15.10, hot 18.88; element 12;
  // microwave 11.25; coffee 7.5; refrigerator 2.71.
  // 30 A leave 23: 12 + 7.5 + 2.71 = 22.21; 11.25 + 7.5 + 2.71 = 21.46; 15.10 + 7.5 = 22.60;
  // 15.10 + 2.71 = 17.81 (and no more beside it); 12 + 11.25 = 23.25 is too much.
  // Hot: 18.88 + 2.71 = 21.59, 18.88 + 7.5 = 26.38 is too much.
  // Watts: 2665, 2575, 2350, 1775. 15 A leave 8: coffee or refrigerator, not both (10.21).
  @ParameterizedTest(name = "Sedge {0} = {1}")
  @CsvSource({
    "together.30.1,coffee-maker heater-element refrigerator",
    "together.30.2,microwave-oven coffee-maker refrigerator",
    "together.30.3,coffee-maker roof-air-conditioner",
    "together.30.4,roof-air-conditioner refrigerator",
    "together.30.hot.1,coffee-maker heater-element refrigerator",
    "together.30.hot.2,microwave-oven coffee-maker refrigerator",
    "together.30.hot.3,roof-air-conditioner refrigerator",
    "together.15.never,microwave-oven heater-element roof-air-conditioner",
    "together.30.apart.1,heater-element roof-air-conditioner",
    "together.30.apart.2,microwave-oven roof-air-conditioner",
    "together.30.apart.3,microwave-oven heater-element",
    "together.15.apart.1,coffee-maker refrigerator"
  })
  void sedgeRunsTheseTogether(String id, String loads) {
    assertEquals(loads, Figures.of(TestRigs.demo("sedge")).find(id).orElseThrow().value().data());
  }

  // 30 A and 15 A of 120 V; 3,600 W less 3.5 % for each 1,000 ft at 900 ft, under the main's 3,600;
  // two legs of 50 A; an inverter by its output
  @ParameterizedTest(name = "{0} on {1} is held to {2} W")
  @CsvSource({
    "sedge,30,3600",
    "sedge,15,1800",
    "cattail,generator,3486.6",
    "cattail,inverter,2000",
    "spikerush,50,12000",
    "spikerush,30,3600"
  })
  void aSupplyIsHeldToTheLeastThatCarries(String rig, String supply, double watts) {
    Figures figures = Figures.of(TestRigs.demo(rig));
    String id = "together." + supply + ".limit";
    assertEquals(watts, figures.find(id).orElseThrow().number(), 1e-9);
  }

  // Cattail on its generator at 900 ft: 3486.6 W / 120 = 29.055 A. Always on: converter 7.333,
  // television 0.583: 7.917, leaving 21.138. Air conditioner 15.625, hot 19.531; microwave 12.5;
  // hair dryer 10.417; coffee 8.333; refrigerator 2.5.
  // 12.5 + 8.333 = 20.833 fits, with 2.5 not; 10.417 + 8.333 = 18.75, with 2.5 = 21.25 not (on
  // 30 A, leaving 22.083, it fits); 15.625 + 2.5 = 18.125; 12.5 + 2.5; 10.417 + 2.5; hot 19.531
  // + 2.5 = 22.031 not, though on 30 A it does.
  @ParameterizedTest(name = "Cattail {0} = {1}")
  @CsvSource({
    "together.30.1,coffee-maker hair-dryer refrigerator",
    "together.30.2,microwave-oven coffee-maker",
    "together.30.hot.3,cabin-air-conditioner refrigerator",
    "together.generator.1,microwave-oven coffee-maker",
    "together.generator.2,coffee-maker hair-dryer",
    "together.generator.3,cabin-air-conditioner refrigerator",
    "together.generator.4,microwave-oven refrigerator",
    "together.generator.5,hair-dryer refrigerator",
    "together.generator.hot.5,cabin-air-conditioner",
    "together.15.never,microwave-oven coffee-maker hair-dryer cabin-air-conditioner"
  })
  void cattailRunsTheseTogether(String id, String loads) {
    assertEquals(loads, Figures.of(TestRigs.demo("cattail")).find(id).orElseThrow().value().data());
  }

  // NEC 210.20(A): 24 A continuous on 30 A is exactly at the limit (2880 x 1.25 = 3600)
  @Test
  void twentyFourContinuousAmperesJustFitOnThirty() {
    String shore = "shore: {service: 30 A}, loads: [";
    assertEquals(
        List.of("oven"),
        all(rig(shore + load("Oven", 2880, ", continuous: yes") + "]"), "together.30"));
    Figures more = rig(shore + load("Oven", 2881, ", continuous: yes") + "]");
    assertEquals("oven", more.find("together.30.never").orElseThrow().value().data());
  }

  @Test
  void anAdapterRatedTenAmperesLimitsAFifteenAmpPost() {
    Figures figures =
        rig(
            "shore: {service: 30 A}, adapters: [{from-post: 15 A, to-rig: 30 A, rated: 10 A}],"
                + " loads: ["
                + load("Kettle", 1300, "")
                + "]");
    assertEquals("kettle", figures.find("together.15.never").orElseThrow().value().data());
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "shore: {service: 30 A, cord: {length: 30 ft, gauge: 14 AWG, rated: 15 A}}",
        "shore: {service: 30 A, extension: {length: 30 ft, gauge: 14 AWG, rated: 15 A}}",
        "shore: {service: 30 A}, breakers: [{name: Main, rating: 15 A}]",
        "shore: {service: 30 A}, breakers: [{name: Galley, rating: 15 A, feeds: [Kettle, Iron]}]"
      })
  void aCordOrBreakerOfFifteenAmperesKeepsKettleAndIronApart(String electric) {
    String loads = ", loads: [" + load("Kettle", 1300, "") + ", " + load("Iron", 1100, "") + "]";
    Figures figures = rig(electric + loads);
    assertEquals(List.of("kettle", "iron"), all(figures, "together.30"));
    assertEquals(List.of("kettle iron"), all(figures, "together.30.apart"));
  }

  @Test
  void theConverterAndLoadsUnder300WattsAreAlwaysCountedAndNeverListed() {
    // 600 + 299 always on; 3600 - 899 = 2701 left: the 2701 W load fits, one of 2702 W would not
    String base = "shore: {service: 30 A}, converter: {draws: 600 W}, loads: [";
    String small = load("Fan", 299, "") + ", ";
    assertEquals(
        List.of("oven"), all(rig(base + small + load("Oven", 2701, "") + "]"), "together.30"));
    Figures over = rig(base + small + load("Oven", 2702, "") + "]");
    assertEquals(List.of(), all(over, "together.30"));
    assertEquals("oven", over.find("together.30.never").orElseThrow().value().data());
  }

  @Test
  void twoLoadsOf4000WattsNeedALegEach() {
    String shore = "shore: {service: 50 A}, loads: [";
    assertEquals(
        List.of("one two"),
        all(
            rig(shore + load("One", 4000, "") + ", " + load("Two", 4000, "") + "]"),
            "together.50"));
    String a = ", leg: a";
    assertEquals(
        List.of("one", "two"),
        all(rig(shore + load("One", 4000, a) + ", " + load("Two", 4000, a) + "]"), "together.50"));
  }

  @Test
  void threeLoadsOf4000WattsDoNotFitTwoLegsThoughTheirSumWould() {
    // 12,000 W in all, but two on one leg make 8,000 of its 6,000
    String three =
        load("One", 4000, "") + ", " + load("Two", 4000, "") + ", " + load("Tri", 4000, "");
    Figures figures = rig("shore: {service: 50 A}, loads: [" + three + "]");
    assertEquals(List.of("one tri", "one two", "two tri"), all(figures, "together.50"));
  }

  @Test
  void theInverterCarriesOnlyWhatItFeeds() {
    Figures figures =
        rig(
            "inverter: {output: 1500 W, feeds: [Microwave]}, loads: ["
                + load("Microwave", 1200, "")
                + ", "
                + load("Kettle", 1200, "")
                + "]");
    assertEquals(List.of("microwave"), all(figures, "together.inverter"));
  }

  @Test
  void anInverterThatFeedsABreakerFeedsWhatTheBreakerFeeds() {
    Figures figures =
        rig(
            "inverter: {output: 1500 W, feeds: [Galley]},"
                + " breakers: [{name: Galley, rating: 15 A, feeds: [Kettle]}], loads: ["
                + load("Microwave", 1200, "")
                + ", "
                + load("Kettle", 1100, "")
                + "]");
    assertEquals(List.of("kettle"), all(figures, "together.inverter"));
  }

  @Test
  void aLoadWithoutWattsKeepsTheTableBackAndIsNamed() {
    Figures figures =
        rig(
            "shore: {service: 30 A}, loads: [{name: Iron, on: 120 V}, "
                + load("Kettle", 1300, "")
                + "]");
    assertEquals(List.of(), all(figures, "together.30"));
    assertEquals(Set.of("electric.loads.iron.draws"), figures.missing("together.30.1"));
  }

  @Test
  void ofMoreThanTwelveSetsTwelveStandAndTheRestAreCounted() {
    // twelve loads of 1100 W, three at once on 3600 W: 12 x 11 x 10 / 6 = 220 sets
    String loads =
        String.join(
            ", ", IntStream.range(0, 12).mapToObj(i -> load("L" + (10 + i), 1100, "")).toList());
    Figures figures = rig("shore: {service: 30 A}, loads: [" + loads + "]");
    assertEquals(12, all(figures, "together.30").size());
    assertEquals(208, figures.find("together.30.rest").orElseThrow().number());
    assertEquals("l10 l11 l12", all(figures, "together.30").get(0));
  }

  // the smallest of thirteen is left out of the choices, wherever it stands and whatever its name
  @Test
  void ofThirteenLoadsTheTwelveLargestAreTried() {
    List<String> loads = new ArrayList<>(List.of(load("A", 400, "")));
    IntStream.range(0, 12).forEach(i -> loads.add(load("L" + (10 + i), 1400, "")));
    Figures figures = rig("shore: {service: 20 A}, loads: [" + String.join(", ", loads) + "]");
    // 1400 + 400 W would fit 2400 W; two of 1400 W do not, so each stands alone
    assertEquals(
        IntStream.range(0, 12).mapToObj(i -> "l" + (10 + i)).toList(), all(figures, "together.20"));
  }

  // workings written by hand from the rules: the least carrier on the way is the limit, two legs of
  // a 50 A service count both, a generator is held by the main breaker where there is one
  @ParameterizedTest(name = "{1} of {0} reads {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "shore: {service: 30 A}, loads: [{name: Oven, on: 120 V, draws: 1500 W}]"
            + "|together.30.1|{oven} ≤ 120 V × {limit}",
        "shore: {service: 50 A}, loads: [{name: Oven, on: 120 V, draws: 1500 W}]"
            + "|together.50.1|{oven} ≤ 2 × 120 V × {limit}",
        "shore: {service: 30 A}, loads: [{name: Oven, on: 120 V, draws: 12 A}]"
            + "|together.30.1|{oven} × 120 V ≤ 120 V × {limit}",
        "shore: {service: 30 A}, loads: [{name: Oven, on: 120 V, draws: 1500 W, continuous: yes}]"
            + "|together.30.1|1.25 × {oven} ≤ 120 V × {limit}",
        "inverter: {output: 2000 W, feeds: [Oven]}, loads: [{name: Oven, on: 120 V, draws: 1500 W}]"
            + "|together.inverter.1|{oven} ≤ {limit}",
        "generator: {rated: 4000 W}, loads: [{name: Oven, on: 120 V, draws: 1500 W}]"
            + "|together.generator.1|{oven} ≤ {limit}",
        "generator: {rated: 4000 W}, breakers: [{name: Main, rating: 30 A}],"
            + " loads: [{name: Oven, on: 120 V, draws: 1500 W}]"
            + "|together.generator.1|{oven} ≤ min({limit}, 120 V × {main})",
        "generator: {rated: 4000 W}, shore: {service: 50 A}, breakers: [{name: Main, rating: 50 A}],"
            + " loads: [{name: Oven, on: 120 V, draws: 1500 W}]"
            + "|together.generator.1|{oven} ≤ min({limit}, 2 × 120 V × {main})",
        "inverter: {output: 2000 W, feeds: [Oven]}, breakers: [{name: Main, rating: 30 A}],"
            + " loads: [{name: Oven, on: 120 V, draws: 1500 W}]"
            + "|together.inverter.1|{oven} ≤ {limit}",
        "shore: {service: 30 A}, breakers: [{name: Galley, rating: 15 A, feeds: [Oven, Iron]}],"
            + " converter: {draws: 600 W}, loads: [{name: Oven, on: 120 V, draws: 1500 W},"
            + " {name: Iron, on: 120 V, draws: 1100 W}]"
            + "|together.30.apart.1|{oven} + {iron} > 120 V × {breaker-galley}"
      })
  void theWorkingNamesTheLimitThatBinds(String electric, String id, String working) {
    Figures figures =
        Figures.of(
            TestRigs.of(RIG + "stay: {place: {elevation: 0 ft}}\nelectric: {" + electric + "}\n"));
    assertEquals(working, figures.find(id).orElseThrow().formula());
  }

  @Test
  void onAHotAfternoonOnlyTheAirConditionerCountsMore() {
    Figures figures =
        Figures.of(
            TestRigs.of(
                RIG
                    + "electric: {shore: {service: 30 A}, loads: ["
                    + load("Oven", 1200, "")
                    + "]}\nclimate: {air-conditioners: {draws: 1400 W, continuous: yes}}\n"));
    // 1200 + 1.25 x 1400 = 2950 W; hot, 25 % more: 1200 + 1.25 x 1.25 x 1400 = 3387.5 W; both fit
    Figure hot = figures.find("together.30.hot.1").orElseThrow();
    assertEquals(
        "{oven} + 1.25 × (1 + {hot}) × {air-conditioner} ≤ 120 V × {limit}", hot.formula());
    assertEquals("oven air-conditioner", hot.value().data());
  }

  @Test
  void onlyRatedBreakersThatFeedA120VoltLoadAreInputsOfATable() {
    Figures figures =
        rig(
            "shore: {service: 30 A}, breakers: [{name: Main, rating: 30 A},"
                + " {name: Galley, rating: 15 A, feeds: [Kettle]}, {name: Spare, rating: 20 A},"
                + " {name: Worn, feeds: [Kettle]}], loads: ["
                + load("Kettle", 1300, "")
                + "]");
    List<String> inputs =
        figures.find("together.30.1").orElseThrow().inputs().stream().map(Input::name).toList();
    assertEquals(List.of("kettle", "limit", "breaker-galley"), inputs);
  }

  @Test
  void aSetOnTheGeneratorLeansOnWhatTheGeneratorsWattsLeanOn() {
    Figures figures =
        Figures.of(
            TestRigs.of(
                RIG
                    + "stay: {place: {elevation: 900 ft}}\nelectric: {generator: {rated: 4000 W},"
                    + " loads: ["
                    + load("Oven", 1500, "")
                    + "]}\n"));
    assertEquals(
        Set.of("generator.derate"), figures.find("together.generator.1").orElseThrow().assumes());
  }

  // 12 A at 120 V are 1440 W and 15 A fill a 15 A post; 15.1 A do not fit it
  @Test
  void aLoadInAmperesCountsByItsOwnSupply() {
    String post = "shore: {service: 15 A}, loads: [{name: Oven, on: 120 V, draws: ";
    assertEquals(List.of("oven"), all(rig(post + "15 A}]"), "together.15"));
    assertEquals(
        "oven", rig(post + "15.1 A}]").find("together.15.never").orElseThrow().value().data());
  }

  @Test
  void aLoadOfWhichNobodySaysWhatItRunsOnKeepsTheTableBackAndIsNamed() {
    Figures figures = rig("shore: {service: 30 A}, loads: [{name: Iron, draws: 1100 W}]");
    assertEquals(Set.of("electric.loads.iron.on"), figures.missing("together.30.1"));
    assertEquals(Set.of("electric.loads.iron.on"), figures.missing("load.iron.current"));
  }

  @Test
  void setsOfSmallLoadsAreNotPrinted() {
    Figures figures = rig("shore: {service: 30 A}, loads: [" + load("Iron", 1000, "") + "]");
    assertEquals(List.of(), all(figures, "together.30"));
  }

  @Test
  void aLoadOfAbsurdWattsNeverRuns() {
    String absurd = "{name: One, on: 120 V, draws: 1e9 kW}".replace("1e9", "1" + "0".repeat(300));
    Figures figures =
        rig(
            "shore: {service: 50 A}, loads: ["
                + absurd
                + ", "
                + absurd.replace("One", "Two")
                + "]");
    assertEquals("one two", figures.find("together.50.never").orElseThrow().value().data());
  }

  // 12 choices are 4,096 sets, each dealt to two legs beside 15 small loads: seconds, not minutes
  @Test
  void theLargestTableTakesLessThanTenSeconds() {
    String small =
        String.join(
            ", ", IntStream.range(0, 15).mapToObj(i -> load("S" + i, 101 + 13 * i, "")).toList());
    String big =
        String.join(
            ", ", IntStream.range(0, 12).mapToObj(i -> load("B" + i, 601 + 97 * i, "")).toList());
    org.junit.jupiter.api.Assertions.assertTimeout(
        java.time.Duration.ofSeconds(10),
        () -> rig("shore: {service: 50 A}, loads: [" + small + ", " + big + "]"));
  }

  /** Every figure of random rigs, against {@link NaiveTogether}, which shares no code with it. */
  @ParameterizedTest(name = "random rigs, seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void randomRigsAgreeWithANaiveEnumeration(long seed) {
    java.util.Random random = new java.util.Random(seed);
    for (int i = 0; i < 12; i++) {
      NaiveTogether naive = NaiveTogether.random(random);
      Figures figures = Figures.of(TestRigs.of(naive.yaml()));
      for (int post : new int[] {15, naive.service()}) {
        String a = "together." + post;
        assertEquals(naive.sets(post, false), all(figures, a), naive.yaml());
        List<String> hot = naive.cools() ? naive.sets(post, true) : List.of();
        assertEquals(hot, all(figures, a + ".hot"), naive.yaml());
        assertEquals(naive.apart(post), all(figures, a + ".apart"), naive.yaml());
        assertEquals(
            naive.never(post),
            figures.find(a + ".never").map(f -> f.value().data()).orElse(""),
            naive.yaml());
      }
    }
  }

  @Test
  void everySetOfASmallerPlugFitsABiggerOne() {
    java.util.Random random = new java.util.Random(9);
    for (int i = 0; i < 20; i++) {
      NaiveTogether naive = NaiveTogether.random(random);
      Figures figures = Figures.of(TestRigs.of(naive.yaml()));
      List<Set<String>> bigger = new ArrayList<>();
      all(figures, "together." + naive.service()).forEach(s -> bigger.add(Set.of(s.split(" "))));
      boolean cut = figures.find("together." + naive.service() + ".rest").isPresent();
      for (String set : all(figures, "together.15")) {
        Set<String> small = Set.of(set.split(" "));
        assertTrue(cut || bigger.stream().anyMatch(b -> b.containsAll(small)), naive.yaml());
      }
    }
  }

  // Eleven loads of 1,100 W and an air conditioner of 1,200 W on 3,600 W. Three loads leave no room
  // for a fourth: 11 x 10 x 9 / 6 = 165 sets; with the air conditioner go two, 55 sets. Hot it
  // draws
  // 1,500 W, and only one goes with it: 11 sets.
  @Test
  void onAHotAfternoonFewerSetsAreLeftToCount() {
    String loads =
        String.join(
            ", ", IntStream.range(0, 11).mapToObj(i -> load("L" + (10 + i), 1100, "")).toList());
    Figures figures =
        Figures.of(
            TestRigs.of(
                RIG
                    + "electric: {shore: {service: 30 A}, loads: ["
                    + loads
                    + "]}\nclimate: {air-conditioners: {draws: 1200 W}}\n"));
    Figure rest = figures.find("together.30.rest").orElseThrow();
    Figure hot = figures.find("together.30.hot.rest").orElseThrow();
    assertEquals(165 + 55 - 12, rest.number());
    assertEquals(165 + 11 - 12, hot.number());
    assertEquals("220 − 12", rest.formula());
    assertEquals("176 − 12", hot.formula());
  }

  @Test
  void whatIsAlwaysOnIsListedByItself() {
    String base = "shore: {service: 15 A}, converter: {draws: 600 W}, loads: [";
    Figures figures = rig(base + load("Fan", 299, "") + ", " + load("Oven", 300, "") + "]");
    Figure always = figures.find("together.15.always").orElseThrow();
    assertEquals("converter fan", always.value().data());
    assertTrue(
        rig("shore: {service: 15 A}, loads: [" + load("Oven", 300, "") + "]")
            .find("together.15.always")
            .isEmpty());
  }
}
