package org.rigleaf.rig;

import static org.rigleaf.source.Unit.SHARE;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.Optional;
import org.rigleaf.source.Unit;

/**
 * The generator; burn in gallons an hour at half and full load.
 *
 * @param kind built in if nobody said
 * @param holds gallons of its own tank, for one that has its own
 */
public record Generator(
    Gear gear,
    Optional<Kind> kind,
    Fact holds,
    Fact rated,
    Fact surge,
    Fact derate,
    Optional<Fuel> fuel,
    Fact halfLoad,
    Fact fullLoad,
    Answer autoStart,
    Optional<String> switchPlace) {
  /** True if it is set down outside and has a tank of its own. */
  public boolean portable() {
    return kind.filter(Kind.PORTABLE::equals).isPresent();
  }

  static Generator read(Section s) {
    Gear gear = s.gear(Letter.ELECTRICITY);
    Burns burns = s.part("burns", Burns::read);
    return new Generator(
        gear,
        s.choice("kind", Kind.class),
        s.positive("holds", Unit.GALLON),
        s.positive("rated", WATT_UNIT),
        s.positive("surge", WATT_UNIT),
        s.between("derate-per-1000-ft", SHARE, 0, 0.2),
        s.choice("fuel", Fuel.class),
        burns.half(),
        burns.full(),
        s.yes("auto-start"),
        s.words("switch"));
  }

  private record Burns(Fact half, Fact full) {
    static Burns read(Section s) {
      return new Burns(
          s.positive("half-load", Unit.GALLON_PER_HOUR),
          s.positive("full-load", Unit.GALLON_PER_HOUR));
    }
  }

  /** What a generator burns. */
  public enum Fuel implements Choice {
    GASOLINE,
    DIESEL,
    LP
  }

  /** Whether a generator is part of the rig. */
  public enum Kind implements Choice {
    BUILT_IN,
    PORTABLE
  }
}
