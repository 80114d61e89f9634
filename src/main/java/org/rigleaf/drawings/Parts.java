package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.rigleaf.rig.Gear;

/** Splits a crowd over several views rather than shrink its labels. */
final class Parts {
  private Parts() {}

  /** As few parts as hold at most so many each, cut along the rig, in the order of the rig. */
  static List<List<Gear>> of(List<Gear> gear, int most, ToDoubleFunction<Gear> along) {
    int count = Math.max(1, (gear.size() + most - 1) / most);
    List<Gear> sorted = gear.stream().sorted(Comparator.comparingDouble(along)).toList();
    List<List<Gear>> parts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Gear> part = sorted.subList(i * gear.size() / count, (i + 1) * gear.size() / count);
      parts.add(gear.stream().filter(part::contains).toList());
    }
    return parts;
  }
}
