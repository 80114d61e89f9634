package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.List;

/**
 * Stops that follow each other at one part of the rig, under one heading.
 *
 * @param title the part of the rig, as printed
 * @param stops in their order; at least one
 */
public record Leg(String title, List<Stop> stops) {
  /** Copies the list. */
  public Leg {
    stops = List.copyOf(stops);
  }

  /** Joins these stops in their order. */
  public static List<Leg> of(List<Stop> stops) {
    List<Leg> legs = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= stops.size(); i++) {
      if (i == stops.size() || !stops.get(i).leg().equals(stops.get(from).leg())) {
        legs.add(new Leg(stops.get(from).leg(), stops.subList(from, i)));
        from = i;
      }
    }
    return legs;
  }

  /** All its stops together. */
  public int minutes() {
    return stops.stream().mapToInt(Stop::minutes).sum();
  }
}
