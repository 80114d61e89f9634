package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** What the keeper knows reaches the page: notes, words on the panel, resets, what feeds what. */
class KeeperWordsTest {
  private static final String RIG =
      """
      rig: {name: Reed, kind: travel trailer}
      electric:
        breakers: [{name: Main, rating: 30 A}, {name: Galley, rating: 15 A, feeds: [Kettle, "outlets"]}]
        fuses: [{name: Pump fuse, rating: 10 A, feeds: [pump]}, {name: Step fuse, rating: 25 A, where: by the step}]
        outlets: [{name: Bath outlet, gfci: yes, protects: ["outside outlet"], where: by the mirror}, {name: Desk outlet}]
        inverter: {feeds: [Kettle], switch: over the door, marked: INV}
        loads: [{name: Kettle, kind: microwave, note: Two presses.}]
      water:
        fresh: {holds: 20 gal}
        pump: {switches: [hall, bath], marked: WTR PUMP, note: It pulses.}
        heater: {kind: storage, marked: WTR HTR, reset: two buttons outside}
      body:
        slides: [{name: Sofa slide, order: first}, {name: Bed slide, drive: hand}]
        shell: {walls: 6}
      waste: {monitor: {lamps: [E, F], lamps-mean: E is empty., where: hall}}
      safety: {extinguishers: {where: by the door, note: Pull the pin.}}
      road: {fuel: {note: The cap is tight.}}
      """;

  private static final Binder BINDER = binder(TestRigs.of(RIG));

  private static Binder binder(Rig rig) {
    return BinderMaker.of(rig, Figures.of(rig), Wording.english(), Map.of())
        .binder(Paper.LETTER, true);
  }

  private static Stream<NotesBlock.Note> notes(Topic topic) {
    return topic.blocks().stream()
        .filter(NotesBlock.class::isInstance)
        .flatMap(b -> ((NotesBlock) b).notes().stream());
  }

  private static Set<String> topicsWithNote(String gear) {
    return BINDER.topics().stream()
        .filter(t -> notes(t).anyMatch(n -> n.gear().equals(gear)))
        .map(Topic::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String text(String topic) {
    Topic found = BINDER.topics().stream().filter(t -> t.id().equals(topic)).findFirst().get();
    return Texts.of(found).stream()
        .map(r -> r.kind() == Run.Kind.BLANK ? "[" + r.key() + "]" : drawn(r.text()))
        .collect(Collectors.joining(" "));
  }

  /** The words of a drawing, parted by semicolons; other text as it is. */
  private static String drawn(String text) {
    return text.replaceAll("</text>\\s*(<[^>]*>\\s*)*", " ; ");
  }

  @Test
  void aNotePrintsOnThePagesThatSpeakOfTheGear() {
    assertTrue(topicsWithNote("water.pump").containsAll(Set.of("pump", "six-things", "leave")));
    assertEquals(Set.of("cooking"), topicsWithNote("electric.loads.kettle"));
  }

  @Test
  void noEmergencyHasNotes() {
    assertTrue(
        BINDER.topics().stream()
            .filter(Topic::emergency)
            .flatMap(t -> notes(t))
            .toList()
            .isEmpty());
    assertTrue(topicsWithNote("safety.extinguishers.extinguisher").contains("six-things"));
  }

  @Test
  void everyNoteOfTheFleetIsPrinted() {
    for (String name : TestRigs.fleet().toList()) {
      Rig rig = TestRigs.demo(name);
      Set<String> printed =
          binder(rig).topics().stream()
              .flatMap(KeeperWordsTest::notes)
              .map(NotesBlock.Note::gear)
              .collect(Collectors.toSet());
      List<String> lost =
          rig.texts().keySet().stream()
              .filter(k -> k.endsWith(".note") && !k.equals("edition.note"))
              .map(k -> k.substring(0, k.length() - ".note".length()))
              .filter(k -> !printed.contains(k))
              .toList();
      assertEquals(List.of(), lost, name);
      assertTrue(!printed.isEmpty(), name + " has no note");
    }
  }

  @Test
  void thePanelsWordsStandWithTheSwitchElseWithThePlace() {
    assertTrue(text("pump").contains("hall, bath , marked WTR PUMP"), text("pump"));
    assertTrue(text("hot-water").contains("[water.heater.where] , marked WTR HTR"));
  }

  @Test
  void onePageListsSwitchesBreakersFusesAndResets() {
    String page = text("controls");
    for (String part :
        List.of(
            "Inverter over the door INV",
            "Sofa slide [body.slides.sofa-slide.switch] [body.slides.sofa-slide.marked]",
            " ; 30 A ; Main ; the whole rig ;",
            " ; 15 A ; Galley ; kettle, outlets ;",
            " ; 10 A ; Pump fuse ; red ; water pump ;",
            "Not in the panel: by the step ; 25 A ; Step fuse ; clear ;",
            "Bath outlet : guards outside outlet",
            "The inverter feeds kettle",
            "two buttons outside",
            "They mean: E is empty.")) {
      assertTrue(page.contains(part), part + " in: " + page);
    }
    assertFalse(
        page.contains("Desk outlet")
            || page.contains("Pump fuse : where")
            || page.contains("Bed slide"),
        page);
  }
}
