package org.rigleaf.drawings;

import java.util.Map;
import java.util.Optional;
import org.rigleaf.figures.Amounts;
import org.rigleaf.rig.Fact;

/** The words that a net of one rig needs, from outside. */
public interface NetWords {
  /** A fixed phrase with values put in. */
  String phrase(String id, Map<String, String> values);

  /** What gear or a load is called. */
  String name(String id);

  /** A quantity with its unit, as the sheets print it. */
  String amount(Fact fact);

  /** The units that the sheets print. */
  Amounts amounts();

  /** A fixed phrase. */
  default String phrase(String id) {
    return phrase(id, Map.of());
  }

  /** A phrase that speaks of one quantity, {@code {x}}; empty if that is not known. */
  default Optional<String> phrase(String id, Fact fact) {
    return Optional.of(fact).filter(Fact::known).map(f -> phrase(id, Map.of("x", amount(f))));
  }
}
