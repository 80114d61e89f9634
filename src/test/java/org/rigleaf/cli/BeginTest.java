package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rigleaf.guidance.Question;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;
import org.rigleaf.source.Node;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;
import org.rigleaf.source.Yaml;

/** The dialogue of a first profile, as a keeper would hold it. */
class BeginTest {
  private static final String SMALLEST = "src/test/resources/profiles/bulrush.yaml";
  private static final String NAMED = "Rush\ntravel trailer\n";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private Path file() {
    return folder.resolve("my-rig.yaml");
  }

  private int begin(String answers) {
    return run(answers, "begin", file().toString());
  }

  private int run(String answers, String... args) {
    PrintWriter to = new PrintWriter(out, true);
    return Main.run(new StringReader(answers), to, new PrintWriter(err, true), args);
  }

  /** Answers whatever is asked, as the prompt comes, since some answers leave questions out. */
  private Rig answered(Function<Question, String> answer) throws ProblemsFound {
    FirstProfile profile = new FirstProfile(file());
    for (Question q : Wording.english().questions()) {
      if (profile.wants(q) && !answer.apply(q).isEmpty()) {
        assertEquals(List.of(), profile.add(q, answer.apply(q)), q.id());
      }
    }
    return Profile.draft(file(), profile.text());
  }

  /** A line of input for each question that is asked if every answer is the example. */
  private String likes() throws ProblemsFound {
    Map<String, String> said = new LinkedHashMap<>();
    answered(
        q -> {
          said.putIfAbsent(q.id(), q.like());
          return q.like();
        });
    return String.join("\n", said.values());
  }

  @Test
  void theExamplesAsAnswersGiveAProfileWithEveryKeyOfTheSmallest() throws Exception {
    assertEquals(0, begin(likes()), err.toString());
    assertFalse(out.toString().contains("answer again"), out.toString());
    Profile.read(file());
    Set<String> missing = keys(Path.of(SMALLEST));
    missing.removeAll(keys(file()));
    assertEquals(Set.of(), missing);
  }

  private static Set<String> keys(Path file) throws IOException {
    Set<String> keys = new TreeSet<>();
    Optional<Node> root = Yaml.read(file, file.toString(), new Problems());
    collect(root.orElseThrow(), "", keys);
    return keys;
  }

  private static void collect(Node node, String path, Set<String> keys) {
    keys.add(path);
    if (node instanceof Node.Mapping map) {
      map.entries().forEach((k, e) -> collect(e.value(), path + "/" + k, keys));
    } else if (node instanceof Node.Sequence list) {
      list.items().forEach(i -> collect(i, path, keys));
    }
  }

  @Test
  void everyQuestionIsAskedOfSomeRig() throws ProblemsFound {
    Set<String> asked = new TreeSet<>();
    answered(q -> note(q, asked, q.like()));
    answered(q -> note(q, asked, q.id().equals("cylinders") ? "" : q.like()));
    Set<String> all = new TreeSet<>();
    Wording.english().questions().forEach(q -> all.add(q.id()));
    assertEquals(all, asked);
  }

  private static String note(Question q, Set<String> asked, String answer) {
    asked.add(q.id());
    return answer;
  }

  @ParameterizedTest
  @EnumSource
  void noneWhereverOfferedIsAnAnswerForEveryKindOfRig(RigKind kind) throws ProblemsFound {
    Rig rig = answered(q -> q.id().equals("kind") ? kind.text() : noneOrLike(q));
    assertEquals(kind, rig.identity().kind());
    assertTrue(rig.has("propane.none") && rig.has("electric.batteries.none"));
    assertTrue(rig.has("safety.exits.none") && rig.has("road.tires.none"));
    assertTrue(rig.safety().alarms().stream().allMatch(a -> a.missing()));
  }

  private static String noneOrLike(Question q) {
    return q.none().isPresent() ? "none" : q.like();
  }

  @Test
  void everyKindOfTheFormatIsOffered() {
    assertEquals(0, begin(NAMED));
    for (RigKind kind : RigKind.values()) {
      assertTrue(out.toString().contains(kind.text()), kind.text());
    }
  }

  @Test
  void aWrongAnswerIsAskedAgainWithTheReason() throws Exception {
    String upToTank = "\n".repeat(12); // length to disconnect
    assertEquals(0, begin(NAMED + upToTank + "42 psi\n42 gal\n"), err.toString());
    assertTrue(
        out.toString().contains("'42 psi' is a pressure, not a volume (write a volume, such as"),
        out.toString());
    String text = Files.readString(file());
    assertTrue(text.contains("holds: 42 gal") && !text.contains("psi"), text);
  }

  /** Four digits of a tire could be taken for a year that never ends its life. */
  @Test
  void aTireCodeIsNotTakenForAYear() throws ProblemsFound {
    FirstProfile profile = new FirstProfile(file());
    for (Question q : Wording.english().questions()) {
      String answer = q.id().equals("tire-date") ? "2422" : q.like();
      boolean refused = profile.wants(q) && !profile.add(q, answer).isEmpty();
      assertEquals(q.id().equals("tire-date"), refused, q.id());
    }
  }

  @Test
  void nameAndKindAreAskedUntilTheyAreSaid() throws Exception {
    assertEquals(0, begin("\nRush\n\ntrailer\nTravel Trailer\n"));
    assertTrue(out.toString().contains("This one is needed"));
    assertEquals(RigKind.TRAVEL_TRAILER, Profile.read(file()).rig().identity().kind());
  }

  @Test
  void noneIsRefusedWhereEveryRigHasOne() throws Exception {
    assertEquals(0, begin(NAMED + "none\n25 ft\n"));
    assertTrue(out.toString().contains("'none' is no answer here"));
    assertTrue(Files.readString(file()).contains("length: 25 ft"));
  }

  @Test
  void blankLinesAreLeftOut() throws IOException {
    assertEquals(0, begin(NAMED + "\n".repeat(60)));
    assertEquals("rig:\n  name: Rush\n  kind: travel trailer\n", Files.readString(file()));
  }

  @Test
  void endOfInputMidwayKeepsTheAnswersSoFar() throws Exception {
    assertEquals(0, begin(NAMED + "25 ft\n10 ft 4 in"));
    Rig rig = Profile.read(file()).rig();
    assertEquals(25, rig.identity().length().value());
    assertEquals("10 ft 4 in", rig.identity().height().written());
  }

  @Test
  void nothingSaidWritesNothing() {
    assertEquals(2, begin("\n\n"));
    assertTrue(err.toString().contains("no file was written"));
    assertFalse(Files.exists(file()));
  }

  @Test
  void aCommaMakesTwoOfAList() throws ProblemsFound {
    Rig rig = answered(q -> q.id().equals("gray") ? "38 gal, 30 gal" : q.like());
    assertEquals(
        List.of(38.0, 30.0), rig.waste().gray().stream().map(g -> g.holds().value()).toList());
    assertEquals(2, rig.body().slides().size());
  }

  @Test
  void aFileThatIsThereIsLeftAsItWas() throws IOException {
    Files.writeString(file(), "mine");
    assertEquals(2, begin(NAMED));
    assertTrue(err.toString().contains("there already"));
    assertEquals("mine", Files.readString(file()));
    assertEquals("", out.toString());
  }

  @Test
  void answersThatCannotBeKeptAreShown() throws IOException {
    Files.writeString(file(), "not a folder");
    assertEquals(3, run(NAMED, "begin", file().resolve("rig.yaml").toString()), err.toString());
    assertTrue(out.toString().contains("  kind: travel trailer\n"), out.toString());
  }

  @Test
  void whatIsWrittenBuilds() throws Exception {
    assertEquals(0, begin(likes()));
    String to = folder.resolve("out").toString();
    assertEquals(0, run("", "build", file().toString(), "--out", to), err.toString());
    assertTrue(Files.size(folder.resolve("out/my-rig/binder.pdf")) > 0);
  }
}
