package org.rigleaf.rig;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Nearest;
import org.rigleaf.source.Node;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;

/**
 * One recreational vehicle, as its profile describes it.
 *
 * @param privateWords words for the owner's binder alone
 * @param facts every measured thing by path, unknown ones of the sections present included
 * @param texts names, places, switches and other words by path
 * @param traits what the profile gives, as wording asks for it: paths, yes-keys, enum values
 * @param gear everything with a code
 * @param codes codes by gear id
 * @param photos the keeper's photos, in the order of the profile
 * @param meant ids by what a reference may call them, in lower case
 */
public record Rig(
    Identity identity,
    Edition edition,
    List<Contact> contacts,
    Optional<String> page,
    Map<String, String> privateWords,
    Optional<Stay> stay,
    Kit kit,
    Electric electric,
    Water water,
    Waste waste,
    Optional<Propane> propane,
    Climate climate,
    Body body,
    Road road,
    Safety safety,
    Limits limits,
    List<String> houseRules,
    Log log,
    Map<String, Fact> facts,
    Map<String, String> texts,
    Set<String> traits,
    List<Gear> gear,
    Map<String, String> codes,
    List<Photo> photos,
    Map<String, String> meant) {

  /**
   * Binds a profile.
   *
   * @param root what the file holds
   * @param log the log beside it; empty if there is none
   * @param issued codes by gear id of the last issued edition; empty before the first
   * @param vocabulary what profile and log may call things
   * @param shelf where the photos are
   * @throws ProblemsFound with every problem of the profile and its photos
   */
  public static Rig read(
      Node root,
      Optional<Node> log,
      Map<String, String> issued,
      Vocabulary vocabulary,
      Photo.Shelf shelf)
      throws ProblemsFound {
    Reading reading = new Reading(false, shelf);
    Fields profile = top(root, "a profile is keys with values", "start with 'rig:'", reading);
    Fields notes = Fields.none("", reading.problems);
    if (log.isPresent()) {
      notes = top(log.get(), "a log is keys with values", "start with 'last-done:'", reading);
    }
    Rig rig = bind(profile, notes, reading, issued, vocabulary);
    checkReferences(reading, vocabulary);
    if (!reading.problems.none()) {
      throw new ProblemsFound(reading.problems.sorted());
    }
    return rig;
  }

  private static Fields top(Node node, String wrong, String cure, Reading reading)
      throws ProblemsFound {
    if (node instanceof Node.Mapping map) {
      return new Fields(map, "", reading.problems);
    }
    reading.problems.add(node.at(), "", wrong, cure);
    throw new ProblemsFound(reading.problems.sorted());
  }

  private static void blank(Reading reading) {
    Fields none = Fields.none("", new Problems());
    bind(none, none, reading, Map.of(), Vocabulary.NONE);
  }

  /**
   * Every trait that some profile could have: the paths, yes-keys and enum values of the format.
   */
  public static Set<String> possibleTraits() {
    Reading reading = new Reading(true, file -> null);
    blank(reading);
    return Collections.unmodifiableSet(new LinkedHashSet<>(reading.traits));
  }

  /** Gear ids by list or section path, without the items' own parts, that the format knows. */
  public static Set<String> possibleGear() {
    Reading reading = new Reading(true, file -> null);
    blank(reading);
    Set<String> types = new LinkedHashSet<>();
    reading.gear.forEach(g -> types.add(g.type()));
    return types;
  }

  /** Every key that takes one of a closed list, with that list. */
  public static Map<String, List<String>> possibleChoices() {
    Reading reading = new Reading(true, file -> null);
    blank(reading);
    return Collections.unmodifiableMap(new LinkedHashMap<>(reading.choices));
  }

  private static Rig bind(
      Fields fields,
      Fields notes,
      Reading reading,
      Map<String, String> issued,
      Vocabulary vocabulary) {
    Section s = new Section(fields, "", reading, Optional.empty());
    Identity identity = s.part("rig", Identity::read);
    Rig rig =
        new Rig(
            identity,
            s.part("edition", Edition::read),
            s.itemsBy("contacts", "for", Contact::read),
            s.address("page"),
            s.free("private"),
            s.group("stay", Stay::read),
            s.part("kit", Kit::read),
            s.part("electric", Electric::read),
            s.part("water", Water::read),
            s.part("waste", Waste::read),
            s.group("propane", Propane::read),
            s.part("climate", Climate::read),
            s.part("body", Body::read),
            s.part("road", Road::read),
            s.part("safety", Safety::read),
            s.part("limits", Limits::read),
            s.list("house-rules"),
            Log.read(new Section(notes, "", reading, Optional.empty()), vocabulary.tasks()),
            Collections.unmodifiableMap(new LinkedHashMap<>(reading.facts)),
            Collections.unmodifiableMap(new LinkedHashMap<>(reading.texts)),
            Collections.unmodifiableSet(new LinkedHashSet<>(reading.traits)),
            List.copyOf(reading.gear),
            Codes.assign(reading.gear, issued),
            List.copyOf(reading.photos),
            meant(reading, vocabulary));
    fields.finish();
    notes.finish();
    return rig;
  }

  private static void checkReferences(Reading reading, Vocabulary vocabulary) {
    Set<String> known = new LinkedHashSet<>();
    reading.names.forEach(
        (id, name) -> known.addAll(List.of(lower(id), lower(name), lower(Ids.last(id)))));
    reading.gear.forEach(g -> vocabulary.title(g, reading.gear).ifPresent(known::add));
    reading.references.stream()
        .filter(r -> !r.words() && !known.contains(lower(r.text())))
        .forEach(
            r ->
                reading.problems.add(
                    r.at(),
                    r.path(),
                    "nothing here is called '" + r.text() + "'",
                    cure(r, reading.names.values())));
  }

  private static String cure(Reference r, Collection<String> names) {
    String quotes = "put it in quotes if it is only words";
    return Nearest.to(r.text(), names)
        .map(n -> "did you mean '" + n + "'? Or " + quotes)
        .orElse(quotes);
  }

  /** The id of what a reference means; empty if it is only words. */
  public Optional<String> resolve(Reference reference) {
    return meant(reference.text());
  }

  /** The id of what a name, an id or its last part means. */
  public Optional<String> meant(String name) {
    return Optional.ofNullable(meant.get(lower(name)));
  }

  /**
   * A name counts before an id, an id before a title, and the first of its kind before the next.
   */
  private static Map<String, String> meant(Reading reading, Vocabulary vocabulary) {
    Map<String, String> meant = new LinkedHashMap<>();
    reading.texts.forEach(
        (path, text) -> {
          if (path.endsWith(".name")) {
            meant.putIfAbsent(lower(text), path.substring(0, path.length() - ".name".length()));
          }
        });
    for (Gear g : reading.gear) {
      meant.putIfAbsent(lower(g.id()), g.id());
      meant.putIfAbsent(lower(Ids.last(g.id())), g.id());
    }
    for (Gear g : reading.gear) {
      vocabulary.title(g, reading.gear).ifPresent(t -> meant.putIfAbsent(t, g.id()));
    }
    return Collections.unmodifiableMap(meant);
  }

  /** The gear with this id. */
  public Optional<Gear> gear(String id) {
    return gear.stream().filter(g -> g.id().equals(id)).findFirst();
  }

  /** True if the profile gives this. */
  public boolean has(String trait) {
    return traits.contains(trait);
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
