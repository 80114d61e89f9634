package org.rigleaf.figures;

import java.util.Set;
import org.rigleaf.rig.Fact;
import org.rigleaf.source.Unit;

/** What a figure was worked out from. */
public sealed interface Input {
  /** Its name in the formula. */
  String name();

  /** Its number. */
  double value();

  /** Its unit. */
  Unit unit();

  /** The typical values it leans on, directly or through other figures. */
  Set<String> assumes();

  /** A fact of the rig. */
  record OfFact(String name, Fact fact) implements Input {
    @Override
    public double value() {
      return fact.value();
    }

    @Override
    public Unit unit() {
      return fact.unit();
    }

    @Override
    public Set<String> assumes() {
      return fact.origin() instanceof Fact.Typical t ? Set.of(t.id()) : Set.of();
    }
  }

  /** Another figure. */
  record OfFigure(String name, Figure figure) implements Input {
    @Override
    public double value() {
      return figure.number();
    }

    @Override
    public Unit unit() {
      return figure.unit();
    }

    @Override
    public Set<String> assumes() {
      return figure.assumes();
    }
  }
}
