package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.source.Unit;

/** Numbers as a reader wants them; the expected texts are rounded by hand, half up. */
class AmountsTest {
  @ParameterizedTest(name = "{0} {1} reads {2}")
  @CsvSource({
    "2580.4, WATT_HOUR, '2,580 Wh'", // whole watts and watt-hours, thousands apart
    "1449.5, WATT_UNIT, '1,450 W'",
    "12.65, VOLT_UNIT, 12.65 V", // hundredths tell a rested battery's charge
    "12.604, VOLT_UNIT, 12.6 V",
    "38.04, GALLON, 38 gal",
    "4.9538, FLUID_OUNCE, 5 fl oz",
    "7.25, AMPERE_UNIT, 7.3 A",
    "49.84, POUND, 49.8 lb", // tenths of a pound below a hundred
    "99.94, POUND, 99.9 lb",
    "100.4, POUND, 100 lb",
    "1.8585, PERCENT_SHARE, 1.9 %",
    "0.755, SHARE, 0.76",
    "2, COUNT, 2",
    "9.996, HOUR_UNIT, 10 h", // other units: three figures
    "2.347, HOUR_UNIT, 2.35 h",
    "0.4333, HOUR_UNIT, 26 min", // under an hour in minutes
    "0, HOUR_UNIT, 0 h",
    "1, HOUR_UNIT, 1 h",
    "10.04, HOUR_UNIT, 10 h",
    "10.26, HOUR_UNIT, 10.3 h",
    "99.96, HOUR_UNIT, 100 h",
    "100.4, HOUR_UNIT, 100 h"
  })
  void aQuantityIsRoundedToWhatAGaugeShows(double value, Unit unit, String text) {
    assertEquals(text, Amounts.US.text(value, unit));
  }

  @ParameterizedTest(name = "{0} ft reads {1}")
  @CsvSource({
    "11.25, 11 ft 3 in",
    "11, 11 ft",
    "10.99, 11 ft", // 131.9 in round to 132
    "1, 1 ft",
    "0.75, 9 in",
    "0.96, 1 ft" // 11.5 in and more round up to the foot
  })
  void aLengthReadsInFeetAndWholeInches(double feet, String text) {
    assertEquals(text, Amounts.US.text(feet, Unit.FOOT));
  }

  @Test
  void yearsAreALifeOrAYearOfTheCalendar() {
    assertEquals("2.2 years", Amounts.US.text(2.2313, Unit.YEAR_UNIT));
    assertEquals("1 year", Amounts.US.text(1.04, Unit.YEAR_UNIT));
    assertEquals("1 day", Amounts.US.text(0.96, Unit.DAY_UNIT));
    assertEquals("0.9 days", Amounts.US.text(0.94, Unit.DAY_UNIT));
    assertEquals("2030", Amounts.US.text(2030, Unit.YEAR_UNIT)); // without a comma
    assertEquals("1,000 years", Amounts.US.text(1000, Unit.YEAR_UNIT));
  }

  @Test
  void theHeaviestCommonWireIsOneOughtNotZeroGauge() {
    assertEquals("1/0 AWG", Amounts.US.text(0, Unit.AWG)); // as wire is marked, ASTM B258
    assertEquals("10 AWG", Amounts.US.text(10, Unit.AWG));
  }

  @Test
  void numbersEndWithoutZerosAndHalvesGoUp() {
    assertEquals("2.5", Amounts.number(2.50, 2));
    assertEquals("3", Amounts.number(2.5, 0));
    assertEquals("12,000", Amounts.number(12000, 1));
  }

  @Test
  void aDateNamesItsMonth() {
    assertEquals("2 May 2026", Amounts.date(LocalDate.of(2026, 5, 2)));
  }
}
