package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Does what docs/notice-example.md tells a keeper to do, and finds what it says the notice says.
 */
class NoticeExampleTest {
  private static final Path PAGE = Path.of("docs/notice-example.md");
  private static final Pattern YAML = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);
  private static final Pattern FIGURE =
      Pattern.compile("(?m)^\\| `([^`]+)` \\| ([^|]+) \\| ([^|]+) \\|$");
  private static final Pattern TOLD = Pattern.compile("(?m)^\\| ([a-z][a-z ]+) \\| ([^|]+) \\|$");

  @TempDir private Path folder;

  @Test
  void theNoticeSaysWhatThePageSays() throws IOException {
    String page = Files.readString(PAGE);
    Document notice = notice(page);
    List<String> wrong = new ArrayList<>();
    for (MatchResult figure : FIGURE.matcher(page).results().toList()) {
      String row = notice.select("[data-was-now=" + figure.group(1) + "]").text();
      if (!row.contains(figure.group(2) + " " + figure.group(3))) {
        wrong.add(figure.group() + ", but: " + row);
      }
    }
    String text = notice.text();
    for (MatchResult told : TOLD.matcher(page).results().toList()) {
      for (String sentence : told.group(2).split("(?<=\\.) ")) {
        if (!text.contains(sentence.replaceAll("\\.$", ""))) {
          wrong.add(told.group(1) + ": " + sentence);
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(FIGURE.matcher(page).results().count() >= 2);
    assertTrue(TOLD.matcher(page).results().count() >= 5);
  }

  private Document notice(String page) throws IOException {
    List<String> blocks = YAML.matcher(page).results().map(m -> m.group(1)).toList();
    String sedge = Files.readString(Path.of("rig-profiles/sedge.yaml"));
    Path rig = Files.writeString(folder.resolve("sedge.yaml"), sedge);
    run("issue", rig.toString(), "--out", folder + "/first", "--sheets", "stay");
    Files.writeString(
        rig, put(put(sedge, blocks.get(0), blocks.get(1)), blocks.get(2), blocks.get(3)));
    run("compare", rig.toString(), "--since", "1", "--out", folder + "/out");
    return Jsoup.parse(Files.readString(folder.resolve("out/sedge/notice.html")));
  }

  private static String put(String profile, String was, String is) {
    assertTrue(profile.contains(was), "not in sedge.yaml: " + was);
    return profile.replace(was, is);
  }

  private static void run(String... args) {
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err, true), args);
    assertEquals(0, code, err.toString());
  }
}
