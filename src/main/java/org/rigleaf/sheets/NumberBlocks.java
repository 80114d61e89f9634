package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Entry;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.figures.Input;
import org.rigleaf.figures.Value;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Wording;
import org.rigleaf.guidance.Words;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.TypicalValue;
import org.rigleaf.rig.TypicalValues;

/**
 * Where the numbers come from: working, source, origin and check of each; and the typical values to
 * replace.
 */
public final class NumberBlocks {
  private static final int MOST_LETTERS = 6;
  private static final int ROWS_SHOWN = 3; // of a family of figures worked alike

  private final Figures figures;
  private final Wording wording;
  private final Labels labels;
  private final List<String> assumed;

  NumberBlocks(Figures figures, Wording wording, Labels labels) {
    this.figures = figures;
    this.wording = wording;
    this.labels = labels;
    Set<String> ids = new LinkedHashSet<>();
    figures.all().forEach(f -> ids.addAll(f.assumes()));
    this.assumed = List.copyOf(ids);
  }

  /**
   * The letters under which a figure's typical values stand in the list, such as 'a c'; of many
   * only how many.
   */
  String marks(Figure figure) {
    Set<String> assumes = figure.assumes();
    return assumes.size() > MOST_LETTERS
        ? wording.phrase("many-assumed", Map.of("count", String.valueOf(assumes.size())))
        : String.join(" ", assumes.stream().map(this::mark).toList());
  }

  private String mark(String id) {
    int i = assumed.indexOf(id);
    return i < 26 ? String.valueOf((char) ('a' + i)) : "a" + (char) ('a' + i - 26);
  }

  /** A row for each figure, three for a large family. */
  Block numbers(String title) {
    Map<Entry, List<Figure>> byEntry = new LinkedHashMap<>();
    figures.all().forEach(f -> byEntry.computeIfAbsent(f.entry(), e -> new ArrayList<>()).add(f));
    List<List<Words>> rows = new ArrayList<>();
    byEntry.forEach((entry, family) -> family(rows, entry, family));
    List<String> heads = List.of(wording.phrase("head-figure"), wording.phrase("head-working"));
    return new TableBlock(title, heads, rows, "");
  }

  private void family(List<List<Words>> rows, Entry entry, List<Figure> family) {
    int shown = family.size() > ROWS_SHOWN + 1 ? ROWS_SHOWN : family.size();
    rows.add(List.of(Words.of(wording.figure(entry.pattern()).title()), source(entry)));
    family.subList(0, shown).forEach(f -> rows.add(List.of(Words.of(f.id()), working(f))));
    if (shown < family.size()) {
      String rest =
          wording.phrase("more-rows", Map.of("count", String.valueOf(family.size() - shown)));
      rows.add(List.of(Words.NONE, Words.of(rest)));
    }
  }

  private Words source(Entry entry) {
    return Words.of(entry.source() + "; " + wording.phrase("check-" + entry.check().trait()));
  }

  /** The formula with this rig's numbers, and the result. */
  public Words working(Figure figure) {
    String text = figure.formula();
    for (Input in : figure.inputs()) {
      String letter =
          in instanceof Input.OfFact f && f.fact().origin() instanceof Fact.Typical t
              ? " [" + mark(t.id()) + "]"
              : "";
      text = text.replace("{" + in.name() + "}", Amounts.US.text(in.value(), in.unit()) + letter);
    }
    return around(figure, text);
  }

  /** A number after its working; a word, loads and a bare fact before it. */
  private Words around(Figure figure, String text) {
    List<Run> runs = new ArrayList<>(labels.value(figure).runs());
    boolean number = figure.value() instanceof Value.Number || figure.value() instanceof Value.Day;
    if (!number) {
      runs.add(Run.text(" (" + text + ")"));
    } else if (isFact(figure)) {
      boolean given = figure.assumes().isEmpty();
      String origin = wording.phrase(given ? "working-given" : "working-typical");
      runs.add(Run.text(" (" + origin + ")"));
    } else if (!figure.formula().equals(new Words(runs).plain())) {
      runs.add(0, Run.text(text + " = " + inFormula(figure)));
    }
    return new Words(runs);
  }

  /** Formulas work in US units: in metric their result stands before the one to read. */
  private String inFormula(Figure figure) {
    boolean other =
        figure.value() instanceof Value.Number && !wording.amounts().suits(figure.unit());
    return other ? Amounts.US.text(figure.number(), figure.unit()) + " = " : "";
  }

  /** True if the figure is one fact as it stands. */
  private static boolean isFact(Figure figure) {
    return figure.inputs().size() == 1
        && figure.inputs().get(0) instanceof Input.OfFact fact
        && figure.formula().equals("{" + fact.name() + "}")
        && figure.unit() == fact.unit();
  }

  /** The typical values this rig's figures lean on, with the place to look. */
  Block typical(String title) {
    List<List<Words>> rows = new ArrayList<>();
    for (String id : assumed) {
      TypicalValue value = TypicalValues.of(id);
      Wording.Entry words = wording.typical(id);
      String what =
          mark(id)
              + "  "
              + words.title()
              + ": "
              + wording.amounts().text(value.value(), value.unit());
      String look =
          words.meaning()
              + " "
              + wording.phrase("typical-source", Map.of("source", value.source()));
      rows.add(List.of(new Words(List.of(Run.assumed(what, id))), Words.of(look)));
    }
    List<String> heads = List.of(wording.phrase("head-assumed"), wording.phrase("head-look"));
    return new TableBlock(title, heads, rows, "");
  }
}
