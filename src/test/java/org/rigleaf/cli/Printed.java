package org.rigleaf.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.rigleaf.source.ProblemsFound;

/** The finished files of the rigs that tests look at, printed once. */
public final class Printed {
  private static final Map<String, Map<String, byte[]>> DONE = new ConcurrentHashMap<>();

  private Printed() {}

  /** The PDF of a demo rig or of the smallest profile. */
  public static byte[] pdf(String rig) {
    return files(rig).get("binder.pdf");
  }

  /** The HTML of a demo rig or of the smallest profile. */
  public static Document html(String rig) {
    return Jsoup.parse(text(rig));
  }

  /** The HTML as text. */
  public static String text(String rig) {
    return new String(files(rig).get("binder.html"), StandardCharsets.UTF_8);
  }

  /** Any file by its name. */
  public static byte[] file(String rig, String name) {
    return files(rig).get(name);
  }

  /** The figures as JSON. */
  public static String figures(String rig) {
    return new String(files(rig).get("figures.json"), StandardCharsets.UTF_8);
  }

  /** Every file of a rig by its name. */
  static Map<String, byte[]> all(String rig) {
    return files(rig);
  }

  private static Map<String, byte[]> files(String rig) {
    return DONE.computeIfAbsent(rig, Printed::print);
  }

  /** Prints once more, whatever was printed before. */
  public static Map<String, byte[]> print(String rig) {
    return of(path(rig));
  }

  /** Where the profile of a demo rig or the smallest profile stands. */
  static Path path(String rig) {
    Path demo = Path.of("rig-profiles", rig + ".yaml");
    return Files.exists(demo) ? demo : Path.of("src/test/resources/profiles", rig + ".yaml");
  }

  /** Prints a profile. */
  public static Map<String, byte[]> of(Path profile) {
    try {
      return Output.of(Issuing.toBuild(Profile.read(profile), Output.TEMPLATES), new Options())
          .files();
    } catch (ProblemsFound e) {
      throw new AssertionError(e.getMessage(), e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
