package org.rigleaf.sheets;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import tools.jackson.core.JacksonException;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;

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
 * @param steps actions by step id
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
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .defaultPrettyPrinter(
              new DefaultPrettyPrinter()
                  .withObjectIndenter(new DefaultIndenter(" ", "\n"))
                  .withArrayIndenter(new DefaultIndenter(" ", "\n")))
          .build();

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

  /** As it is stored; ends with a line break. */
  public String json() {
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(this) + "\n";
  }

  /** What {@link #json} stored; empty if it is something else. */
  public static Optional<Issued> parse(String json) {
    try {
      Issued issued = JSON.readValue(json, Issued.class);
      return Optional.of(issued).filter(i -> i.pieces() != null && i.profile() != null);
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

  /** True if both print the same. */
  public boolean prints(Issued other) {
    return digests(pieces).equals(digests(other.pieces));
  }

  private static List<String> digests(List<Piece> pieces) {
    return pieces.stream().map(p -> p.kind() + " " + p.id() + " " + p.digest()).toList();
  }
}
