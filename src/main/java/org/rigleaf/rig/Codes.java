package org.rigleaf.rig;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Gives every piece of gear its code, a letter and a number. Issued codes are kept, also those of
 * gear that is gone; new gear takes the next free number of its letter, in the order of the {@link
 * Walk}, and at last what has no place.
 */
public final class Codes {
  private Codes() {}

  /**
   * Codes by gear id.
   *
   * @param gear all coded gear of the rig, in the order of the profile
   * @param issued codes by gear id as the last issued edition has them; empty before the first
   */
  public static Map<String, String> assign(List<Gear> gear, Map<String, String> issued) {
    Map<String, String> codes = new HashMap<>();
    Set<String> taken = new HashSet<>(issued.values());
    for (Gear g : gear) {
      g.override()
          .or(() -> Optional.ofNullable(issued.get(g.id())))
          .ifPresent(code -> codes.put(g.id(), code));
    }
    taken.addAll(codes.values());
    gear.stream()
        .sorted(Comparator.comparingDouble(g -> Walk.step(g.place())))
        .filter(g -> !codes.containsKey(g.id()))
        .forEach(g -> codes.put(g.id(), next(g.letter(), taken)));
    return Map.copyOf(codes);
  }

  private static String next(Letter letter, Set<String> taken) {
    int number = 1;
    while (!taken.add(letter.sign() + number)) {
      number++;
    }
    return letter.sign() + number;
  }
}
