package org.rigleaf.rig;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;
import org.rigleaf.source.Picture;
import org.rigleaf.source.Position;
import org.rigleaf.source.Unit;

/** One group of the profile, as the records ask for its values, its groups and its lists. */
public final class Section extends Values {
  private static final int LONGEST_NAME = 28;

  private final Optional<String> itemName;

  Section(Fields fields, String schemaPath, Reading reading, Optional<String> itemName) {
    super(fields, schemaPath, reading);
    this.itemName = itemName;
  }

  /** The name of this list item, or the key 'name' of a single group. */
  public Optional<String> name() {
    return itemName.or(() -> words("name"));
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
    List<Node> nodes = reading.schema ? List.of(emptyNode()) : Copies.of(fields, key, singular);
    return items(key, nodes, singular, List.of("name", naming), read);
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
}
