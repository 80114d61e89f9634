package org.rigleaf.figures;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.regex.Pattern;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Unit;

/**
 * One entry of the register: a figure, or a family of figures whose id has a part in angle
 * brackets, such as {@code tank.<id>.weight}. Its title and meaning stand in the wording under the
 * same pattern.
 *
 * @param pattern id, or id pattern
 * @param unit the one unit
 * @param check how the tests check it
 * @param source where the method comes from
 * @param rule works the figures out for a rig and hands them to the rows
 */
public record Entry(
    String pattern, Unit unit, Check check, String source, BiConsumer<Rig, Rows> rule) {

  private static final Pattern ITEM = Pattern.compile("<[^>]*>");

  /** Starts an entry; its source is required. */
  public static Draft of(String pattern, Unit unit, Check check, String source) {
    return new Draft(pattern, unit, check, source);
  }

  /** The id of this family for one item, or two. */
  public String id(String... parts) {
    String id = pattern;
    for (String part : parts) {
      id = ITEM.matcher(id).replaceFirst(part);
    }
    return id;
  }

  /** An entry without its rule. */
  public record Draft(String pattern, Unit unit, Check check, String source) {
    /** A single number, worked out where the gear is there. */
    public <T> Entry one(
        String formula, Function<Rig, Optional<T>> gear, ToDoubleBiFunction<T, Inputs> value) {
      return rows(
          (rig, rows) ->
              gear.apply(rig)
                  .ifPresent(g -> rows.number(formula, in -> value.applyAsDouble(g, in))));
    }

    /** A number an item. */
    public <T> Entry each(
        String formula,
        Function<Rig, List<T>> items,
        Function<T, String> part,
        ToDoubleBiFunction<T, Inputs> value) {
      return rows(
          (rig, rows) ->
              items
                  .apply(rig)
                  .forEach(
                      t -> rows.number(formula, in -> value.applyAsDouble(t, in), part.apply(t))));
    }

    /** Any number of figures, by a rule of its own. */
    public Entry rows(BiConsumer<Rig, Rows> rule) {
      return new Entry(pattern, unit, check, source, rule);
    }
  }
}
