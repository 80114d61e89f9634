package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rigleaf.drawings.Schematic.Box;
import org.rigleaf.drawings.Schematic.Link;

/**
 * Cuts a schematic that is too tall for a page between two lanes. A later part shows again whatever
 * feeds its boxes from above.
 */
public final class SchematicParts {
  private SchematicParts() {}

  /** The schematic itself if it fits a page, else its parts from the top down. */
  public static List<Schematic> of(Schematic schematic, SchematicWords words) {
    List<Schematic> parts = new ArrayList<>();
    int from = 0;
    int lanes = 1 + schematic.boxes().stream().mapToInt(Box::lane).max().orElse(0);
    while (from < lanes) {
      int to = lanes;
      while (to > from + 1 && !SchematicView.fits(part(schematic, from, to), words)) {
        to--;
      }
      parts.add(part(schematic, from, to));
      from = to;
    }
    return parts;
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
