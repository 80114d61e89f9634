package org.rigleaf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Photo;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Node;
import org.rigleaf.source.Picture;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;
import org.rigleaf.source.Yaml;

/** Rigs for tests. */
public final class TestRigs {
  private TestRigs() {}

  /** A rig from the text of a profile that must be right. */
  public static Rig of(String yaml) {
    return read(yaml, Optional.empty(), TestRigs::noPhotos);
  }

  /** A rig from the texts of a profile and its log. */
  public static Rig of(String yaml, String log) {
    return read(yaml, Optional.of(log), TestRigs::noPhotos);
  }

  private static Rig read(String yaml, Optional<String> log, Photo.Shelf shelf) {
    try {
      Problems problems = new Problems();
      Optional<Node> root = node(yaml, "test.yaml", problems);
      Optional<Node> notes = log.flatMap(l -> node(l, "test.log.yaml", problems));
      if (!problems.none()) {
        throw new ProblemsFound(problems.sorted());
      }
      return Rig.read(root.orElse(null), notes, Map.of(), Wording.english().vocabulary(), shelf);
    } catch (ProblemsFound e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  private static Optional<Node> node(String yaml, String file, Problems problems) {
    return Yaml.read(yaml.getBytes(StandardCharsets.UTF_8), file, problems);
  }

  /** A profile in a text has no folder. */
  private static Picture noPhotos(String file) {
    throw new AssertionError(file);
  }

  /** A rig of the demo fleet. */
  public static Rig demo(String name) {
    Path folder = Path.of("rig-profiles");
    String yaml = text(folder.resolve(name + ".yaml"));
    return read(yaml, Optional.empty(), file -> Picture.read(folder, file));
  }

  /** The names of the demo fleet, read off the folder. */
  public static Stream<String> fleet() {
    try (Stream<Path> files = Files.list(Path.of("rig-profiles"))) {
      List<String> names = files.map(f -> f.getFileName().toString()).sorted().toList();
      return names.stream()
          .filter(n -> n.matches("[a-z]+\\.yaml"))
          .map(n -> n.substring(0, n.length() - ".yaml".length()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The demo fleet and the smallest useful profile. */
  public static Stream<String> all() {
    return Stream.concat(fleet(), Stream.of("bulrush"));
  }

  /** The smallest useful profile. */
  public static Rig smallest() {
    return of(text(Path.of("src/test/resources/profiles/bulrush.yaml")));
  }

  private static String text(Path path) {
    try {
      return Files.readString(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
