package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command as a keeper meets it: exit codes, messages, files. */
class MainTest {
  private static final String GOOD = "src/test/resources/profiles/bulrush.yaml";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
  }

  private String profile(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private List<String> files(Path where) throws IOException {
    if (!Files.exists(where)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(where)) {
      return new ArrayList<>(
          all.filter(Files::isRegularFile)
              .map(p -> where.relativize(p).toString())
              .sorted()
              .toList());
    }
  }

  @Test
  void aGoodProfileGivesHtmlAndPdfInAFolderOfItsName() throws IOException {
    Path to = folder.resolve("out");
    assertEquals(0, run("build", GOOD, "--out", to.toString()), err.toString());
    assertEquals(
        List.of(
            "bulrush/binder.html",
            "bulrush/binder.pdf",
            "bulrush/cards.html",
            "bulrush/cards.pdf",
            "bulrush/figures.json",
            "bulrush/labels.html",
            "bulrush/labels.pdf",
            "bulrush/upkeep.ics",
            "bulrush/walk-through.html",
            "bulrush/walk-through.pdf"),
        files(to));
  }

  @Test
  void aMistakenProfileIsNamedWithItsLineAndNothingIsWritten() throws IOException {
    Path to = folder.resolve("out");
    assertEquals(
        1,
        run("build", "src/test/resources/mistaken/wrong-dimension.yaml", "--out", to.toString()));
    assertTrue(
        err.toString()
            .contains("wrong-dimension.yaml:3:18: water.fresh.holds: '42 psi' is a pressure"),
        err.toString());
    assertEquals(List.of(), files(to));
  }

  @Test
  void aBadProfileDoesNotStopAGoodOne() throws IOException {
    Path to = folder.resolve("out");
    assertEquals(
        1,
        run(
            "build",
            "src/test/resources/mistaken/empty.yaml",
            GOOD,
            "--out",
            to.toString(),
            "--sheets",
            "labels"));
    assertTrue(files(to).contains("bulrush/labels.pdf"));
  }

  @Test
  void aMissingFileAndAWrongWordAreWrongUsage() {
    assertEquals(2, run("build", "no-such-rig.yaml"));
    assertTrue(err.toString().contains("no-such-rig.yaml: no such file"));
    assertEquals(2, run("bild", GOOD));
    assertEquals(2, run("build"));
    assertEquals(2, run());
  }

  @Test
  void aFolderThatCannotBeMadeIsTheMachinesFaultAndPrintsNoStackTrace() throws IOException {
    String file = profile("in-the-way", "not a folder");
    assertEquals(3, run("build", GOOD, "--out", file, "--sheets", "labels"), err.toString());
    assertFalse(err.toString().contains("\tat "), err.toString());
  }

  @Test
  void aSignThatNoFontHasIsNamedWithItsLineAndNothingIsWritten() throws IOException {
    String odd =
        profile(
            "odd.yaml",
            "rig: {name: Rush, kind: travel trailer}\nhouse-rules: [\"No \uD83D\uDEBF after ten.\"]\n");
    Path to = folder.resolve("out");
    assertEquals(1, run("build", odd, "--out", to.toString()));
    assertTrue(
        err.toString().contains("odd.yaml:2:15: house-rules: no font here has the character")
            && err.toString().contains("(U+1F6BF, SHOWER)"),
        err.toString());
    assertEquals(List.of(), files(to));
  }

  @ParameterizedTest
  @CsvSource({"\\a, U+0007", "\\e, ESCAPE", "\\0, NULL", "\\uD800, SURROGATES", "\\uFFFE, U+FFFE"})
  void whatIsNoSignAtAllIsAProblemOfTheProfile(String escape, String name) throws IOException {
    String odd =
        profile(
            "odd.yaml",
            "rig: {name: Rush, kind: travel trailer}\nhouse-rules: [\"Quiet" + escape + "\"]\n");
    Path to = folder.resolve("out");
    assertEquals(1, run("build", odd, "--out", to.toString()), err.toString());
    assertTrue(err.toString().contains("odd.yaml:2:15: house-rules: no font"), err.toString());
    assertTrue(err.toString().contains(name), err.toString());
    assertTrue(err.toString().strip().chars().allMatch(c -> c >= ' '), "nothing steers a terminal");
    assertEquals(List.of(), files(to));
  }

  @Test
  void everyValueWithASignThatNoFontHasIsNamedAndNoComment() throws IOException {
    String odd =
        profile(
            "odd.yaml",
            "# \uD83D\uDEBF\nrig: {name: Rush, kind: travel trailer}\n"
                + "electric:\n  panel: {where: by the \uD83D\uDEBF}\n"
                + "house-rules: [Be quiet., \"No \\U0001F6BF now.\"]\n");
    assertEquals(1, run("build", odd, "--out", folder.resolve("out").toString()));
    List<String> where = err.toString().lines().map(l -> l.replaceAll(": no font.*", "")).toList();
    assertEquals(List.of(odd + ":4:18: electric.panel.where", odd + ":5:26: house-rules"), where);
  }

  @Test
  void aStackTracePrintsOnlyWhenAskedFor() throws IOException {
    String file = profile("in-the-way", "not a folder");
    assertEquals(3, run("--trace", "build", GOOD, "--out", file, "--sheets", "labels"));
    assertTrue(err.toString().contains("\tat org.rigleaf."), err.toString());
  }

  @Test
  void aFolderIsNoProfileAndAnUnknownOptionIsWrongUsage() {
    assertEquals(2, run("build", folder.toString()));
    assertEquals(2, run("build", GOOD, "--in", "x"));
    assertEquals(2, run("explain", GOOD));
    assertFalse(err.toString().contains("\tat "), err.toString());
  }

  @Test
  void theLastGoodSetStaysWhenTheProfileBreaks() throws IOException {
    Path to = folder.resolve("out");
    String rig = profile("rush.yaml", "rig: {name: Rush, kind: travel trailer}\n");
    assertEquals(0, run("build", rig, "--out", to.toString()));
    byte[] before = Files.readAllBytes(to.resolve("rush/binder.pdf"));
    profile("rush.yaml", "rig: {name: Rush, kind: boat}\n");
    assertEquals(1, run("build", rig, "--out", to.toString()));
    org.junit.jupiter.api.Assertions.assertArrayEquals(
        before, Files.readAllBytes(to.resolve("rush/binder.pdf")));
  }

  @Test
  void checkTellsFindingsAndWhatIsUnknown() {
    assertEquals(0, run("check", GOOD));
    assertTrue(out.toString().contains("Wheel chocks: not listed for this rig."), out.toString());
    assertTrue(
        out.toString()
            .matches("(?s).*\\d+ safety facts and \\d+ others unknown; next most useful: .*"),
        out.toString());
  }

  @Test
  void checkNamesTiresPastTheirAgeAGeneratorTooSmallToStartTheAirConditionerAndUpkeepThatIsLate() {
    assertEquals(0, run("check", "rig-profiles/cattail.yaml"));
    assertTrue(out.toString().contains("Tires, front axle: 7.1 years old."), out.toString());
    assertTrue(
        out.toString().contains("takes 5,200 W to start, and the generator gives 4,000 W"),
        out.toString());
    assertTrue(
        out.toString().contains("attention: Engine battery: was due 31 March 2026."),
        out.toString()); // the log says March 2025, the edition 18 April 2026
  }

  @Test
  void checkDoubtsASpotWhereNoWallIs() throws IOException {
    profile(
        "rush.yaml",
        "rig: {name: Rush, kind: travel trailer, axles: [14 ft]}\n"
            + "water: {city-inlet: {at: street 14 ft up 1 ft}, fill: {at: street 10 ft up 3 ft}}\n");
    assertEquals(0, run("check", folder.toString()));
    List<String> doubts = out.toString().lines().filter(l -> l.contains("measure")).toList();
    assertEquals(List.of("  measure again: line 2: water.city-inlet.at is on a wheel"), doubts);
  }

  /** Two rigs of the fleet carry a finding on purpose; the others are as they should be. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pickerelweed | 0",
        "duckweed | 1 Tires, axle 1: 8.9 years old.", // week 21 of 2017 to 2026-04-30
        "bogbean | 0",
        "sweetgale | 0",
        "spikerush | 1 Carbon monoxide alarm: was to be replaced by 30 September 2025.",
        "horsetail | 0",
        "sedge | 0"
      })
  void theFleetHasNoProblemsAndOnlyTheFindingsMeantForIt(String rig, String found) {
    assertEquals(0, run("check", "rig-profiles/" + rig + ".yaml"));
    assertTrue(out.toString().contains(rig + ".yaml: no problems"), out.toString());
    List<String> findings = out.toString().lines().filter(l -> l.matches("  [a-z]+: .*")).toList();
    assertEquals(found.substring(0, 1), String.valueOf(findings.size()), findings.toString());
    assertTrue(findings.toString().contains(found.substring(1).strip()), findings.toString());
  }

  @Test
  void aFolderMeansItsProfilesAndALogIsReadWithItsProfile() throws IOException {
    profile("rush.yaml", "rig: {name: Rush, kind: travel trailer}\n");
    profile("reed.yaml", "rig: {name: Reed, kind: class b}\n");
    profile("rush.log.yaml", "weighed: {axles: 4980 lb, hitch: 640 lb}\n");
    assertEquals(0, run("check", folder.toString()));
    List<String> checked = out.toString().lines().filter(l -> l.contains("no problems")).toList();
    assertEquals(2, checked.size(), out.toString());
    assertEquals(0, run("explain", folder.resolve("rush.yaml").toString(), "hitch.weight"));
    assertTrue(out.toString().contains("640 lb"), out.toString());
    profile("rush.log.yaml", "wieghed: {axles: 4980 lb}\n");
    assertEquals(1, run("check", folder.toString()));
    assertTrue(err.toString().contains("rush.log.yaml:1:1: wieghed: "), err.toString());
    assertTrue(err.toString().contains("did you mean 'weighed'?"), err.toString());
  }

  @Test
  void aFolderWithoutAProfileIsWrongUsage() throws IOException {
    profile("rush.log.yaml", "weighed: {axles: 4980 lb}\n");
    assertEquals(2, run("check", folder.toString()));
    assertTrue(err.toString().contains("no profile"), err.toString());
  }

  @Test
  void explainShowsWorkingSourceAndWhereTheInputsStand() {
    assertEquals(0, run("explain", "rig-profiles/sedge.yaml", "bank.energy"));
    assertTrue(out.toString().contains("12 V × 215 Ah = 2,580 Wh"), out.toString());
    assertEquals(0, run("explain", "rig-profiles/sedge.yaml", "bank.voltage"));
    assertTrue(
        out.toString()
            .matches(
                "(?s).*each = 6 V, rig-profiles/sedge.yaml:\\d+:\\d+ electric.batteries.each.voltage.*"),
        out.toString());
    assertEquals(0, run("explain", "rig-profiles/sedge.yaml", "bank.usable"));
    assertTrue(out.toString().contains("typical value usable.lead"), out.toString());
  }

  @Test
  void explainSaysWhatAnAbsentFigureLacksAndWhatAMisspeltOneMeant() {
    assertEquals(2, run("explain", GOOD, "lp.cylinder.full-weight"));
    assertTrue(err.toString().contains("propane.cylinders.cylinder.tare"), err.toString());
    assertEquals(2, run("explain", GOOD, "bank.usible"));
    assertTrue(err.toString().contains("did you mean 'bank.usable'?"), err.toString());
  }

  @Test
  void aFileWhereOneRigsFolderShouldBeDoesNotStopTheNextRig() throws IOException {
    Path to = Files.createDirectories(folder.resolve("fleet"));
    Files.writeString(to.resolve("rush"), "in the way");
    String rush = profile("rush.yaml", "rig: {name: Rush, kind: travel trailer}\n");
    assertEquals(3, run("build", rush, GOOD, "--out", to.toString(), "--sheets", "labels"));
    assertTrue(err.toString().contains("move the file that stands where the folder should be"));
    assertTrue(files(to).contains("bulrush/labels.pdf"));
    assertTrue(files(to).stream().noneMatch(f -> f.endsWith(".part")));
  }
}
