package org.rigleaf.rig;

import java.util.List;
import java.util.Optional;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Kind;
import org.rigleaf.source.Node;
import org.rigleaf.source.Position;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Unit;

/** Asks for numbers with their units. A number that cannot be is a problem, then unknown. */
abstract class Quantities extends Keys {
  Quantities(Fields fields, String schemaPath, Reading reading) {
    super(fields, schemaPath, reading);
  }

  /** A quantity greater than zero. */
  public Fact positive(String key, Unit unit) {
    return quantity(key, unit, Double.MIN_VALUE, Double.MAX_VALUE, "more than zero");
  }

  /** A quantity of zero or more. */
  public Fact notNegative(String key, Unit unit) {
    return quantity(key, unit, 0, Double.MAX_VALUE, "zero or more");
  }

  /** A quantity between two limits, both allowed. */
  public Fact between(String key, Unit unit, double least, double most) {
    return quantity(key, unit, least, most, "between " + plain(least) + " and " + plain(most));
  }

  /** A bare number whose unit the key itself names, between two limits. */
  public Fact bare(String key, Unit unit, double least, double most) {
    Fact number = between(key, Unit.COUNT, least, most);
    return keep(key, number.with(v -> v, unit));
  }

  private Fact quantity(String key, Unit unit, double least, double most, String range) {
    Fact fact =
        text(key)
            .flatMap(t -> convert(key, t, unit))
            .orElse(Fact.unknown(fields.pathOf(key), unit));
    boolean outside = fact.known() && (fact.value() < least || fact.value() > most);
    if (outside) {
      fields.problem(at(fact), key, fact.written() + " cannot be", range);
    }
    return keep(key, outside ? Fact.unknown(fact.path(), unit) : fact);
  }

  private static Position at(Fact fact) {
    return ((Fact.Given) fact.origin()).at();
  }

  private Optional<Fact> convert(String key, Node.Text text, Unit unit) {
    Optional<Quantity> read = Quantity.parse(text.value());
    if (read.isEmpty()) {
      fields.problem(
          text.at(), key, "'" + text.value() + "' is not a number with a unit", example(unit));
      return Optional.empty();
    }
    return fit(read.get(), unit, key, text)
        .map(v -> new Fact(fields.pathOf(key), text.value(), v, unit, new Fact.Given(text.at())));
  }

  private Optional<Double> fit(Quantity q, Unit unit, String key, Node.Text text) {
    boolean share = unit.kind() == Kind.SHARE && q.unit() == Unit.COUNT && q.value() <= 1;
    if (q.unit().kind() == unit.kind() || share) {
      return Optional.of(share ? q.value() : q.in(unit));
    }
    if (q.unit() == Unit.COUNT || q.unit() == Unit.SHARE) {
      fields.problem(text.at(), key, "'" + text.value() + "' has no unit", example(unit));
    } else {
      String wrong = "'" + text.value() + "' is " + q.unit().kind().called();
      fields.problem(text.at(), key, wrong + ", not " + unit.kind().called(), example(unit));
    }
    return Optional.empty();
  }

  private static String example(Unit unit) {
    return "write " + unit.kind().called() + ", such as " + unit.kind().example();
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }

  /** What a load draws: watts, or amperes at its own supply; the fact's unit tells which. */
  public Fact draw(String key) {
    boolean amperes =
        text(key)
            .flatMap(t -> Quantity.parse(t.value()))
            .filter(q -> q.unit().kind() == Kind.CURRENT)
            .isPresent();
    return positive(key, amperes ? Unit.AMPERE_UNIT : Unit.WATT_UNIT);
  }

  /** A share such as {@code 1/3}, {@code 50 percent}, {@code full} or {@code empty}. */
  public Fact share(String key) {
    Optional<Node.Text> text = text(key);
    Optional<Double> word =
        text.map(Node.Text::value)
            .filter(v -> v.equals("full") || v.equals("empty"))
            .map(v -> v.equals("full") ? 1.0 : 0.0);
    if (word.isEmpty()) {
      return between(key, Unit.SHARE, 0, 1);
    }
    Fact.Given given = new Fact.Given(text.get().at());
    return keep(
        key, new Fact(fields.pathOf(key), text.get().value(), word.get(), Unit.SHARE, given));
  }

  /** Several of one size, as in {@code 2 x 100 W}. */
  public Several several(String key, Unit unit) {
    Optional<Node.Text> text = text(key);
    String[] parts = text.map(t -> t.value().split("\\s+x\\s+", 2)).orElse(new String[0]);
    String path = fields.pathOf(key);
    if (parts.length < 2 || !parts[0].strip().matches("[1-9]\\d{0,2}")) {
      text.ifPresent(
          t ->
              fields.problem(
                  t.at(),
                  key,
                  "'" + t.value() + "' is not a count and a size",
                  "write '2 x 100 W'"));
      return new Several(keep(key, Fact.unknown(path, Unit.COUNT)), Fact.unknown(path, unit));
    }
    Fact.Given given = new Fact.Given(text.get().at());
    Fact count =
        new Fact(path, parts[0].strip(), Integer.parseInt(parts[0].strip()), Unit.COUNT, given);
    Node.Text size = new Node.Text(parts[1], false, text.get().at());
    Fact each = convert(key, size, unit).orElse(Fact.unknown(path, unit));
    keep(key, new Fact(path, text.get().value(), count.value(), Unit.COUNT, given));
    return new Several(count, each);
  }

  /** A count and the size of each. */
  public record Several(Fact count, Fact each) {}

  /** A list of quantities, each greater than zero. */
  public List<Fact> quantities(String key, Unit unit) {
    mark(key);
    List<Fact> all =
        fields.texts(key).stream().flatMap(t -> convert(key, t, unit).stream()).toList();
    all.stream()
        .filter(f -> f.value() <= 0)
        .forEach(f -> fields.problem(at(f), key, f.written() + " cannot be", "more than zero"));
    return all;
  }

  /** One share or twelve, from January. */
  public List<Fact> shares(String key) {
    List<Fact> all = quantities(key, Unit.SHARE);
    if (all.stream().anyMatch(f -> f.value() > 1) || (all.size() > 1 && all.size() != 12)) {
      fields.problem(at(all.get(0)), key, "one share or twelve are wanted", "each between 0 and 1");
    }
    return all;
  }
}
