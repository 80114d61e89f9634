package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.Month;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;
import org.shredzone.commons.suncalc.SunTimes;

class SunTest {
  @Test
  void on3SeptemberAt20SouthTheSunBrings32Point2MegajoulesAsFao56Example8Prints() {
    // FAO-56 example 8 as transcribed in woodcrafty/PyETo (SEEN-2); tolerances: half its last digit
    assertEquals(0.985, Sun.inverseDistance(246), 0.0005);
    assertEquals(0.120, Sun.declinationRadians(246), 0.0005);
    assertEquals(1.527, Sun.sunsetAngleRadians(-20, 246), 0.0005);
    assertEquals(32.2, Sun.extraterrestrialMj(-20, 246), 0.05);
  }

  @Test
  void aDaysSunRunsAnAirConditionerForItsWattHoursOverItsWatts() {
    Figures figures =
        Figures.of(
            TestRigs.of(
                "rig: {name: Reed, kind: class b}\n"
                    + "stay: {month: June, place: {latitude: 40}}\n"
                    + "electric: {solar: {panels: 2 x 100 W, controller: mppt},"
                    + " inverter: {efficiency: 85 percent}}\n"
                    + "climate: {air-conditioners: {draws: 1200 W}}\n"));
    double sun = figures.find("sun.june").orElseThrow().number();
    double hours = figures.find("sun.hours.air-conditioner").orElseThrow().number();
    assertEquals(sun * 0.85, hours * 1200, 1e-6);
  }

  @Test
  void thatDayHas11Point7HoursAsExample9Prints() {
    assertEquals(11.7, Sun.dayLengthHours(-20, 246), 0.05); // SEEN-2, printed to 0.1 h
  }

  @Test
  void inRioSevenHoursOfMaySunBring14Point45MegajoulesAsExample10Prints() {
    // FAO-56 example 10 as transcribed in woodcrafty/PyETo (SEEN-2), printed to 0.01 and less
    assertEquals(14.45, Sun.groundMj(25.1, 7.1 / 10.9), 0.01);
    assertEquals(25.1, Sun.extraterrestrialMj(-(22 + 54 / 60.0), 135), 0.05); // printed 25.1
    assertEquals(10.9, Sun.dayLengthHours(-(22 + 54 / 60.0), 135), 0.05); // printed 10.9
  }

  @Test
  void anotherProgramFindsTheSameDayLengthWithinThreeMinutes() {
    // commons-suncalc, geometric horizon: the sun's center, no refraction, as FAO-56 reckons;
    // the four days and 0.05 h: both programs were run on them
    assertEquals(suncalcHours(-20, Month.SEPTEMBER, 3), Sun.dayLengthHours(-20, 246), 0.05);
    assertEquals(suncalcHours(-22.9, Month.MAY, 15), Sun.dayLengthHours(-22.9, 135), 0.05);
    assertEquals(suncalcHours(13.73, Month.APRIL, 15), Sun.dayLengthHours(13.73, 105), 0.05);
    assertEquals(suncalcHours(45.72, Month.JULY, 15), Sun.dayLengthHours(45.72, 196), 0.05);
  }

  @Test
  void aroundTheYearItStaysWithinTenMinutes() {
    // FAO-56 has one sine for the sun's height over the equator; in mid October it is 1.3 degrees
    // low, which at latitude 44 is 2 x 1.3 / 15 x tan 44 = 0.17 h of day: tolerance a sixth
    for (double latitude : new double[] {38.6, 44.1}) {
      for (Month month : Month.values()) {
        assertEquals(
            suncalcHours(latitude, month, 15),
            Sun.dayLengthHours(latitude, Sun.dayOfYear(month)),
            1 / 6.0,
            latitude + " " + month);
      }
    }
  }

  @Test
  void theDayOnePerceivesIsLongerThanTheGeometricOneThatCounts() {
    // with refraction and the sun's radius 0.11 to 0.22 h more; not used here
    double seen = suncalcHours(44.1, Month.MAY, 15, SunTimes.Twilight.VISUAL);
    assertTrue(seen - Sun.dayLengthHours(44.1, Sun.dayOfYear(Month.MAY)) > 0.1);
  }

  private static double suncalcHours(double latitude, Month month, int day) {
    return suncalcHours(latitude, month, day, SunTimes.Twilight.HORIZON);
  }

  private static double suncalcHours(
      double latitude, Month month, int day, SunTimes.Twilight twilight) {
    SunTimes sun =
        SunTimes.compute()
            .on(LocalDate.of(2023, month, day))
            .timezone("UTC")
            .at(latitude, 0)
            .twilight(twilight)
            .execute();
    return Duration.between(sun.getRise(), sun.getSet()).toSeconds() / 3600.0;
  }

  @Test
  void summingTheSunMinuteByMinuteGivesTheSameDay() {
    // second derivation: the solar constant on level ground, added up over 1440 minutes
    for (int day : new int[] {15, 135, 246, 349}) {
      for (double latitude : new double[] {-35, 0, 44.1, 60}) {
        double sum = 0;
        double up = Math.toRadians(latitude);
        double tilt = 0.409 * Math.sin(2 * Math.PI * day / 365 - 1.39);
        for (int minute = 0; minute < 1440; minute++) {
          double angle = Math.PI * (minute + 0.5 - 720) / 720;
          double height =
              Math.sin(up) * Math.sin(tilt) + Math.cos(up) * Math.cos(tilt) * Math.cos(angle);
          sum += 0.0820 * (1 + 0.033 * Math.cos(2 * Math.PI * day / 365)) * Math.max(0, height);
        }
        assertEquals(sum, Sun.extraterrestrialMj(latitude, day), 0.001);
      }
    }
  }

  @Test
  void beyondThePolarCircleTheDayIs24HoursOrNone() {
    assertEquals(24, Sun.dayLengthHours(80, 172), 1e-9);
    assertEquals(0, Sun.extraterrestrialMj(80, 355), 1e-9);
    assertThrows(IllegalArgumentException.class, () -> Sun.dayLengthHours(91, 172));
    assertThrows(IllegalArgumentException.class, () -> Sun.groundMj(25, 1.1));
    assertThrows(IllegalArgumentException.class, () -> Sun.groundMj(25, -0.1));
    // at the poles the sun is up for half a year
    assertEquals(24, Sun.dayLengthHours(90, 172), 1e-9);
    assertEquals(0, Sun.dayLengthHours(-90, 172), 1e-9);
    // FAO-56 eq. 35: a quarter comes through a closed sky, three quarters on a clear day
    assertEquals(6.25, Sun.groundMj(25, 0), 1e-12);
    assertEquals(18.75, Sun.groundMj(25, 1), 1e-12);
  }

  @Test
  void aPwmControllerUses76PercentOfAnEighteenVoltPanel() {
    assertEquals(0.7556, Sun.pwmShare(12, 18), 0.00005); // 13.6 / 18 = 0.75556
    assertEquals(0.7556, Sun.pwmShare(12.8, 18), 0.00005); // a lithium bank of 12 V by class
    assertEquals(0.7556, Sun.pwmShare(25.6, 36), 0.00005); // 27.2 / 36
    assertEquals(1, Sun.pwmShare(24, 18), 1e-12); // never more than the panel has
    assertThrows(IllegalArgumentException.class, () -> Sun.pwmShare(12, 0));
    assertThrows(IllegalArgumentException.class, () -> Sun.pwmShare(0, 18));
  }

  private static Figures rig(String stay, String solar) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: Reed, kind: travel trailer}\nstay: {"
                + stay
                + "}\nelectric:\n  solar: {panels: 1 x 100 W"
                + solar
                + "}\n  batteries: {type: agm, each: {voltage: 12 V, capacity: 100 Ah}, in-series: 1, strings: 1}\n"));
  }

  private static final String RIO = "place: {latitude: -22.9";

  @Test
  void aHundredWattsInRioBring262WattHoursOnAMayDay() {
    // Ra 25.11 MJ/m2 (CALC beside the printed 25.1); x 0.5 / 3.6 x 100 x 0.75
    // = 261.6; tolerance 0.1, as Ra has four digits
    Figure may = rig(RIO + "}", ", controller: mppt").find("sun.may").orElseThrow();
    assertEquals(261.6, may.number(), 0.1);
    assertEquals(Set.of("solar.sunshine", "solar.system-factor"), may.assumes());
  }

  @Test
  void twelveSharesOfSunshineGiveEachMonthItsOwn() {
    String twelve = ", sunshine: [0.5, 0.5, 0.5, 0.5, 0.8, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5]}";
    Figures figures = rig(RIO + twelve + ", month: May", ", controller: mppt");
    double may = figures.find("sun.may").orElseThrow().number();
    assertEquals(261.6 * 0.65 / 0.5, may, 0.2); // 0.25 + 0.5 x 0.8 = 0.65
    assertEquals(may, figures.find("sun.may.clear").orElseThrow().number(), 1e-9);
  }

  @Test
  void onlyTheMonthOfTheStayHasThreeSkies() {
    Figures figures = rig(RIO + "}, month: May", ", controller: mppt");
    double mixed = figures.find("sun.may.mixed").orElseThrow().number();
    // 0.25 + 0.5 x 0.8, 0.5, 0.2 = 0.65, 0.50, 0.35
    assertEquals(1.3, figures.find("sun.may.clear").orElseThrow().number() / mixed, 1e-9);
    assertEquals(0.7, figures.find("sun.may.gray").orElseThrow().number() / mixed, 1e-9);
    assertTrue(figures.find("sun.june.clear").isEmpty());
    assertTrue(rig(RIO + "}", ", controller: mppt").find("sun.may.clear").isEmpty());
  }

  @Test
  void withoutItsControllerOrALatitudeNoSunIsReckoned() {
    Figures noController = rig(RIO + "}", "");
    assertTrue(noController.find("sun.may").isEmpty());
    assertEquals(Set.of("electric.solar.controller"), noController.missing("sun.may"));
    Figures noPlace = rig("people: 2", ", controller: mppt");
    assertTrue(noPlace.find("sun.may").isEmpty());
    assertEquals(Set.of("stay.place.latitude"), noPlace.missing("sun.may"));
  }

  @Test
  void anUnknownPanelVoltageIsTypicalAndMarked() {
    Figure may = rig(RIO + "}", ", controller: pwm").find("sun.may").orElseThrow();
    assertEquals(261.6 * 13.6 / 18, may.number(), 0.1);
    assertTrue(may.assumes().contains("solar.panel-vmp"));
  }
}
