package org.rigleaf.sheets;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Kind;
import org.rigleaf.source.Node;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Unit;
import org.rigleaf.source.Yaml;

/** Reads sheets of labels from YAML; all that is wrong is told at once, each with its line. */
final class LabelGrids {
  private static final double MM_PER_INCH = 25.4;
  private static final List<String> LENGTHS =
      List.of("width", "height", "left", "top", "gap-across", "gap-down");
  private static final List<String> PAPERS = List.of("letter", "a4");

  private LabelGrids() {}

  /** The sheets of a text, by name and in its order. */
  static Map<String, LabelGrid> read(String yaml, String file) throws ProblemsFound {
    Problems problems = new Problems();
    Optional<Node> root = Yaml.read(yaml.getBytes(StandardCharsets.UTF_8), file, problems);
    Map<String, LabelGrid> all = new LinkedHashMap<>();
    if (root.orElse(null) instanceof Node.Mapping map) {
      Fields sheets = new Fields(map, "", problems);
      for (String name : sheets.keys()) {
        sheets.group(name).flatMap(g -> grid(name, g)).ifPresent(g -> all.put(name, g));
      }
    }
    if (!problems.none()) {
      throw new ProblemsFound(problems.sorted());
    }
    return Collections.unmodifiableMap(all);
  }

  private static Optional<LabelGrid> grid(String name, Fields g) {
    Optional<Paper> paper = paper(g);
    Optional<Integer> columns = count(g, "columns");
    Optional<Integer> rows = count(g, "rows");
    List<Optional<Double>> mm = LENGTHS.stream().map(k -> mm(g, k)).toList();
    g.finish();
    boolean whole =
        paper.isPresent()
            && columns.isPresent()
            && rows.isPresent()
            && mm.stream().allMatch(Optional::isPresent);
    double[] l = mm.stream().mapToDouble(m -> m.orElse(0.0)).toArray();
    return whole ? made(name, g, paper.get(), new int[] {columns.get(), rows.get()}, l) : none();
  }

  private static Optional<LabelGrid> made(String name, Fields g, Paper paper, int[] n, double[] l) {
    try {
      return Optional.of(
          new LabelGrid(name, paper, n[0], n[1], l[0], l[1], l[2], l[3], l[4], l[5]));
    } catch (IllegalArgumentException e) {
      g.problem(g.at(), "paper", e.getMessage(), "measure the sheet again, from edge to edge");
      return none();
    }
  }

  private static Optional<Paper> paper(Fields g) {
    String cure = "one of " + PAPERS;
    return word(g, "paper", cure, PAPERS::contains)
        .map(p -> p.equals("a4") ? Paper.A4 : Paper.LETTER);
  }

  private static Optional<Integer> count(Fields g, String key) {
    return word(g, key, "a whole number, like 3", w -> w.matches("[1-9]\\d?"))
        .map(Integer::valueOf);
  }

  private static Optional<Double> mm(Fields g, String key) {
    return word(g, key, "a length, like 1 in or 38.1 mm", w -> length(w).isPresent())
        .flatMap(LabelGrids::length);
  }

  private static Optional<Double> length(String word) {
    return Quantity.parse(word)
        .filter(q -> q.unit().kind() == Kind.LENGTH && q.value() >= 0)
        .map(q -> q.in(Unit.INCH) * MM_PER_INCH);
  }

  private static Optional<String> word(Fields g, String key, String cure, Predicate<String> right) {
    Optional<Node.Text> text = g.text(key);
    if (text.isEmpty()) {
      g.problem(g.at(), key, "is missing", cure);
    } else if (!right.test(text.get().value())) {
      g.problem(text.get().at(), key, "'" + text.get().value() + "'", cure);
      return Optional.empty();
    }
    return text.map(Node.Text::value);
  }

  private static Optional<LabelGrid> none() {
    return Optional.empty();
  }
}
