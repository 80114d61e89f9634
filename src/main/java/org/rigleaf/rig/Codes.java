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
 * gear that is gone; new gear takes the next free number of its letter, in walking order: front,
 * curb side from front to rear, rear, street side from rear to front, roof, under, inside, and at
 * last what has no place.
 */
public final class Codes {
  private static final List<Face> WALK =
      List.of(Face.FRONT, Face.CURB, Face.REAR, Face.STREET, Face.ROOF, Face.UNDER, Face.INSIDE);

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
        .sorted(Comparator.comparingDouble(Codes::step))
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

  private static double step(Gear gear) {
    return gear.place().spot().map(Codes::step).orElse(1000.0 * WALK.size());
  }

  private static double step(Spot spot) {
    double aft = spot.aft().orElse(zoneAft(spot));
    boolean backward = spot.face() == Face.STREET;
    return 1000.0 * WALK.indexOf(spot.face()) + (backward ? 999 - aft : aft);
  }

  private static double zoneAft(Spot spot) {
    return spot.zone().map(z -> 10.0 + 10 * z.ordinal()).orElse(0.0);
  }
}
