package org.rigleaf.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units against values that do not come from the library the product converts with. */
class UnitTest {

  /**
   * Exact by definition (NIST SP 811 gives the same, from memory), except where the line says
   * otherwise.
   */
  @ParameterizedTest
  @CsvSource({
    "1 gal, L, 3.785411784", // 231 in3
    "1 lb, kg, 0.45359237",
    "1 ft, m, 0.3048",
    "1 mi, m, 1609.344",
    "1 in, mm, 25.4",
    "1 psi, kPa, 6.8947573", // GNU units, to the digits it printed
    "1 Btu, Wh, 0.2930711", // GNU units: 1055.0559 J, over 3600 J a Wh
    "1 kW, Btu/h, 3412.1416", // GNU units
    "128 fl oz, gal, 1",
    "32 degF, degC, 0",
    "212 degF, degC, 100",
    "60 degF, degC, 15.5555556", // (60 - 32) x 5/9
    "1 gpm, L/min, 3.785411784",
    "60 gal/h, gpm, 1",
    "55 mph, km/h, 88.51392", // 55 x 1.609344
    "1 N-m, lb-ft, 0.7375621", // 1 / (0.3048 x 4.4482216)
    "90 s, min, 1.5",
    "2 d, h, 48"
  })
  void aUnitConvertsAsItsDefinitionSays(String from, String to, double expected) {
    Quantity quantity = Quantity.parse(from).orElseThrow();
    assertEquals(
        expected, quantity.in(Unit.of(to).orElseThrow()), Math.abs(expected) * 1e-7 + 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "25 ft 6 in, ft, 25.5",
    "13/16 in, in, 0.8125",
    "2 5/16 in, in, 2.3125",
    "1/3, share, 0.333333333",
    "1/0 AWG, AWG, 0",
    "2/0 AWG, AWG, -1",
    "0 ft 8 in, in, 8",
    "'12,000 Btu/h', Btu/h, 12000",
    ".5 gal, gal, 0.5",
    "225 AH, Ah, 225", // as nameplates print it
    "'20,000 BTU/HR', Btu/h, 20000"
  })
  void aQuantityIsReadAsAKeeperWritesIt(String text, String unit, double expected) {
    assertEquals(
        expected, Quantity.parse(text).orElseThrow().in(Unit.of(unit).orElseThrow()), 1e-8);
  }

  @ParameterizedTest
  @CsvSource({"42 gla", "forty gal", "12 ft 3 gal", "''", "- gal", "1e999 gal", "4 2 gal gal"})
  void whatIsNoQuantityIsNotGuessed(String text) {
    assertTrue(Quantity.parse(text).isEmpty(), text);
  }

  @Test
  void unitsOfTwoKindsNeverConvert() {
    assertThrows(IllegalArgumentException.class, () -> Unit.PSI.convert(42, Unit.GALLON));
    assertFalse(Unit.of("furlong").isPresent());
  }

  /**
   * Week 25 of 2001 and week 43 of 2008: printed by pages on tire codes, dates by the calendar; ISO
   * weeks start a day later.
   */
  @ParameterizedTest
  @CsvSource({
    "week 25 of 2001, 2001-06-24, 2001-06-30",
    "week 43 of 2008, 2008-10-26, 2008-11-01",
    "week 7 of 2012, 2012-02-12, 2012-02-18",
    "2019-03, 2019-03-01, 2019-03-31",
    "2024, 2024-01-01, 2024-12-31",
    "2024-02-29, 2024-02-29, 2024-02-29"
  })
  void aTireWeekIsTheFederalWeekFromSunday(String text, String first, String last) {
    PartialDate date = PartialDate.parse(text).orElseThrow();
    assertEquals(first, date.first().toString());
    assertEquals(last, date.last().toString());
  }

  @ParameterizedTest
  @CsvSource({"2023-02-29", "week 0 of 2020", "week 54 of 2020", "2023-13", "May 2023"})
  void aDayThatDoesNotExistIsNoDate(String text) {
    assertTrue(PartialDate.parse(text).isEmpty(), text);
  }
}
