package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rigleaf.drawings.Schematic.Box;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Link;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.rig.Rig;

/** A net of pipes in the making: every box goes below the last one of its column. */
final class Pipes {
  private static final int LONGEST_NAME = 60;
  private static final int CODED = 11; // letters to a line beside a code
  private static final int PLAIN = 16;

  private final Rig rig;
  final PipeWords words;
  private final Map<String, Box> boxes = new LinkedHashMap<>();
  private final List<Link> links = new ArrayList<>();
  private final Map<Integer, Integer> lanes = new TreeMap<>();
  private final Set<String> explained = new HashSet<>();

  Pipes(Rig rig, PipeWords words) {
    this.rig = rig;
    this.words = words;
  }

  /** A box for a piece of gear, named and coded by its id. */
  String gear(String id, Shape shape, int column, String... lines) {
    return add(id, id, words.name(id), shape, column, lines);
  }

  /** A box for what is no gear, such as the site's tap; its name is a phrase. */
  String thing(String phrase, Shape shape, int column, String... lines) {
    return add(phrase, "", words.say(phrase), shape, column, lines);
  }

  /** The same, where the phrase of its name differs from rig to rig. */
  String thing(String phrase, String id, Shape shape, int column) {
    return add(id, "", words.say(phrase), shape, column);
  }

  /** A box on no pipe that says why. */
  void loose(String gear, Shape shape, int column, String why) {
    explained.add(gear(gear, shape, column, why));
  }

  /** A box for what belongs to a piece of gear and has no code of its own. */
  String part(String id, String name, Shape shape, int column, String... lines) {
    return add(id, "", name, shape, column, lines);
  }

  private String add(
      String id, String gear, String name, Shape shape, int column, String... lines) {
    List<String> all =
        Stream.concat(Stream.of(name), Arrays.stream(lines)).filter(l -> !l.isBlank()).toList();
    String code = rig.codes().getOrDefault(gear, "");
    int lane = lanes.getOrDefault(column, 0);
    lanes.put(column, lane + tall(all, !code.isEmpty()));
    String known = code.isEmpty() ? "" : gear;
    boxes.put(id, new Box(id, known, code, all, shape, column, lane));
    return id;
  }

  /** Lanes that a box of these words fills, about: a lane holds three lines. */
  private static int tall(List<String> words, boolean coded) {
    int wide = coded ? CODED : PLAIN;
    int lines = words.stream().mapToInt(w -> (w.length() + wide - 1) / wide).sum();
    return Math.max(1, (lines + 1) / 3);
  }

  /** Starts the next box of a column no higher than the lowest box of another. */
  void below(int column, int other) {
    lanes.merge(column, lanes.getOrDefault(other, 0), Math::max);
  }

  static String shortName(Rig rig) {
    String name = rig.identity().name().strip();
    return name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME - 1) + "…" : name;
  }

  /** Words in pieces no longer than that, as far as no word is. */
  static List<String> pieces(String text, int longest) {
    List<String> pieces = new ArrayList<>();
    String piece = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = piece.isEmpty() ? word : piece + " " + word;
      if (longer.length() > longest && !piece.isEmpty()) {
        pieces.add(piece);
        longer = word;
      }
      piece = longer;
    }
    pieces.add(piece);
    return pieces;
  }

  /** A measure of the profile; nothing if nobody said. */
  String fact(String path) {
    return Optional.ofNullable(rig.facts().get(path)).map(words::amount).orElse("");
  }

  boolean has(String id) {
    return boxes.containsKey(id);
  }

  void open(String from, String to, Line line) {
    link(from, to, line, false);
  }

  void shut(String from, String to, Line line) {
    link(from, to, line, true);
  }

  void link(String from, String to, Line line, boolean shut) {
    links.add(new Link(from, to, line, shut, ""));
  }

  /** The drawing; a box to which no pipe was told says so. */
  Schematic schematic(String alt) {
    Set<String> ends =
        links.stream().flatMap(l -> Stream.of(l.from(), l.to())).collect(Collectors.toSet());
    ends.addAll(explained);
    List<Box> all = boxes.values().stream().map(b -> ends.contains(b.id()) ? b : alone(b)).toList();
    return new Schematic(all, links, alt);
  }

  private Box alone(Box box) {
    List<String> told = new ArrayList<>(box.words());
    told.add(words.say("not-told"));
    return new Box(box.id(), box.gear(), box.code(), told, box.shape(), box.rank(), box.lane());
  }
}
