package org.rigleaf.sheets;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Caution;
import org.rigleaf.guidance.Finding;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.Task;
import org.rigleaf.guidance.TopicText;
import org.rigleaf.guidance.Wording;
import org.rigleaf.guidance.Words;
import org.rigleaf.rig.Rig;

/** Makes the blocks that the shows of the wording ask for, as far as one rig needs them. */
final class ShowBlocks {
  private final Rig rig;
  private final Wording wording;
  private final Guide guide;
  private final List<Finding> found;
  private final Map<String, String> codes; // of the topics, by id
  private final Labels labels;
  private final TableBlocks tables;
  private final NumberBlocks numbers;
  private final PlaceBlocks places;
  private final PlotBlocks plots;
  private final DrawingBlocks drawings;
  private final PhotoBlocks photos;

  ShowBlocks(
      Rig rig,
      Figures figures,
      Wording wording,
      Guide guide,
      List<Finding> found,
      Map<String, String> codes) {
    this.rig = rig;
    this.wording = wording;
    this.guide = guide;
    this.found = found;
    this.codes = codes;
    this.labels = new Labels(rig, wording, guide.filler(), guide.places());
    this.tables = new TableBlocks(figures, labels);
    this.numbers = new NumberBlocks(figures, wording, labels);
    this.places = new PlaceBlocks(rig, wording, guide);
    this.plots = new PlotBlocks(rig, figures, wording, labels, tables, guide.filler());
    this.photos = new PhotoBlocks(rig, wording, guide);
    this.drawings = new DrawingBlocks(rig, figures, wording, guide, places);
  }

  /** Whom to call, for the feet of the pages. */
  List<Contact> contacts() {
    return places.contacts();
  }

  /** The title of a figure with what it is told of. */
  String title(Figure figure) {
    return tables.title(figure);
  }

  /** The workings of the figures. */
  NumberBlocks numbers() {
    return numbers;
  }

  /** The blocks of a topic: what needs attention here, what it shows, what the keeper says. */
  List<Block> topic(TopicText text) {
    return Stream.of(foundHere(text.id()), blocks(text.shows()), notes(text))
        .flatMap(List::stream)
        .toList();
  }

  /** The blocks that some shows of the wording ask for, as far as this rig needs them. */
  List<Block> blocks(List<Show> shows) {
    return shows.stream()
        .filter(s -> s.condition().holds(guide::has))
        .<Block>flatMap(s -> blocks(s).stream())
        .toList();
  }

  /** An emergency is no time for notes. */
  private List<Block> notes(TopicText text) {
    Set<String> noted = new LinkedHashSet<>();
    text.shows().forEach(s -> noted.addAll(places.noted(s)));
    return text.emergency() ? List.of() : places.notes(wording.phrase("keeper-says"), noted);
  }

  /** What needs attention, at the head of the topic that it concerns. */
  private List<Block> foundHere(String topic) {
    List<Finding> here = found.stream().filter(f -> f.topic().equals(topic)).toList();
    return here.isEmpty()
        ? List.of()
        : List.of(new FindingsBlock(wording.phrase("found-here"), here));
  }

  private List<? extends Block> blocks(Show show) {
    if (show instanceof Show.OfProcedure p) {
      return Optional.ofNullable(guide.procedures().get(p.id())).map(ProcedureBlock::new).stream()
          .toList();
    } else if (show instanceof Show.OfFault f) {
      return Optional.ofNullable(guide.faults().get(f.id())).map(FaultBlock::new).stream().toList();
    } else if (show instanceof Show.Fill f) {
      return List.of(new FillBlock(f.title(), f.lines()));
    } else if (show instanceof Show.Places p) {
      return places.places(p).stream().toList();
    } else if (show instanceof Show.KeyFigures k) {
      return keyFigures(k);
    } else if (show instanceof Show.Pairs p) {
      return places.pairs(p).stream().toList();
    } else if (show instanceof Show.Table t) {
      return tables.table(t).stream().toList();
    } else if (show instanceof Show.Sets s) {
      return tables.sets(s);
    } else if (show instanceof Show.Plot p) {
      return plots.plots(p);
    } else if (show instanceof Show.Drawing d) {
      return drawings.blocks(d);
    }
    if (show instanceof Show.Calendar c) {
      return calendar(c);
    }
    return listing((Show.Listing) show);
  }

  private List<? extends Block> listing(Show.Listing show) {
    return switch (show.what()) {
      case "cautions" -> cautions(show.title());
      case "findings" -> findings(show.title());
      case "contacts" -> places.contactBlock(show.title());
      case "switches" -> places.switches(show.title());
      case "resets" -> places.resets(show.title());
      case "unplaced" -> drawings.unplaced(show.title());
      case "photos" -> photos.photos(show.title());
      case "notes" -> otherNotes(show.title());
      case "rules" -> lines(show.title(), rig.houseRules());
      case "private" ->
          lines(
              show.title(),
              rig.privateWords().entrySet().stream()
                  .map(e -> e.getKey().replace('-', ' ') + ": " + e.getValue())
                  .toList());
      case "numbers" -> List.of(numbers.numbers(show.title()));
      case "typical" -> List.of(numbers.typical(show.title()));
      case "marked-dates" -> calendar(show.title(), "marked-first", "", guide.markedDates());
      case "symptoms" -> symptoms();
      default -> throw new IllegalStateException("no block '" + show.what() + "'");
    };
  }

  /** Tasks by the calendar come with lines for the days to come; those of a use do not. */
  private List<Block> calendar(Show.Calendar show) {
    List<Task> tasks = guide.upkeep().stream().filter(show::holds).toList();
    boolean dates = tasks.stream().anyMatch(t -> t.interval().isPresent());
    String record = dates ? wording.phrase("upkeep-record") : "";
    return calendar(show.title(), "upkeep-first", record, tasks);
  }

  private List<Block> calendar(String title, String note, String record, List<Task> tasks) {
    return tasks.isEmpty()
        ? List.of()
        : List.of(new CalendarBlock(title, wording.phrase(note), record, tasks));
  }

  private List<Block> symptoms() {
    List<SymptomsBlock.Group> groups =
        wording.topics().stream()
            .map(t -> new SymptomsBlock.Group(t.title(), codes.getOrDefault(t.id(), ""), lines(t)))
            .filter(g -> !g.lines().isEmpty())
            .toList();
    return groups.isEmpty() ? List.of() : List.of(new SymptomsBlock(groups));
  }

  private List<SymptomsBlock.Line> lines(TopicText topic) {
    return topic.shows().stream()
        .filter(Show.OfFault.class::isInstance)
        .map(s -> guide.faults().get(((Show.OfFault) s).id()))
        .filter(Objects::nonNull)
        .map(f -> new SymptomsBlock.Line(f.symptom(), f.id()))
        .toList();
  }

  private List<Block> keyFigures(Show.KeyFigures show) {
    List<FigureLine> lines =
        show.ids().stream().flatMap(id -> tables.glob(id).stream()).map(this::line).toList();
    return lines.isEmpty() ? List.of() : List.of(new FiguresBlock(show.title(), lines));
  }

  FigureLine line(Figure figure) {
    Wording.Entry words = wording.figure(figure.entry().pattern());
    String[] parts = figure.id().split("\\.");
    String title =
        figure.entry().pattern().contains("<a>")
            ? words.title() + ", " + labels.of("a", parts[1])
            : words.title();
    return new FigureLine(labels.value(figure), title, words.meaning(), numbers.marks(figure));
  }

  private List<Block> cautions(String group) {
    List<Caution> cautions =
        guide.cautions().stream().filter(c -> c.group().equals(group)).toList();
    return cautions.isEmpty() ? List.of() : List.of(new CautionsBlock("", cautions));
  }

  /** The notes on things that no topic speaks of. */
  private List<Block> otherNotes(String title) {
    Set<String> rest = places.noted();
    wording.topics().stream()
        .filter(t -> !t.emergency())
        .flatMap(t -> t.shows().stream())
        .forEach(s -> rest.removeAll(places.noted(s)));
    return places.notes(title, rest);
  }

  private List<Block> findings(String title) {
    return found.isEmpty() ? List.of() : List.of(new FindingsBlock(title, found));
  }

  private static List<Block> lines(String title, List<String> lines) {
    return lines.isEmpty()
        ? List.of()
        : List.of(new LinesBlock(title, lines.stream().map(Words::of).toList()));
  }
}
