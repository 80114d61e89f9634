package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.rigleaf.drawings.Schematic.Box;
import org.rigleaf.drawings.Schematic.Link;

/**
 * Cuts a schematic that is too tall for a page between two lanes, in as few parts as it takes,
 * where a cut parts the least from what feeds it. A later part shows again whatever feeds its boxes
 * from above.
 */
public final class SchematicParts {
  private final Schematic whole;
  private final SchematicWords words;
  private final int lanes;

  private SchematicParts(Schematic whole, SchematicWords words) {
    this.whole = whole;
    this.words = words;
    this.lanes = 1 + whole.boxes().stream().mapToInt(Box::lane).max().orElse(0);
  }

  /** The schematic itself if it fits a page, else its parts from the top down. */
  public static List<Schematic> of(Schematic schematic, SchematicWords words) {
    SchematicParts parts = new SchematicParts(schematic, words);
    List<Schematic> cut = new ArrayList<>();
    for (int from = 0; from < parts.lanes; ) {
      int to = parts.cut(from);
      cut.add(part(schematic, from, to));
      from = to;
    }
    return cut;
  }

  /** Where a part that begins there ends. */
  private int cut(int from) {
    int farthest = farthest(from);
    if (farthest == lanes) {
      return lanes;
    }
    int more = count(farthest);
    return IntStream.rangeClosed(from + 1, farthest)
        .filter(to -> count(to) == more)
        .boxed()
        .min(Comparator.comparing(this::torn).thenComparing(Comparator.reverseOrder()))
        .orElse(farthest);
  }

  /** How far a page reaches. */
  private int farthest(int from) {
    int to = lanes;
    while (to > from + 1 && !SchematicView.fits(part(whole, from, to), words)) {
      to--;
    }
    return to;
  }

  /** How many pages the lanes from there on take at least. */
  private int count(int from) {
    int count = 0;
    for (int at = from; at < lanes; at = farthest(at)) {
      count++;
    }
    return count;
  }

  /** How many boxes a cut parts from some of what they feed; worst if it then stands above them. */
  private long torn(int cut) {
    long across =
        whole.boxes().stream().filter(b -> feeds(b, cut, true) && feeds(b, cut, false)).count();
    long upward =
        whole.boxes().stream().filter(b -> b.lane() >= cut && feeds(b, cut, true)).count();
    return across + upward * whole.boxes().size();
  }

  private boolean feeds(Box box, int cut, boolean above) {
    return whole.links().stream()
        .filter(l -> l.from().equals(box.id()))
        .flatMap(l -> whole.boxes().stream().filter(b -> b.id().equals(l.to())))
        .anyMatch(b -> b.lane() < cut == above);
  }

  /** The lanes from one to before another, with the boxes above that feed them. */
  private static Schematic part(Schematic whole, int from, int to) {
    Set<String> inside = new HashSet<>();
    whole.boxes().stream()
        .filter(b -> b.lane() >= from && b.lane() < to)
        .forEach(b -> inside.add(b.id()));
    Set<String> again = new HashSet<>();
    whole.links().stream()
        .filter(l -> inside.contains(l.to()) && !inside.contains(l.from()))
        .forEach(l -> again.add(l.from()));
    List<Box> boxes = new ArrayList<>();
    Set<List<Integer>> taken = new LinkedHashSet<>();
    for (Box box : whole.boxes()) {
      if (inside.contains(box.id())) {
        boxes.add(box);
        taken.add(List.of(box.rank(), box.lane()));
      }
    }
    for (Box box : whole.boxes()) {
      if (again.contains(box.id())) {
        int lane = from;
        while (!taken.add(List.of(box.rank(), lane))) {
          lane++;
        }
        boxes.add(box.at(box.rank(), lane));
      }
    }
    Set<String> shown = new HashSet<>(inside);
    shown.addAll(again);
    List<Link> links =
        whole.links().stream()
            .filter(l -> shown.contains(l.from()) && inside.contains(l.to()))
            .toList();
    return new Schematic(boxes, links, whole.alt());
  }
}
