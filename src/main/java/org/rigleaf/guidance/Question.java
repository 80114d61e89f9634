package org.rigleaf.guidance;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;
import org.rigleaf.source.Position;

/**
 * A question to a keeper who has no profile yet.
 *
 * @param like an answer that would do
 * @param writes the piece of profile, with ANSWER where the answer goes
 * @param none the piece for the answer 'none'; empty if every rig has such a thing
 * @param needed whether a profile cannot be read without it
 * @param choices the closed list of answers; empty if the keeper is free
 * @param condition of the rigs that are asked, by what the profile says so far
 */
public record Question(
    String id,
    String ask,
    String like,
    Node.Mapping writes,
    Optional<Node.Mapping> none,
    boolean needed,
    List<String> choices,
    Condition condition) {
  private static final String ANSWER = "ANSWER";

  static Question read(String id, Fields entry, WordingCheck check) {
    Question question =
        new Question(
            id,
            entry.text("ask").map(Node.Text::value).orElse(""),
            entry.text("like").map(Node.Text::value).orElse(""),
            piece(entry, "writes").orElse(new Node.Mapping(Map.of(), Position.start(""))),
            piece(entry, "none"),
            entry.text("needed").isPresent(),
            entry
                .text("choices")
                .map(t -> check.choices(t.at(), entry.pathOf("choices"), t.value()))
                .orElse(List.of()),
            Condition.read(entry, check.given, check.problems));
    entry.finish();
    if (question.ask.isEmpty() || question.like.isEmpty() || !holds(question.writes)) {
      check.problem(entry.at(), id, "a question needs ask, like, and ANSWER in writes", "add it");
    }
    return question;
  }

  private static Optional<Node.Mapping> piece(Fields entry, String key) {
    return entry.node(key).filter(Node.Mapping.class::isInstance).map(Node.Mapping.class::cast);
  }

  /** Whether ANSWER stands somewhere in it. */
  private static boolean holds(Node node) {
    if (node instanceof Node.Mapping map) {
      return map.entries().values().stream().anyMatch(e -> holds(e.value()));
    } else if (node instanceof Node.Sequence list) {
      return list.items().stream().anyMatch(Question::holds);
    }
    return ((Node.Text) node).value().contains(ANSWER);
  }

  /**
   * What an answer adds to the profile. An item of a list stands once for each answer, a comma
   * between them.
   */
  public Node.Mapping piece(String answer) {
    return isNone(answer) && none.isPresent() ? none.get() : (Node.Mapping) fill(writes, answer);
  }

  /** Whether the answer says that the rig has no such thing. */
  public static boolean isNone(String answer) {
    return answer.equalsIgnoreCase("none");
  }

  private Node fill(Node node, String answer) {
    if (node instanceof Node.Mapping map) {
      Map<String, Node.Entry> filled = new LinkedHashMap<>();
      map.entries()
          .forEach((k, e) -> filled.put(k, new Node.Entry(e.key(), fill(e.value(), answer))));
      return new Node.Mapping(filled, map.at());
    } else if (node instanceof Node.Sequence list) {
      List<Node> items = list.items().stream().flatMap(i -> items(i, answer)).toList();
      return new Node.Sequence(items, list.at());
    }
    Node.Text text = (Node.Text) node;
    return new Node.Text(text.value().replace(ANSWER, chosen(answer)), text.quoted(), text.at());
  }

  private Stream<Node> items(Node item, String answer) {
    return holds(item)
        ? Arrays.stream(answer.split(",")).map(String::strip).map(a -> fill(item, a))
        : Stream.of(item);
  }

  /** As the profile writes it, whatever its capitals. */
  private String chosen(String answer) {
    return choices.stream().filter(answer::equalsIgnoreCase).findFirst().orElse(answer);
  }
}
