package org.rigleaf.figures;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.rig.Rig;

/** All figures of one rig, and for those that are absent, the facts they lack. */
public final class Figures {
  private final Rig rig;
  private final Map<Entry, Rows> done = new LinkedHashMap<>();

  private Figures(Rig rig) {
    this.rig = rig;
  }

  /** Works out every figure of the register for this rig. */
  public static Figures of(Rig rig) {
    Figures figures = new Figures(rig);
    Register.ENTRIES.forEach(figures::rows);
    return figures;
  }

  private Rows rows(Entry entry) {
    Rows rows = done.get(entry);
    if (rows == null) {
      rows = new Rows(entry, this);
      entry.rule().accept(rig, rows);
      done.put(entry, rows);
    }
    return rows;
  }

  /** A figure by its entry and item; empty if it is absent. */
  public Optional<Figure> find(Entry entry, String... parts) {
    return Optional.ofNullable(rows(entry).figures().get(entry.id(parts)));
  }

  /** A figure by its id; empty if it is absent. */
  public Optional<Figure> find(String id) {
    return all().stream().filter(f -> f.id().equals(id)).findFirst();
  }

  /** Every figure of this rig, in the order of the register. */
  public Collection<Figure> all() {
    return Register.ENTRIES.stream().flatMap(e -> rows(e).figures().values().stream()).toList();
  }

  /** The facts that an absent figure lacks; empty if it is there or its gear is not. */
  public Set<String> missing(String id) {
    return done.values().stream()
        .map(r -> r.absent().getOrDefault(id, Set.of()))
        .filter(s -> !s.isEmpty())
        .findFirst()
        .orElse(Set.of());
  }

  /** How many figures each unknown fact keeps back, most first by the caller's own sorting. */
  public Map<String, Integer> wanted() {
    Map<String, Integer> wanted = new LinkedHashMap<>();
    done.values()
        .forEach(
            r ->
                r.absent()
                    .values()
                    .forEach(s -> s.forEach(path -> wanted.merge(path, 1, Integer::sum))));
    return wanted;
  }
}
