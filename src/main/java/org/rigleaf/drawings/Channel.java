package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The upright pieces of line between two columns, each in a track. Tracks are filled by the
 * left-edge algorithm: A. Hashimoto and J. Stevens, 'Wire routing by optimizing channel assignment
 * within large apertures', Proc. 8th Design Automation Workshop, 1971. No two nets meet a channel
 * at one height (Heights sees to it), so that tracks may stand in any order; they are then
 * exchanged while that leaves fewer crossings.
 */
final class Channel {
  private static final double APART = 6; // pieces in one track

  final int number; // 0 is left of the first column
  final List<List<Net>> tracks = new ArrayList<>();

  Channel(Nets nets, int number) {
    this.number = number;
    nets.all.stream()
        .filter(n -> !n.in(number).isEmpty() && n.turns(number))
        .sorted(Comparator.comparingDouble(n -> n.top(number)))
        .forEach(this::fill);
    untangle();
  }

  private void fill(Net net) {
    for (List<Net> track : tracks) {
      if (track.get(track.size() - 1).bottom(number) + APART <= net.top(number)) {
        track.add(net);
        return;
      }
    }
    tracks.add(new ArrayList<>(List.of(net)));
  }

  private void untangle() {
    int crossings = crossings();
    for (int i = 0; i < tracks.size(); i++) {
      for (int j = i + 1; j < tracks.size(); j++) {
        java.util.Collections.swap(tracks, i, j);
        int now = crossings();
        if (now < crossings) {
          crossings = now;
          i = 0;
          j = 0;
        } else {
          java.util.Collections.swap(tracks, i, j);
        }
      }
    }
  }

  private int crossings() {
    int count = 0;
    for (int i = 0; i < tracks.size(); i++) {
      for (int j = 0; j < tracks.size(); j++) {
        for (Net a : tracks.get(i)) {
          for (Net b : tracks.get(j)) {
            count += i == j ? 0 : crossings(a, b, j < i);
          }
        }
      }
    }
    return count;
  }

  /** How many level pieces of a cross the upright piece of b, which stands left of that of a. */
  private int crossings(Net a, Net b, boolean left) {
    return (int)
        a.in(number).stream()
            .filter(p -> left ? p.leftOf(number) : p.rightOf(number))
            .filter(p -> p.y > b.top(number) && p.y < b.bottom(number))
            .count();
  }

  /** The track of a net; -1 if it runs straight through. */
  int track(Net net) {
    for (int i = 0; i < tracks.size(); i++) {
      if (tracks.get(i).contains(net)) {
        return i;
      }
    }
    return -1;
  }
}
