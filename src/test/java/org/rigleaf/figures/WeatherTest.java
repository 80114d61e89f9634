package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WeatherTest {
  @Test
  void itIsColdestAt5AndWarmestAt15() {
    assertEquals(38, Weather.outsideFahrenheit(5, 38, 70), 1e-9);
    assertEquals(70, Weather.outsideFahrenheit(15, 38, 70), 1e-9);
  }

  @Test
  void halfWayUpAndHalfWayDownItIsTheMiddle() {
    // half a cosine passes its middle at half its time: 10:00 on the way up, 22:00 on the way down
    assertEquals(54, Weather.outsideFahrenheit(10, 38, 70), 1e-9);
    assertEquals(54, Weather.outsideFahrenheit(22, 38, 70), 1e-9);
    // a third of the way up the cosine has gone a quarter: 38 + 32/4; 5 + 10/3 h
    assertEquals(46, Weather.outsideFahrenheit(5 + 10 / 3.0, 38, 70), 1e-9);
    // a third of the way down, 15:00 + 14/3 h
    assertEquals(62, Weather.outsideFahrenheit(15 + 14 / 3.0, 38, 70), 1e-9);
  }

  @Test
  void midnightJoinsTheTwoDays() {
    assertEquals(Weather.outsideFahrenheit(24, 38, 70), Weather.outsideFahrenheit(0, 38, 70), 1e-9);
  }

  @Test
  void theMeanOfTheHoursIsTheMeanOfLowAndHigh() {
    double mean =
        IntStream.range(0, 24)
            .mapToDouble(h -> Weather.outsideFahrenheit(h + 0.5, 25, 45))
            .average()
            .orElseThrow();
    assertEquals(35, mean, 1e-9);
  }

  @Test
  void itFallsAndRisesWithoutAJump() {
    for (double h = 0.1; h < 24; h += 0.1) {
      double step =
          Weather.outsideFahrenheit(h, 38, 70) - Weather.outsideFahrenheit(h - 0.1, 38, 70);
      assertTrue(h > 5.05 && h < 15.05 ? step > -1e-9 : step < 1e-9, "at " + h + ": " + step);
    }
  }

  @Test
  void aLowAboveTheHighIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Weather.outsideFahrenheit(5, 60, 59));
    assertEquals(60, Weather.outsideFahrenheit(5, 60, 60));
  }
}
