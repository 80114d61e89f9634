package org.rigleaf.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.guidance.Question;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Join;
import org.rigleaf.source.Node;
import org.rigleaf.source.NormalYaml;
import org.rigleaf.source.Position;
import org.rigleaf.source.Problem;
import org.rigleaf.source.ProblemsFound;

/** A profile that grows answer by answer; each is tested by reading what would be written. */
final class FirstProfile {
  private static final Position NOWHERE = Position.start("");

  private final Path file;
  private Node.Mapping root;
  private Reading state;
  private int answers;

  /** What comes of reading the text: a rig, or what it lacks. */
  private record Reading(Optional<Rig> rig, List<Problem> problems) {}

  /** Begins without an answer. */
  FirstProfile(Path file) {
    Node empty = new Node.Mapping(Map.of(), NOWHERE);
    this.file = file;
    this.root =
        new Node.Mapping(
            new LinkedHashMap<>(Map.of("rig", new Node.Entry(NOWHERE, empty))), NOWHERE);
    this.state = read(root);
  }

  /** Whether a question still makes sense after the answers so far. */
  boolean wants(Question question) {
    return !Join.taken(root, question.writes())
        && state.rig().map(r -> question.condition().holds(r::has)).orElse(true);
  }

  /** Takes an answer, unless it brings a problem that was not there before. */
  List<Problem> add(Question question, String answer) {
    Node.Mapping next = Join.of(root, question.piece(answer));
    Reading reading = read(next);
    List<Problem> added = reading.problems().stream().filter(p -> !known(p)).toList();
    if (added.isEmpty()) {
      root = next;
      state = reading;
      answers++;
    }
    return added;
  }

  private boolean known(Problem problem) {
    return state.problems().stream()
        .anyMatch(p -> p.key().equals(problem.key()) && p.wrong().equals(problem.wrong()));
  }

  private Reading read(Node.Mapping profile) {
    try {
      return new Reading(Optional.of(Profile.draft(file, text(profile))), List.of());
    } catch (ProblemsFound e) {
      return new Reading(Optional.empty(), e.problems());
    }
  }

  /** How many questions were answered. */
  int answers() {
    return answers;
  }

  /** What the file will hold. */
  String text() {
    return text(root);
  }

  private static String text(Node.Mapping profile) {
    return NormalYaml.text(profile, Set.of());
  }
}
