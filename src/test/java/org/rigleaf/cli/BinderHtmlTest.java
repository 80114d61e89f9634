package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rigleaf.TestData;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;

/** What the HTML of a binder promises, read as any other program would read it. */
class BinderHtmlTest {
  @TempDir private Path folder;

  /** Values worked by hand from the profiles; the working stands behind each. */
  @ParameterizedTest
  @CsvSource({
    "sedge, shore.30.power, 3600, W", // 1 leg x 120 V x 30 A
    "sedge, shore.15.steady, 1440, W", // 0.80 x 120 V x 15 A
    "sedge, bank.voltage, 12, V", // two 6 V in series
    "sedge, bank.energy, 2580, Wh", // 12 V x 215 Ah
    "sedge, rest.50, 12.24, V", // the table's own row for 12 V
    "sedge, tank.fresh.weight, 348.6, lb", // 42 gal x 8.3
    "sedge, tank.black.weight, 249, lb", // 30 gal x 8.3
    "sedge, tank.gray.main.weight, 315.4, lb", // 38 gal x 8.3
    "sedge, lp.heat, 861920, Btu", // 2 x 20 lb x 21,548
    "sedge, lp.cylinder-1.full-weight, 37.4, lb", // 17.4 + 20
    "sedge, lp.cylinder-2.requalify, 2031-03-31, date", // made 2019-03, 12 years
    "sedge, clearance.height, 11.25, ft", // 10 ft 9 in + 6 in
    "sedge, tire.1.replace, 2028, y", // made 2022, 6 years
    "sedge, load.roof-air-conditioner.current, 12.0833, A", // 1450 W / 120 V
    "sedge, together.15.never, microwave-oven heater-element roof-air-conditioner, loads", // 780 W
    // converter + 60 W leave 960 W of 1,800
    "sedge, heater.first-hot.lp, 28.322, min", // 6 x 8.33 x 85 F x 60 / (12,000 x 0.75)
    "sedge, heater.first-hot.electric, 51.8772, min", // the same / (1,440 W x 3.412 x 1.00)
    "sedge, lp.furnace.life, 17.2384, h", // 20 lb x 21,548 / 25,000, one cylinder
    "sedge, lp.range.life, 61.5657, h", // 20 lb x 21,548 / 7,000, one burner
    "sedge, load.converter.current, 6.5, A", // 780 W / 120 V
    "sedge, tank.heater.weight, 49.8, lb", // 6 gal x 8.3
    "sedge, works-on.furnace.propane-off, no, word",
    "sedge, works-on.refrigerator.propane-off, yes, word",
    "cattail, shore.30.power, 3600, W",
    "cattail, bank.voltage, 12.8, V",
    "cattail, bank.energy, 2560, Wh", // 12.8 V x 2 x 100 Ah
    "cattail, bank.usable, 2048, Wh", // 0.80 of it
    "cattail, generator.steady, 3486.6, W", // 3,600 x (1 - 0.035 x 0.9)
    "cattail, tank.fresh.weight, 323.7, lb", // 39 gal x 8.3
    "cattail, tank.gray.galley.weight, 182.6, lb", // 22 gal x 8.3
    "cattail, tank.gray.bath.weight, 232.4, lb", // 28 gal x 8.3
    "cattail, lp.heat, 883468, Btu", // 41 lb x 21,548
    "cattail, clearance.height, 11.75, ft",
    "cattail, heater.first-hot.lp, 38.6209, min", // 6 x 8.33 x 85 F x 60 / (8,800 x 0.75)
    "cattail, load.converter.current, 7.33333, A", // 55 A x 13.6 V / 0.85 / 120 V
    "cattail, tank.black.weight, 224.1, lb", // 27 gal x 8.3
    "cattail, lp.furnace.life, 29.4489, h", // 41 lb x 21,548 / 30,000
    "cattail, tire.1.replace, 2025, y", // made 2019, 6 years
    "cattail, works-on.television.inverter, yes, word",
    "bulrush, bank.usable, 600, Wh", // 12 V x 100 Ah x 0.50
    "bulrush, clearance.height, 10.6667, ft" // 10 ft 2 in + 6 in
  })
  void aFigureStandsInTheBinderAsWorkedByHand(String rig, String id, String value, String unit) {
    List<Element> marks = Printed.html(rig).select("[data-figure='" + id + "']");
    assertFalse(marks.isEmpty(), id + " is printed");
    for (Element mark : marks) {
      assertEquals(value, mark.attr("data-value"), id);
      assertEquals(unit, mark.attr("data-unit"), id);
    }
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void oneIdHasOneValueOneUnitAndOneOriginEverywhere(String rig) {
    Map<String, String> seen = new HashMap<>();
    List<String> wrong = new ArrayList<>();
    for (Element mark : Printed.html(rig).select("[data-figure]")) {
      String says =
          mark.attr("data-value")
              + " "
              + mark.attr("data-unit")
              + " "
              + mark.attr("data-from")
              + " "
              + mark.attr("data-assumes");
      String before = seen.putIfAbsent(mark.attr("data-figure"), says);
      if (before != null && !before.equals(says)) {
        wrong.add(mark.attr("data-figure") + ": " + before + " / " + says);
      }
      boolean assumes = !mark.attr("data-assumes").isBlank();
      if (assumes != mark.attr("data-from").equals("typical")) {
        wrong.add(mark.attr("data-figure") + " says " + mark.attr("data-from"));
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(seen.size() >= 25, rig + " has " + seen.size() + " figures");
  }

  /**
   * A hand-made choice from the register: what each demo rig must print, and what only the other
   * one may.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sedge | loaded-bars tires long-grades wheel-change energised-body wrong-voltage-outlet deep-discharge frozen-battery gas-inside cylinder-handling roll-away under-the-rig coupling-not-locked heater-dry flush-left-running dead-gfci roof-work | back-feed live-on-inverter lithium-charging generator-misuse inverter-loop fuel-in-water wrong-fuel thin-cable auto-start car-set-wrongly",
        "cattail | energised-body back-feed live-on-inverter lithium-charging generator-misuse fuel-in-water wrong-fuel thin-cable gas-inside hot-exhaust-grass | frozen-battery coupling-not-locked flush-left-running between-vehicles auto-start",
        "pickerelweed | plug-heater awning-springs coupling-not-locked moving-slide live-on-inverter battery-gas flush-left-running | loaded-bars hot-boiler lithium-charging generator-misuse auto-start refrigerator-off-level fuel-in-water wrong-fuel",
        "duckweed | gas-inside cylinder-handling frozen-battery coupling-not-locked awning-springs sewage legs-used-to-lift | loaded-bars water-pressure heater-dry hot-tap-water blocked-flue hot-vents lithium-charging generator-misuse moving-slide cap-under-load tank-gas hot-boiler inverter-loop pump-dry refrigerator-off-level",
        "bogbean | cooking-fire hot-boiler lithium-charging live-on-inverter cassette-pressure fuel-in-water wrong-fuel heater-dry thin-cable | gas-inside flames-at-pumps cylinder-handling valve-opened-fast gas-repair relighting cooking-as-heat coupling-not-locked between-vehicles tank-gas frozen-battery generator-misuse moving-slide",
        "sweetgale | hot-boiler gas-inside cooking-as-heat black-left-open too-heavy generator-misuse back-feed refueling | auto-start coupling-not-locked between-vehicles legs-used-to-lift moving-slide inverter-loop lithium-charging refrigerator-off-level",
        "spikerush | hot-boiler auto-start generator-misuse wrong-fuel flush-left-running moving-slide cylinder-handling lithium-charging coupling-not-locked between-vehicles car-set-wrongly long-grades | loaded-bars heater-dry refrigerator-off-level legs-used-to-lift",
        "horsetail | generator-misuse wrong-fuel refrigerator-off-level coupling-not-locked heater-dry | moving-slide hot-boiler lithium-charging live-on-inverter auto-start fuel-in-water"
      })
  void aRigPrintsItsOwnCautionsAndNoneOfTheOthers(String rig, String own, String others) {
    Set<String> printed =
        Printed.html(rig).select("[data-caution]").stream()
            .map(e -> e.attr("data-caution"))
            .collect(Collectors.toCollection(TreeSet::new));
    for (String id : own.split(" ")) {
      assertTrue(printed.contains(id), rig + " lacks " + id);
    }
    Set<String> worded = worded();
    for (String id : others.split(" ")) {
      assertTrue(worded.contains(id), "no caution is called " + id);
      assertFalse(printed.contains(id), rig + " prints " + id);
    }
  }

  /** The ids of all cautions that there are words for, so that no misspelt id passes as absent. */
  private static Set<String> worded() {
    try (Stream<Path> files = Files.list(Path.of("templates/wording/en/cautions"))) {
      Set<String> ids = new TreeSet<>();
      for (Path file : files.toList()) {
        Files.readAllLines(file).stream()
            .filter(l -> l.matches("[a-z0-9-]+:"))
            .forEach(l -> ids.add(l.substring(0, l.length() - 1)));
      }
      return ids;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sedge | generator's, inverter, lithium, motorhome, gasoline, fuel filler, transfer switch, class c",
        "cattail | tongue jack, coupler, hitch ball, breakaway, flooded, distilled, trailer tires, cylinder valve, tow vehicle's",
        "pickerelweed | on the ball, tongue, stabilizer, generator's, propane tank, coupler, off propane",
        "duckweed | black handle, black tank, gray, sewer hose, furnace, water heater, refrigerator, slide room, every slide, generator's, air condition, inverter, solar, battery switch, water pump, city water",
        "bogbean | propane, cylinder, smell gas, black handle, black tank, slide room, every slide, generator's, air condition, coupling, tow vehicle, hitch, stabilizer, jacks, range, pilot, bypass, entry steps",
        "sweetgale | coupl, hitch, trailer's, slide room, every slide, generator's, air condition, inverter, tire pressure, gvwr, protector, stabilizer, tongue, flush inlet, tow vehicle",
        "spikerush | cylinder, trailer's, coupler, stabilizer, tongue, hitch, absorption, bypass, furnace thermostat to off. the fan runs on",
        "horsetail | slide room, every slide, inverter, on the pin, propane tank, protector, lithium, motorhome, the engine's tank"
      })
  void noSentenceSpeaksOfGearThatTheRigLacks(String rig, String words) {
    Document html = Printed.html(rig);
    html.select("[data-topic=numbers], [data-topic=typical]").remove();
    String text = html.body().text().toLowerCase(java.util.Locale.ROOT);
    List<String> found = List.of(words.split(", ")).stream().filter(text::contains).toList();
    assertEquals(List.of(), found);
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void aCautionStandsOnceInFullAndEveryReminderBeforeItsAction(String rig) {
    Document html = Printed.html(rig);
    List<String> whole = html.select("[data-caution]").eachAttr("data-caution");
    assertEquals(whole.size(), Set.copyOf(whole).size(), "each once");
    for (Element caution : html.select("[data-caution]")) {
      assertFalse(caution.select(".hazard, .avoid").isEmpty());
      assertFalse(caution.selectFirst(".defer").text().isBlank());
    }
    for (Element step : html.select("li[data-step]")) {
      Element action = step.selectFirst(".action");
      assertFalse(action.text().isBlank(), step.attr("data-step"));
      for (Element reminder : step.select("[data-caution-ref]")) {
        assertTrue(whole.contains(reminder.attr("data-caution-ref")));
        assertTrue(
            reminder == step.child(0) || reminder.closest(".panel") == step.child(0),
            step.attr("data-step"));
      }
      assertTrue(
          step.select("[data-caution-ref]").isEmpty() || step.child(0).hasAttr("data-caution-ref"));
    }
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void everyPageThatIsNamedIsPrintedUnderItsCode(String rig) {
    Document html = Printed.html(rig);
    List<String> wrong = new ArrayList<>();
    for (Element named : html.select("[data-topic-ref]")) {
      String id = named.attr("data-topic-ref");
      Element topic = html.selectFirst("[data-topic='" + id + "']");
      if (topic == null
          || !named.text().contains(topic.selectFirst(".topic-title").text())
          || !named.text().contains("(" + topic.selectFirst(".topic-code").text() + ")")) {
        wrong.add(named.text());
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(html.select("[data-topic-ref]").size() > 30);
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void everySymptomHasChecksForTheReaderAndALineWhereHelpTakesOver(String rig) {
    Document html = Printed.html(rig);
    for (Element fault : html.select(".fault")) {
      String id = fault.id().substring("fault-".length());
      assertTrue(fault.select("tr[data-fault='" + id + "'][data-who=you]").size() >= 2, id);
      assertFalse(fault.select("[data-fault='" + id + "'][data-who=technician]").isEmpty(), id);
      assertFalse(fault.selectFirst(".call-line").text().isBlank(), id);
      assertEquals(1, html.select(".symptoms a[href='#fault-" + id + "']").size(), id);
    }
    assertTrue(html.select(".fault").size() >= 20);
  }

  /** The profile names breaker and fuse by what they feed; the page says the panel's own words. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sedge | cooling-weak | \"Air conditioner\", 20 A", // feeds: [Roof air conditioner]
        "sedge | battery-empty | \"Converter\", 15 A", // feeds: ["converter", ...]
        "sedge | no-hot-water | \"Water heater\", 15 A", // the breaker's own name
        "sedge | refrigerator-warm | \"Converter\", 15 A" // feeds: [..., "refrigerator"]
      })
  void aFaultNamesTheBreakerThatFeedsItsGear(String rig, String fault, String breaker) {
    String text = Printed.html(rig).selectFirst("#fault-" + fault).text();
    assertTrue(text.contains(breaker), text);
  }

  /** It warns, so it stands in the caution, with its working in the list, and nowhere else. */
  @Test
  void theMinutesToAnOverflowStandInTheirCautionAlone() {
    Document html = Printed.html("sedge");
    String text = html.selectFirst("[data-caution=flush-left-running]").text();
    assertTrue(text.contains("can overflow in under 5 min"), text); // 30 gal / 2 / 3 gal a minute
    html.select("[data-caution=flush-left-running], [data-topic=numbers]").remove();
    assertTrue(html.select("[data-figure='flush.overflow']").isEmpty());
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void noGroupHasMoreThanNineStepsAndStepsCountFromOne(String rig) {
    for (Element procedure : Printed.html(rig).select("[data-procedure]")) {
      List<String> numbers = procedure.select("li[data-step] .n").eachText();
      for (int i = 0; i < numbers.size(); i++) {
        assertEquals(String.valueOf(i + 1), numbers.get(i), procedure.attr("data-procedure"));
      }
      for (Element group : procedure.select("ol")) {
        assertTrue(
            group.childrenSize() <= 9,
            procedure.attr("data-procedure") + ": " + group.childrenSize());
      }
    }
  }

  @Test
  void theSmallestProfileLeavesManyLinesToFillInAndGuessesNone() {
    Document html = Printed.html("bulrush");
    List<String> blanks =
        html.select("[data-topic]:not(.emergency) [data-blank]").eachAttr("data-blank");
    assertTrue(blanks.size() >= 20, "lines to fill in: " + blanks.size());
    assertTrue(blanks.contains("rig.width"));
    assertTrue(html.select("[data-figure^=cord]").isEmpty(), "no cord length, no drop");
    assertTrue(html.select("[data-figure^=tank.heater]").isEmpty(), "no gallons, no weight");
    assertTrue(html.body().text().contains("Not listed for this rig: have it before first use."));
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void codesOnMapLegendAndStepsAgree(String rig) {
    Document html = Printed.html(rig);
    Map<String, String> codes = new HashMap<>();
    for (Element e : html.select("[data-gear][data-code]")) {
      String before = codes.putIfAbsent(e.attr("data-gear"), e.attr("data-code"));
      assertTrue(before == null || before.equals(e.attr("data-code")), e.attr("data-gear"));
    }
    assertEquals(codes.size(), Set.copyOf(codes.values()).size(), "a code for each");
    Rig told = TestRigs.demo(rig);
    List<String> measured =
        told.gear().stream()
            .filter(g -> g.place().spot().isPresent())
            .map(Gear::id)
            .filter(id -> html.select("svg [data-gear='" + id + "']").isEmpty())
            .toList();
    assertEquals(List.of(), measured, "measured gear that the map leaves out");
  }

  @ParameterizedTest
  @ValueSource(strings = {"sedge", "cattail", "bulrush", "hostile"})
  void theFileNeedsNoNetworkAndRunsNothing(String rig) {
    Document html = Printed.html(rig);
    assertTrue(
        html.select(
                "script, iframe, object, embed, img, link, [src], [onclick], [onload], foreignObject")
            .isEmpty());
    assertTrue(html.select("[href]").stream().allMatch(e -> e.attr("href").startsWith("#")));
    assertFalse(Printed.text(rig).contains("@import") || Printed.text(rig).contains("url("));
  }

  @Test
  void strangeTextPrintsAsItself() throws IOException {
    String html = Printed.html("hostile").body().text();
    List<String> texts =
        new ArrayList<>(
            List.of(
                "<b>Rush</b> ${7*7}",
                "</svg><script>alert(1)</script>",
                "#{7*7} & [=7*7]",
                "</li></ol><img src=x>"));
    texts.addAll(
        List.of(
            "&amp; &lt;i&gt;",
            "</svg>${x}",
            "<i>Lamp</i>",
            "<#list 1..3 as i>${i}</#list>",
            "<!-- not a comment -->",
            "]]>"));
    texts.forEach(t -> assertTrue(html.contains(t), t));
    assertFalse(html.contains("49"), "nothing was worked out");
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf("hostile"))) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      texts.forEach(t -> assertTrue(text.contains(t), "PDF: " + t));
    }
  }

  @Test
  void anAlarmThatIsNotFittedStandsOnTheFirstPage() throws IOException {
    Path rig = folder.resolve("rush.yaml");
    Files.writeString(
        rig,
        "rig: {name: Rush, kind: travel trailer}\nsafety: {alarms: [{watches: smoke, fitted: none}], extinguishers: none}\n");
    Document html =
        org.jsoup.Jsoup.parse(
            new String(
                Printed.of(rig).get("binder.html"), java.nio.charset.StandardCharsets.UTF_8));
    String cover = html.selectFirst(".cover").text();
    assertTrue(
        cover.contains("Smoke alarm: not fitted.")
            && cover.contains("Fire extinguisher: not fitted."),
        cover);
    assertTrue(
        html.select("[data-gear='safety.alarms.smoke']").isEmpty(),
        "no code for what is not there");
  }

  @Test
  void privateWordsStandInTheirOwnTopicOfTheBinderAlone() {
    Document html = Printed.html("sedge");
    assertTrue(html.selectFirst("[data-topic=owner]").text().contains("4471"));
    html.selectFirst("[data-topic=owner]").remove();
    assertFalse(html.outerHtml().contains("4471"));
  }

  @ParameterizedTest
  @CsvSource({"sedge, 4471", "cattail, 8250"})
  void privateWordsStandOnThePagesOfTheirOwnTopicAlone(String rig, String secret)
      throws IOException {
    String code = Printed.html(rig).selectFirst("[data-topic=owner] .topic-code").text();
    try (PDDocument pdf = Loader.loadPDF(Printed.pdf(rig))) {
      List<Integer> pages = new ArrayList<>();
      for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String text = stripper.getText(pdf);
        if (text.contains(secret)) {
          assertTrue(text.contains(code + " · "), "page " + page + ": " + text);
          pages.add(page);
        }
      }
      assertEquals(1, pages.size(), "pages with " + secret + ": " + pages);
      assertFalse(pdf.getDocumentInformation().getCOSObject().toString().contains(secret));
    }
  }

  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#fleet")
  void theTopicsStandInTheOrderOfTheWording(String rig) {
    List<String> topics = Printed.html(rig).select("[data-topic]").eachAttr("data-topic");
    assertEquals(TestData.topics().stream().filter(topics::contains).toList(), topics);
    assertTrue(topics.size() > 30);
  }

  @ParameterizedTest
  @CsvSource({
    "sedge, You smell gas. You see soot",
    "spikerush, You smell fuel. You see soot",
    "bogbean, Stop if You see soot"
  })
  void aHeaterIsStoppedAtTheSmellOfWhatItBurns(String rig, String words) {
    String brief = Printed.html(rig).selectFirst("[data-topic=hot-water] .brief").text();
    assertTrue(brief.contains(words), brief);
  }

  @ParameterizedTest
  @CsvSource({
    "sweetgale, safety.exits.roof-hatch-over-the-bed, 'on the roof, 3 ft back from the nose'",
    "bogbean, road.fuel, 'street side (driver''s), 5 ft back from the front bumper, 3 ft up'",
    "duckweed, body.bed-ends.front-bed, 'front, 4 ft back from the hitch'",
    "duckweed, body.bed-ends.rear-bed, rear"
  })
  void aMeasuredPlaceCountsFromTheFrontOfItsKindOfRig(String rig, String gear, String place) {
    Document html = Printed.html(rig);
    List<String> lines = html.select(".legend li[data-gear='" + gear + "']").eachText();
    assertTrue(lines.stream().anyMatch(l -> l.endsWith(place)), lines.toString());
  }
}
