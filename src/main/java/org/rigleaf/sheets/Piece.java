package org.rigleaf.sheets;

import java.util.List;

/**
 * What is exchanged as a whole after a change: a topic, a card or a label, as an edition has it.
 *
 * @param kind {@code topic}, {@code card} or {@code label}
 * @param id stable within its kind
 * @param code as printed; may be empty
 * @param title as printed
 * @param edition number of the edition in which it last changed
 * @param date of that edition, {@code 2026-05-02}; may be empty
 * @param digest of what is printed, furniture left out
 * @param parts digests of its blocks, by which a later edition finds what changed
 */
public record Piece(
    String kind,
    String id,
    String code,
    String title,
    int edition,
    String date,
    String digest,
    List<String> parts) {
  /** Copies the list. */
  public Piece {
    parts = List.copyOf(parts);
  }

  /** True if both are editions of the same piece. */
  boolean sameAs(Piece other) {
    return kind.equals(other.kind) && id.equals(other.id);
  }

  /** This piece as the edition has it in which it last changed. */
  Piece since(Piece before) {
    boolean same = digest.equals(before.digest);
    return same
        ? new Piece(kind, id, code, title, before.edition, before.date, digest, parts)
        : this;
  }
}
