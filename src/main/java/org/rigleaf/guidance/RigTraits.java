package org.rigleaf.guidance;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;

/** Answers the conditions of the wording for one rig, and for the items of its lists. */
record RigTraits(Rig rig, Set<String> all) {
  static RigTraits of(Rig rig) {
    return new RigTraits(rig, Traits.of(rig));
  }

  boolean has(String trait) {
    return all.contains(trait);
  }

  boolean holds(Condition condition) {
    return condition.holds(all::contains);
  }

  /** The same inside a list, where a trait that starts with a dot is one of the item. */
  boolean holds(Condition condition, String item) {
    return condition.holds(trait -> trait.startsWith(".") ? itemHas(item + trait) : has(trait));
  }

  private boolean itemHas(String path) {
    boolean value =
        Optional.ofNullable(rig.texts().get(Ids.parent(path)))
            .map(Ids::of)
            .filter(Ids.last(path)::equals)
            .isPresent();
    boolean fact = rig.facts().containsKey(path) && rig.facts().get(path).known();
    return value || fact || rig.texts().containsKey(path) || rig.gear(path).isPresent();
  }

  /** The ids of the items of a list, in the order of the profile. */
  List<String> ids(String list) {
    Set<String> ids = new LinkedHashSet<>();
    rig.gear().stream().filter(g -> g.type().equals(list)).forEach(g -> ids.add(g.id()));
    rig.texts().keySet().stream()
        .filter(k -> k.startsWith(list + ".") && k.endsWith(".name"))
        .map(k -> k.substring(0, k.length() - ".name".length()))
        .filter(k -> k.lastIndexOf('.') == list.length())
        .forEach(ids::add);
    return List.copyOf(ids);
  }
}
