package org.rigleaf.sheets;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What differs between two editions.
 *
 * @param before the edition that the reader holds
 * @param now the one that replaces it
 */
public record Comparison(Issued before, Issued now) {
  /**
   * Above this share of changed topics the whole is printed again; practice of technical manuals of
   * the US Navy, as public summaries report it.
   */
  static final double WHOLE = 0.6;

  /** The pieces to take out: those that are gone and those that changed. */
  public List<Piece> remove() {
    return differing(before, now);
  }

  /** The pieces to put in: those that are new and those that changed. */
  public List<Piece> insert() {
    return differing(now, before);
  }

  private static List<Piece> differing(Issued one, Issued other) {
    return one.pieces().stream()
        .filter(p -> other.find(p).filter(o -> o.digest().equals(p.digest())).isEmpty())
        .toList();
  }

  /** True if so many topics change that the whole binder is printed again. */
  public boolean whole() {
    long changed = insert().stream().filter(p -> p.kind().equals("topic")).count();
    long all = now.pieces().stream().filter(p -> p.kind().equals("topic")).count();
    return changed > WHOLE * all;
  }

  /** Ids that only the later edition has. */
  static Stream<String> added(Map<String, String> before, Map<String, String> now) {
    return now.keySet().stream().filter(id -> !before.containsKey(id));
  }

  /** A figure before and now; one of the two may be empty. */
  public record Change(String id, Optional<Issued.Reading> before, Optional<Issued.Reading> now) {}

  /** The figures that differ, in the order of the register. */
  public List<Change> figures() {
    Stream<String> gone =
        before.figures().keySet().stream().filter(id -> !now.figures().containsKey(id));
    return Stream.concat(now.figures().keySet().stream(), gone)
        .map(id -> new Change(id, reading(before, id), reading(now, id)))
        .filter(
            c -> !c.before().map(Issued.Reading::data).equals(c.now().map(Issued.Reading::data)))
        .toList();
  }

  private static Optional<Issued.Reading> reading(Issued issued, String id) {
    return Optional.ofNullable(issued.figures().get(id));
  }
}
