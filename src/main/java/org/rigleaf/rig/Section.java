package org.rigleaf.rig;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Kind;
import org.rigleaf.source.Nearest;
import org.rigleaf.source.Node;
import org.rigleaf.source.PartialDate;
import org.rigleaf.source.Picture;
import org.rigleaf.source.Position;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Unit;

/**
 * One group of the profile, as the records ask for its keys. Whatever is asked for is a key of the
 * format; whatever is written but never asked for is a problem. Every answer is kept by its path,
 * so that wording and drawings can speak of it.
 */
public final class Section {
  private static final Pattern ADDRESS = Pattern.compile("https?://[!-~]+");

  /** What a QR code of 33 squares a side holds (version 4, level M: ISO/IEC 18004, table 7). */
  private static final int LONGEST_ADDRESS = 62;

  private static final int LONGEST_NAME = 28;

  private final Fields fields;
  private final String schemaPath; // the path without the items' own parts: waste.gray.handle
  private final Reading reading;
  private final Optional<String> itemName;

  Section(Fields fields, String schemaPath, Reading reading, Optional<String> itemName) {
    this.fields = fields;
    this.schemaPath = schemaPath;
    this.reading = reading;
    this.itemName = itemName;
  }

  /** Path of this group, items' own parts included. */
  public String path() {
    return fields.path();
  }

  /** The name of this list item, or the key 'name' of a single group. */
  public Optional<String> name() {
    return itemName.or(() -> words("name"));
  }

  // ---- quantities

  /** A quantity greater than zero. */
  public Fact positive(String key, Unit unit) {
    return quantity(key, unit, Double.MIN_VALUE, Double.MAX_VALUE, "more than zero");
  }

  /** A quantity of zero or more. */
  public Fact notNegative(String key, Unit unit) {
    return quantity(key, unit, 0, Double.MAX_VALUE, "zero or more");
  }

  /** A quantity between two limits, both allowed. */
  public Fact between(String key, Unit unit, double least, double most) {
    return quantity(key, unit, least, most, "between " + plain(least) + " and " + plain(most));
  }

  /** A bare number whose unit the key itself names, between two limits. */
  public Fact bare(String key, Unit unit, double least, double most) {
    Fact number = between(key, Unit.COUNT, least, most);
    return keep(key, number.with(v -> v, unit));
  }

  private Fact quantity(String key, Unit unit, double least, double most, String range) {
    Fact fact =
        text(key)
            .flatMap(t -> convert(key, t, unit))
            .orElse(Fact.unknown(fields.pathOf(key), unit));
    boolean outside = fact.known() && (fact.value() < least || fact.value() > most);
    if (outside) {
      fields.problem(at(fact), key, fact.written() + " cannot be", range);
    }
    return keep(key, outside ? Fact.unknown(fact.path(), unit) : fact);
  }

  private Fact keep(String key, Fact fact) {
    reading.facts.put(fields.pathOf(key), fact);
    return fact;
  }

  private static Position at(Fact fact) {
    return ((Fact.Given) fact.origin()).at();
  }

  private Optional<Fact> convert(String key, Node.Text text, Unit unit) {
    Optional<Quantity> read = Quantity.parse(text.value());
    if (read.isEmpty()) {
      fields.problem(
          text.at(), key, "'" + text.value() + "' is not a number with a unit", example(unit));
      return Optional.empty();
    }
    return fit(read.get(), unit, key, text)
        .map(v -> new Fact(fields.pathOf(key), text.value(), v, unit, new Fact.Given(text.at())));
  }

  private Optional<Double> fit(Quantity q, Unit unit, String key, Node.Text text) {
    boolean share = unit.kind() == Kind.SHARE && q.unit() == Unit.COUNT && q.value() <= 1;
    if (q.unit().kind() == unit.kind() || share) {
      return Optional.of(share ? q.value() : q.in(unit));
    }
    if (q.unit() == Unit.COUNT || q.unit() == Unit.SHARE) {
      fields.problem(text.at(), key, "'" + text.value() + "' has no unit", example(unit));
    } else {
      String wrong = "'" + text.value() + "' is " + q.unit().kind().called();
      fields.problem(text.at(), key, wrong + ", not " + unit.kind().called(), example(unit));
    }
    return Optional.empty();
  }

  private static String example(Unit unit) {
    return "write " + unit.kind().called() + ", such as " + unit.kind().example();
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }

  /** What a load draws: watts, or amperes at its own supply; the fact's unit tells which. */
  public Fact draw(String key) {
    boolean amperes =
        text(key)
            .flatMap(t -> Quantity.parse(t.value()))
            .filter(q -> q.unit().kind() == Kind.CURRENT)
            .isPresent();
    return positive(key, amperes ? Unit.AMPERE_UNIT : Unit.WATT_UNIT);
  }

  /** A share such as {@code 1/3}, {@code 50 percent}, {@code full} or {@code empty}. */
  public Fact share(String key) {
    Optional<Node.Text> text = text(key);
    Optional<Double> word =
        text.map(Node.Text::value)
            .filter(v -> v.equals("full") || v.equals("empty"))
            .map(v -> v.equals("full") ? 1.0 : 0.0);
    if (word.isEmpty()) {
      return between(key, Unit.SHARE, 0, 1);
    }
    Fact.Given given = new Fact.Given(text.get().at());
    return keep(
        key, new Fact(fields.pathOf(key), text.get().value(), word.get(), Unit.SHARE, given));
  }

  /** Several of one size, as in {@code 2 x 100 W}. */
  public Several several(String key, Unit unit) {
    Optional<Node.Text> text = text(key);
    String[] parts = text.map(t -> t.value().split("\\s+x\\s+", 2)).orElse(new String[0]);
    String path = fields.pathOf(key);
    if (parts.length < 2 || !parts[0].strip().matches("[1-9]\\d{0,2}")) {
      text.ifPresent(
          t ->
              fields.problem(
                  t.at(),
                  key,
                  "'" + t.value() + "' is not a count and a size",
                  "write '2 x 100 W'"));
      return new Several(keep(key, Fact.unknown(path, Unit.COUNT)), Fact.unknown(path, unit));
    }
    Fact.Given given = new Fact.Given(text.get().at());
    Fact count =
        new Fact(path, parts[0].strip(), Integer.parseInt(parts[0].strip()), Unit.COUNT, given);
    Node.Text size = new Node.Text(parts[1], false, text.get().at());
    Fact each = convert(key, size, unit).orElse(Fact.unknown(path, unit));
    keep(key, new Fact(path, text.get().value(), count.value(), Unit.COUNT, given));
    return new Several(count, each);
  }

  /** A count and the size of each. */
  public record Several(Fact count, Fact each) {}

  /** A list of quantities, each greater than zero. */
  public List<Fact> quantities(String key, Unit unit) {
    mark(key);
    List<Fact> all =
        fields.texts(key).stream().flatMap(t -> convert(key, t, unit).stream()).toList();
    all.stream()
        .filter(f -> f.value() <= 0)
        .forEach(f -> fields.problem(at(f), key, f.written() + " cannot be", "more than zero"));
    return all;
  }

  /** One share or twelve, from January. */
  public List<Fact> shares(String key) {
    List<Fact> all = quantities(key, Unit.SHARE);
    if (all.stream().anyMatch(f -> f.value() > 1) || (all.size() > 1 && all.size() != 12)) {
      fields.problem(at(all.get(0)), key, "one share or twelve are wanted", "each between 0 and 1");
    }
    return all;
  }

  // ---- words, dates, choices

  /** Free words that must be there. */
  public String required(String key) {
    Optional<String> words = words(key);
    if (words.isEmpty() && !reading.schema) {
      fields.problem(fields.at(), key, "this key is missing", "write '" + key + ": ...' here");
    }
    return words.orElse("");
  }

  /**
   * A value of an enum that must be there; a stand-in after a problem, so that the reading can go
   * on.
   */
  public <E extends Enum<E> & Choice> E requiredChoice(String key, Class<E> type) {
    Optional<E> choice = choice(key, type);
    if (!fields.has(key) && !reading.schema) {
      String all =
          Arrays.stream(type.getEnumConstants())
              .map(Choice::text)
              .collect(Collectors.joining(", "));
      fields.problem(fields.at(), key, "this key is missing", "one of: " + all);
    }
    return choice.orElse(type.getEnumConstants()[0]);
  }

  /** A month by its English name. */
  public Optional<Month> month(String key) {
    Optional<Node.Text> text = text(key);
    Optional<Month> month =
        text.flatMap(
            t ->
                Arrays.stream(Month.values())
                    .filter(m -> m.name().equalsIgnoreCase(t.value()))
                    .findFirst());
    if (text.isPresent() && month.isEmpty()) {
      fields.problem(
          text.get().at(), key, "'" + text.get().value() + "' is not a month", "write May");
    }
    month.ifPresent(m -> reading.texts.put(fields.pathOf(key), text.get().value()));
    return month;
  }

  /** Keys and words of the keeper's own. */
  public Map<String, String> free(String key) {
    mark(key);
    Map<String, String> words = new LinkedHashMap<>();
    Optional<Fields> group = fields.has(key) ? fields.group(key) : Optional.empty();
    group.ifPresent(g -> g.keys().forEach(k -> g.text(k).ifPresent(t -> words.put(k, t.value()))));
    return words;
  }

  /** Free words, one line. */
  public Optional<String> words(String key) {
    Optional<String> words = text(key).map(t -> t.value().strip());
    words.ifPresent(w -> reading.texts.put(fields.pathOf(key), w));
    return words;
  }

  /** The address of a page, which a phone reads off a small code. */
  public Optional<String> address(String key) {
    text(key).ifPresent(t -> address(t, key));
    return words(key);
  }

  private void address(Node.Text text, String key) {
    String address = text.value().strip();
    if (!ADDRESS.matcher(address).matches()) {
      String cure = "write it from https:// on, without blanks and accents";
      fields.problem(text.at(), key, "'" + address + "' is not the address of a page", cure);
    } else if (address.length() > LONGEST_ADDRESS) {
      String wrong = "its " + address.length() + " letters make a code too fine to scan";
      String cure = "use an address of at most " + LONGEST_ADDRESS + " letters";
      fields.problem(text.at(), key, wrong, cure);
    }
  }

  /** A list of free words. */
  public List<String> list(String key) {
    mark(key);
    List<String> words = fields.texts(key).stream().map(t -> t.value().strip()).toList();
    if (!words.isEmpty()) {
      reading.texts.put(fields.pathOf(key), String.join(", ", words));
    }
    return words;
  }

  /** Mentions of other things of the rig. */
  public List<Reference> references(String key) {
    mark(key);
    List<Reference> found =
        fields.texts(key).stream()
            .map(t -> new Reference(t.value().strip(), t.quoted(), fields.pathOf(key), t.at()))
            .toList();
    reading.references.addAll(found);
    if (!found.isEmpty()) {
      reading.texts.put(
          fields.pathOf(key),
          found.stream().map(Reference::text).collect(Collectors.joining(", ")));
    }
    return found;
  }

  /** A date, as exact as it is known. */
  public Optional<PartialDate> date(String key) {
    Optional<Node.Text> text = text(key);
    Optional<PartialDate> date = text.flatMap(t -> PartialDate.parse(t.value()));
    if (text.isPresent() && date.isEmpty()) {
      String cure = "write 2026-05-02, 2026-05, 2026 or 'week 14 of 2022'";
      fields.problem(text.get().at(), key, "'" + text.get().value() + "' is not a date", cure);
    }
    date.ifPresent(d -> reading.texts.put(fields.pathOf(key), text.get().value()));
    return date;
  }

  /** A date that must be there. */
  public Optional<PartialDate> requiredDate(String key) {
    if (!fields.has(key)) {
      fields.problem(fields.at(), key, "this key is missing", "write '" + key + ": 2026-05-02'");
    }
    return date(key);
  }

  /** True if keys with values stand under a key, and not a single text. */
  public boolean grouped(String key) {
    return fields.node(key).filter(Node.Mapping.class::isInstance).isPresent();
  }

  /**
   * Values by keys of a closed list, such as the tasks of a log; any other key is a problem.
   *
   * @param list where a keeper can read the list
   */
  public <T> Map<String, T> byKey(
      String key, Set<String> known, String list, BiFunction<Section, String, Optional<T>> read) {
    mark(key);
    Map<String, T> values = new LinkedHashMap<>();
    Optional<Fields> group = fields.has(key) ? fields.group(key) : Optional.empty();
    group.ifPresent(
        g -> {
          Section s = new Section(g, g.path(), reading, Optional.empty());
          for (String k : g.keys()) {
            if (known.contains(k)) {
              read.apply(s, k).ifPresent(v -> values.put(k, v));
            } else {
              g.unknown(k, known, list);
            }
          }
        });
    return values;
  }

  /** Yes, no or unknown. */
  public Answer yes(String key) {
    Optional<Node.Text> text = unmarked(key);
    if (reading.schema) {
      reading.traits.addAll(List.of(trait(key), trait(key) + ".no"));
    }
    if (text.isEmpty()) {
      return Answer.UNKNOWN;
    }
    switch (text.get().value()) {
      case "yes", "true" -> {
        reading.traits.add(trait(key));
        reading.texts.put(fields.pathOf(key), "yes"); // so that an item of a list can be asked
        return Answer.YES;
      }
      case "no", "false" -> {
        reading.traits.add(trait(key) + ".no");
        return Answer.NO;
      }
      default -> {
        fields.problem(
            text.get().at(),
            key,
            "'" + text.get().value() + "' is neither yes nor no",
            "write yes or no");
        return Answer.UNKNOWN;
      }
    }
  }

  /** One value of an enum. */
  public <E extends Enum<E> & Choice> Optional<E> choice(String key, Class<E> type) {
    possible(key, type);
    return text(key).flatMap(t -> choose(key, t, type));
  }

  /** Several values of an enum. */
  public <E extends Enum<E> & Choice> List<E> choices(String key, Class<E> type) {
    mark(key);
    possible(key, type);
    List<E> chosen =
        fields.texts(key).stream().flatMap(t -> choose(key, t, type).stream()).toList();
    if (chosen.size() > 1) { // all of them, where a page names what a thing runs on
      reading.texts.put(
          fields.pathOf(key), chosen.stream().map(Choice::text).collect(Collectors.joining(", ")));
    }
    return chosen;
  }

  private <E extends Enum<E> & Choice> Optional<E> choose(
      String key, Node.Text text, Class<E> type) {
    Optional<E> found =
        Arrays.stream(type.getEnumConstants())
            .filter(e -> e.text().equals(text.value()))
            .findFirst();
    if (found.isEmpty()) {
      List<String> all = Arrays.stream(type.getEnumConstants()).map(Choice::text).toList();
      String cure =
          Nearest.to(text.value(), all)
              .map(n -> "did you mean '" + n + "'?")
              .orElse("one of: " + String.join(", ", all));
      fields.problem(text.at(), key, "'" + text.value() + "' is not known here", cure);
    }
    found.ifPresent(e -> reading.traits.add(trait(key) + "." + e.trait()));
    found.ifPresent(e -> reading.texts.put(fields.pathOf(key), e.text()));
    return found;
  }

  private <E extends Enum<E> & Choice> void possible(String key, Class<E> type) {
    if (reading.schema) {
      Arrays.stream(type.getEnumConstants())
          .forEach(e -> reading.traits.add(trait(key) + "." + e.trait()));
      reading.choices.put(
          trait(key), Arrays.stream(type.getEnumConstants()).map(Choice::text).toList());
    }
  }

  // ---- groups and lists

  /** A group of keys; {@code none} or silence is empty. */
  public <T> Optional<T> group(String key, Function<Section, T> read) {
    Optional<Node> node = fields.node(key);
    if (node.isPresent() && isNone(node.get())) {
      reading.traits.add(trait(key) + ".none");
      return Optional.empty();
    }
    if (node.isEmpty() && !reading.schema) {
      return Optional.empty();
    }
    mark(key);
    return Optional.of(child(key, read));
  }

  /** A group of keys that the records need even if the profile is silent. */
  public <T> T part(String key, Function<Section, T> read) {
    mark(key);
    return child(key, read);
  }

  private <T> T child(String key, Function<Section, T> read) {
    Fields group = fields.group(key).orElse(Fields.none(fields.pathOf(key), reading.problems));
    return read(group, trait(key), Optional.empty(), read);
  }

  private <T> T read(
      Fields group, String schema, Optional<String> name, Function<Section, T> read) {
    T result = read.apply(new Section(group, schema, reading, name));
    group.finish();
    return result;
  }

  /**
   * A list of groups. An item is named by its key 'name', else by its {@code naming} key, else by
   * {@code singular} (numbered if there are several).
   */
  public <T> List<T> items(String key, String singular, String naming, Function<Section, T> read) {
    return items(
        key,
        reading.schema ? List.of(emptyNode()) : fields.list(key),
        singular,
        List.of("name", naming),
        read);
  }

  /** A list of groups known by the key {@code naming}; 'name' is then a key like any other. */
  public <T> List<T> itemsBy(String key, String naming, Function<Section, T> read) {
    List<Node> nodes = reading.schema ? List.of(emptyNode()) : fields.list(key);
    return items(key, nodes, naming, List.of(naming), read);
  }

  private <T> List<T> items(
      String key,
      List<Node> nodes,
      String singular,
      List<String> naming,
      Function<Section, T> read) {
    if (nodes.size() == 1 && isNone(nodes.get(0))) {
      reading.traits.add(trait(key) + ".none");
      return List.of();
    }
    mark(key);
    List<T> items = new ArrayList<>();
    Set<String> used = new HashSet<>();
    for (int i = 0; i < nodes.size(); i++) {
      String fallback = nodes.size() == 1 ? singular : singular + " " + (i + 1);
      Optional<Fields> group = fields.group(nodes.get(i), key);
      if (group.isPresent()) {
        items.add(item(key, group.get(), naming, fallback, used, nodes.get(i), read));
      }
    }
    return List.copyOf(items);
  }

  /**
   * A list of groups in which {@code count: 2} stands for two of a kind, named 'cylinder 1' and
   * 'cylinder 2'.
   */
  public <T> List<T> counted(
      String key, String singular, String naming, Function<Section, T> read) {
    return items(key, expand(key, singular), singular, List.of("name", naming), read);
  }

  private List<Node> expand(String key, String singular) {
    if (reading.schema) {
      Node.Text one = new Node.Text("1", false, Position.start(""));
      Node.Entry count = new Node.Entry(one.at(), one);
      return List.of(new Node.Mapping(Map.of("count", count), one.at()));
    }
    List<Node> all = new ArrayList<>();
    for (Node node : fields.list(key)) {
      boolean several = node instanceof Node.Mapping m && m.entries().containsKey("count");
      all.addAll(several ? copies(key, singular, (Node.Mapping) node) : List.of(node));
    }
    return all;
  }

  private List<Node> copies(String key, String singular, Node.Mapping node) {
    Node value = node.entries().get("count").value();
    String written = value instanceof Node.Text t ? t.value() : "";
    if (!written.matches("[1-9]")) {
      fields.problem(
          value.at(), key + ".count", "'" + written + "' is not a count", "write 1 to 9");
      return List.of();
    }
    int count = Integer.parseInt(written);
    Node name = node.entries().containsKey("name") ? node.entries().get("name").value() : null;
    String stem = name instanceof Node.Text t ? t.value() : singular;
    List<Node> copies = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      copies.add(copy(node, count == 1 ? stem : stem + " " + i));
    }
    return copies;
  }

  private static Node copy(Node.Mapping node, String name) {
    Map<String, Node.Entry> entries = new LinkedHashMap<>(node.entries());
    entries.remove("count");
    entries.put("name", new Node.Entry(node.at(), new Node.Text(name, false, node.at())));
    return new Node.Mapping(entries, node.at());
  }

  private <T> T item(
      String key,
      Fields group,
      List<String> naming,
      String fallback,
      Set<String> used,
      Node node,
      Function<Section, T> read) {
    String name =
        naming.stream()
            .flatMap(k -> group.text(k).stream())
            .map(t -> t.value().strip())
            .findFirst()
            .orElse(fallback);
    String part = group.text("key").map(Node.Text::value).orElse(Ids.of(name));
    if (name.length() > LONGEST_NAME) {
      fields.problem(
          node.at(), key, "the name '" + name + "' is longer than 28 signs", "shorten it");
    }
    if (!used.add(part)) {
      fields.problem(
          node.at(), key, "two items are called '" + name + "'", "give each its own name");
    }
    Fields renamed =
        new Fields((Node.Mapping) node, fields.pathOf(key) + "." + part, reading.problems);
    renamed.node("key");
    naming.forEach(renamed::node);
    reading.traits.add(trait(key) + "." + part);
    reading.texts.put(renamed.path() + ".name", name);
    reading.names.put(renamed.path(), name);
    return read(renamed, trait(key), Optional.of(name), read);
  }

  private static Node emptyNode() {
    return new Node.Mapping(Map.of(), Position.start(""));
  }

  private static boolean isNone(Node node) {
    return node instanceof Node.Text t && t.value().equals("none");
  }

  // ---- gear and places

  /** Registers this group as a piece of gear with a code. */
  public Gear gear(Letter letter) {
    Gear gear = unregistered(letter);
    reading.gear.add(gear);
    gear.name().ifPresent(n -> reading.names.put(gear.id(), n));
    reading.names.putIfAbsent(gear.id(), Ids.last(gear.id()).replace('-', ' '));
    return gear;
  }

  /**
   * The same without a code, for gear that is not there. What the keeper says of any gear is kept
   * with the texts: {@code marked}, the words that panel or label have for it, {@code reset}, where
   * its reset is, and {@code note}, how this one works; and its photo.
   */
  public Gear unregistered(Letter letter) {
    List.of("marked", "reset", "note").forEach(this::words);
    photo();
    return new Gear(path(), schemaPath, name(), letter, place(), words("code"));
  }

  /** The photo of this group; one that cannot be printed is a problem. */
  void photo() {
    text("photo")
        .ifPresent(
            t -> {
              try {
                Picture picture = reading.shelf.fetch(t.value().strip());
                reading.photos.add(new Photo(path(), t.value().strip(), t.at(), picture));
              } catch (Picture.Refused e) {
                fields.problem(t.at(), "photo", e.getMessage(), e.cure());
              }
            });
  }

  /** The place of this group: words under 'where' or 'kept', a spot under 'at'. */
  public Place place() {
    Optional<String> words = words("where").or(() -> words("kept"));
    Optional<Node.Text> at = text("at");
    Optional<Spot> spot = at.flatMap(t -> Spot.parse(t.value()));
    if (at.isPresent() && spot.isEmpty()) {
      String cure =
          "write 'street 19 ft up 3 ft' or 'street rear'; faces: front street rear curb roof under inside";
      fields.problem(at.get().at(), "at", "'" + at.get().value() + "' is not a place", cure);
    }
    spot.flatMap(Spot::aft).ifPresent(aft -> measured("at", at.get(), aft));
    spot.flatMap(Spot::up).ifPresent(up -> measured("at.up", at.get(), up));
    return new Place(words, spot);
  }

  /** Keeps a distance of a measured place as a fact, for the moments of weights and for reaches. */
  private void measured(String key, Node.Text at, double feet) {
    Fact.Given given = new Fact.Given(at.at());
    keep(key, new Fact(fields.pathOf(key), at.value(), feet, Unit.FOOT, given));
  }

  // ---- traits

  private Optional<Node.Text> text(String key) {
    mark(key);
    return unmarked(key);
  }

  private Optional<Node.Text> unmarked(String key) {
    return fields.text(key);
  }

  private void mark(String key) {
    if (reading.schema || fields.has(key)) {
      reading.traits.add(trait(key));
    }
  }

  private String trait(String key) {
    return schemaPath.isEmpty() ? key : schemaPath + "." + key;
  }
}
