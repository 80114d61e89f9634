package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.util.ICalDate;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Date;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Upkeep;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** What {@code upkeep.ics} promises, read by the library that wrote it and by another one. */
@Isolated("sets the locale and the time zone of the whole machine")
class CalendarFileTest {
  private static final String RUSH =
      """
      rig: {name: Rush, kind: travel trailer}
      edition: {number: 1, date: 2026-05-02}
      propane: {cylinders: {size: 20 lb, made: 2019-03, where: on the tongue}}
      road: {breakaway: {where: "under the coupler, left; a red pin"}}
      safety: {alarms: [{watches: smoke, replace-by: 2029-01, where: "ceiling, aft"}]}
      """;
  private static final String LOG =
      "last-done: {wheel-bearings: 2025-10, roof-seals: 2026-03-31, smoke-alarm-test: 2026-04-25,"
          + " breakaway-switch: 2026-01-29}";

  private static String file(String profile, String log) {
    Rig rig = TestRigs.of(profile, log);
    Wording wording = Wording.english();
    Figures figures = Figures.of(rig, Upkeep.intervals(rig, wording));
    return BinderMaker.of(rig, figures, wording, Map.of()).calendarFile();
  }

  private static ICalendar read(String file) {
    return Biweekly.parse(file).first();
  }

  private static VEvent event(String uid) {
    return read(file(RUSH, LOG)).getEvents().stream()
        .filter(e -> e.getUid().getValue().equals(uid + ".rush@rigleaf.invalid"))
        .findFirst()
        .orElseThrow();
  }

  private static LocalDate day(Date date) {
    return LocalDate.ofInstant(date.toInstant(), ZoneId.systemDefault());
  }

  /** Counted on a calendar; the marked dates are the last day of the month written. */
  @ParameterizedTest
  @CsvSource({
    "wheel-bearings, 2026-10-31", // October's last day and a year
    "roof-seals, 2026-09-30", // 31 March and six months; September has 30 days
    "smoke-alarm-test, 2026-05-02", // 25 + 7 = 32, less the 30 days of April
    "breakaway-switch, 2026-02-28", // 29 January and a month; February has 28 days
    "safety-alarms-smoke, 2029-01-31",
    "propane-cylinders-cylinder, 2031-03-31" // made 2019-03, 12 years
  })
  void anotherReaderFindsEachTaskOnItsDayForTheWholeDay(String task, String day) {
    VEvent event = event(task);
    ICalDate start = event.getDateStart().getValue();
    assertFalse(start.hasTime(), "all day");
    assertEquals(LocalDate.parse(day), day(start));
  }

  @Test
  void aTaskWithoutADayIsNoEvent() {
    assertEquals(6, read(file(RUSH, LOG)).getEvents().size());
    assertEquals(2, read(file(RUSH, "readings: {miles: 1}")).getEvents().size());
  }

  @Test
  void anEventTellsTheTaskItsPlaceAndAReminder() {
    VEvent event = event("breakaway-switch");
    assertEquals(
        "Rush: Pull the pin of the breakaway switch for a moment.", event.getSummary().getValue());
    assertEquals("R1 under the coupler, left; a red pin", event.getLocation().getValue());
    String told = event.getDescription().getValue();
    assertTrue(told.startsWith("The wheels hold. Put the pin back at once.\nEach month"), told);
    assertEquals(1, event.getAlarms().size());
    assertTrue(event.getAlarms().get(0).getAction().isDisplay());
    assertEquals(
        7 * 24 * 3600 * 1000L,
        -event.getAlarms().get(0).getTrigger().getDuration().toMillis(),
        "a week before");
  }

  /** The days that a reader shows, counted on a calendar. */
  @ParameterizedTest
  @CsvSource({
    "wheel-bearings, 2026-10-31 2027-10-31 2028-10-31",
    "roof-seals, 2026-09-30 2027-03-30 2027-09-30",
    "smoke-alarm-test, 2026-05-02 2026-05-09 2026-05-16",
    "breakaway-switch, 2026-02-28 2026-03-28 2026-04-28",
    "safety-alarms-smoke, 2029-01-31"
  })
  void aTaskComesAgainAtItsInterval(String task, String days) {
    List<String> shown = new ArrayList<>();
    Iterator<Date> dates = event(task).getDateIterator(TimeZone.getDefault());
    while (dates.hasNext() && shown.size() < 3) {
      shown.add(day(dates.next()).toString());
    }
    assertEquals(days, String.join(" ", shown));
  }

  /** A day that a month lacks becomes the last one of that month, and comes back after it. */
  @ParameterizedTest
  @CsvSource({
    "2025-12-31, 2026-01-31 2026-02-28 2026-03-31 2026-04-30",
    "2026-01-30, 2026-02-28 2026-03-28 2026-04-28 2026-05-28",
    "2027-12-29, 2028-01-29 2028-02-29 2028-03-29 2028-04-29"
  })
  void aMonthlyTaskSkipsNoMonth(String done, String days) {
    String file = file(RUSH, "last-done: {breakaway-switch: " + done + "}");
    VEvent event =
        read(file).getEvents().stream()
            .filter(e -> e.getUid().getValue().startsWith("breakaway"))
            .findFirst()
            .orElseThrow();
    List<String> shown = new ArrayList<>();
    Iterator<Date> dates = event.getDateIterator(TimeZone.getDefault());
    while (shown.size() < 4) {
      shown.add(day(dates.next()).toString());
    }
    assertEquals(days, String.join(" ", shown));
  }

  @Test
  void theLibraryReadsItsOwnFileAndFindsNoFault() throws Exception {
    Calendar calendar = new CalendarBuilder().build(new StringReader(file(RUSH, LOG)));
    assertFalse(calendar.validate().hasErrors(), calendar.validate().toString());
    Map<String, String> starts = new TreeMap<>();
    for (Component event : calendar.getComponents(Component.VEVENT)) {
      starts.put(value(event, Property.UID), value(event, Property.DTSTART));
      assertEquals("20260502T000000Z", value(event, Property.DTSTAMP), "the edition's date");
    }
    assertEquals("20261031", starts.get("wheel-bearings.rush@rigleaf.invalid"));
    assertEquals(6, starts.size(), "each event has a name of its own");
    assertEquals("", read(file(RUSH, LOG)).validate(biweekly.ICalVersion.V2_0).toString());
  }

  private static String value(Component event, String property) {
    return event.getProperty(property).orElseThrow().getValue();
  }

  @Test
  void linesEndAsTheStandardSaysAndHoldAtMost75Octets() {
    String place = "unter dem Fuß der Türe, " + "größer als ½ Schuh ".repeat(8) + "€";
    String file = file(RUSH.replace("on the tongue", "\"" + place + "\""), LOG);
    assertTrue(file.endsWith("END:VCALENDAR\r\n"));
    assertEquals(file, file.replaceAll("\r?\n", "\r\n"), "every line ends in CR LF");
    for (String line : file.split("\r\n")) {
      assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
    }
    long folded = Arrays.stream(file.split("\r\n")).filter(l -> l.startsWith(" ")).count();
    assertTrue(folded > 4, "some lines are folded: " + folded);
    String location =
        read(file).getEvents().stream()
            .filter(e -> e.getUid().getValue().startsWith("propane-cylinders"))
            .map(e -> e.getLocation().getValue())
            .collect(Collectors.joining());
    assertEquals("P1 " + place, location);
  }

  /** A reader must put together again what was cut: 2 octets a letter, 75 a line. */
  @Test
  void noLetterIsCut() {
    String line = "SUMMARY:" + "é".repeat(70); // 8 + 140 octets
    String folded = CalendarFile.folded(line + "\r\n");
    // 8 + 33 x 2 = 74, one more would be 76; then a blank and 37 x 2 = 75
    assertEquals("SUMMARY:" + "é".repeat(33) + "\r\n " + "é".repeat(37) + "\r\n", folded);
  }

  /** Time zone and language of the machine change nothing; another edition date does. */
  @Test
  void theSameProfileGivesTheSameBytesEverywhere() {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    String here = file(RUSH, LOG);
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertEquals(here, file(RUSH, LOG));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Niue"));
      assertEquals(here, file(RUSH, LOG));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    assertNotEquals(here, file(RUSH.replace("2026-05-02", "2026-05-03"), LOG));
  }
}
