package org.rigleaf.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The page for keepers names every key of the format, and its smallest profile is the one the tests
 * build.
 */
class ProfilePageTest {
  private static final Path PAGE = Path.of("docs/profile.md");

  @Test
  void everyKeyOfTheFormatStandsOnThePage() throws IOException {
    String page = Ids.of(Files.readString(PAGE));
    List<String> silent =
        Rig.possibleTraits().stream()
            .map(Ids::last)
            .distinct()
            .filter(word -> !page.contains(word))
            .toList();
    assertEquals(List.of(), silent);
  }

  @Test
  void theSmallestProfileOfThePageIsTheOneTheTestsBuild() throws IOException {
    String smallest = Files.readString(Path.of("src/test/resources/profiles/bulrush.yaml")).strip();
    assertTrue(Files.readString(PAGE).contains("```yaml\n" + smallest + "\n```"));
    assertTrue(smallest.lines().count() <= 40, "about 25 lines with short ones joined");
  }
}
