package org.rigleaf.figures;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Where the rule of an entry puts its figures. */
public final class Rows {
  private final Entry entry;
  private final Figures book;
  private final Map<String, Figure> figures = new LinkedHashMap<>();
  private final Map<String, Set<String>> absent = new LinkedHashMap<>();

  Rows(Entry entry, Figures book) {
    this.entry = entry;
    this.book = book;
  }

  /** A number; {@code parts} fill the angle brackets of the pattern. */
  public void number(String formula, ToDoubleFunction<Inputs> value, String... parts) {
    value(formula, in -> new Value.Number(value.applyAsDouble(in)), parts);
  }

  /** Any value. A failure of the formula counts only if nothing was missing. */
  public void value(String formula, Function<Inputs, Value> value, String... parts) {
    String id = entry.id(parts);
    Inputs in = new Inputs(book);
    Optional<Value> result = Optional.empty();
    IllegalArgumentException failure = null;
    try {
      result = Optional.of(value.apply(in));
    } catch (IllegalArgumentException e) {
      failure = e;
    }
    if (!in.missing().isEmpty()) {
      absent.put(id, Set.copyOf(in.missing()));
    } else if (failure != null) {
      throw new IllegalArgumentException(id + ": " + failure.getMessage(), failure);
    } else {
      figures.put(id, new Figure(id, entry, result.get(), formula, in.used()));
    }
  }

  /** Numbers for a rule that must know them before it can say which figures there are. */
  Inputs look() {
    return new Inputs(book);
  }

  /** How often each task of this rig's upkeep is due, by the task. */
  Map<String, Interval> upkeep() {
    return book.upkeep();
  }

  Map<String, Figure> figures() {
    return figures;
  }

  Map<String, Set<String>> absent() {
    return absent;
  }
}
