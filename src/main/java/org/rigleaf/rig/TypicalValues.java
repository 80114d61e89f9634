package org.rigleaf.rig;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;
import org.rigleaf.source.Unit;
import org.rigleaf.source.Yaml;

/** The one table of typical values, read from {@code typical-values.yaml} beside this class. */
public final class TypicalValues {
  private static final String FILE = "typical-values.yaml";
  private static final Map<String, TypicalValue> TABLE = load();

  private TypicalValues() {}

  /**
   * The typical value with this id.
   *
   * @throws IllegalArgumentException if the table has none
   */
  public static TypicalValue of(String id) {
    TypicalValue value = TABLE.get(id);
    if (value == null) {
      throw new IllegalArgumentException("no typical value '" + id + "' in " + FILE);
    }
    return value;
  }

  /** All of them, in the order of the table. */
  public static Collection<TypicalValue> all() {
    return TABLE.values();
  }

  private static Map<String, TypicalValue> load() {
    Problems problems = new Problems();
    Map<String, TypicalValue> table = new LinkedHashMap<>();
    Node.Mapping root = (Node.Mapping) Yaml.read(bytes(), FILE, problems).orElseThrow();
    Fields all = new Fields(root, "", problems);
    for (String id : all.keys()) {
      all.group(id).ifPresent(entry -> table.put(id, read(id, entry)));
    }
    if (!problems.none()) {
      throw new IllegalStateException(new ProblemsFound(problems.sorted()));
    }
    return table;
  }

  private static TypicalValue read(String id, Fields entry) {
    double value = Double.parseDouble(entry.text("value").orElseThrow().value());
    String symbol = entry.text("unit").orElseThrow().value();
    Unit unit = symbol.equals("ratio") ? Unit.SHARE : Unit.of(symbol).orElseThrow();
    String source = entry.text("source").orElseThrow().value();
    entry.finish();
    return new TypicalValue(id, value, unit, source);
  }

  private static byte[] bytes() {
    try (InputStream in = TypicalValues.class.getResourceAsStream(FILE)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
