package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.drawings.Schematic.Box;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Link;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;

/** A schematic in the making: boxes of gear go down their rank one by one. */
final class NetDraft {
  private final Rig rig;
  private final NetWords words;
  private final Map<String, Box> boxes = new LinkedHashMap<>();
  private final List<Link> links = new ArrayList<>();

  NetDraft(Rig rig, NetWords words) {
    this.rig = rig;
    this.words = words;
  }

  boolean has(String id) {
    return boxes.containsKey(id);
  }

  boolean isEmpty() {
    return links.isEmpty();
  }

  /** The first free lane of a rank. */
  int next(int rank) {
    return boxes.values().stream()
        .filter(b -> b.rank() == rank)
        .mapToInt(b -> b.lane() + 1)
        .max()
        .orElse(0);
  }

  /** A box of gear at the next free lane, with its name and code. */
  void gear(String id, Shape shape, int rank, Stream<Optional<String>> lines) {
    gear(id, shape, rank, next(rank), lines);
  }

  void gear(String id, Shape shape, int rank, int lane, Stream<Optional<String>> lines) {
    String gear = rig.codes().containsKey(id) ? id : namesake(id);
    String code = rig.codes().getOrDefault(gear, "");
    put(new Box(id, gear, code, of(words.name(id), lines), shape, rank, lane));
  }

  /** The gear that the keeper calls by the same name as this load; empty if there is none. */
  private String namesake(String id) {
    return rig.gear().stream()
        .filter(g -> g.name().isPresent() && rig.codes().containsKey(g.id()))
        .filter(g -> g.name().get().equalsIgnoreCase(rig.texts().get(id + ".name")))
        .map(Gear::id)
        .findFirst()
        .orElse("");
  }

  /** A box of something that is no gear. */
  void plain(
      String id, String name, Shape shape, int rank, int lane, Stream<Optional<String>> lines) {
    put(new Box(id, "", "", of(name, lines), shape, rank, lane));
  }

  private static List<String> of(String name, Stream<Optional<String>> lines) {
    return Stream.concat(Stream.of(name), lines.flatMap(Optional::stream)).toList();
  }

  private void put(Box box) {
    boxes.putIfAbsent(box.id(), box);
  }

  void link(String from, String to, Line line) {
    links.add(new Link(from, to, line, false, ""));
  }

  Schematic schematic(String alt) {
    return new Schematic(List.copyOf(boxes.values()), links, alt);
  }
}
