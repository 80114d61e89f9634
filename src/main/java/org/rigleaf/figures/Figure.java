package org.rigleaf.figures;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rigleaf.source.Unit;

/**
 * One worked-out figure of one rig.
 *
 * @param id stable id
 * @param entry the entry of the register that made it
 * @param value what it says
 * @param formula the formula with {@code {names}} for its inputs
 * @param inputs what it was worked out from
 */
public record Figure(String id, Entry entry, Value value, String formula, List<Input> inputs) {
  /** The one unit of this figure; of one that says a word in place of its number, words. */
  public Unit unit() {
    return value instanceof Value.Word ? Unit.WORD : entry.unit();
  }

  /**
   * The number.
   *
   * @throws IllegalStateException if the figure is not a number
   */
  public double number() {
    if (value instanceof Value.Number n) {
      return n.number();
    }
    throw new IllegalStateException(id + " is not a number");
  }

  /** The typical values in the whole chain of its inputs. */
  public Set<String> assumes() {
    Set<String> all = new LinkedHashSet<>();
    inputs.forEach(i -> all.addAll(i.assumes()));
    return all;
  }
}
