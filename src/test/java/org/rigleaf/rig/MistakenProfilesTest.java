package org.rigleaf.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.rigleaf.source.Node;
import org.rigleaf.source.Picture;
import org.rigleaf.source.Problem;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;
import org.rigleaf.source.Yaml;

/** Pairs of a mistaken profile and the exact problems it gives, found by listing the folder. */
class MistakenProfilesTest {
  private static final Path FOLDER = Path.of("src/test/resources/mistaken");

  @TestFactory
  Stream<DynamicTest> eachMistakeIsNamedWithItsPlaceAndCure() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(FOLDER)) {
      files = all.filter(p -> p.toString().endsWith(".yaml")).sorted().toList();
    }
    assertTrue(files.size() >= 15, "the folder holds the mistaken profiles");
    return files.stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> check(p)));
  }

  private static void check(Path profile) throws IOException {
    Path expected = Path.of(profile.toString().replace(".yaml", ".problems"));
    String found =
        problems(profile).stream().map(Problem::toString).collect(Collectors.joining("\n"));
    assertEquals(Files.readString(expected).strip(), found);
  }

  private static List<Problem> problems(Path profile) throws IOException {
    Problems problems = new Problems();
    Optional<Node> root = Yaml.read(profile, profile.getFileName().toString(), problems);
    if (!problems.none()) {
      return problems.sorted();
    }
    try {
      Rig.read(
          root.orElseThrow(),
          Optional.empty(),
          Map.of(),
          Vocabulary.NONE,
          f -> Picture.read(profile.toAbsolutePath().getParent(), f));
      return List.of();
    } catch (ProblemsFound e) {
      return e.problems();
    }
  }
}
