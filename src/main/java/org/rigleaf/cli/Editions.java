package org.rigleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.sheets.Issued;
import org.rigleaf.source.Position;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;

/**
 * The issued editions that stand beside a profile, {@code sedge.editions/1.json} and so on, first
 * to last.
 */
record Editions(Path folder, List<Issued> all) {
  /**
   * Reads them; none if nothing was issued yet.
   *
   * @throws ProblemsFound if a file there is not the record of an edition
   */
  static Editions beside(Path profile, String name) throws IOException, ProblemsFound {
    Path folder = profile.resolveSibling(name + ".editions");
    List<Issued> all = new ArrayList<>();
    Problems problems = new Problems();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
          Optional<Issued> issued =
              Issued.parse(new String(Files.readAllBytes(file), StandardCharsets.UTF_8))
                  .filter(i -> file.endsWith(i.number() + ".json"));
          issued.ifPresentOrElse(all::add, () -> unreadable(file, problems));
        }
      }
    }
    if (!problems.none()) {
      throw new ProblemsFound(problems.sorted());
    }
    all.sort(Comparator.comparingInt(Issued::number));
    return new Editions(folder, List.copyOf(all));
  }

  private static void unreadable(Path file, Problems problems) {
    problems.add(
        Position.start(file.toString()),
        "",
        "this is not the record of an issued edition",
        "restore the file as 'rigleaf issue' wrote it");
  }

  /** The last one issued. */
  Optional<Issued> last() {
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
  }

  /** The one with this number. */
  Optional<Issued> of(int number) {
    return all.stream().filter(i -> i.number() == number).findFirst();
  }

  /** The last one with a smaller number. */
  Optional<Issued> before(int number) {
    return all.stream().filter(i -> i.number() < number).reduce((first, second) -> second);
  }

  /** Codes of all gear that any edition had. */
  Map<String, String> gearCodes() {
    return last().<Map<String, String>>map(Issued::gearCodes).orElse(Map.of());
  }

  /** Codes of all topics that any edition had. */
  Map<String, String> topicCodes() {
    return last().<Map<String, String>>map(Issued::topicCodes).orElse(Map.of());
  }

  /**
   * Keeps a new edition beside the profile, written whole and moved into place.
   *
   * @return the file
   */
  Path keep(Issued issued) throws IOException {
    String name = issued.number() + ".json";
    new Output(Map.of(name, issued.json().getBytes(StandardCharsets.UTF_8))).writeTo(folder);
    return folder.resolve(name);
  }
}
