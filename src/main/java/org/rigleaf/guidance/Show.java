package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/** One block of a topic as the wording asks for it. */
public sealed interface Show {
  /** The rigs that this block is for. */
  default Condition condition() {
    return Condition.ALWAYS;
  }

  /** A procedure by its id. */
  record OfProcedure(String id) implements Show {}

  /** What to check at one symptom, by the id of the fault. */
  record OfFault(String id) implements Show {}

  /** Lines to fill in by hand. */
  record Fill(String title, Condition condition, List<String> lines) implements Show {}

  /** Names and places of gear, large. */
  record Places(String title, Condition condition, List<GearLine> items) implements Show {}

  /** One line of {@link Places}. */
  record GearLine(String gear, Condition condition) {}

  /** Key figures by id; {@code *} stands for any part. */
  record KeyFigures(String title, Condition condition, List<String> ids) implements Show {}

  /** Label and text side by side, repeated for each item of a list if {@code each} is not empty. */
  record Pairs(String title, String each, List<Pair> items) implements Show {}

  /** One line of {@link Pairs}. */
  record Pair(TextTemplate label, TextTemplate text, Condition condition) {}

  /**
   * Figures as a table: a row for each value of one variable, a column a pattern or a value of
   * {@code across}.
   */
  record Table(String title, Condition condition, String row, String across, List<String> columns)
      implements Show {}

  /** Sets of loads, a table for each value of one variable. */
  record Sets(String title, String each, String pattern) implements Show {}

  /** Figures drawn as a plot; {@code of} is one of {@link WordingCheck#PLOTS}. */
  record Plot(String title, Condition condition, String of) implements Show {}

  /** A drawing of the rig; {@code of} is one of {@link WordingCheck#DRAWINGS}. */
  record Drawing(String title, Condition condition, String of) implements Show {}

  /**
   * The tasks of upkeep of one part of the calendar; of these trades, of all where none is named.
   */
  record Calendar(String title, Band band, List<String> trades) implements Show {
    /** True if this part of the calendar holds the task. */
    public boolean holds(Task task) {
      return task.band() == band && (trades.isEmpty() || trades.contains(task.trade()));
    }
  }

  /** Something the program lists by itself: cautions, findings, numbers and the like. */
  record Listing(String what, String title) implements Show {}

  /** Reads one block, a map with a single key that names its kind. */
  static Show read(Fields entry, WordingCheck check) {
    String kind = entry.keys().stream().findFirst().orElse("");
    if (entry.node(kind).orElse(null) instanceof Node.Text id) {
      return named(kind, id.value());
    }
    Fields block = entry.group(kind).orElse(Fields.none(entry.path(), check.problems));
    Show show = block(kind, block, check);
    block.finish();
    return show;
  }

  private static Show named(String kind, String id) {
    return switch (kind) {
      case "procedure" -> new OfProcedure(id);
      case "fault" -> new OfFault(id);
      default -> new Listing(kind, id);
    };
  }

  private static Show block(String kind, Fields block, WordingCheck check) {
    String title = word(block, "title");
    return switch (kind) {
      case "fill" -> new Fill(title, condition(block, check), words(block, "lines"));
      case "places" -> new Places(title, condition(block, check), gearLines(block, check));
      case "figures" -> new KeyFigures(title, condition(block, check), words(block, "ids"));
      case "pairs" -> new Pairs(title, word(block, "each"), pairs(block, check));
      case "table" ->
          new Table(
              title,
              condition(block, check),
              word(block, "row"),
              word(block, "across"),
              words(block, "columns"));
      case "sets" -> new Sets(title, word(block, "each"), word(block, "pattern"));
      case "plot" -> new Plot(title, condition(block, check), of(block, check, WordingCheck.PLOTS));
      case "drawing" ->
          new Drawing(title, condition(block, check), of(block, check, WordingCheck.DRAWINGS));
      case "calendar" -> new Calendar(title, band(block, check), words(block, "trades"));
      default -> new Listing(kind, title);
    };
  }

  private static Band band(Fields block, WordingCheck check) {
    String word = word(block, "band");
    for (Band band : Band.values()) {
      if (band.name().toLowerCase(Locale.ROOT).equals(word)) {
        return band;
      }
    }
    check.problem(
        block.at(),
        block.pathOf("band"),
        "no part of the calendar is called '" + word + "'",
        "one of: use, month, season, year, longer");
    return Band.LONGER;
  }

  private static String of(Fields block, WordingCheck check, Set<String> known) {
    String of = word(block, "of");
    check.picture(block.at(), block.pathOf("of"), of, known);
    return of;
  }

  private static List<GearLine> gearLines(Fields block, WordingCheck check) {
    List<GearLine> lines = new ArrayList<>();
    for (Node node : block.list("items")) {
      block
          .group(node, "items")
          .ifPresent(
              g -> {
                g.text("gear").ifPresent(t -> check.gear(t.at(), g.pathOf("gear"), t.value()));
                lines.add(new GearLine(word(g, "gear"), condition(g, check)));
                g.finish();
              });
    }
    return lines;
  }

  private static List<Pair> pairs(Fields block, WordingCheck check) {
    List<Pair> pairs = new ArrayList<>();
    for (Node node : block.list("items")) {
      block
          .group(node, "items")
          .ifPresent(
              g -> {
                pairs.add(
                    new Pair(
                        TextTemplate.read(g, "label", check),
                        TextTemplate.read(g, "text", check),
                        condition(g, check)));
                g.finish();
              });
    }
    return pairs;
  }

  private static Condition condition(Fields entry, WordingCheck check) {
    return Condition.read(entry, check.traits, check.problems);
  }

  private static String word(Fields entry, String key) {
    return entry.text(key).map(Node.Text::value).orElse("");
  }

  private static List<String> words(Fields entry, String key) {
    return entry.texts(key).stream().map(Node.Text::value).toList();
  }
}
