package org.rigleaf.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rigleaf.guidance.Wording;
import org.rigleaf.source.Unit;

/** The figures of a notice: what they were, what they are now, the difference. */
final class FigureChanges {
  /** A share of what a figure was, below which a change is counted and not told. */
  private static final double SLIGHT = 0.02;

  /** Figures of one family, such as those of every hour, of which no more are listed. */
  private static final int FAMILY = 6;

  private final Wording wording;
  private final List<Comparison.Change> figures;

  FigureChanges(Wording wording, List<Comparison.Change> figures) {
    this.wording = wording;
    this.figures = figures;
  }

  /** The lines that every notice has, each with the figures of its own that changed. */
  List<Notice.Line> lines() {
    Set<String> taken = new LinkedHashSet<>();
    List<Notice.Line> lines = new ArrayList<>();
    wording
        .noticeLines()
        .forEach(
            (title, ids) -> {
              List<Comparison.Change> here =
                  figures.stream()
                      .filter(c -> ids.stream().anyMatch(id -> matches(c.id(), id)))
                      .filter(c -> taken.add(c.id()))
                      .toList();
              lines.add(new Notice.Line(title, few(here), more("notice-more", left(here))));
            });
    return lines;
  }

  /** The other figures that changed by more than a little, a few of each family. */
  List<Notice.Row> others() {
    return few(rest(false));
  }

  /** How many others there are. */
  String moreOthers() {
    return Stream.of(
            more("notice-more", left(rest(false))), more("notice-slight", rest(true).size()))
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private List<Comparison.Change> rest(boolean slight) {
    return figures.stream().filter(c -> !inLine(c) && slight(c) == slight).toList();
  }

  /** True of a number that changed by less than 2 % of what it was. */
  private static boolean slight(Comparison.Change c) {
    Optional<BigDecimal> before = c.before().flatMap(FigureChanges::number);
    Optional<BigDecimal> now = c.now().flatMap(FigureChanges::number);
    return before.isPresent()
        && now.isPresent()
        && Math.abs(now.get().doubleValue() - before.get().doubleValue())
            < SLIGHT * Math.abs(before.get().doubleValue());
  }

  private boolean inLine(Comparison.Change change) {
    return wording.noticeLines().values().stream()
        .flatMap(List::stream)
        .anyMatch(id -> matches(change.id(), id));
  }

  private static boolean matches(String id, String glob) {
    return id.matches(glob.replace(".", "\\.").replace("*", ".*"));
  }

  private List<Notice.Row> few(List<Comparison.Change> changes) {
    return changes.stream().filter(c -> rank(changes, c) < FAMILY).map(this::row).toList();
  }

  private String more(String phrase, long count) {
    return count == 0 ? "" : wording.phrase(phrase, Map.of("count", String.valueOf(count)));
  }

  private static long left(List<Comparison.Change> changes) {
    return changes.stream().filter(c -> rank(changes, c) >= FAMILY).count();
  }

  /** How many of its family stand before it. */
  private static long rank(List<Comparison.Change> changes, Comparison.Change change) {
    return changes.stream()
        .takeWhile(c -> c != change)
        .filter(c -> pattern(c).equals(pattern(change)))
        .count();
  }

  private static String pattern(Comparison.Change change) {
    return change.now().or(change::before).map(Issued.Reading::pattern).orElseThrow();
  }

  private Notice.Row row(Comparison.Change c) {
    return new Notice.Row(
        c.id(),
        c.now().or(c::before).map(Issued.Reading::title).orElseThrow(),
        c.before().map(Issued.Reading::printed).orElse(""),
        c.now().map(Issued.Reading::printed).orElse(""),
        difference(c));
  }

  private String difference(Comparison.Change c) {
    Optional<BigDecimal> before = c.before().flatMap(FigureChanges::number);
    Optional<BigDecimal> now = c.now().flatMap(FigureChanges::number);
    if (before.isEmpty() || now.isEmpty()) {
      return "";
    }
    double by = now.get().subtract(before.get()).doubleValue();
    Optional<Unit> unit = Unit.of(c.now().orElseThrow().unit());
    return unit.map(u -> (by < 0 ? "− " : "+ ") + wording.amounts().text(Math.abs(by), u))
        .orElse("");
  }

  private static Optional<BigDecimal> number(Issued.Reading reading) {
    boolean number = reading.data().matches("-?\\d+(\\.\\d+)?");
    return number ? Optional.of(new BigDecimal(reading.data())) : Optional.empty();
  }
}
