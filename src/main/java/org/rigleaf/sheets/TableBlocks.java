package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.Words;

/**
 * Makes tables out of families of figures: the variables in angle brackets become rows and columns.
 */
final class TableBlocks {
  /** Variables whose values may hold a dot, such as {@code gray.kitchen}. */
  private static final Set<String> DOTTED = Set.of("id", "store", "x");

  private final Figures figures;
  private final Labels labels;

  TableBlocks(Figures figures, Labels labels) {
    this.figures = figures;
    this.labels = labels;
  }

  /** The table a topic asks for; empty if this rig has none of its figures. */
  Optional<Block> table(Show.Table show) {
    Map<String, Map<String, Figure>> cells = new LinkedHashMap<>(); // row -> column -> figure
    Set<String> columns = new LinkedHashSet<>();
    for (String pattern : show.columns()) {
      for (Map.Entry<Figure, Map<String, String>> found : matches(pattern).entrySet()) {
        String row = found.getValue().get(show.row());
        String column =
            show.across().isEmpty()
                ? found.getKey().entry().pattern()
                : found.getValue().get(show.across());
        columns.add(column);
        cells.computeIfAbsent(row, r -> new LinkedHashMap<>()).put(column, found.getKey());
      }
    }
    return cells.isEmpty()
        ? Optional.empty()
        : Optional.of(block(show, cells, List.copyOf(columns)));
  }

  private Block block(
      Show.Table show, Map<String, Map<String, Figure>> cells, List<String> columns) {
    List<String> heads = new ArrayList<>(List.of(""));
    columns.forEach(
        c -> heads.add(show.across().isEmpty() ? labels.title(c) : labels.of(show.across(), c)));
    List<List<Words>> rows = new ArrayList<>();
    cells.forEach((row, byColumn) -> rows.add(row(show, row, byColumn, columns)));
    return new TableBlock(show.title(), heads, rows, "");
  }

  private List<Words> row(
      Show.Table show, String row, Map<String, Figure> byColumn, List<String> columns) {
    List<Words> cells = new ArrayList<>(List.of(Words.of(labels.of(show.row(), row))));
    for (String column : columns) {
      cells.add(Optional.ofNullable(byColumn.get(column)).map(labels::value).orElse(Words.NONE));
    }
    return cells;
  }

  /** A table of sets of loads for each plug, with the loads that are always on in its note. */
  List<Block> sets(Show.Sets show) {
    Map<String, List<Figure>> byPlug = new LinkedHashMap<>();
    matches(show.pattern())
        .forEach(
            (figure, parts) ->
                byPlug.computeIfAbsent(parts.get(show.each()), p -> new ArrayList<>()).add(figure));
    List<Block> blocks = new ArrayList<>();
    byPlug.forEach(
        (plug, sets) -> {
          String head = show.title() + ": " + labels.of(show.each(), plug);
          List<List<Words>> rows = sets.stream().map(f -> List.of(labels.value(f))).toList();
          blocks.add(new TableBlock("", List.of(head), rows, ""));
        });
    return blocks;
  }

  /**
   * The figures that a pattern such as {@code cord.<a>.drop} means, with the values of its
   * variables.
   */
  private Map<Figure, Map<String, String>> matches(String pattern) {
    return matches(pattern, figures.all());
  }

  private static Map<Figure, Map<String, String>> matches(
      String pattern, Collection<Figure> among) {
    List<String> names = new ArrayList<>();
    Matcher variable = Pattern.compile("<([^>]*)>").matcher(pattern);
    StringBuilder regex = new StringBuilder();
    int end = 0;
    while (variable.find()) {
      regex.append(Pattern.quote(pattern.substring(end, variable.start())));
      regex.append(DOTTED.contains(variable.group(1)) ? "(.+)" : "([^.]+)");
      names.add(variable.group(1));
      end = variable.end();
    }
    Pattern whole = Pattern.compile(regex + Pattern.quote(pattern.substring(end)));
    Map<Figure, Map<String, String>> found = new LinkedHashMap<>();
    for (Figure figure : among) {
      Matcher m = whole.matcher(figure.id());
      if (m.matches() && shape(figure.entry().pattern()).equals(shape(pattern))) {
        Map<String, String> parts = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
          parts.put(names.get(i), m.group(i + 1));
        }
        found.put(figure, parts);
      }
    }
    return found;
  }

  /** The title of a figure with what it is told of: {@code Usable energy, engine batteries}. */
  String title(Figure figure) {
    String pattern = figure.entry().pattern();
    List<String> words = new ArrayList<>(List.of(labels.title(pattern)));
    matches(pattern, List.of(figure))
        .getOrDefault(figure, Map.of())
        .forEach((variable, part) -> words.add(labels.of(variable, part)));
    return String.join(", ", words);
  }

  /** A pattern without the names of its variables: a literal part is not a variable's value. */
  private static String shape(String pattern) {
    return pattern.replaceAll("<[^>]*>", "<>");
  }

  /** The figures that an id with {@code *} means. */
  List<Figure> glob(String id) {
    return List.copyOf(matches(id.replace("*", "<x>")).keySet());
  }
}
