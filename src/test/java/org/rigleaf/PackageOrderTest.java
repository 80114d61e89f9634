package org.rigleaf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The eight packages, from the lowest; an import may only point down this list. */
class PackageOrderTest {
  private static final List<String> ORDER =
      List.of("source", "rig", "figures", "drawings", "guidance", "sheets", "print", "cli");
  private static final Path ROOT = Path.of("src/main/java/org/rigleaf");
  private static final Pattern USE = Pattern.compile("org\\.rigleaf\\.([a-z]+)\\.");

  @Test
  void noPackageUsesOneAboveIt() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (Path file : files()) {
      String own = ROOT.relativize(file).getName(0).toString();
      Matcher use = USE.matcher(Files.readString(file));
      while (use.find()) {
        if (ORDER.indexOf(use.group(1)) > ORDER.indexOf(own)) {
          wrong.add(file + " uses " + use.group(1));
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void everyFileStandsInOneOfTheEightPackages() throws IOException {
    assertTrue(
        files().stream().allMatch(f -> ORDER.contains(ROOT.relativize(f).getName(0).toString())));
    assertTrue(ORDER.stream().allMatch(p -> Files.isDirectory(ROOT.resolve(p))));
  }

  @Test
  void onlyPrintKnowsFreemarkerAndTheRenderer() throws IOException {
    List<Path> others =
        files().stream()
            .filter(f -> !f.startsWith(ROOT.resolve("print")))
            .filter(PackageOrderTest::rendering)
            .toList();
    assertEquals(List.of(), others);
  }

  private static boolean rendering(Path file) {
    try {
      String text = Files.readString(file);
      return text.contains("freemarker.")
          || text.contains("openhtmltopdf")
          || text.contains("pdfbox");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(ROOT)) {
      return all.filter(p -> p.toString().endsWith(".java")).toList();
    }
  }
}
