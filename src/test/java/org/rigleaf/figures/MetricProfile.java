package org.rigleaf.figures;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.rigleaf.source.Node;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Unit;

/** Writes every US quantity of a profile in a metric unit, by the definitions of the US units. */
final class MetricProfile {
  /**
   * Metric unit and factor by US unit: inch 25.4 mm, gallon 231 cubic inches, pound 0.45359237 kg.
   */
  private static final Map<Unit, String> METRIC = metric();

  private MetricProfile() {}

  private static Map<Unit, String> metric() {
    Map<Unit, String> units = new LinkedHashMap<>();
    units.put(Unit.FOOT, "0.3048 m");
    units.put(Unit.INCH, "2.54 cm");
    units.put(Unit.MILE, "1.609344 km");
    units.put(Unit.GALLON, "3.785411784 L");
    units.put(Unit.POUND, "0.45359237 kg");
    units.put(Unit.GALLON_PER_MINUTE, "3.785411784 L/min");
    units.put(Unit.MILE_PER_HOUR, "1.609344 km/h");
    units.put(Unit.PSI, "6.894757293168361 kPa");
    return units;
  }

  static Node.Mapping of(Node.Mapping profile) {
    return (Node.Mapping) node(profile);
  }

  private static Node node(Node node) {
    if (node instanceof Node.Mapping map) {
      Map<String, Node.Entry> entries = new LinkedHashMap<>();
      map.entries().forEach((k, e) -> entries.put(k, new Node.Entry(e.key(), node(e.value()))));
      return new Node.Mapping(entries, map.at());
    }
    if (node instanceof Node.Sequence list) {
      return new Node.Sequence(list.items().stream().map(MetricProfile::node).toList(), list.at());
    }
    Node.Text text = (Node.Text) node;
    return new Node.Text(written(text.value()), text.quoted(), text.at());
  }

  private static String written(String text) {
    Optional<Quantity> quantity = Quantity.parse(text);
    if (quantity.filter(q -> q.unit() == Unit.FAHRENHEIT).isPresent()) {
      return (quantity.get().value() - 32) * 5 / 9 + " degC";
    }
    return quantity
        .filter(q -> METRIC.containsKey(q.unit()))
        .map(q -> metric(q.value(), METRIC.get(q.unit())))
        .orElse(text);
  }

  private static String metric(double value, String unit) {
    String[] parts = unit.split(" ");
    return new java.math.BigDecimal(value * Double.parseDouble(parts[0])).toPlainString()
        + " "
        + parts[1];
  }
}
