package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.drawings.TogetherPlot;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.figures.Input;
import org.rigleaf.figures.Value;
import org.rigleaf.guidance.Filler;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Answer;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Unit;

/** The plots of what runs together: of the first supply, and of the smallest adapter. */
final class TogetherPlots {
  private static final double VOLTS = 120; // nominal, ANSI C84.1
  private static final int LEAST_SETS = 2; // one set is told by the table in a line

  private final Rig rig;
  private final Figures figures;
  private final Wording wording;
  private final Labels labels;
  private final TableBlocks tables;
  private final Filler filler;

  TogetherPlots(
      Rig rig, Figures figures, Wording wording, Labels labels, TableBlocks tables, Filler filler) {
    this.rig = rig;
    this.figures = figures;
    this.wording = wording;
    this.labels = labels;
    this.tables = tables;
    this.filler = filler;
  }

  /** A supply with its sets. */
  private record Supply(String id, List<Figure> sets) {}

  /** One plot, or two where the smallest adapter still leaves a choice. */
  List<Block> plots(String title) {
    List<Supply> all = supplies();
    Optional<Supply> first = all.stream().findFirst();
    Optional<Supply> smallest =
        all.stream()
            .skip(1)
            .filter(s -> shore(s.id()).isPresent())
            .min(Comparator.comparingDouble(this::limitWatts));
    return Stream.concat(first.stream(), smallest.stream())
        .map(s -> PlotBlocks.block(title + ": " + labels.of("a", s.id()), draw(s)))
        .toList();
  }

  /** Those with a choice between sets: plugs first, the rig's own before its adapters. */
  private List<Supply> supplies() {
    Map<String, List<Figure>> bySupply = new LinkedHashMap<>();
    for (Figure set : tables.glob("together.*.*")) {
      bySupply.computeIfAbsent(set.id().split("\\.")[1], s -> new ArrayList<>()).add(set);
    }
    return bySupply.entrySet().stream()
        .filter(e -> e.getValue().size() >= LEAST_SETS)
        .map(e -> new Supply(e.getKey(), e.getValue()))
        .filter(s -> limitWatts(s) <= PlotBlocks.MOST)
        .toList();
  }

  private Drawing draw(Supply supply) {
    List<String> always = always(supply);
    Set<String> choices = new LinkedHashSet<>();
    supply.sets().forEach(s -> choices.addAll(ids(s)));
    List<String> rows = new ArrayList<>(choices.stream().map(filler::loadName).toList());
    if (!always.isEmpty()) {
      rows.add(0, wording.phrase("plot-together-always"));
    }
    int first = rows.size() - choices.size();
    List<String> order = List.copyOf(choices);
    List<TogetherPlot.Column> columns = new ArrayList<>();
    for (Figure set : supply.sets()) {
      Set<Integer> on = new LinkedHashSet<>(first == 1 ? Set.of(0) : Set.of());
      ids(set).forEach(id -> on.add(first + order.indexOf(id)));
      double watts = watts(always) + watts(ids(set));
      columns.add(new TogetherPlot.Column(Ids.last(set.id()), on, watts));
    }
    return draw(supply, rows, columns);
  }

  private Drawing draw(Supply supply, List<String> rows, List<TogetherPlot.Column> columns) {
    double limit = limitWatts(supply);
    double most = columns.stream().mapToDouble(TogetherPlot.Column::watts).max().orElseThrow();
    Map<String, String> values =
        Map.of(
            "plug", labels.of("a", supply.id()),
            "count", String.valueOf(columns.size()),
            "most", wording.amounts().text(most, Unit.WATT_UNIT),
            "limit", wording.amounts().text(limit, Unit.WATT_UNIT));
    TogetherPlot.Words words =
        new TogetherPlot.Words(
            wording.phrase("plot-together-set"),
            wording.phrase("plot-together-watts"),
            wording.phrase("plot-together-limit", values),
            note(supply));
    return TogetherPlot.draw(
        new TogetherPlot.Data(rows, columns, limit, words),
        wording.phrase("plot-together-alt", values));
  }

  private String note(Supply supply) {
    return Stream.of(
            Optional.of("note"),
            Optional.of("legs").filter(n -> legs(supply) == 2),
            Optional.of("steady").filter(n -> steady()))
        .flatMap(Optional::stream)
        .map(n -> wording.phrase("plot-together-" + n))
        .collect(Collectors.joining(" "));
  }

  /** True if a load of this rig counts for more than its watts. */
  private boolean steady() {
    return Stream.concat(
            rig.electric().loads().stream().map(l -> l.continuous()),
            rig.climate().airConditioners().stream().map(a -> a.continuous()))
        .anyMatch(Answer.YES::equals);
  }

  private List<String> always(Supply supply) {
    return figures
        .find("together." + supply.id() + ".always")
        .map(TogetherPlots::ids)
        .orElse(List.of());
  }

  private static List<String> ids(Figure set) {
    return ((Value.Loads) set.value()).ids();
  }

  private double watts(List<String> loads) {
    return loads.stream()
        .mapToDouble(id -> VOLTS * figures.find("load." + id + ".current").orElseThrow().number())
        .sum();
  }

  // ---- the limit

  private double limitWatts(Supply supply) {
    return figures.find("together." + supply.id() + ".limit").orElseThrow().number();
  }

  private Optional<Figure> shore(String id) {
    return figures.find("shore." + id + ".power");
  }

  /** Legs of the plug; of a supply aboard, those of the rig's own plug. */
  private double legs(Supply supply) {
    return shore(supply.id()).or(() -> tables.glob("shore.*.power").stream().findFirst()).stream()
        .flatMap(f -> f.inputs().stream())
        .filter(i -> i.name().equals("legs"))
        .mapToDouble(Input::value)
        .findFirst()
        .orElse(1);
  }
}
