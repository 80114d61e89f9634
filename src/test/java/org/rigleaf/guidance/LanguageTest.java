package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.RandomRigs;
import org.rigleaf.TestData;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.figures.Register;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.TypicalValues;

/**
 * The language of every entry: short steps, one action, a verb first, no vague words, grade 8 at
 * most.
 */
class LanguageTest {
  private static final Pattern VAGUE =
      Pattern.compile(
          "\\b(as required|as needed|sufficient|properly|appropriate|carefully|if equipped|if fitted|if your rig has|some rigs|some models|etc|adequate|adequately|suitable|suitably|reasonable|reasonably|as necessary|if necessary|if needed|where applicable|when applicable|periodically|regularly|occasionally|from time to time|with care|in good order|correctly)\\b|\\bnormal\\b",
          Pattern.CASE_INSENSITIVE);
  private static final Set<String> VERBS =
      Set.copyOf(TestData.list(TestData.read("verbs.yaml"), "verbs"));

  private final List<String> faults = new ArrayList<>();

  @Test
  void everyActionIsOneShortCommandThatStartsWithAVerb() {
    actions()
        .forEach(
            s -> {
              String text = s.text();
              String first = text.split("[ ,.]")[0];
              if (words(text) > 12) {
                faults.add(s.name() + ": " + words(text) + " words: " + text);
              }
              if (!VERBS.contains(first)) {
                faults.add(s.name() + ": starts with '" + first + "': " + text);
              }
              if (sentences(text).size() != 1
                  || text.contains(";")
                  || text.contains(" and then ")) {
                faults.add(s.name() + ": more than one action: " + text);
              }
            });
    assertEquals(List.of(), faults);
  }

  @Test
  void everyVerbOfTheListStartsSomeAction() {
    Set<String> used = actions().map(s -> s.text().split("[ ,.]")[0]).collect(Collectors.toSet());
    assertEquals(List.of(), VERBS.stream().filter(v -> !used.contains(v)).sorted().toList());
  }

  /** With the names, places and figures of the rigs filled in. */
  @Test
  void printedActionsAreShortAndGroupsHaveAtMostNineSteps() {
    rigs()
        .forEach(
            (name, rig) -> {
              Guide guide = new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
              guide.procedures().values().forEach(p -> printed(name, p));
              guide.upkeep().forEach(t -> printed(t.id(), t.action()));
              guide.faults().values().forEach(f -> printed(name, f));
            });
    assertEquals(List.of(), faults.stream().distinct().limit(40).toList());
  }

  private static Map<String, Rig> rigs() {
    Map<String, Rig> rigs = new LinkedHashMap<>();
    TestRigs.fleet().forEach(name -> rigs.put(name, TestRigs.demo(name)));
    RandomRigs.all().forEach(p -> rigs.put(p.name(), p.rig()));
    return rigs;
  }

  private void printed(String rig, Procedure p) {
    for (Group g : p.groups()) {
      if (g.steps().size() > 9) {
        faults.add(rig + ", " + p.id() + ", " + g.title() + ": " + g.steps().size() + " steps");
      }
      g.steps().forEach(s -> printed(s.id(), s.action()));
    }
  }

  private void printed(String id, Words action) {
    if (words(action.plain()) > 12) {
      faults.add(id + ": " + words(action.plain()) + " words: " + action.plain());
    }
  }

  /** A symptom's checks fit one look: twelve at most, however many outlets and drains there are. */
  private void printed(String rig, Fault f) {
    if (f.checks().size() > 12) {
      faults.add(rig + ", " + f.id() + ": " + f.checks().size() + " checks");
    }
    for (Step s : f.checks()) {
      if (words(s.action().plain()) > 12) {
        faults.add(s.id() + ": " + words(s.action().plain()) + " words: " + s.action().plain());
      }
    }
  }

  @Test
  void everyTaskOfUpkeepSaysWhatOneShouldSeeAndHasAShortTitle() {
    List<String> wrong =
        Wording.english().tasks.values().stream()
            .filter(t -> t.see().empty() || words(t.title()) > 4 || t.title().length() > 28)
            .map(TaskText::id)
            .toList();
    assertEquals(List.of(), wrong);
  }

  @Test
  void everyCheckSaysWhatItMeans() {
    List<String> silent =
        Wording.english().faults.values().stream()
            .flatMap(f -> Items.steps(f.checks()).filter(s -> s.see().empty()).map(s -> f.id()))
            .toList();
    assertEquals(List.of(), silent);
  }

  @Test
  void eightyOfAHundredStepsSayWhatOneShouldSee() {
    List<Named> steps = steps().toList();
    long seen = steps.stream().filter(s -> !s.step().see().empty()).count();
    assertTrue(seen >= 0.8 * steps.size(), seen + " of " + steps.size());
  }

  @Test
  void noSentenceIsLongOrVague() {
    texts()
        .forEach(
            t -> {
              for (String sentence : sentences(t[1])) {
                if (words(sentence) > (t[0].endsWith(" see") ? 20 : 25)) {
                  faults.add(t[0] + ": " + words(sentence) + " words: " + sentence);
                }
              }
              if (VAGUE.matcher(t[1]).find()) {
                faults.add(t[0] + ": vague: " + t[1]);
              }
            });
    assertEquals(List.of(), faults);
  }

  @Test
  void everyProcedureFaultCautionAndTradesUpkeepReadsAtGradeEightOrBelow() {
    Wording.english().tasks.values().stream()
        .collect(Collectors.groupingBy(TaskText::trade))
        .forEach(
            (trade, tasks) ->
                grade(
                    "upkeep, " + trade,
                    tasks.stream().flatMap(t -> Stream.of(t.action(), t.see(), t.how()))));
    Wording.english().faults.values().forEach(f -> grade(f.id(), words(f)));
    Wording.english().changes.values().forEach(c -> grade("change " + c.id(), sentences(c)));
    Wording.english()
        .procedures
        .values()
        .forEach(
            p -> grade(p.id(), steps(p).flatMap(s -> Stream.of(s.action(), s.see(), s.ifNot()))));
    Wording.english()
        .cautions
        .values()
        .forEach(
            c ->
                grade(
                    c.id(),
                    Stream.concat(
                        Stream.of(c.hazard(), c.consequence(), c.defer()),
                        c.avoid().stream().map(ConditionalText::text))));
    assertEquals(List.of(), faults);
  }

  /**
   * Where a clause begins that only describes, such as 'a hose that is marked' or 'what was
   * changed'.
   */
  private static final String CLAUSE =
      " (that|whether|which|who|what|where|when|since|if|until|while|once|as) |, ";

  /** A step tells somebody to do something; it does not say that something is done. */
  @Test
  void noActionIsPassive() {
    Pattern passive = Pattern.compile("\\b(is|are|be|been|being|was|were) \\w+(ed|en)\\b");
    steps()
        .filter(s -> passive.matcher(s.step().action().plain().split(CLAUSE)[0]).find())
        .forEach(s -> faults.add(s.name() + ": passive: " + s.step().action().plain()));
    assertEquals(List.of(), faults);
  }

  /** All steps and cautions of a rig together, by both indexes. */
  @ParameterizedTest
  @MethodSource("org.rigleaf.TestRigs#all")
  void aWholeBinderReadsAtGradeEightOrBelowByTwoIndexes(String name) {
    Rig rig = name.equals("bulrush") ? TestRigs.smallest() : TestRigs.demo(name);
    Guide guide = new Guide(rig, Figures.of(rig), Wording.english(), Map.of());
    Stream<Words> steps =
        guide.procedures().values().stream()
            .flatMap(p -> p.steps().stream())
            .flatMap(s -> Stream.of(s.action(), s.see(), s.ifNot()));
    Stream<Words> cautions =
        guide.cautions().stream()
            .flatMap(
                c -> Stream.of(c.hazard(), c.consequence(), Words.joined(c.avoid()), c.defer()));
    String all = Stream.concat(steps, cautions).map(Words::plain).collect(Collectors.joining(" "));
    int words = words(all);
    int sentences = sentences(all).size();
    double fleschKincaid = grade(words, sentences, syllables(all));
    double automated = automated(letters(all), words, sentences);
    assertTrue(words > 2000, name + " has " + words + " words");
    assertTrue(fleschKincaid <= 8, name + ": Flesch-Kincaid grade " + fleschKincaid);
    assertTrue(automated <= 8, name + ": automated readability grade " + automated);
  }

  /** Automated Readability Index of Smith and Senter (1967), from memory. */
  private static double automated(int letters, int words, int sentences) {
    return 4.71 * letters / words + 0.5 * words / sentences - 21.43;
  }

  /** By hand: 17 letters, 6 words, one sentence: 4.71 x 17 / 6 + 0.5 x 6 - 21.43. */
  @Test
  void theAutomatedIndexCountsLettersWordsAndSentences() {
    String text = "The cat sat on the mat.";
    assertEquals(17, letters(text));
    assertEquals(-5.085, automated(letters(text), words(text), 1), 0.001);
  }

  private static int letters(String text) {
    return text.replaceAll("[^A-Za-z0-9]", "").length();
  }

  private static Stream<TextTemplate> words(FaultText f) {
    return Stream.concat(
        Items.steps(f.checks()).flatMap(s -> Stream.of(s.action(), s.see())),
        f.stops().stream().map(FaultText.StopText::text));
  }

  private void grade(String id, Stream<TextTemplate> texts) {
    String all = String.join(" ", texts.map(TextTemplate::plain).toList());
    double grade = grade(words(all), sentences(all).size(), syllables(all));
    if (grade > 8) {
      faults.add(id + ": grade " + grade);
    }
  }

  /**
   * The counts and grades that a published readme prints (RandallShanePhD/fkscore): the formula
   * exactly.
   */
  @ParameterizedTest
  @CsvSource({"16, 1, 23, 7.613", "10, 1, 13, 3.65", "6, 1, 6, -1.45"})
  void theGradeIsFleschKincaids(int words, int sentences, int syllables, double expected) {
    assertEquals(expected, grade(words, sentences, syllables), 0.005);
  }

  /** The readme's own sentence; its hand count is 23 syllables, its grade 7.6. */
  @Test
  void aPublishedSentenceComesWithinOneAndAHalfGrades() {
    String text =
        "This sentence, taken as a reading passage unto itself, is being used to prove a point.";
    assertEquals(16, words(text));
    assertEquals(7.613, grade(words(text), 1, syllables(text)), 1.5);
  }

  /** Hand counts: the counter may err by one in ten, for counters disagree. */
  @ParameterizedTest
  @CsvSource({
    "The cat sat on the mat., 6",
    "Switch off the breaker at the post., 8",
    "Carbon monoxide alarm, 8",
    "Open every window a little., 9"
  })
  void syllablesAreCountedNearlyAsByHand(String text, int byHand) {
    assertEquals(byHand, syllables(text), Math.max(1, byHand / 10.0));
  }

  private static double grade(int words, int sentences, int syllables) {
    return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
  }

  private static int words(String text) {
    return (int) Stream.of(text.split("\\s+")).filter(w -> w.matches(".*[A-Za-z0-9].*")).count();
  }

  private static List<String> sentences(String text) {
    return Stream.of(text.split("(?<=[.!?])\\s+")).filter(s -> !s.isBlank()).toList();
  }

  private static int syllables(String text) {
    int count = 0;
    for (String word : text.toLowerCase(Locale.ROOT).split("[^a-z]+")) {
      String spoken =
          word.replaceAll("(?<=.)(?<![aeiouyl])e$|(?<=[^aeiouytd])ed$|(?<=[^cgsxz])es$", "");
      count +=
          word.isEmpty()
              ? 0
              : Math.max(1, (int) Pattern.compile("[aeiouy]+").matcher(spoken).results().count());
    }
    return count;
  }

  private record Named(String name, Item.StepText step) {}

  private record Action(String name, String text) {}

  /** Of steps and of upkeep alike. */
  private static Stream<Action> actions() {
    return Stream.concat(
        steps().map(s -> new Action(s.name(), s.step().action().plain())),
        Wording.english().tasks.values().stream()
            .map(t -> new Action("upkeep " + t.id(), t.action().plain())));
  }

  private static Stream<Named> steps() {
    Stream<Named> procedures =
        Wording.english().procedures.values().stream()
            .flatMap(p -> steps(p).map(s -> new Named(p.id() + "." + s.id(), s)));
    Stream<Named> checks =
        Wording.english().faults.values().stream()
            .flatMap(f -> Items.steps(f.checks()).map(s -> new Named(f.id() + "." + s.id(), s)));
    return Stream.concat(procedures, checks);
  }

  private static Stream<Item.StepText> steps(ProcedureText p) {
    return p.groups().stream().flatMap(g -> Items.steps(g.items()));
  }

  /** Name and text of every entry that a reader may see. */
  private static Stream<String[]> texts() {
    return Stream.of(
            stepTexts(),
            procedureTexts(),
            faultTexts(),
            cautionTexts(),
            upkeepTexts(),
            changeTexts(),
            otherTexts())
        .flatMap(t -> t);
  }

  private static Stream<String[]> stepTexts() {
    return steps()
        .flatMap(
            s ->
                Stream.of(
                    text(s.name() + " action", s.step().action()),
                    text(s.name() + " see", s.step().see()),
                    text(s.name() + " if-not", s.step().ifNot())));
  }

  private static Stream<String[]> upkeepTexts() {
    return Wording.english().tasks.values().stream()
        .flatMap(
            t ->
                Stream.of(
                    text(t.id() + " action", t.action()),
                    text(t.id() + " see", t.see()),
                    text(t.id() + " how", t.how()),
                    new String[] {t.id() + " basis", t.basis()}));
  }

  private static Stream<String[]> procedureTexts() {
    return Wording.english().procedures.values().stream()
        .flatMap(
            p ->
                Stream.of(
                        Stream.<String[]>of(text(p.id() + " done", p.done())),
                        p.stopIf().stream().map(s -> text(p.id() + " stop-if", s.text())),
                        p.need().stream().map(n -> text(p.id() + " need", n.text())))
                    .flatMap(texts -> texts));
  }

  private static Stream<String[]> faultTexts() {
    return Wording.english().faults.values().stream()
        .flatMap(
            f ->
                Stream.concat(
                    Stream.<String[]>of(new String[] {f.id(), f.symptom()}),
                    f.stops().stream().map(s -> text(f.id() + " stop", s.text()))));
  }

  private static Stream<String[]> cautionTexts() {
    return Wording.english().cautions.values().stream()
        .flatMap(
            c ->
                Stream.concat(
                    Stream.of(c.hazard(), c.consequence(), c.defer(), c.brief(), c.command())
                        .map(t -> text(c.id(), t)),
                    c.avoid().stream().map(a -> text(c.id() + " avoid", a.text()))));
  }

  /** What a notice says of each kind of change. */
  private static Stream<String[]> changeTexts() {
    return Wording.english().changes.values().stream()
        .flatMap(
            c ->
                Stream.concat(
                    Stream.<String[]>of(new String[] {c.id() + " title", c.title()}),
                    sentences(c).map(t -> text("change " + c.id(), t))));
  }

  private static Stream<TextTemplate> sentences(ChangeText c) {
    return Stream.of(c.first(), c.now(), c.withdrawn(), c.tell())
        .flatMap(List::stream)
        .map(ConditionalText::text);
  }

  /** Meanings of figures, places to look for typical values, gear, findings. */
  private static Stream<String[]> otherTexts() {
    Wording w = Wording.english();
    Stream<String[]> figures =
        Register.ENTRIES.stream()
            .map(e -> new String[] {e.pattern(), w.figure(e.pattern()).meaning()});
    Stream<String[]> typical =
        TypicalValues.all().stream().map(t -> new String[] {t.id(), w.typical(t.id()).meaning()});
    Stream<String[]> gear =
        Rig.possibleGear().stream().map(g -> new String[] {g, w.gear(g).meaning()});
    Stream<String[]> findings =
        w.findings.entrySet().stream().map(f -> text(f.getKey(), f.getValue().text()));
    return Stream.of(figures, typical, gear, findings).flatMap(t -> t);
  }

  private static String[] text(String name, TextTemplate text) {
    return new String[] {name, text.plain()};
  }
}
