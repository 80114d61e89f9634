package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.source.Unit;

/** Factors of NIST SP 811 appendix B, worked by hand beside each line. */
class MetricAmountsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "42    | GALLON            | 159 L", // 42 × 3.785412 = 158.987
        "1     | GALLON            | 3.8 L",
        "5.2   | FLUID_OUNCE       | 154 mL", // 5.2 × 29.57353 = 153.78
        "24.667| FOOT              | 7.52 m", // 24.667 × 0.3048 = 7.5185
        "1     | FOOT              | 30 cm",
        "6.5   | INCH              | 165 mm", // 6.5 × 25.4 = 165.1
        "6600  | POUND             | 2,994 kg", // 6600 × 0.45359237 = 2993.71
        "20    | POUND             | 9.1 kg",
        "65    | PSI               | 448 kPa (65 psi)", // 65 × 6.894757 = 448.16
        "40    | FAHRENHEIT        | 4 °C (40 °F)", // 8 × 5/9 = 4.44
        "25000 | BTU_PER_HOUR      | 7.33 kW (25,000 Btu/h)", // 25000 × 0.2930711 = 7326.8
        "65    | MILE_PER_HOUR     | 105 km/h (65 mph)", // 65 × 1.609344 = 104.6
        "3     | GALLON_PER_MINUTE | 11.4 L/min", // 3 × 3.785412 = 11.356
        "120   | POUND_FOOT        | 163 N·m (120 lb-ft)", // 120 × 1.355818 = 162.7
        "2580  | WATT_HOUR         | 2,580 Wh",
        "10    | AWG               | 10 AWG",
      })
  void printsInMetricWithTheGaugeInBrackets(double value, Unit unit, String text) {
    assertEquals(text, Amounts.METRIC.text(value, unit));
  }

  @ParameterizedTest
  @CsvSource({"GALLON, true, false", "LITRE, false, true", "WATT_UNIT, true, true"})
  void whatIsWrittenInItsOwnUnitsStandsAsItIs(Unit unit, boolean us, boolean metric) {
    assertEquals(us, Amounts.US.suits(unit));
    assertEquals(metric, Amounts.METRIC.suits(unit));
    assertTrue(Amounts.US.suits(Unit.COUNT) && Amounts.METRIC.suits(Unit.COUNT));
    assertFalse(Amounts.METRIC.suits(Unit.PSI));
  }
}
