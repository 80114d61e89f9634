package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Keeps dots clear of each other: gear at one spot gets neighboring dots. */
final class Apart {
  private static final double DISTANCE = 9;
  private static final double[][] TURNS = {
    {1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}
  };

  private final Predicate<Site> within;
  private final List<Site> placed = new ArrayList<>();

  /** Dots that stay within what they belong to. */
  Apart(Predicate<Site> within) {
    this.within = within;
  }

  /** The dots so far, in the order in which they came. */
  List<Site> placed() {
    return placed;
  }

  /** The nearest spot clear of other dots; where a wall is too full, dots stand closer. */
  void place(Site site) {
    placed.add(
        clear(site, DISTANCE)
            .or(() -> clear(site, DISTANCE / 3))
            .or(() -> clear(site, DISTANCE / 9))
            .orElse(site));
  }

  private Optional<Site> clear(Site site, double distance) {
    for (int ring = 0; ring < 60; ring++) {
      for (int turn = 0; turn < (ring == 0 ? 1 : TURNS.length); turn++) {
        Site tried = shifted(site, ring * distance / 2, turn);
        if (within.test(tried) && far(tried, distance)) {
          return Optional.of(tried);
        }
      }
    }
    return Optional.empty();
  }

  /** Along a wall: back, then forward. Elsewhere: sideways first, then back, then slanting. */
  private static Site shifted(Site site, double by, int turn) {
    if (site.along()) {
      return site.moved(site.x(), site.y() + (turn % 2 == 0 ? by : -by));
    }
    return site.moved(site.x() + by * TURNS[turn][0], site.y() + by * TURNS[turn][1]);
  }

  private boolean far(Site site, double distance) {
    return placed.stream()
        .allMatch(p -> Math.hypot(p.x() - site.x(), p.y() - site.y()) >= distance * 0.95);
  }
}
