package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.drawings.LastsPlot;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Value;
import org.rigleaf.guidance.Wording;

/** The plot of how long each store lasts, for each party, on mild and on cold nights. */
final class LastsPlots {
  private static final List<String> NIGHTS = List.of("mild", "cold");
  private static final int MOST_STORES = 8; // more would not fit a page

  private final Wording wording;
  private final Labels labels;
  private final TableBlocks tables;

  LastsPlots(Wording wording, Labels labels, TableBlocks tables) {
    this.wording = wording;
    this.labels = labels;
    this.tables = tables;
  }

  /** How long one store lasts one party on one kind of night. */
  private record Length(String night, String store, String people, Figure figure) {
    /** Reads the parts of an id such as {@code lasts.mild.gray.kitchen.2}. */
    static Length of(String night, Figure figure) {
      String rest = figure.id().substring(("lasts." + night + ".").length());
      int dot = rest.lastIndexOf('.');
      return new Length(night, rest.substring(0, dot), rest.substring(dot + 1), figure);
    }

    /** A store that keeps up lasts for ever. */
    double days() {
      return figure.value() instanceof Value.Number n ? n.number() : Double.POSITIVE_INFINITY;
    }
  }

  /** The plot; empty if nothing is known of any store. */
  Optional<Drawing> plot() {
    List<Length> all = NIGHTS.stream().flatMap(this::lengths).toList();
    return all.isEmpty() ? Optional.empty() : Optional.of(draw(all));
  }

  private Stream<Length> lengths(String night) {
    return tables.glob("lasts." + night + ".*.*").stream().map(f -> Length.of(night, f));
  }

  private Drawing draw(List<Length> all) {
    List<String> known = all.stream().map(Length::store).distinct().toList();
    List<String> stores = drawn(known, all);
    List<String> parties =
        all.stream()
            .map(Length::people)
            .distinct()
            .sorted(Comparator.comparingInt(Integer::parseInt))
            .toList();
    List<String> groups = parties.stream().map(p -> labels.of("people", p)).toList();
    LastsPlot.Data data =
        new LastsPlot.Data(
            stores.stream().map(s -> labels.of("store", s)).toList(),
            groups,
            NIGHTS.stream()
                .map(night -> panel(night, all, stores, parties))
                .filter(p -> !p.bars().isEmpty())
                .toList(),
            words(known.size() - stores.size()));
    return LastsPlot.draw(data, alt(all, stores.size(), groups));
  }

  /** The stores that end soonest, in the order of the tables. */
  private static List<String> drawn(List<String> stores, List<Length> all) {
    List<String> soonest =
        stores.stream()
            .sorted(Comparator.comparingDouble(s -> least(s, all)))
            .limit(MOST_STORES)
            .toList();
    return stores.stream().filter(soonest::contains).toList();
  }

  private static double least(String store, List<Length> all) {
    return all.stream()
        .filter(l -> l.store().equals(store))
        .mapToDouble(Length::days)
        .min()
        .orElseThrow();
  }

  private LastsPlot.Panel panel(
      String night, List<Length> all, List<String> stores, List<String> parties) {
    List<LastsPlot.Bar> bars = new ArrayList<>();
    for (Length l : all) {
      if (l.night().equals(night) && stores.contains(l.store())) {
        int store = stores.indexOf(l.store());
        bars.add(new LastsPlot.Bar(store, parties.indexOf(l.people()), l.days(), text(l)));
      }
    }
    return new LastsPlot.Panel(wording.phrase("plot-lasts-" + night), bars);
  }

  /** Tenths of a day, or the word. */
  private String text(Length length) {
    return length.figure().value() instanceof Value.Number n
        ? Amounts.number(n.number(), 1)
        : labels.value(length.figure()).plain();
  }

  private LastsPlot.Words words(int left) {
    String more =
        left == 0
            ? ""
            : " " + wording.phrase("plot-lasts-more", Map.of("count", String.valueOf(left)));
    return new LastsPlot.Words(
        wording.phrase("plot-lasts-title"),
        wording.phrase("plot-lasts-days"),
        wording.phrase("plot-lasts-note") + more);
  }

  private String alt(List<Length> all, int stores, List<String> groups) {
    Length first = all.stream().min(Comparator.comparingDouble(Length::days)).orElseThrow();
    Map<String, String> values =
        Map.of(
            "count", String.valueOf(stores),
            "groups", String.join(", ", groups),
            "store", labels.of("store", first.store()),
            "days", labels.value(first.figure()).plain());
    return wording.phrase("plot-lasts-alt", values);
  }
}
