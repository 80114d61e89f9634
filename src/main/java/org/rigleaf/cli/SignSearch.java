package org.rigleaf.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rigleaf.source.Node;
import org.rigleaf.source.Position;
import org.rigleaf.source.Problem;
import org.rigleaf.source.Problems;
import org.rigleaf.source.Yaml;

/** Finds the values of a profile that hold a character which no font has. */
final class SignSearch {
  private final int character;
  private final List<Problem> found = new ArrayList<>();

  private SignSearch(int character) {
    this.character = character;
  }

  /**
   * One problem for each value that holds the character, written out or as an escape; a comment may
   * hold it. Never empty: the whole file is named if no value holds it.
   *
   * @throws IOException if the file cannot be read again
   */
  static List<Problem> problems(Path file, int character) throws IOException {
    SignSearch search = new SignSearch(character);
    Optional<Node> root = Yaml.read(file, file.toString(), new Problems());
    root.ifPresent(node -> search.look("", node));
    if (search.found.isEmpty()) {
      search.add("", Position.start(file.toString()));
    }
    return search.found;
  }

  private void look(String key, Node node) {
    if (node instanceof Node.Mapping group) {
      group
          .entries()
          .forEach((name, e) -> look(key.isEmpty() ? name : key + "." + name, e.value()));
    } else if (node instanceof Node.Sequence list) {
      list.items().forEach(item -> look(key, item));
    } else if (((Node.Text) node).value().codePoints().anyMatch(c -> c == character)) {
      add(key, node.at());
    }
  }

  private void add(String key, Position at) {
    boolean shown = Character.isDefined(character) && !Character.isISOControl(character);
    String wrong =
        String.format(
            "no font here has the character %s(U+%04X, %s)",
            shown ? "'" + Character.toString(character) + "' " : "",
            character,
            Character.getName(character));
    found.add(new Problem(at, key, wrong, "write it in letters"));
  }
}
