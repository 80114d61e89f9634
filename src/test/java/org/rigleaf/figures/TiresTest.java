package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.WeekFields;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;
import org.rigleaf.source.PartialDate;

class TiresTest {
  private static Figures rig(String edition, String tires) {
    return Figures.of(
        TestRigs.of(
            "rig: {name: Reed, kind: travel trailer}\nedition: {number: 1"
                + edition
                + "}\nroad:\n  tires: "
                + tires
                + "\n"));
  }

  private static double number(Figures figures, String id) {
    return figures.find(id).orElseThrow().number();
  }

  @Test
  void aTireOfWeek35Of2024Is2Point23YearsOldOn25November2026() {
    // the week of 2024-09-01 by the rule of 49 CFR 574.5(b)(3); 815 days / 365.25 = 2.23 (CALC)
    Figures figures = rig(", date: 2026-11-25", "{count: 4, made: week 35 of 2024}");
    assertEquals(2.23, number(figures, "tire.1.age"), 0.005);
    assertEquals(2030, number(figures, "tire.1.replace"), 1e-9); // 2024 + 6
    assertEquals(Set.of(), figures.find("tire.1.age").orElseThrow().assumes());
    assertEquals(Set.of("tire.years"), figures.find("tire.1.replace").orElseThrow().assumes());
  }

  @Test
  void ageCountsFromTheSundayOfTheLabelsWeekWhichIsNotTheIsoWeek() {
    // codes 2501 (linhelps.com, content-840), 4308 and 0712 (reference.com, tire dates) are SEEN;
    // the
    // dates are CALC
    assertEquals(LocalDate.of(2001, 6, 24), sunday("week 25 of 2001"));
    assertEquals(LocalDate.of(2008, 10, 26), sunday("week 43 of 2008"));
    assertEquals(LocalDate.of(2012, 2, 12), sunday("week 7 of 2012"));
    assertEquals(0, Tires.ageYears(LocalDate.of(2012, 2, 12), LocalDate.of(2012, 2, 12)), 1e-12);
    // 4 years with one leap day are 1461 days
    assertEquals(4, Tires.ageYears(LocalDate.of(2012, 2, 12), LocalDate.of(2016, 2, 12)), 1e-12);
  }

  @Test
  void theWeekOfEveryDateCodeOpensOnTheSundayThatTheCalendarLibraryFinds() {
    // java.time's WeekFields, weeks from Sunday, the first with all its seven days: another program
    WeekFields label = WeekFields.of(DayOfWeek.SUNDAY, 7);
    for (int year = 1990; year < 2040; year++) {
      for (int week = 1; week <= 52; week++) {
        LocalDate opens =
            LocalDate.of(year, 7, 1).with(label.weekOfYear(), week).with(label.dayOfWeek(), 1);
        String code = "week " + week + " of " + year;
        assertEquals(opens, sunday(code), code);
      }
      String made = "{count: 4, made: week 26 of " + year + "}";
      LocalDate opens =
          LocalDate.of(year, 7, 1).with(label.weekOfYear(), 26).with(label.dayOfWeek(), 1);
      double age = number(rig(", date: " + opens.plusDays(1461), made), "tire.1.age");
      assertEquals(4, age, 1e-12, made); // 1461 days are 4 years
    }
  }

  private static LocalDate sunday(String week) {
    return PartialDate.parse(week).orElseThrow().first();
  }

  @Test
  void tiresCountByAxleFrontToRear() {
    Figures figures =
        rig(
            ", date: 2026-05-02",
            "[{axle: rear, count: 4, made: week 10 of 2023}, {axle: front, count: 2, made: week 10 of 2019}]");
    assertEquals(2025, number(figures, "tire.1.replace"), 1e-9);
    assertEquals(2029, number(figures, "tire.2.replace"), 1e-9);
    assertTrue(figures.find("tire.3.replace").isEmpty());
    Figures tandem =
        Figures.of(
            TestRigs.of(
                "rig: {name: Reed, kind: travel trailer, axles: [12 ft, 15 ft]}\n"
                    + "road: {tires: {count: 4, made: week 10 of 2020}}\n"));
    assertEquals(2026, number(tandem, "tire.2.replace"), 1e-9); // one kind of tire, two axles
    assertTrue(tandem.find("tire.3.replace").isEmpty());
    Figures both = rig(", date: 2026-05-02", "{axle: both, count: 4, made: week 10 of 2020}");
    assertEquals(number(both, "tire.1.age"), number(both, "tire.2.age"), 1e-12);
  }

  @Test
  void withoutADateCodeOrAnEditionDateThereIsNoAgeAndNoneBeforeTheTireWasMade() {
    assertEquals(
        Set.of("road.tires.tires.made"),
        rig(", date: 2026-05-02", "{count: 4}").missing("tire.1.age"));
    assertEquals(
        Set.of("edition.date"), rig("", "{count: 4, made: week 10 of 2020}").missing("tire.1.age"));
    assertTrue(
        rig(", date: 2020-01-01", "{count: 4, made: week 10 of 2020}")
            .find("tire.1.age")
            .isEmpty());
    assertThrows(
        IllegalArgumentException.class,
        () -> Tires.ageYears(LocalDate.of(2026, 1, 2), LocalDate.of(2026, 1, 1)));
  }

  @Test
  void theMarkOnATireRulesAndTrailerTiresGo65WithoutOne() {
    Figures marked = rig("", "{count: 4, size: ST205/75R14, speed-mark: 81 mph}");
    assertEquals(81, number(marked, "tire.1.speed"), 1e-9);
    assertEquals(Set.of(), marked.find("tire.1.speed").orElseThrow().assumes());
    Figures metric = rig("", "{count: 4, size: LT225/75R16, speed-mark: 160 km/h}");
    assertEquals(99.419, number(metric, "tire.1.speed"), 0.001); // 160 / 1.609344
    Figures trailer = rig("", "{axle: both, count: 4, size: st205/75R14}");
    assertEquals(65, number(trailer, "tire.2.speed"), 1e-9); // common practice, no source
    assertEquals(
        Set.of("tire.ball-trailer-speed"), trailer.find("tire.2.speed").orElseThrow().assumes());
    for (String silent : new String[] {"{count: 2, size: LT225/75R16}", "{count: 2}"}) {
      assertEquals(Set.of("road.tires.tires.speed-mark"), rig("", silent).missing("tire.1.speed"));
    }
  }

  @Test
  void wheelNutsAreCheckedAfter10And25And50MilesUnlessTheMakerSaysOtherwise() {
    // manualsdump.com, multiquip-lt6d, page 53: 10, 25 and 50 miles (SEEN, manual of
    // trailer-mounted equipment, page 53)
    Figures usual = rig("", "{count: 4}");
    assertEquals(10, number(usual, "torque.check.1"), 0);
    assertEquals(25, number(usual, "torque.check.2"), 0);
    assertEquals(50, number(usual, "torque.check.3"), 0);
    assertTrue(usual.find("torque.check.4").isEmpty());
    Figures maker = rig("", "{count: 4}\n  torque-checks: [50 mi, 100 mi]");
    assertEquals(50, number(maker, "torque.check.1"), 1e-9);
    assertEquals(100, number(maker, "torque.check.2"), 1e-9);
    assertTrue(maker.find("torque.check.3").isEmpty());
    assertTrue(rig("", "none").find("torque.check.1").isEmpty());
  }

  @Test
  void tiresOfNoNamedAxleAreOnEveryAxleOfARigWithOneSetOnly() {
    String rig = "rig: {name: Reed, kind: travel trailer, axles: [12 ft, 15 ft]}\nroad: {tires: ";
    Figures one = Figures.of(TestRigs.of(rig + "{count: 4, speed-mark: 65 mph}}\n"));
    assertTrue(one.find("tire.2.speed").isPresent() && one.find("tire.3.speed").isEmpty());
    Figures two =
        Figures.of(
            TestRigs.of(
                rig
                    + "[{axle: first, count: 2, speed-mark: 65 mph},"
                    + " {axle: second, count: 2, speed-mark: 81 mph}]}\n"));
    assertEquals(81, number(two, "tire.2.speed"), 1e-9);
    assertTrue(two.find("tire.3.speed").isEmpty());
    Figures front = Figures.of(TestRigs.of(rig + "{axle: front, count: 2, speed-mark: 65 mph}}\n"));
    assertTrue(front.find("tire.1.speed").isPresent() && front.find("tire.2.speed").isEmpty());
  }
}
