package org.rigleaf.rig;

import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.FOOT;
import static org.rigleaf.source.Unit.INCH;
import static org.rigleaf.source.Unit.PSI;

import java.util.Optional;

/**
 * What is aboard and where it is kept.
 *
 * <pre>
 * kit:
 *   chocks: {count: 4, kept: front bay street side}
 *   blocks: {count: 10, thick: 1 in}
 * </pre>
 */
public record Kit(
    Optional<Counted> chocks,
    Optional<Counted> blocks,
    Optional<Piece> drinkingHose,
    Optional<Piece> regulator,
    Optional<Piece> sewerHose,
    Optional<Piece> wasteHose,
    Optional<Piece> gloves,
    Optional<Piece> wheelWrench,
    Optional<Piece> spare,
    Optional<Piece> fillerKey,
    Optional<Piece> hoseSupport,
    Optional<Piece> triangles) {

  static Kit read(Section s) {
    return new Kit(
        s.group("chocks", Counted::read),
        s.group("blocks", Counted::read),
        s.group("drinking-hose", Piece::read),
        s.group("regulator", Piece::read),
        s.group("sewer-hose", Piece::read),
        s.group("waste-hose", Piece::read),
        s.group("gloves", Piece::read),
        s.group("wheel-wrench", Piece::read),
        s.group("spare", Piece::read),
        s.group("filler-key", Piece::read),
        s.group("hose-support", Piece::read),
        s.group("triangles", Piece::read));
  }

  /** Several alike; thick in inches. */
  public record Counted(Fact count, Fact thick, Place place) {
    static Counted read(Section s) {
      return new Counted(s.between("count", COUNT, 1, 40), s.positive("thick", INCH), s.place());
    }
  }

  /** One thing: a length, a set pressure or a size where it has one. */
  public record Piece(Fact length, Fact set, Optional<String> size, Place place) {
    static Piece read(Section s) {
      return new Piece(
          s.positive("length", FOOT), s.positive("set", PSI), s.words("size"), s.place());
    }
  }
}
