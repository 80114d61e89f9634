package org.rigleaf.figures;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.TypicalValues;

/**
 * Hands a formula its numbers and remembers them. An unknown one is handed out as not-a-number and
 * remembered as missing; the figure is then absent, whatever the formula made of it.
 */
public final class Inputs {
  private final Figures book;
  private final List<Input> used = new ArrayList<>();
  private final Set<String> missing = new LinkedHashSet<>();

  Inputs(Figures book) {
    this.book = book;
  }

  /** The number of a fact. */
  public double of(String name, Fact fact) {
    if (!fact.known()) {
      missing.add(fact.path());
      return Double.NaN;
    }
    use(new Input.OfFact(name, fact));
    return fact.value();
  }

  /** The number of a fact, or the typical value with this id. */
  public double of(String name, Fact fact, String typical) {
    return of(name, fact.or(TypicalValues.of(typical)));
  }

  /** A typical value that no key of the profile replaces. */
  public double typical(String name, String id) {
    org.rigleaf.rig.TypicalValue value = TypicalValues.of(id);
    return of(name, Fact.unknown(id, value.unit()).or(value));
  }

  /** The number of another figure; missing what that one misses. */
  public double of(String name, Entry entry, String... parts) {
    Optional<Figure> figure = book.find(entry, parts);
    if (figure.isEmpty()) {
      Set<String> lacks = book.missing(entry.id(parts));
      missing.addAll(lacks.isEmpty() ? Set.of(entry.id(parts)) : lacks);
      return Double.NaN;
    }
    use(new Input.OfFigure(name, figure.get()));
    return figure.get().number();
  }

  /**
   * A step that many figures share, worked out once a rig; what it used and lacks, is used and
   * lacking here, even if it fails.
   */
  <T> T once(Class<T> type, List<?> key, Function<Inputs, T> work) {
    Optional<Figures.Shared> done = book.shared(type, key);
    Inputs own = done.map(Figures.Shared::inputs).orElseGet(() -> new Inputs(book));
    try {
      T value = done.map(d -> type.cast(d.value())).orElseGet(() -> work.apply(own));
      book.share(type, key, new Figures.Shared(value, own));
      return value;
    } finally {
      own.used.forEach(this::use);
      missing.addAll(own.missing);
    }
  }

  private void use(Input input) {
    if (!used.contains(input)) {
      used.add(input);
    }
  }

  /** True if the other figure is there and is a number. */
  boolean has(Entry entry, String... parts) {
    return book.find(entry, parts).filter(f -> f.value() instanceof Value.Number).isPresent();
  }

  /** Says that this figure cannot be without a fact that is not a number. */
  public void missing(String path) {
    missing.add(path);
  }

  List<Input> used() {
    return List.copyOf(used);
  }

  Set<String> missing() {
    return missing;
  }
}
