package org.rigleaf.rig;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the sheets call things, so that a profile may call them so too.
 *
 * @param tasks ids of the tasks of upkeep, which a log may name
 * @param titles what each type of gear is called
 */
public record Vocabulary(Set<String> tasks, Map<String, String> titles) {
  /** Nothing has a name but what the profile names. */
  public static final Vocabulary NONE = new Vocabulary(Set.of(), Map.of());

  /** The title of gear, in lower case; empty if the rig has more than one of its type. */
  Optional<String> title(Gear gear, List<Gear> all) {
    boolean only = all.stream().filter(g -> g.type().equals(gear.type())).count() == 1;
    return Optional.ofNullable(titles.get(gear.type()))
        .filter(t -> only)
        .map(t -> t.toLowerCase(Locale.ROOT));
  }
}
