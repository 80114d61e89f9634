package org.rigleaf.figures;

import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Stay;
import org.rigleaf.source.Unit;

/**
 * What the ledger supposes: the stay of the profile, or a party and a night of the comparison.
 *
 * @param rig the rig
 * @param usual the night and party to compare with; empty for the stay
 * @param without the load or habit given up, empty for none
 */
record Trip(Rig rig, Optional<Usual> usual, String without) {

  /** Low and high of the two nights that are compared, degrees F: house assumption. */
  enum Night {
    MILD(60, 80),
    COLD(25, 45);

    private final double low;
    private final double high;

    Night(double low, double high) {
      this.low = low;
      this.high = high;
    }

    /** As in figure ids. */
    String id() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** People and a night of the comparison. */
  record Usual(int people, Night night) {}

  private static final String HOOK_UPS = "hook-ups";

  /** Sizes of party that are compared: house assumption. */
  static final List<Integer> PARTIES = List.of(1, 2, 4);

  static Trip stay(Rig rig) {
    return new Trip(rig, Optional.empty(), "");
  }

  static Trip usual(Rig rig, int people, Night night) {
    return new Trip(rig, Optional.of(new Usual(people, night)), "");
  }

  /** The stay without its hook-ups. */
  static Trip offThePlug(Rig rig) {
    return stay(rig).giving(HOOK_UPS);
  }

  /** The same without a load or habit. */
  Trip giving(String up) {
    return new Trip(rig, usual, up);
  }

  /** True if this is not given up. */
  boolean keeps(String what) {
    return !without.equals(what);
  }

  /** A fact of the stay, unknown where there is none. */
  static Fact fact(Rig rig, Function<Stay, Fact> key, String path, Unit unit) {
    return rig.stay().map(key).orElse(Fact.unknown("stay." + path, unit));
  }

  double people(Inputs in) {
    Fact people = fact(rig, Stay::people, "people", Unit.COUNT);
    return usual.isPresent() ? usual.get().people() : in.of("people", people, "stay.people");
  }

  double low(Inputs in) {
    return usual.isPresent()
        ? usual.get().night().low
        : in.of("low", fact(rig, Stay::low, "outside.low", Unit.FAHRENHEIT));
  }

  double high(Inputs in) {
    return usual.isPresent()
        ? usual.get().night().high
        : in.of("high", fact(rig, Stay::high, "outside.high", Unit.FAHRENHEIT));
  }

  double inside(Inputs in) {
    return in.of("inside", fact(rig, Stay::inside, "inside", Unit.FAHRENHEIT), "stay.inside");
  }

  /** Feet above the sea; a compared night of unknown place is at the sea. */
  double elevation(Inputs in) {
    Fact elevation = fact(rig, Stay::elevation, "place.elevation", Unit.FOOT);
    return usual.isPresent() && !elevation.known() ? 0 : in.of("elevation", elevation);
  }

  /** The month of the sun; a compared night takes October where the stay is silent. */
  Optional<Month> month() {
    Optional<Month> month = rig.stay().flatMap(Stay::month);
    return usual.isPresent() ? month.or(() -> Optional.of(Month.OCTOBER)) : month;
  }

  /** True if the site has this; compared nights are off every hook-up. */
  boolean has(Stay.HookUp hookUp) {
    return usual.isEmpty()
        && keeps(HOOK_UPS)
        && rig.stay().filter(s -> s.hookUps().contains(hookUp)).isPresent();
  }

  /** Hours a day that the generator runs; none unless the stay says so. */
  Optional<Fact> generator() {
    return usual.isPresent()
        ? Optional.empty()
        : rig.stay().map(Stay::generator).filter(Fact::known);
  }
}
