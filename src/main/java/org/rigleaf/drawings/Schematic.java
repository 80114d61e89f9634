package org.rigleaf.drawings;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What feeds what, as boxes in ranks and lanes with links between them; no coordinates.
 *
 * @param boxes in the order of their lanes; ids are unique
 * @param links every end is the id of a box
 * @param alt what it shows, for those who cannot see it
 */
public record Schematic(List<Box> boxes, List<Link> links, String alt) {
  /** Refuses doubled ids and places, and links that end nowhere; the same link twice is one. */
  public Schematic {
    boxes = List.copyOf(boxes);
    links = links.stream().distinct().toList();
    Set<String> ids = boxes.stream().map(Box::id).collect(Collectors.toSet());
    long places = boxes.stream().map(b -> List.of(b.rank(), b.lane())).distinct().count();
    if (ids.size() < boxes.size() || places < boxes.size()) {
      throw new IllegalArgumentException("two boxes of one id or at one place");
    }
    for (Link link : links) {
      boolean ends = ids.contains(link.from()) && ids.contains(link.to());
      if (!ends || link.from().equals(link.to())) {
        throw new IllegalArgumentException("a link from " + link.from() + " to " + link.to());
      }
    }
  }

  /** What a box stands for; each has a shape of its own, told apart without color. */
  public enum Shape {
    /** Where it comes in: inlet, filler, sun, engine. */
    SOURCE,
    /** What holds some: bank, tank, cylinder. */
    STORE,
    /** What changes or moves it: converter, pump, regulator, heater. */
    DEVICE,
    /** What can be shut: valve, disconnect, breaker. */
    SWITCH,
    /** What uses it. */
    LOAD
  }

  /** What runs along a link; each is drawn with dashes and a letter of its own. */
  public enum Line {
    AC,
    DC,
    COLD,
    HOT,
    WASTE,
    PROPANE
  }

  /**
   * One box.
   *
   * @param gear id of the gear it stands for; empty if none
   * @param code its call-out; empty if it has none
   * @param words its name, then at most three short lines: amps, gallons, the position of a handle
   * @param rank column, 0 at the left: sources left, loads right
   * @param lane row within the drawing, 0 at the top; two boxes of one rank differ in lane
   */
  public record Box(
      String id, String gear, String code, List<String> words, Shape shape, int rank, int lane) {
    /** Copies the list. */
    public Box {
      words = List.copyOf(words);
    }

    /** The same box elsewhere. */
    Box at(int otherRank, int otherLane) {
      return new Box(id, gear, code, words, shape, otherRank, otherLane);
    }
  }

  /**
   * One pipe or wire in the direction of what runs in it: from left to right, down to the next box
   * of the same rank, or back to the left.
   *
   * @param shut true if nothing can run through it in the state that is drawn
   * @param words short words beside it; may be empty
   */
  public record Link(String from, String to, Line line, boolean shut, String words) {}
}
