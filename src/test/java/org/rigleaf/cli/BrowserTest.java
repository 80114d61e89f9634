package org.rigleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.provider.Arguments;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * Every HTML page in Chromium without a network, by axe-core, an independent program: no violation,
 * no address asked for, no sideways scrolling at 400 px nor at 200 % zoom, and all of it prints.
 */
class BrowserTest {
  private static final Path SCRIPTS = Path.of("src/test/node");
  private static final Path NODE = Path.of("target/node");
  private static final long LONGEST_MIN = 6;

  @TempDir private static Path folder;
  private static final Map<String, JsonNode> SEEN = new TreeMap<>();

  @BeforeAll
  static void openEveryPage() throws Exception {
    for (Object[] page : opened()) {
      byte[] html = EverySheet.file((String) page[0], (String) page[1]);
      Files.write(folder.resolve(page[0] + "-" + page[1]), html);
    }
    Files.writeString(folder.resolve("wrong.html"), WRONG);
    install();
    String told = run(NODE, program("node"), "pages.mjs", folder.toString(), chromium());
    ObjectMapper json = new ObjectMapper();
    told.lines().map(json::readTree).forEach(n -> SEEN.put(n.get("name").asString(), n));
  }

  /** The largest page, the binder, of one rig only: it has the same templates in both. */
  private static List<Object[]> opened() {
    return EverySheet.pages()
        .map(Arguments::get)
        .filter(p -> !(p[0].equals("spikerush") && p[1].equals("binder.html")))
        .toList();
  }

  private static void install() throws Exception {
    Files.createDirectories(NODE);
    for (String file : List.of("package.json", "package-lock.json", "pages.mjs")) {
      Files.write(NODE.resolve(file), Files.readAllBytes(SCRIPTS.resolve(file)));
    }
    run(NODE, program("npm"), "ci", "--silent", "--no-audit", "--no-fund");
  }

  private static String chromium() {
    return program("chromium", "chromium-browser", "google-chrome");
  }

  /** Where a program is that this test cannot do without. */
  private static String program(String... names) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .flatMap(p -> Stream.of(names).map(n -> p + "/" + n))
        .filter(p -> Files.isExecutable(Path.of(p)))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    "no " + names[0] + ": apt-get install " + names[0] + ", or run .ci/run"));
  }

  private static String run(Path in, String... command) throws Exception {
    Path errors = folder.resolve("errors.txt");
    Process process =
        new ProcessBuilder(command).directory(in.toFile()).redirectError(errors.toFile()).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(LONGEST_MIN, TimeUnit.MINUTES), "too slow: " + command[0]);
    assertEquals(0, process.exitValue(), out + Files.readString(errors));
    return out;
  }

  private static Map<String, JsonNode> pages() {
    Map<String, JsonNode> pages = new TreeMap<>(SEEN);
    pages.remove("wrong.html");
    assertEquals(opened().size(), pages.size());
    return pages;
  }

  private static void none(String what) {
    pages().forEach((name, page) -> assertEquals("[]", page.get(what).toString(), name));
  }

  @Test
  void axeFindsNoViolation() {
    none("violations");
    pages().forEach((name, page) -> assertTrue(page.get("passed").asInt() > 10, name));
  }

  @Test
  void nothingIsAskedForFromOutside() {
    none("asked");
  }

  @Test
  void noPageIsWiderThanATelephoneNorThanAWindowAtTwiceTheSize() {
    none("overflowing");
  }

  /** A page with one fault of each kind, so that the checks above can fail. */
  private static final String WRONG =
      """
      <!DOCTYPE html><html lang="en"><head><title>wrong</title></head><body><main><h1>Wrong</h1>
      <p style="color: #bbb">pale</p><div style="width: 900px">wide</div>
      <img alt="" src="http://heron-flats.example/a.png"></main></body></html>
      """;

  @Test
  void everyKindOfFaultIsFound() {
    JsonNode wrong = SEEN.get("wrong.html");
    assertTrue(wrong.get("violations").toString().contains("color-contrast"), wrong.toString());
    assertEquals(2, wrong.get("overflowing").size());
    assertTrue(wrong.get("asked").toString().contains("a.png"));
  }

  @Test
  void theBrowserPrintsEveryHeading() throws IOException {
    for (String name : pages().keySet()) {
      String printed = text(folder.resolve(name.replace(".html", ".printed.pdf")));
      List<String> lost =
          Jsoup.parse(Files.readString(folder.resolve(name)))
              .select("h1, h2, h3")
              .eachText()
              .stream()
              .filter(h -> !printed.contains(bare(h)))
              .toList();
      assertEquals(List.of(), lost, name);
    }
  }

  private static String text(Path file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      return bare(new PDFTextStripper().getText(pdf));
    }
  }

  private static String bare(String text) {
    return text.replaceAll("\\s", "");
  }
}
