package org.rigleaf.figures;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.rig.Rig;

/** All figures of one rig, and for those that are absent, the facts they lack. */
public final class Figures {
  private final Rig rig;
  private final Map<Entry, Rows> done = new LinkedHashMap<>();
  private final Map<String, Figure> byId =
      new LinkedHashMap<>(); // filled once all are done; the first of an id counts
  private final Map<LoadsOf, LoadTable> tables = new HashMap<>();

  private record LoadsOf(String source, boolean hot) {}

  private Figures(Rig rig) {
    this.rig = rig;
  }

  /** Works out every figure of the register for this rig. */
  public static Figures of(Rig rig) {
    Figures figures = new Figures(rig);
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

  /** The loads of a source, laid out once, since many figures lean on them. */
  LoadTable table(Source source, boolean hot) {
    LoadsOf key = new LoadsOf(source.id(), hot);
    LoadTable table = tables.get(key);
    if (table == null) {
      table = LoadTable.of(source, hot, new Inputs(this));
      tables.put(key, table);
    }
    return table;
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
