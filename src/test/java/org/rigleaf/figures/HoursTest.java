package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rigleaf.rig.Load.When;

/** The hours of the day in which things run, as the ledger is defined: house assumptions. */
class HoursTest {
  private static String hours(double[] day) {
    StringBuilder text = new StringBuilder();
    IntStream.range(0, 24)
        .filter(h -> day[h] > 0)
        .forEach(h -> text.append(h).append('=').append(Math.round(day[h] * 1000)).append(' '));
    return text.toString().strip();
  }

  @Test
  void anHourInEachPartOfTheDayIsSpreadOverAllOfIt() {
    assertEquals("6=333 7=333 8=333", hours(Hours.running(When.MORNING, 1)));
    assertEquals(
        "9=125 10=125 11=125 12=125 13=125 14=125 15=125 16=125",
        hours(Hours.running(When.DAY, 1)));
    assertEquals("18=250 19=250 20=250 21=250", hours(Hours.running(When.EVENING, 1)));
    assertEquals(
        "0=125 1=125 2=125 3=125 4=125 5=125 22=125 23=125", hours(Hours.running(When.NIGHT, 1)));
    assertArrayEquals(Hours.evenly(1), Hours.running(When.ALWAYS, 1), 1e-12);
  }

  @Test
  void longerRunningWidensTheEveningAround20() {
    // five hours around 20:00 are 17:30 to 22:30
    assertEquals(
        "17=500 18=1000 19=1000 20=1000 21=1000 22=500", hours(Hours.running(When.EVENING, 5)));
    // twelve hours around 20:00 are 14:00 to 02:00
    assertEquals(
        "0=1000 1=1000 14=1000 15=1000 16=1000 17=1000 18=1000 19=1000 20=1000 21=1000 22=1000"
            + " 23=1000",
        hours(Hours.running(When.EVENING, 12)));
  }

  @Test
  void theHoursAreKeptWhateverThePartOfTheDay() {
    for (When when : When.values()) {
      for (double hours : new double[] {0, 0.25, 3, 4, 7.5, 8, 13, 24}) {
        assertEquals(hours, Hours.sum(Hours.running(when, hours)), 1e-9, when + " " + hours);
      }
    }
  }

  @Test
  void noHourOfTheDayIsMoreThanAnHour() {
    for (When when : When.values()) {
      for (double share : Hours.running(when, 23.5)) {
        assertEquals(1, share, 0.5 + 1e-9);
      }
    }
  }

  @Test
  void washingIsAt7And18AndCookingAt18() {
    assertEquals("7=2000 18=2000", hours(Hours.washing(4)));
    assertEquals("18=4000", hours(Hours.cooking(4)));
    assertEquals(4, Hours.sum(Hours.evenly(4)), 1e-12);
  }

  @Test
  void aDayHasNoMoreAndNoLessThanItsHours() {
    assertThrows(IllegalArgumentException.class, () -> Hours.running(When.DAY, -0.1));
    assertThrows(IllegalArgumentException.class, () -> Hours.running(When.DAY, 24.1));
    assertThrows(IllegalArgumentException.class, () -> Hours.running(When.DAY, Double.NaN));
  }
}
