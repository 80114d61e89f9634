package org.rigleaf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;
import org.rigleaf.source.Problems;
import org.rigleaf.source.Yaml;

/** Expected values that stand in YAML files under {@code src/test/resources/expected}. */
public final class TestData {
  private TestData() {}

  /** The keys of one file. */
  public static Fields read(String file) {
    try {
      Problems problems = new Problems();
      Optional<Node> root = Yaml.read(Path.of("src/test/resources/expected", file), file, problems);
      if (!problems.none()) {
        throw new AssertionError(problems.sorted());
      }
      return new Fields((Node.Mapping) root.orElseThrow(), "", problems);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The texts of a list under a key. */
  public static List<String> list(Fields fields, String key) {
    return fields.texts(key).stream().map(Node.Text::value).toList();
  }

  /** The text under a key, empty if it is not there. */
  public static String text(Fields fields, String key) {
    return fields.text(key).map(Node.Text::value).orElse("");
  }

  /** The topics that a binder may hold, in the order in which a newcomer needs them. */
  public static List<String> topics() {
    return list(read("topics.yaml"), "order");
  }
}
