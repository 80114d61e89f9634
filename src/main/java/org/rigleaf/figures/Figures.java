package org.rigleaf.figures;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.rig.Rig;

/** All figures of one rig, and for those that are absent, the facts they lack. */
public final class Figures {
  private final Rig rig;
  private final Map<String, Interval> upkeep;
  private final Map<Entry, Rows> done = new LinkedHashMap<>();
  private final Map<String, Figure> byId =
      new LinkedHashMap<>(); // filled once all are done; the first of an id counts
  private final Map<Step, Shared> shared = new HashMap<>();

  private record Step(Class<?> type, List<?> key) {}

  /** What a step gave that many figures share, and the inputs it took. */
  record Shared(Object value, Inputs inputs) {}

  private Figures(Rig rig, Map<String, Interval> upkeep) {
    this.rig = rig;
    this.upkeep = upkeep;
  }

  /** Works out every figure of the register for this rig but those of its upkeep. */
  public static Figures of(Rig rig) {
    return of(rig, Map.of());
  }

  /**
   * Works out every figure of the register for this rig.
   *
   * @param upkeep how often each task of this rig's upkeep is due, by the task
   */
  public static Figures of(Rig rig, Map<String, Interval> upkeep) {
    Figures figures = new Figures(rig, upkeep);
    for (Entry entry : Register.ENTRIES) {
      figures.rows(entry).figures().forEach(figures.byId::putIfAbsent);
    }
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

  /** How often each task of upkeep is due, by the task. */
  Map<String, Interval> upkeep() {
    return upkeep;
  }

  /** What a shared step gave; empty if it is not done yet. */
  Optional<Shared> shared(Class<?> type, List<?> key) {
    return Optional.ofNullable(shared.get(new Step(type, key)));
  }

  /** Keeps what a shared step gave. */
  void share(Class<?> type, List<?> key, Shared result) {
    shared.put(new Step(type, key), result);
  }

  /** A figure by its entry and item; empty if it is absent. */
  public Optional<Figure> find(Entry entry, String... parts) {
    return Optional.ofNullable(rows(entry).figures().get(entry.id(parts)));
  }

  /** A figure by its id; empty if it is absent. */
  public Optional<Figure> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** Every figure of this rig, in the order of the register. */
  public Collection<Figure> all() {
    return Collections.unmodifiableCollection(byId.values());
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
