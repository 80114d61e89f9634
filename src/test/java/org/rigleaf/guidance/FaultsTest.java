package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestData;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Fields;

/**
 * A fault prints if and only if the rig has what can fail; it has checks for the reader and a line
 * where somebody else takes over. Expected: {@code faults.yaml}, written from the trade's
 * inventory.
 */
class FaultsTest {
  private static final Fields TABLE = TestData.read("faults.yaml");
  private static final Fields CODES =
      TestData.read("caution-triggers.yaml").group("inventory").orElseThrow();
  private static final Map<String, Fields> FAULTS = faults();

  /** Work that belongs to technicians: what a reader may look at, but never do. */
  private static final Pattern TECHNICIAN =
      Pattern.compile(
          "\\b(take off|remove|unscrew|loosen|dismantle|solder|splice|bypass the|jump the|adjust the"
              + "|open the (cover|regulator|burner|panel's|box|wall)|climb|crawl|replace the (breaker|regulator|valve|brake)"
              + "|bleed|repack|bend|drill|weld)\\b",
          Pattern.CASE_INSENSITIVE);

  /** Parts at which the reader looks, reads, listens or feels, and does no more. */
  private static final Pattern PARTS =
      Pattern.compile(
          "\\b(regulator|cover|wire|wiring|flue|compressor|brake controller|bearing|frame|lock-out)\\b");

  private static final Pattern SENSES = Pattern.compile("^(Look|Read|Listen|Feel|Smell|Check) .*");

  private final List<String> wrong = new ArrayList<>();

  private static Map<String, Fields> faults() {
    Fields all = TABLE.group("faults").orElseThrow();
    Map<String, Fields> faults = new LinkedHashMap<>();
    all.keys().forEach(id -> faults.put(id, all.group(id).orElseThrow()));
    return faults;
  }

  @Test
  void theWordingHasTheFaultsOfTheTable() {
    assertEquals(new TreeSet<>(FAULTS.keySet()), new TreeSet<>(Wording.english().faults.keySet()));
  }

  @Test
  void everyFaultStandsInOneTopic() {
    List<String> shown =
        Wording.english().topics().stream()
            .flatMap(t -> t.shows().stream())
            .filter(Show.OfFault.class::isInstance)
            .map(s -> ((Show.OfFault) s).id())
            .sorted()
            .toList();
    assertEquals(FAULTS.keySet().stream().sorted().toList(), shown);
  }

  @Test
  void everyCodeOfTheInventoryIsCoveredOrSaysWhyNot() {
    Set<String> covered = new TreeSet<>(TestData.list(TABLE, "not-yet"));
    FAULTS.values().forEach(f -> covered.addAll(TestData.list(f, "covers")));
    Set<String> codes =
        CODES.keys().stream()
            .filter(c -> c.matches("E[A-Z]\\d\\d"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(codes, covered);
  }

  /** The words or conditions of a fault name the gear of each code that it is said to cover. */
  @Test
  void aFaultSpeaksOfTheGearThatItCovers() {
    FAULTS.forEach(
        (id, f) -> {
          String words = Wording.english().faults.get(id).toString();
          for (String code : TestData.list(f, "covers")) {
            List<String> traits = TestData.list(CODES, code);
            if (!traits.contains("always") && traits.stream().noneMatch(t -> names(words, t))) {
              wrong.add(id + " says nothing of " + code + " " + traits);
            }
          }
        });
    assertEquals(List.of(), wrong);
  }

  private static boolean names(String words, String trait) {
    String gear = trait.replaceAll("\\.(kind|drive|type|bars|fuel)\\..*", "");
    return words.contains(trait) || words.contains(gear);
  }

  @Test
  void theDemoFleetPrintsTheTriggeredFaultsAndNoOther() {
    TestRigs.fleet().forEach(name -> check(name, TestRigs.demo(name)));
    check("Bulrush", TestRigs.smallest());
    assertEquals(List.of(), wrong);
  }

  @Test
  void everyRandomRigPrintsTheTriggeredFaultsAndNoOther() {
    RandomRigs.all().forEach(p -> check(p.name(), p.rig()));
    assertEquals(List.of(), wrong.stream().limit(40).toList());
  }

  @Test
  void takingAThingAwayOrAddingItMovesItsFaults() {
    Stream.of(RandomRigs.barest(), RandomRigs.all().get(0))
        .flatMap(base -> RandomRigs.variations(base).stream())
        .forEach(p -> check(p.name(), p.rig()));
    assertEquals(List.of(), wrong.stream().limit(40).toList());
  }

  @Test
  void everyFaultIsShownBySomeRandomOrDemoRig() {
    Set<String> shown = new TreeSet<>();
    TestRigs.fleet().forEach(n -> shown.addAll(guide(TestRigs.demo(n)).faults().keySet()));
    RandomRigs.all().forEach(p -> shown.addAll(guide(p.rig()).faults().keySet()));
    RandomRigs.variations(RandomRigs.barest())
        .forEach(p -> shown.addAll(guide(p.rig()).faults().keySet()));
    assertEquals(new TreeSet<>(FAULTS.keySet()), shown);
  }

  @Test
  void nothingOfATechniciansWorkIsGivenToTheReader() {
    Wording.english()
        .faults
        .values()
        .forEach(f -> f.checks().forEach(i -> Items.steps(i).forEach(s -> judge(f.id(), s))));
    assertEquals(List.of(), wrong);
    assertTrue(TECHNICIAN.matcher("Unscrew the cover.").find());
    assertTrue(PARTS.matcher("Turn the regulator.").find());
  }

  private void judge(String fault, Item.StepText step) {
    String look = step.action().plain();
    if (TECHNICIAN.matcher(look + " " + step.see().plain()).find()
        || PARTS.matcher(look).find() && !SENSES.matcher(look).matches()) {
      wrong.add(fault + "." + step.id() + ": " + look + " / " + step.see().plain());
    }
  }

  private void check(String name, Rig rig) {
    Set<String> traits = Traits.of(rig);
    Map<String, Fault> printed = guide(rig).faults();
    FAULTS.forEach(
        (id, f) -> {
          if (triggered(f, traits) != printed.containsKey(id)) {
            wrong.add(name + (printed.containsKey(id) ? " prints " : " lacks ") + id);
          }
        });
    printed.values().forEach(f -> whole(name, f));
  }

  private static boolean triggered(Fields f, Set<String> traits) {
    boolean any =
        TestData.list(f, "triggered-by").stream()
            .flatMap(c -> TestData.list(CODES, c).stream())
            .anyMatch(traits::contains);
    return (any || TestData.list(f, "or").stream().anyMatch(traits::contains))
        && traits.containsAll(TestData.list(f, "when"))
        && TestData.list(f, "unless").stream().noneMatch(traits::contains);
  }

  private void whole(String name, Fault f) {
    if (f.checks().size() < 2 || f.stops().isEmpty() || f.call().empty()) {
      wrong.add(name + ", " + f.id() + ": " + f.checks().size() + " checks, " + f.stops());
    }
    if (f.stops().stream().noneMatch(s -> s.who().equals("technician"))) {
      wrong.add(name + ", " + f.id() + ": no technician takes over");
    }
    if (f.checks().stream().anyMatch(c -> c.see().empty())) {
      wrong.add(name + ", " + f.id() + ": a check that means nothing");
    }
  }

  private static Guide guide(Rig rig) {
    return new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
  }
}
