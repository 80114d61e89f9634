package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.figures.Value;
import org.rigleaf.rig.Circuit;
import org.rigleaf.rig.Contact;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Unit;

/**
 * Fills the placeholders of a text for one rig. What is absent or unknown becomes a line to fill
 * in; nothing is guessed.
 */
public final class Filler {
  /** Keys whose words name other things of the rig. */
  private static final Set<String> MENTIONS =
      Set.of("feeds", "cuts", "leaves", "protects", "sheds");

  private static final Pattern RANGE = Pattern.compile("(\\d+)-(\\d+) (\\S+)");

  private final Rig rig;
  private final Figures figures;
  private final Wording wording;
  private final Places places;
  private final Map<String, String> topics; // code of each printed topic by id

  /**
   * A filler for one rig.
   *
   * @param topics codes of the topics by id; a topic without one is named by its title alone
   */
  public Filler(Rig rig, Figures figures, Wording wording, Map<String, String> topics) {
    this.topics = topics;
    this.rig = rig;
    this.figures = figures;
    this.wording = wording;
    this.places = new Places(rig, wording);
  }

  /**
   * The words of a text; {@code item} is the id of the list item it repeats for, empty outside
   * lists.
   */
  public Words fill(TextTemplate text, String item) {
    List<Run> runs = new ArrayList<>();
    for (TextTemplate.Part part : text.parts()) {
      if (part.kind().equals("name")) {
        runs.add(name(item, starts(runs)));
      } else {
        runs.addAll(part.kind().isEmpty() ? List.of(Run.text(part.text())) : slot(part, item));
      }
    }
    return new Words(runs);
  }

  private Run name(String item, boolean starts) {
    String name = places.bare(item);
    return Run.text(starts ? name : places.small(name));
  }

  private static boolean starts(List<Run> before) {
    return before.isEmpty() || before.get(before.size() - 1).text().endsWith(". ");
  }

  private List<Run> slot(TextTemplate.Part part, String item) {
    String id = part.text().startsWith(".") ? item + part.text() : part.text();
    return switch (part.kind()) {
      case "figure" -> List.of(figure(part.text().replace("*", Ids.last(item))));
      case "place-of" -> places.where(id).runs();
      case "place" -> places.where(item).runs();
      case "name-of" -> text(places.inSentence(id));
      case "code-of" -> List.of(code(id));
      case "code" -> List.of(code(item));
      case "count-of" ->
          text(String.valueOf(rig.gear().stream().filter(g -> g.type().equals(id)).count()));
      case "breaker-of" -> circuits(rig.electric().breakers(), "breaker", id);
      case "fuse-of" -> circuits(rig.electric().fuses(), "fuse", id);
      case "topic" -> List.of(topic(id));
      case "fact" ->
          id.endsWith(".switch") || id.endsWith(".switches")
              ? places.labelled(Ids.parent(id), new Words(List.of(fact(id)))).runs()
              : List.of(fact(id));
      case "contact" -> List.of(contact());
      default -> List.of(Run.blank(part.text()));
    };
  }

  private static List<Run> text(String text) {
    return List.of(Run.text(text));
  }

  private Run code(String id) {
    return Optional.ofNullable(rig.codes().get(id))
        .map(Run::text)
        .orElse(Run.text(places.name(id)));
  }

  private Run fact(String path) {
    Fact fact = rig.facts().get(path);
    if (fact != null && fact.known()) {
      return Run.text(written(fact));
    }
    return Optional.ofNullable(rig.texts().get(path))
        .map(
            t ->
                Run.text(
                    MENTIONS.contains(Ids.last(path))
                        ? mentioned(t)
                        : places.spoken(path, range(t))))
        .orElseGet(
            () -> rig.has(path + ".no") ? Run.text(wording.phrase("answer-no")) : Run.blank(path));
  }

  /** Mentions of other things, each by its name. */
  private String mentioned(String text) {
    return Stream.of(text.split(", "))
        .map(t -> rig.meant(t).map(places::inSentence).orElse(t))
        .collect(Collectors.joining(", "));
  }

  /**
   * As the keeper wrote it, with the signs that a reader knows: degrees, commas in thousands; in
   * our units if the keeper wrote others.
   */
  public String written(Fact fact) {
    boolean others =
        Quantity.parse(fact.written()).filter(q -> !wording.amounts().suits(q.unit())).isPresent();
    return others ? wording.amounts().text(fact.value(), fact.unit()) : signs(fact.written());
  }

  /** From so much to so much, such as 90-120 lb-ft, in our units. */
  private String range(String text) {
    Matcher m = RANGE.matcher(text);
    Optional<Unit> unit = m.matches() ? Unit.of(m.group(3)) : Optional.empty();
    return unit.filter(u -> !wording.amounts().suits(u))
        .map(u -> amount(m.group(1), u) + " to " + amount(m.group(2), u))
        .orElse(text);
  }

  private String amount(String number, Unit unit) {
    return wording.amounts().text(Double.parseDouble(number), unit);
  }

  private static String signs(String written) {
    return written
        .replace("degF", "°F")
        .replace("degC", "°C")
        .replace(" deg", "°")
        .replaceAll("(?<![\\d.,])(\\d{1,3})(\\d{3})(?= [A-Za-z])", "$1,$2");
  }

  /**
   * The circuits that feed a thing, by the panel's own names; a line to fill in if none says so.
   */
  private List<Run> circuits(List<? extends Circuit> all, String kind, String id) {
    String names =
        all.stream().filter(c -> feeds(c, id)).map(this::line).collect(Collectors.joining(" and "));
    return List.of(names.isEmpty() ? Run.blank(kind + "." + id) : Run.text(names));
  }

  private boolean feeds(Circuit circuit, String id) {
    String kind = wording.gear(id).title();
    boolean mentioned =
        circuit.feeds().stream()
            .map(f -> rig.resolve(f).orElse(f.text()))
            .anyMatch(f -> f.equals(id) || f.startsWith(id + ".") || f.equalsIgnoreCase(kind));
    return mentioned || circuit.name().equalsIgnoreCase(kind);
  }

  private String line(Circuit circuit) {
    String rating = circuit.rating().known() ? ", " + circuit.rating().written() : "";
    String place =
        places.known(circuit.id()) ? " (" + places.where(circuit.id()).plain() + ")" : "";
    return "\"" + circuit.name() + "\"" + rating + place;
  }

  private Run topic(String id) {
    String code = topics.containsKey(id) ? " (" + topics.get(id) + ")" : "";
    return Run.topic("'" + wording.topicTitle(id) + "'" + code, id);
  }

  /** Whom to call first; a line to fill in if nobody is named. */
  public Run contact() {
    return rig.contacts().stream()
        .findFirst()
        .map(Filler::line)
        .filter(l -> !l.isEmpty())
        .map(Run::text)
        .orElse(Run.blank("contacts.keeper"));
  }

  private static String line(Contact contact) {
    return Stream.of(contact.name().or(contact::purpose), contact.phone())
        .flatMap(Optional::stream)
        .collect(Collectors.joining(", "));
  }

  /** A figure as a run; a line to fill in if it is absent. */
  public Run figure(String id) {
    return figures.find(id).map(this::run).orElse(Run.blank(id));
  }

  /** A figure as a run. */
  public Run run(Figure figure) {
    return Run.figure(shown(figure), mark(figure));
  }

  private static Mark mark(Figure f) {
    String from = f.assumes().isEmpty() ? "given" : "typical";
    return new Mark(
        f.id(), f.value().data(), f.unit().symbol(), from, String.join(" ", f.assumes()));
  }

  /** A value as the page shows it. */
  public String shown(Figure figure) {
    Value value = figure.value();
    if (value instanceof Value.Number n) {
      return wording.amounts().text(n.number(), figure.unit());
    }
    if (value instanceof Value.Day d) {
      return Amounts.date(d.day());
    }
    if (value instanceof Value.Loads l) {
      boolean list = figure.id().endsWith(".never") || figure.id().endsWith(".always");
      return l.ids().stream().map(this::loadName).collect(Collectors.joining(list ? ", " : " + "));
    }
    if (value instanceof Value.Thing t) {
      return wording.find("store-" + t.id()).orElseGet(() -> places.name(t.gear()));
    }
    String word = ((Value.Word) value).word().text();
    String what = figure.entry().unit() == Unit.WORD ? "-what" : "";
    return wording.find("word-" + word + what).or(() -> wording.find("word-" + word)).orElse(word);
  }

  /** The printed name of a load by its id part. */
  public String loadName(String part) {
    return rig.texts().entrySet().stream()
        .filter(e -> e.getKey().endsWith("." + part + ".name"))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElseGet(() -> places.loadName(part));
  }
}
