package org.rigleaf.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/**
 * Every kind of document of two rigs, made by the command line as its users make them: the second
 * edition of Sedge with its notice, on Letter; Spikerush on A4, in metric units, a card a page.
 */
public final class EverySheet {
  private static final Map<String, Map<String, byte[]>> DONE = new ConcurrentHashMap<>();

  private EverySheet() {}

  /** Rig and name of each PDF. */
  public static Stream<Arguments> pdfs() {
    return named(".pdf");
  }

  /** Rig and name of each HTML page. */
  public static Stream<Arguments> pages() {
    return named(".html");
  }

  private static Stream<Arguments> named(String end) {
    return Stream.of("sedge", "spikerush")
        .flatMap(
            rig ->
                files(rig).keySet().stream()
                    .filter(f -> f.endsWith(end))
                    .map(f -> Arguments.of(rig, f)));
  }

  /** The bytes of one. */
  public static byte[] file(String rig, String name) {
    return files(rig).get(name);
  }

  /** All files of one rig, by name. */
  public static Map<String, byte[]> files(String rig) {
    return DONE.computeIfAbsent(rig, EverySheet::make);
  }

  private static Map<String, byte[]> make(String rig) {
    try {
      Path folder = Files.createTempDirectory("every-sheet");
      String text = Files.readString(Path.of("rig-profiles", rig + ".yaml"));
      Path profile = Files.writeString(folder.resolve(rig + ".yaml"), text);
      String sheets = String.join(",", Sheets.names());
      if (rig.equals("sedge")) {
        run("issue", profile, "--out", folder + "/first");
        Files.writeString(profile, second(text));
        run("build", profile, "--out", folder + "/out", "--sheets", sheets);
      } else {
        String[] abroad = {"--paper", "a4", "--units", "metric", "--single"};
        run("build", profile, "--out", folder + "/out", "--sheets", sheets, abroad);
      }
      return read(folder.resolve("out").resolve(rig));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Sedge with a larger tank and another alarm. */
  private static String second(String sedge) {
    return sedge
        .replace("number: 1\n  date: 2026-05-02", "number: 2\n  date: 2026-09-12")
        .replace("fresh: {holds: 42 gal", "fresh: {holds: 50 gal")
        .replace("replace-by: 2029-01", "replace-by: 2034-01");
  }

  private static void run(String command, Path profile, String a, String b, Object... more) {
    List<String> args = new ArrayList<>(List.of(command, profile.toString(), a, b));
    for (Object m : more) {
      args.addAll(m instanceof String[] list ? List.of(list) : List.of((String) m));
    }
    StringWriter err = new StringWriter();
    PrintWriter out = new PrintWriter(new StringWriter());
    int code = Main.run(out, new PrintWriter(err, true), args.toArray(String[]::new));
    if (code != 0) {
      throw new AssertionError(err.toString());
    }
  }

  private static Map<String, byte[]> read(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path file : all.toList()) {
        files.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }
}
