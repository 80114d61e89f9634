package org.rigleaf.sheets;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;

/**
 * What is kept of an edition: enough to tell what a later one changes. Nothing private is in it.
 *
 * @param number of the edition
 * @param date {@code 2026-05-02}
 * @param note what it brought; may be empty
 * @param changes what was changed on the rig for it, in the keeper's words
 * @param program digest of the program that made it
 * @param wording digest of the templates and wording it was made with
 * @param profile the profile in its plain form, without private values
 * @param gearCodes codes by gear id, those of gear that is gone included
 * @param topicCodes codes by topic id, those of topics that are gone included
 * @param traits what the wording could ask of the rig
 * @param facts what the profile says, as written, by path
 * @param pieces topics, cards and labels, in the order of printing
 * @param figures every figure by id
 * @param cautions hazards of the cautions by id
 * @param steps tasks and actions by step id
 * @param findings texts of the findings by id
 */
public record Issued(
    int number,
    String date,
    String note,
    List<String> changes,
    String program,
    String wording,
    String profile,
    SortedMap<String, String> gearCodes,
    SortedMap<String, String> topicCodes,
    SortedSet<String> traits,
    SortedMap<String, String> facts,
    List<Piece> pieces,
    Map<String, Reading> figures,
    Map<String, String> cautions,
    Map<String, String> steps,
    Map<String, String> findings) {
  /**
   * A figure as it was printed.
   *
   * @param pattern id of its entry in the register
   * @param title what it is
   * @param data its value
   * @param unit symbol of its unit
   * @param printed as the reader sees it
   */
  public record Reading(String pattern, String title, String data, String unit, String printed) {}

  /** Refuses a record that lacks something. */
  public Issued {
    Stream.of(date, note, program, wording, profile, traits, facts, gearCodes, topicCodes)
        .forEach(Objects::requireNonNull);
    Stream.of(figures, cautions, steps, findings).forEach(Objects::requireNonNull);
    changes = List.copyOf(changes);
    pieces = List.copyOf(pieces);
  }

  /** As it is stored; ends with a line break. */
  public String json() {
    return Json.text(this);
  }

  /** What {@link #json} stored; empty if it is something else. */
  public static Optional<Issued> parse(String json) {
    try {
      return Optional.ofNullable(Json.MAPPER.readValue(json, Issued.class));
    } catch (JacksonException e) {
      return Optional.empty();
    }
  }

  /** True if this piece is the same in both, or in neither. */
  public boolean same(Issued other, Piece piece) {
    return find(piece).map(Piece::digest).equals(other.find(piece).map(Piece::digest));
  }

  /** The piece of this edition that the other is an edition of. */
  public Optional<Piece> find(Piece other) {
    return pieces.stream().filter(p -> p.sameAs(other)).findFirst();
  }

  /** True if the profile is the same and prints the same. */
  public boolean sameAs(Issued other) {
    return profile.equals(other.profile) && digests(pieces).equals(digests(other.pieces));
  }

  private static List<String> digests(List<Piece> pieces) {
    return pieces.stream().map(p -> p.kind() + " " + p.id() + " " + p.digest()).toList();
  }
}
