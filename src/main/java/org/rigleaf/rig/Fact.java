package org.rigleaf.rig;

import java.util.function.DoubleUnaryOperator;
import org.rigleaf.source.Position;
import org.rigleaf.source.Unit;

/**
 * One measured thing of this rig.
 *
 * @param path dotted path in the profile
 * @param written as the profile writes it, empty if unknown
 * @param value in {@code unit}; not a number if unknown
 * @param unit the one unit in which the program holds it
 * @param origin where it comes from
 */
public record Fact(String path, String written, double value, Unit unit, Origin origin) {
  /** Where a fact comes from. */
  public sealed interface Origin {}

  /** The profile says so, there. */
  public record Given(Position at) implements Origin {}

  /** Taken from the table of typical values. */
  public record Typical(String id) implements Origin {}

  /** Nobody said. */
  public record Unknown() implements Origin {}

  /** Refuses a known fact without a number. */
  public Fact {
    if (!(origin instanceof Unknown) && !Double.isFinite(value)) {
      throw new IllegalArgumentException(path + " has no value");
    }
  }

  /** A fact that the profile leaves out. */
  public static Fact unknown(String path, Unit unit) {
    return new Fact(path, "", Double.NaN, unit, new Unknown());
  }

  /** True unless nobody said. */
  public boolean known() {
    return !(origin instanceof Unknown);
  }

  /** This fact if known, else the typical value, marked as such. */
  public Fact or(TypicalValue typical) {
    return known()
        ? this
        : new Fact(path, "", typical.value(), typical.unit(), new Typical(typical.id()));
  }

  /** This fact if known, else the other one. */
  public Fact or(Fact other) {
    return known() ? this : other;
  }

  /** The same fact with its number changed, as for a value that follows from one given. */
  public Fact with(DoubleUnaryOperator change, Unit newUnit) {
    return known()
        ? new Fact(path, written, change.applyAsDouble(value), newUnit, origin)
        : unknown(path, newUnit);
  }
}
