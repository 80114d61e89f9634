package org.rigleaf.sheets;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Caution;
import org.rigleaf.guidance.Finding;
import org.rigleaf.guidance.Findings;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.Task;
import org.rigleaf.guidance.TopicText;
import org.rigleaf.guidance.Wording;
import org.rigleaf.guidance.Words;
import org.rigleaf.rig.Rig;

/** Puts a binder together: topics in order, each with the blocks that this rig needs. */
public final class BinderMaker {
  private final Rig rig;
  private final Figures figures;
  private final Wording wording;
  private final Guide guide;
  private final List<Finding> found;
  private final Labels labels;
  private final TableBlocks tables;
  private final NumberBlocks numbers;
  private final PlaceBlocks places;
  private final PlotBlocks plots;
  private final DrawingBlocks drawings;
  private final PhotoBlocks photos;
  private final Map<String, String> codes; // of the topics, by id
  private final Map<String, String> issued; // the same, as the last edition has them

  private BinderMaker(
      Rig rig,
      Figures figures,
      Wording wording,
      Map<String, String> codes,
      Map<String, String> issued) {
    this.codes = codes;
    this.issued = issued;
    this.rig = rig;
    this.figures = figures;
    this.wording = wording;
    this.guide = new Guide(rig, figures, wording, codes);
    this.found = Findings.of(rig, figures, wording, guide);
    this.labels = new Labels(rig, wording, guide.filler(), guide.places());
    this.tables = new TableBlocks(figures, labels);
    this.numbers = new NumberBlocks(figures, wording, labels);
    this.places = new PlaceBlocks(rig, wording, guide);
    this.plots = new PlotBlocks(rig, figures, wording, labels, tables, guide.filler());
    this.photos = new PhotoBlocks(rig, wording, guide);
    this.drawings = new DrawingBlocks(rig, figures, wording, guide, places);
  }

  /**
   * A maker for one rig. Words and reminders name other topics, whose codes are known only when the
   * topics are counted.
   *
   * @param issued codes by topic id of the last issued edition; empty before the first
   */
  public static BinderMaker of(
      Rig rig, Figures figures, Wording wording, Map<String, String> issued) {
    Map<String, String> codes = new HashMap<>();
    new BinderMaker(rig, figures, wording, Map.of(), issued)
        .topics()
        .forEach(topic -> codes.put(topic.id(), topic.code()));
    return new BinderMaker(rig, figures, wording, codes, issued);
  }

  /** The guidance this binder is made of. */
  public Guide guide() {
    return guide;
  }

  /**
   * The binder on this paper; {@code draft} is the mark of a binder that was never issued, empty
   * otherwise.
   */
  public Binder binder(Paper paper, boolean draft) {
    List<Tab> tabs =
        wording.sections().stream().map(s -> new Tab(s.key(), s.letter(), s.title())).toList();
    return new Binder(
        rig.identity().name(),
        wording.phrase("kind-" + rig.identity().kind().trait()),
        draft ? wording.phrase("draft") : "",
        edition(),
        tabs,
        topics(),
        places.contacts(),
        paper,
        cover(paper));
  }

  /** The title of a figure with what it is told of. */
  String title(Figure figure) {
    return tables.title(figure);
  }

  /** Something printed that is exchanged as a whole, as this edition has it. */
  public Piece piece(
      String kind, String id, String code, String title, String html, List<String> parts) {
    int number = IssuedMaker.number(rig.edition());
    String date = rig.edition().date().map(LocalDate::toString).orElse("");
    return new Piece(kind, id, code, title, number, date, Digests.digest(html), parts);
  }

  /** The name of a thing with a code. */
  String name(String gear) {
    return guide.places().name(gear);
  }

  /** The blocks that some shows of the wording ask for, as far as this rig needs them. */
  List<Block> blocks(List<Show> shows) {
    return shows.stream()
        .filter(s -> s.condition().holds(guide::has))
        .<Block>flatMap(s -> blocks(s).stream())
        .toList();
  }

  /** What needs attention on this rig. */
  public List<Finding> findings() {
    return found;
  }

  /** All figures of the rig as JSON. */
  public String figuresFile() {
    return new FiguresFile(wording, guide.filler(), numbers).json(rig, figures);
  }

  /** The upkeep that has a date, as a calendar for other programs. */
  public String calendarFile() {
    return new CalendarFile(rig)
        .text(Stream.concat(guide.upkeep().stream(), guide.markedDates().stream()).toList());
  }

  /** The workings of the figures. */
  public NumberBlocks numbers() {
    return numbers;
  }

  private List<Topic> topics() {
    Map<TopicText, List<Block>> topics = new LinkedHashMap<>();
    for (TopicText text : wording.topics()) {
      List<Block> blocks =
          Stream.of(
                  foundHere(text.id()).stream(),
                  text.shows().stream()
                      .filter(s -> s.condition().holds(guide::has))
                      .<Block>flatMap(s -> blocks(s).stream()),
                  notes(text).stream())
              .flatMap(b -> b)
              .toList();
      boolean lines =
          text.emergency() && blocks.stream().noneMatch(ProcedureBlock.class::isInstance);
      if (!blocks.isEmpty() && !lines) { // no emergency is lines to fill in alone
        topics.put(text, blocks);
      }
    }
    Map<String, String> coded = coded(topics.keySet());
    return topics.entrySet().stream()
        .map(t -> topic(t.getKey(), coded.get(t.getKey().id()), t.getValue()))
        .toList();
  }

  private static Topic topic(TopicText text, String code, List<Block> blocks) {
    return new Topic(text.id(), code, text.section(), text.title(), text.emergency(), blocks);
  }

  private Map<String, String> coded(Set<TopicText> topics) {
    Map<String, String> letters = new HashMap<>();
    wording.sections().forEach(s -> letters.put(s.key(), s.letter()));
    return TopicCodes.assign(
        topics.stream().map(t -> new TopicCodes.Wanted(t.id(), letters.get(t.section()))).toList(),
        issued);
  }

  /** An emergency is no time for notes. */
  private List<Block> notes(TopicText text) {
    Set<String> noted = new LinkedHashSet<>();
    text.shows().forEach(s -> noted.addAll(places.noted(s)));
    return text.emergency() ? List.of() : places.notes(wording.phrase("keeper-says"), noted);
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

  /** The code of a topic; empty if this binder does not have it. */
  String code(String topic) {
    return codes.getOrDefault(topic, "");
  }

  /** Codes of what is no topic, those of the last issued edition kept. */
  Map<String, String> codes(List<TopicCodes.Wanted> wanted) {
    return TopicCodes.assign(wanted, issued);
  }

  /** The edition, as printed. */
  Edition edition() {
    int number = IssuedMaker.number(rig.edition());
    String date = rig.edition().date().map(Amounts::date).orElse("");
    return new Edition(number, date, rig.edition().note().orElse(""));
  }

  private Cover cover(Paper paper) {
    List<FigureLine> lines =
        figures.find("clearance.height").map(f -> List.of(line(f))).orElse(List.of());
    List<Words> limits =
        List.of("limit-1", "limit-2", "limit-3").stream()
            .map(k -> Words.of(wording.phrase(k)))
            .toList();
    List<Finding> urgent = found.stream().filter(f -> f.severity().equals("safety")).toList();
    String keeper = rig.contacts().stream().findFirst().flatMap(c -> c.name()).orElse("");
    String reader = wording.phrase("reader", Map.of("rig", rig.identity().name()));
    List<DrawingBlock> portrait =
        Portraits.of(rig, wording, guide.filler(), paper, lines.size(), urgent.size());
    return new Cover(wording.phrase("binder-for"), reader, keeper, lines, limits, urgent, portrait);
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

  private FigureLine line(Figure figure) {
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

  /** What needs attention, at the head of the topic that it concerns. */
  private List<Block> foundHere(String topic) {
    List<Finding> here = found.stream().filter(f -> f.topic().equals(topic)).toList();
    return here.isEmpty()
        ? List.of()
        : List.of(new FindingsBlock(wording.phrase("found-here"), here));
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
