package org.rigleaf.source;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, as a profile writes it: {@code 42 gal}, {@code 25 ft 6 in}, {@code 2 5/16
 * in}, {@code 1/3}.
 *
 * @param value the number, in {@code unit}
 * @param unit the unit written; for several parts, that of the first
 */
public record Quantity(double value, Unit unit) {
  private static final String NUMBER = "[-+]?(?:\\d+\\.?\\d*|\\.\\d+)";
  private static final Pattern PART =
      Pattern.compile(
          "\\s*(?:(?<whole>"
              + NUMBER
              + ")\\s+)?(?<top>\\d+)/(?<bottom>\\d+)\\s*(?<frac>[^\\d\\s]\\S*(?:\\s+oz)?)?\\s*"
              + "|\\s*(?<number>"
              + NUMBER
              + ")\\s*(?<unit>[^\\d\\s.+-]\\S*(?:\\s+oz)?)?\\s*");

  /** Reads a quantity; empty if the text is not numbers each followed by a known unit (or none). */
  public static Optional<Quantity> parse(String text) {
    Matcher m = PART.matcher(text.replace(",", "").replace('\u2212', '-'));
    Quantity sum = null;
    int end = 0;
    while (end < m.regionEnd() && m.region(end, m.regionEnd()).lookingAt()) {
      Optional<Quantity> part = part(m);
      if (part.isEmpty() || (sum != null && sum.unit.kind() != part.get().unit.kind())) {
        return Optional.empty();
      }
      sum = sum == null ? part.get() : sum.plus(part.get());
      end = m.end();
      m.reset();
    }
    return end == m.regionEnd() ? Optional.ofNullable(sum) : Optional.empty();
  }

  private static Optional<Quantity> part(Matcher m) {
    boolean fraction = m.group("top") != null;
    String symbol = fraction ? m.group("frac") : m.group("unit");
    double value = fraction ? fraction(m) : Double.parseDouble(m.group("number"));
    Unit bare = fraction && m.group("whole") == null ? Unit.SHARE : Unit.COUNT;
    Optional<Unit> unit = symbol == null ? Optional.of(bare) : Unit.of(symbol);
    if (fraction && "AWG".equals(symbol) && m.group("bottom").equals("0")) {
      return Optional.of(
          new Quantity(1 - Double.parseDouble(m.group("top")), Unit.AWG)); // 1/0 is gauge 0
    }
    return Double.isFinite(value) ? unit.map(u -> new Quantity(value, u)) : Optional.empty();
  }

  private static double fraction(Matcher m) {
    double whole = m.group("whole") == null ? 0 : Double.parseDouble(m.group("whole"));
    return whole + Double.parseDouble(m.group("top")) / Double.parseDouble(m.group("bottom"));
  }

  private Quantity plus(Quantity other) {
    return new Quantity(value + other.unit.convert(other.value, unit), unit);
  }

  /** The value in another unit of the same kind. */
  public double in(Unit wanted) {
    return unit.convert(value, wanted);
  }
}
