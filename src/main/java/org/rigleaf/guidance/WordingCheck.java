package org.rigleaf.guidance;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.TreeSet;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Nearest;
import org.rigleaf.source.Position;
import org.rigleaf.source.Problems;

/**
 * What the loader of the wording knows of the program: possible traits, gear, facts, figures,
 * cautions.
 */
final class WordingCheck {
  /** What the sheets can draw of figures. */
  static final Set<String> PLOTS = Set.of("bank", "sun", "lasts", "together", "level");

  /** What the sheets can draw of the rig itself. */
  static final Set<String> DRAWINGS =
      Set.of(
          "plan",
          "breakers",
          "fuses",
          "monitor",
          "mains",
          "battery",
          "bank",
          "water-use",
          "water-fill",
          "water-winter",
          "drains",
          "propane");

  final Problems problems = new Problems();
  final Set<String> traits = Traits.possible();
  private final Set<String> gear = Rig.possibleGear();
  private final Set<String> cautions = new LinkedHashSet<>();
  private final Set<String> topics = new LinkedHashSet<>();

  void cautionExists(String id) {
    cautions.add(id);
  }

  void topicExists(String id) {
    topics.add(id);
  }

  void problem(Position at, String path, String wrong, String cure) {
    problems.add(at, path, wrong, cure);
  }

  void figure(Position at, String path, String id) {
    if (!TextTemplate.figureExists(id)) {
      problem(at, path, "no figure '" + id + "'", "use an id of the register");
    }
  }

  void gear(Position at, String path, String id) {
    boolean known =
        gear.stream().anyMatch(g -> id.equals(g) || id.startsWith(g + ".")) || traits.contains(id);
    if (!id.startsWith(".") && !known) {
      problem(at, path, "no gear '" + id + "'", cure(id, gear));
    }
  }

  void fact(Position at, String path, String id) {
    if (!Condition.known(id, traits)) {
      problem(at, path, "no fact '" + id + "'", cure(id, traits));
    }
  }

  void caution(Position at, String path, String id) {
    if (!cautions.contains(id)) {
      problem(at, path, "no caution '" + id + "'", cure(id, cautions));
    }
  }

  void topic(Position at, String path, String id) {
    if (!topics.contains(id)) {
      problem(at, path, "no topic '" + id + "'", cure(id, topics));
    }
  }

  void picture(Position at, String path, String of, Set<String> known) {
    if (!known.contains(of)) {
      problem(at, path, "no picture of '" + of + "'", "use one of " + new TreeSet<>(known));
    }
  }

  private static String cure(String id, Set<String> known) {
    return Nearest.to(id, known)
        .map(n -> "did you mean '" + n + "'?")
        .orElse("use a path of the profile");
  }
}
