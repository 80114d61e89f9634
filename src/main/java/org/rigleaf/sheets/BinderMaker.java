package org.rigleaf.sheets;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Finding;
import org.rigleaf.guidance.Findings;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Show;
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
  private final ShowBlocks shows;
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
    this.shows = new ShowBlocks(rig, figures, wording, guide, found, codes);
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
        shows.contacts(),
        paper,
        cover(paper));
  }

  /** The title of a figure with what it is told of. */
  String title(Figure figure) {
    return shows.title(figure);
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
  List<Block> blocks(List<Show> wanted) {
    return shows.blocks(wanted);
  }

  /** What needs attention on this rig. */
  public List<Finding> findings() {
    return found;
  }

  /** All figures of the rig as JSON. */
  public String figuresFile() {
    return new FiguresFile(wording, guide.filler(), numbers()).json(rig, figures);
  }

  /** The upkeep that has a date, as a calendar for other programs. */
  public String calendarFile() {
    return new CalendarFile(rig)
        .text(Stream.concat(guide.upkeep().stream(), guide.markedDates().stream()).toList());
  }

  /** The workings of the figures. */
  public NumberBlocks numbers() {
    return shows.numbers();
  }

  private List<Topic> topics() {
    Map<TopicText, List<Block>> topics = new LinkedHashMap<>();
    for (TopicText text : wording.topics()) {
      List<Block> blocks = shows.topic(text);
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
        figures.find("clearance.height").map(f -> List.of(shows.line(f))).orElse(List.of());
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
}
