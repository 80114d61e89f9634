package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rigleaf.TestData;
import org.rigleaf.source.Fields;

/** Each upgrade of the table is fitted to Sedge, and its notice holds what it must. */
class UpgradesTest {
  private static final Fields TABLE = TestData.read("../upgrades/upgrades.yaml");

  @TempDir private Path folder;

  static Stream<String> upgrades() {
    return TABLE.keys().stream();
  }

  @ParameterizedTest
  @MethodSource("upgrades")
  void theNoticeSaysWhatTheUpgradeAsks(String id) throws IOException {
    Fields upgrade = TABLE.group(id).orElseThrow();
    String sedge = Files.readString(Path.of("rig-profiles/sedge.yaml"));
    String before = upgrade.group("before").map(b -> changed(sedge, b)).orElse(sedge);
    Document notice = notice(before, second(changed(before, upgrade)));
    String told =
        notice.select("[data-told=" + id + "], [data-part=tell]").text().toLowerCase(Locale.ROOT);
    assertTrue(!told.isEmpty(), "nothing is told of " + id);
    List<String> missing =
        TestData.list(upgrade, "says").stream()
            .filter(s -> !told.contains(s.toLowerCase(Locale.ROOT)))
            .toList();
    assertEquals(List.of(), missing, told);
    TestData.list(upgrade, "figures").forEach(f -> shown(notice, f));
    notice.select("[data-part=figures] [data-was-now]").forEach(UpgradesTest::worthTelling);
  }

  /** A figure without a line of its own is told if it changed by 2 %, as exact as it is printed. */
  private static void worthTelling(Element row) {
    OptionalDouble was = first(row.select("td").get(0).text());
    OptionalDouble now = first(row.select("td").get(1).text());
    if (was.isPresent() && now.isPresent()) {
      double by = Math.abs(now.getAsDouble() - was.getAsDouble());
      assertTrue(by >= 0.015 * Math.abs(was.getAsDouble()), row.text());
    }
  }

  private static OptionalDouble first(String text) {
    Matcher number = Pattern.compile("-?\\d[\\d,]*(\\.\\d+)?").matcher(text);
    return number.lookingAt()
        ? OptionalDouble.of(Double.parseDouble(number.group().replace(",", "")))
        : OptionalDouble.empty();
  }

  /** A figure id, alone or with what it was and what it is now. */
  private static void shown(Document notice, String figure) {
    String[] parts = figure.split(" ", 2);
    String row = notice.select("[data-was-now=" + parts[0] + "]").text();
    assertTrue(!row.isEmpty(), "no row of " + figure);
    assertTrue(parts.length == 1 || row.contains(parts[1]), row);
  }

  private static String changed(String profile, Fields upgrade) {
    String from = TestData.text(upgrade, "from");
    assertTrue(profile.contains(from), from);
    return profile.replace(from, TestData.text(upgrade, "to"));
  }

  private static String second(String profile) {
    return profile.replace("number: 1\n  date: 2026-05-02", "number: 2\n  date: 2026-09-12");
  }

  private Document notice(String before, String now) throws IOException {
    Path rig = folder.resolve("sedge.yaml");
    Profile first = profile(rig, before);
    first.editions().keep(Issuing.of(first, Output.TEMPLATES).now().orElseThrow());
    Files.writeString(rig, now);
    StringWriter err = new StringWriter();
    String out = folder.resolve("out").toString();
    int code =
        Main.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true),
            "compare",
            rig.toString(),
            "--out",
            out);
    assertEquals(0, code, err.toString());
    return Jsoup.parse(Files.readString(folder.resolve("out/sedge/notice.html")));
  }

  private static Profile profile(Path rig, String text) throws IOException {
    Files.writeString(rig, text);
    try {
      return Profile.read(rig);
    } catch (org.rigleaf.source.ProblemsFound e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }
}
