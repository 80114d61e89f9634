package org.rigleaf.drawings;

import java.util.List;
import java.util.Set;
import org.rigleaf.rig.Rig;

/**
 * A numbered pointer to a piece of gear.
 *
 * @param gear its id
 * @param code its code, {@code W3}
 * @param placed true if the drawing shows it; false if it is elsewhere or nobody said where
 */
public record CallOut(String gear, String code, boolean placed) {
  /** All gear of a rig, in its order. */
  static List<CallOut> all(Rig rig, Set<String> drawn) {
    return rig.gear().stream()
        .map(g -> new CallOut(g.id(), MapWords.code(rig, g), drawn.contains(g.id())))
        .toList();
  }
}
