package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.Wording;
import org.rigleaf.guidance.Words;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;

/** Blocks that say where things are: the map, the six things, label and fact pairs, contacts. */
final class PlaceBlocks {
  private static final Set<String> KEYS = Rig.possibleTraits();

  /** Drives of gear, and kinds of beds, that no switch moves. */
  private static final Set<String> BY_HAND = Set.of("hand", "crank", "table", "sofa", "bunk");

  private final Rig rig;
  private final Wording wording;
  private final Guide guide;

  PlaceBlocks(Rig rig, Wording wording, Guide guide) {
    this.rig = rig;
    this.wording = wording;
    this.guide = guide;
  }

  Optional<Block> places(Show.Places show) {
    List<Legend> items =
        show.items().stream()
            .filter(i -> i.condition().holds(guide::has))
            .flatMap(i -> legends(i.gear()).stream())
            .toList();
    return items.isEmpty() ? Optional.empty() : Optional.of(new PlacesBlock(show.title(), items));
  }

  private List<Legend> legends(String type) {
    List<String> ids = guide.ids(type);
    return (ids.isEmpty() ? List.of(type) : ids).stream().map(this::legend).toList();
  }

  private Legend legend(String id) {
    String code = rig.codes().getOrDefault(id, "");
    return new Legend(code, id, guide.places().name(id), guide.places().where(id));
  }

  Optional<Block> pairs(Show.Pairs show) {
    List<String> items = show.each().isEmpty() ? List.of("") : guide.ids(show.each());
    List<List<Words>> rows = new ArrayList<>();
    for (String item : items) {
      show.items().stream()
          .filter(p -> guide.holds(p.condition(), item))
          .forEach(
              p ->
                  rows.add(
                      List.of(
                          guide.filler().fill(p.label(), item),
                          guide.filler().fill(p.text(), item))));
    }
    List<String> heads = List.of(show.title(), wording.phrase("head-this-rig"));
    return rows.isEmpty() ? Optional.empty() : Optional.of(new TableBlock("", heads, rows, ""));
  }

  List<Contact> contacts() {
    return rig.contacts().stream()
        .map(
            c ->
                new Contact(
                    c.purpose().or(c::name).orElse(""), c.phone().orElse(""), c.hours().orElse("")))
        .toList();
  }

  List<Block> contactBlock(String title) {
    List<List<Words>> rows =
        rig.contacts().stream()
            .map(
                c ->
                    List.of(
                        Words.of(c.purpose().or(c::name).orElse("")),
                        Words.of(c.name().orElse("")),
                        Words.of(c.phone().orElse("")),
                        Words.of(c.hours().orElse(""))))
            .toList();
    List<String> heads =
        List.of(title, "", wording.phrase("head-phone"), wording.phrase("head-hours"));
    return rows.isEmpty()
        ? List.of(new FillBlock(title, List.of(title)))
        : List.of(new TableBlock("", heads, rows, ""));
  }

  /** Where switches are and what the panel calls them, for gear that may have one. */
  List<Block> switches(String title) {
    List<List<Words>> rows =
        rig.gear().stream().flatMap(g -> switchKey(g).map(k -> row(g, k)).stream()).toList();
    List<String> heads =
        List.of(title, wording.phrase("head-switch"), wording.phrase("head-panel"));
    return rows.isEmpty() ? List.of() : List.of(new TableBlock("", heads, rows, ""));
  }

  private Optional<String> switchKey(Gear g) {
    boolean byHand =
        Stream.of(".drive", ".kind")
            .map(key -> rig.texts().getOrDefault(g.id() + key, ""))
            .anyMatch(BY_HAND::contains);
    return byHand
        ? Optional.empty()
        : Stream.of("switch", "switches")
            .filter(k -> KEYS.contains(g.type() + "." + k))
            .findFirst();
  }

  private List<Words> row(Gear g, String key) {
    return List.of(
        Words.of(guide.places().name(g.id())), said(g.id() + "." + key), said(g.id() + ".marked"));
  }

  private Words said(String path) {
    return new Words(
        List.of(Optional.ofNullable(rig.texts().get(path)).map(Run::text).orElse(Run.blank(path))));
  }

  /** Where things are reset, as far as the keeper says. */
  List<Block> resets(String title) {
    List<Legend> items =
        rig.gear().stream()
            .filter(g -> rig.texts().containsKey(g.id() + ".reset"))
            .map(g -> new Legend("", "", guide.places().name(g.id()), said(g.id() + ".reset")))
            .toList();
    return items.isEmpty() ? List.of() : List.of(new PlacesBlock(title, items));
  }

  /** What the keeper says of things, by id, in this order. */
  List<Block> notes(String title, Collection<String> ids) {
    List<NotesBlock.Note> notes =
        ids.stream()
            .map(id -> new NotesBlock.Note(id, guide.places().name(id), said(id + ".note")))
            .toList();
    return notes.isEmpty() ? List.of() : List.of(new NotesBlock(title, notes));
  }

  /** The things with a note that a block of a topic speaks of. */
  Set<String> noted(Show show) {
    if (show instanceof Show.OfProcedure p) {
      return guide.noted(p.id());
    } else if (show instanceof Show.OfFault f) {
      return guide.noted(f.id());
    }
    Optional<Block> block = show instanceof Show.Places p ? places(p) : Optional.empty();
    return block.map(b -> ((PlacesBlock) b).items()).orElse(List.of()).stream()
        .map(Legend::gear)
        .filter(g -> rig.texts().containsKey(g + ".note"))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The things with a note, in the order of the profile. */
  Set<String> noted() {
    return rig.texts().keySet().stream()
        .filter(k -> k.endsWith(".note") && !k.equals("edition.note"))
        .map(Ids::parent)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** All coded gear by code. */
  List<Legend> legend() {
    return rig.gear().stream()
        .sorted(
            Comparator.comparing((Gear g) -> rig.codes().get(g.id()).charAt(0))
                .thenComparing(g -> Integer.parseInt(rig.codes().get(g.id()).substring(1))))
        .map(g -> legend(g.id()))
        .toList();
  }
}
