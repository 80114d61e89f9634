package org.rigleaf.source;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.UnitConverter;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * Every unit a profile may write and a figure may have. The first symbol is the one printed.
 * Conversion is Indriya's; the Btu is the international table one, 1055.05585262 J (the value NIST
 * SP 811 gives, from memory).
 */
public enum Unit {
  FOOT(Kind.LENGTH, USCustomary.FOOT, "ft", "foot", "feet", "'"),
  INCH(Kind.LENGTH, USCustomary.INCH, "in", "inch", "inches", "\""),
  METRE(Kind.LENGTH, Units.METRE, "m"),
  CENTIMETRE(Kind.LENGTH, Units.METRE.divide(100), "cm"),
  MILLIMETRE(Kind.LENGTH, Units.METRE.divide(1000), "mm"),
  MILE(Kind.LENGTH, USCustomary.MILE, "mi", "miles"),
  KILOMETRE(Kind.LENGTH, Units.METRE.multiply(1000), "km"),
  GALLON(Kind.VOLUME, USCustomary.GALLON_LIQUID, "gal", "gallon", "gallons"),
  LITRE(Kind.VOLUME, Units.CUBIC_METRE.divide(1000), "L", "l", "liter", "liters"),
  MILLILITRE(Kind.VOLUME, Units.CUBIC_METRE.divide(1_000_000), "mL", "ml"),
  FLUID_OUNCE(Kind.VOLUME, USCustomary.GALLON_LIQUID.divide(128), "fl oz"),
  POUND(Kind.MASS, USCustomary.POUND, "lb", "lbs", "pound", "pounds"),
  KILOGRAM_MASS(Kind.MASS, Units.KILOGRAM, "kg"),
  PSI(Kind.PRESSURE, Units.PASCAL.multiply(6894.757293168361), "psi"),
  KILOPASCAL(Kind.PRESSURE, Units.PASCAL.multiply(1000), "kPa"),
  BAR(Kind.PRESSURE, Units.PASCAL.multiply(100_000), "bar"),
  FAHRENHEIT(Kind.TEMPERATURE, USCustomary.FAHRENHEIT, "degF", "°F"),
  CELSIUS_DEGREE(Kind.TEMPERATURE, Units.CELSIUS, "degC", "°C"),
  AMPERE_UNIT(Kind.CURRENT, Units.AMPERE, "A", "amp", "amps"),
  VOLT_UNIT(Kind.VOLTAGE, Units.VOLT, "V", "volt", "volts"),
  AMPERE_HOUR(Kind.CHARGE, Units.AMPERE.multiply(Units.HOUR), "Ah", "amp-hours"),
  WATT_UNIT(Kind.POWER, Units.WATT, "W", "watt", "watts"),
  KILOWATT(Kind.POWER, Units.WATT.multiply(1000), "kW"),
  BTU_PER_HOUR(
      Kind.POWER, Units.JOULE.multiply(1055.05585262).divide(Units.HOUR), "Btu/h", "Btu/hr"),
  WATT_HOUR(Kind.ENERGY, Units.WATT.multiply(Units.HOUR), "Wh"),
  KILOWATT_HOUR(Kind.ENERGY, Units.WATT.multiply(1000).multiply(Units.HOUR), "kWh"),
  BTU(Kind.ENERGY, Units.JOULE.multiply(1055.05585262), "Btu"),
  SECOND_UNIT(Kind.TIME, Units.SECOND, "s", "sec"),
  MINUTE_UNIT(Kind.TIME, Units.MINUTE, "min"),
  HOUR_UNIT(Kind.TIME, Units.HOUR, "h", "hours"),
  DAY_UNIT(Kind.TIME, Units.DAY, "d", "days"),
  YEAR_UNIT(Kind.TIME, Units.DAY.multiply(365.2425), "y", "years"),
  GALLON_PER_MINUTE(Kind.FLOW, USCustomary.GALLON_LIQUID.divide(Units.MINUTE), "gpm", "gal/min"),
  GALLON_PER_HOUR(Kind.FLOW, USCustomary.GALLON_LIQUID.divide(Units.HOUR), "gal/h", "gph"),
  LITRE_PER_HOUR(Kind.FLOW, Units.CUBIC_METRE.divide(1000).divide(Units.HOUR), "L/h"),
  LITRE_PER_MINUTE(Kind.FLOW, Units.CUBIC_METRE.divide(1000).divide(Units.MINUTE), "L/min"),
  MILE_PER_HOUR(Kind.SPEED, USCustomary.MILE.divide(Units.HOUR), "mph"),
  KILOMETRE_AN_HOUR(Kind.SPEED, Units.METRE.multiply(1000).divide(Units.HOUR), "km/h"),
  DEGREE(Kind.ANGLE, AbstractUnit.ONE, "deg", "°"),
  POUND_FOOT(
      Kind.TORQUE,
      Units.NEWTON.multiply(Units.METRE).multiply(1.3558179483314004),
      "lb-ft",
      "ft-lb"),
  NEWTON_METRE(Kind.TORQUE, Units.NEWTON.multiply(Units.METRE), "N-m", "Nm"),
  AWG(Kind.GAUGE, AbstractUnit.ONE, "AWG"),
  PERCENT_SHARE(Kind.SHARE, AbstractUnit.ONE.divide(100), "percent", "%"),
  SHARE(Kind.SHARE, AbstractUnit.ONE, "share"),
  COUNT(Kind.COUNT, AbstractUnit.ONE, "count"),
  DATE(Kind.DATE, AbstractUnit.ONE, "date"),
  WORD(Kind.WORDS, AbstractUnit.ONE, "word"),
  LOADS(Kind.WORDS, AbstractUnit.ONE, "loads");

  private final Kind kind;
  private final javax.measure.Unit<?> unit;
  private final List<String> symbols;

  Unit(Kind kind, javax.measure.Unit<?> unit, String... symbols) {
    this.kind = kind;
    this.unit = unit;
    this.symbols = List.of(symbols);
  }

  /** What it measures. */
  public Kind kind() {
    return kind;
  }

  /** The symbol that stands in figures and on the page. */
  public String symbol() {
    return symbols.get(0);
  }

  /** The unit written with this symbol, in small letters or capitals, if there is one. */
  public static Optional<Unit> of(String symbol) {
    return Arrays.stream(values())
        .filter(u -> u.symbols.stream().anyMatch(symbol::equalsIgnoreCase))
        .findFirst();
  }

  /**
   * Converts a value of this unit to another of the same kind.
   *
   * @throws IllegalArgumentException if the kinds differ
   */
  public double convert(double value, Unit to) {
    if (kind != to.kind) {
      throw new IllegalArgumentException(
          symbol() + " is " + kind.called() + ", not " + to.kind.called());
    }
    if (this == to) {
      return value;
    }
    try {
      UnitConverter converter = unit.getConverterToAny(to.unit);
      return converter.convert(value);
    } catch (javax.measure.IncommensurableException e) {
      throw new IllegalStateException(this + " to " + to, e);
    }
  }
}
