package org.rigleaf.guidance;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.figures.Amounts;
import org.rigleaf.rig.Vocabulary;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;
import org.rigleaf.source.Position;
import org.rigleaf.source.ProblemsFound;

/**
 * All words of the product in one language, read once and checked against the program: a trait no
 * rig can have, a figure, gear or caution that does not exist, or a missing block stops the loading
 * with every problem named.
 */
public final class Wording {
  private static final Map<Amounts, Wording> ENGLISH = new EnumMap<>(Amounts.class);

  final Map<String, CautionText> cautions = new LinkedHashMap<>();
  final Map<String, ProcedureText> procedures = new LinkedHashMap<>();
  final Map<String, TaskText> tasks = new LinkedHashMap<>();
  final Map<String, FaultText> faults = new LinkedHashMap<>();
  final Map<String, ChangeText> changes = new LinkedHashMap<>();
  final Map<String, StopText> stops = new LinkedHashMap<>();
  final Map<String, LabelText> labelTexts = new LinkedHashMap<>();
  private final Map<String, List<String>> lines = new LinkedHashMap<>();
  private final Map<String, Entry> figures = new LinkedHashMap<>();
  private final Map<String, Entry> typical = new LinkedHashMap<>();
  private final Map<String, Entry> gear = new LinkedHashMap<>();
  private final Map<String, String> labels = new LinkedHashMap<>();
  final Map<String, ConditionalFinding> findings = new LinkedHashMap<>();
  private final Map<String, TopicText> topics = new LinkedHashMap<>();
  private final Map<String, TopicText.SectionText> sections = new LinkedHashMap<>();
  private final Map<String, String> phrases = new LinkedHashMap<>();
  private final Map<String, Question> questions = new LinkedHashMap<>();
  private final Map<String, List<Show>> walk = new LinkedHashMap<>();
  private final Map<String, CardText> cards = new LinkedHashMap<>();
  private List<Show> stay = List.of();
  private final WordingCheck check = new WordingCheck();

  private final Amounts amounts;
  private final WordingFiles files;

  private Wording(Amounts amounts) {
    this.amounts = amounts;
    this.files = new WordingFiles(amounts, check);
  }

  /** A title and a sentence. */
  public record Entry(String title, String meaning) {
    private static final Entry NONE = new Entry("", "");
  }

  /** What a finding says, and the topic at whose head it stands, if at one. */
  record ConditionalFinding(String severity, String topic, TextTemplate text) {}

  /** The English wording with US units. */
  public static Wording english() {
    return english(Amounts.US);
  }

  /** The English wording with these units. */
  public static synchronized Wording english(Amounts amounts) {
    return ENGLISH.computeIfAbsent(amounts, Wording::load);
  }

  /** Turns numbers and units into text. */
  public Amounts amounts() {
    return amounts;
  }

  private static Wording load(Amounts amounts) {
    Wording w = new Wording(amounts);
    Fields index = w.files.fields("index.yaml");
    w.files.fields("topics.yaml").keys().forEach(w.check::topicExists);
    index.texts("cautions").forEach(t -> w.names("cautions/" + t.value()));
    index
        .texts("cautions")
        .forEach(t -> w.each("cautions/" + t.value(), w.cautions, CautionText::read));
    index
        .texts("procedures")
        .forEach(t -> w.each("procedures/" + t.value(), w.procedures, ProcedureText::read));
    index.texts("upkeep").forEach(t -> w.upkeep(t.value()));
    index.texts("faults").forEach(t -> w.each("faults/" + t.value(), w.faults, FaultText::read));
    index.finish();
    w.each("figures.yaml", w.figures, (id, e, c) -> entry(e, "title", "meaning"));
    w.each("typical.yaml", w.typical, (id, e, c) -> entry(e, "title", "look"));
    w.each("gear.yaml", w.gear, (id, e, c) -> w.gearEntry(id, e));
    w.each("sections.yaml", w.sections, (id, e, c) -> TopicText.SectionText.read(id, e));
    w.each("topics.yaml", w.topics, TopicText::read);
    w.each("changes.yaml", w.changes, ChangeText::read);
    w.each("stops.yaml", w.stops, StopText::read);
    w.each("label-texts.yaml", w.labelTexts, LabelText::read);
    w.each("walk-through.yaml", w.walk, (id, e, c) -> part(e, c));
    w.each("begin.yaml", w.questions, Question::read);
    w.each("cards.yaml", w.cards, CardText::read);
    w.cards.values().forEach(w::checkCard);
    w.stay = TopicText.shows(w.files.fields("stay.yaml"), w.check);
    w.each("notice.yaml", w.lines, (id, e, c) -> line(e, c));
    w.each("findings.yaml", w.findings, (id, e, c) -> w.finding(e, c));
    Fields phrases = w.files.fields("phrases.yaml");
    phrases.keys().forEach(k -> phrases.text(k).ifPresent(t -> w.phrases.put(k, t.value())));
    if (!w.check.problems.none()) {
      throw new IllegalStateException(new ProblemsFound(w.check.problems.sorted()));
    }
    return w;
  }

  private Entry gearEntry(String id, Fields e) {
    e.text("label").ifPresent(t -> labels.put(id, t.value()));
    return entry(e, "name", "is");
  }

  private static Entry entry(Fields e, String title, String meaning) {
    e.text("plural");
    Entry entry =
        new Entry(
            e.text(title).map(Node.Text::value).orElse(""),
            e.text(meaning).map(Node.Text::value).orElse(""));
    e.finish();
    return entry;
  }

  private static List<Show> part(Fields e, WordingCheck check) {
    List<Show> shows = TopicText.shows(e, check);
    e.finish();
    return shows;
  }

  /** Ids of figures, {@code *} for any part. */
  private static List<String> line(Fields e, WordingCheck check) {
    List<Node.Text> ids = e.texts("figures");
    e.finish();
    return ids.stream().map(Node.Text::value).toList();
  }

  private ConditionalFinding finding(Fields e, WordingCheck check) {
    Optional<Node.Text> topic = e.text("topic");
    topic
        .filter(t -> !topics.containsKey(t.value()))
        .ifPresent(
            t -> check.problem(t.at(), "topic", "no topic '" + t.value() + "'", "see topics.yaml"));
    ConditionalFinding finding =
        new ConditionalFinding(
            e.text("severity").map(Node.Text::value).orElse("attention"),
            topic.map(Node.Text::value).orElse(""),
            TextTemplate.read(e, "text", check));
    e.finish();
    return finding;
  }

  /** A file of upkeep is a trade. */
  private void upkeep(String file) {
    String trade = file.replace(".yaml", "");
    each("upkeep/" + file, tasks, (id, e, c) -> TaskText.read(id, trade, e, c));
  }

  /** A card that names a task no file tells would never be printed. */
  private void checkCard(CardText card) {
    for (Show show : card.shows()) {
      boolean missing =
          show instanceof Show.OfProcedure p && !procedures.containsKey(p.id())
              || show instanceof Show.OfFault f && !faults.containsKey(f.id())
              || show instanceof Show.Listing l
                  && l.what().equals("topic")
                  && !topics.containsKey(l.title());
      if (missing) {
        String cure = "use an id of procedures, faults or topics";
        check.problem(Position.start("cards.yaml"), card.id(), "no such task: " + show, cure);
      }
    }
  }

  private void names(String file) {
    files.fields(file).keys().forEach(check::cautionExists);
  }

  private interface Reader<T> {
    T read(String id, Fields entry, WordingCheck check);
  }

  private <T> void each(String file, Map<String, T> into, Reader<T> reader) {
    Fields all = files.fields(file);
    for (String id : all.keys()) {
      Optional<Fields> entry = all.group(id);
      entry.ifPresent(
          e -> {
            if (into.put(id, reader.read(id, e, check)) != null) {
              check.problem(e.at(), id, "this id stands twice", "rename one of the two");
            }
          });
    }
  }

  /** True of a word that the wording itself writes small: no name of a person or a maker. */
  boolean small(String word) {
    return files.small(word);
  }

  /** What a profile and its log may call things: as the sheets do. */
  public Vocabulary vocabulary() {
    Map<String, String> titles = new HashMap<>();
    gear.forEach((type, entry) -> titles.put(type, entry.title()));
    return new Vocabulary(Set.copyOf(tasks.keySet()), titles);
  }

  /** The topics of the binder, in order. */
  public Collection<TopicText> topics() {
    return topics.values();
  }

  /** What a topic shows. */
  public List<Show> shows(String topic) {
    return topics.get(topic).shows();
  }

  /** The cards, in order. */
  public Collection<CardText> cards() {
    return cards.values();
  }

  /** What a keeper is asked for a first profile, in order. */
  public Collection<Question> questions() {
    return questions.values();
  }

  /** The title of a topic. */
  String topicTitle(String id) {
    return topics.get(id).title();
  }

  /** The topic that tells the whole cautions of a group; empty if none does. */
  Optional<String> topicOfCautions(String group) {
    return topics.values().stream()
        .filter(t -> t.shows().contains(new Show.Listing("cautions", group)))
        .map(TopicText::id)
        .findFirst();
  }

  /** The lines that every notice has, by title, each with the ids of its figures. */
  public Map<String, List<String>> noticeLines() {
    return Collections.unmodifiableMap(lines);
  }

  /** What a plan of a stay shows before its hours. */
  public List<Show> stay() {
    return stay;
  }

  /** What a walk-through shows {@code before} and {@code after} its stops. */
  public List<Show> walk(String part) {
    return walk.get(part);
  }

  /** The tabs of the binder, in order. */
  public Collection<TopicText.SectionText> sections() {
    return sections.values();
  }

  /** Title and meaning of a figure, by the pattern of its register entry. */
  public Entry figure(String pattern) {
    return figures.getOrDefault(pattern, Entry.NONE);
  }

  /** Title of a typical value and where to look for the true one. */
  public Entry typical(String id) {
    return typical.getOrDefault(id, Entry.NONE);
  }

  /** Name of a kind of gear and what it is. */
  public Entry gear(String type) {
    return gear.getOrDefault(type, Entry.NONE);
  }

  /** How an item of a list is called where its bare name would not say what it is. */
  public Optional<String> label(String type) {
    return Optional.ofNullable(labels.get(type));
  }

  /**
   * A small fixed phrase.
   *
   * @throws IllegalArgumentException if there is none with this key
   */
  public String phrase(String key) {
    String phrase = phrases.get(key);
    if (phrase == null) {
      throw new IllegalArgumentException("no phrase '" + key + "' in phrases.yaml");
    }
    return phrase;
  }

  /** A small fixed phrase, if there is one with this key. */
  public Optional<String> find(String key) {
    return Optional.ofNullable(phrases.get(key));
  }

  /** A phrase with its placeholders, in braces, replaced. */
  public String phrase(String key, Map<String, String> values) {
    String text = phrase(key);
    for (Map.Entry<String, String> v : values.entrySet()) {
      text = text.replace("{" + v.getKey() + "}", v.getValue());
    }
    return text;
  }
}
