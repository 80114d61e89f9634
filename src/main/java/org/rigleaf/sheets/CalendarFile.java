package org.rigleaf.sheets;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.Month;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.parameter.Related;
import net.fortuna.ical4j.model.property.Action;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.RRule;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Transp;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Task;
import org.rigleaf.guidance.Words;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;

/**
 * The upkeep of a rig as an iCalendar file (RFC 5545): an all-day event for each task whose due
 * date is known, repeated at its interval. Time stamps are the edition's date, so that the same
 * profile gives the same bytes on any day and any machine.
 */
final class CalendarFile {
  /** Octets of a line, its end not counted (RFC 5545, 3.1). */
  private static final int LONGEST_LINE = 75;

  /** Days of the month that every month has. */
  private static final int SHORTEST_MONTH = 28;

  /** For an edition without a date; the clock is never read. */
  private static final LocalDate NO_DATE = LocalDate.of(2000, 1, 1);

  private final Rig rig;

  CalendarFile(Rig rig) {
    this.rig = rig;
  }

  /** The calendar of the tasks that have a day. */
  String text(List<Task> tasks) {
    Calendar calendar = new Calendar();
    calendar.add(new ProdId("-//Rigleaf//Upkeep of one rig//EN"));
    calendar.add(ImmutableVersion.VERSION_2_0);
    calendar.add(ImmutableCalScale.GREGORIAN);
    tasks.stream().filter(t -> !t.day().isEmpty()).forEach(t -> calendar.add(event(t)));
    StringWriter text = new StringWriter();
    try {
      new CalendarOutputter(false).output(calendar, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return folded(text.toString());
  }

  private VEvent event(Task task) {
    LocalDate day = LocalDate.parse(task.day());
    String summary = rig.identity().name() + ": " + task.action().plain();
    VEvent event = new VEvent(false);
    event.add(
        new Uid(Ids.of(task.id()) + "." + Ids.of(rig.identity().name()) + "@rigleaf.invalid"));
    event.add(
        new DtStamp(rig.edition().date().orElse(NO_DATE).atStartOfDay().toInstant(ZoneOffset.UTC)));
    event.add(new DtStart<>(day));
    task.interval().ifPresent(i -> event.add(new RRule<LocalDate>(rule(day, i.every()))));
    event.add(new Summary(summary));
    event.add(new Description(description(task)));
    String places = places(task);
    if (!places.isEmpty()) {
      event.add(new Location(places));
    }
    event.add(new Transp(Transp.VALUE_TRANSPARENT));
    boolean often = task.interval().filter(i -> i.every().getDays() > 0).isPresent();
    event.add(reminder(summary, often ? 1 : 7));
    return event;
  }

  private static VAlarm reminder(String summary, int daysBefore) {
    VAlarm alarm = new VAlarm();
    alarm.add(new Action(Action.VALUE_DISPLAY));
    alarm.add(new Description(summary));
    Trigger trigger = new Trigger(Period.ofDays(-daysBefore));
    trigger.add(Related.START);
    alarm.add(trigger);
    return alarm;
  }

  /** Repeats the interval; a day that a month lacks becomes the last one of that month. */
  private static String rule(LocalDate day, Period every) {
    if (every.getDays() > 0) {
      return "FREQ=WEEKLY;INTERVAL=" + every.getDays() / 7;
    }
    long months = every.toTotalMonths();
    boolean leapDay = day.getMonth() == Month.FEBRUARY && day.getDayOfMonth() > SHORTEST_MONTH;
    if (months % 12 == 0 && !leapDay) {
      return "FREQ=YEARLY;INTERVAL=" + months / 12;
    }
    String monthly = "FREQ=MONTHLY;INTERVAL=" + months;
    return day.getDayOfMonth() > SHORTEST_MONTH ? monthly + lastOf(day.getDayOfMonth()) : monthly;
  }

  /** That day of the month, or the last one of a shorter month. */
  private static String lastOf(int day) {
    String days =
        IntStream.rangeClosed(SHORTEST_MONTH, day)
            .mapToObj(Integer::toString)
            .collect(Collectors.joining(","));
    return ";BYMONTHDAY=" + days + ";BYSETPOS=-1";
  }

  private static String description(Task task) {
    return Stream.of(
            task.see().plain(), task.how().plain(), task.every() + "; " + task.who(), task.basis())
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining("\n"));
  }

  private static String places(Task task) {
    return task.spots().stream()
        .map(s -> (s.code() + " " + known(s.place())).strip())
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private static String known(Words place) {
    boolean blank = place.runs().stream().anyMatch(r -> r.kind() == Run.Kind.BLANK);
    return blank ? "" : place.plain();
  }

  /** Lines of at most 75 octets of UTF-8; no character is cut. The library counts characters. */
  static String folded(String text) {
    StringBuilder out = new StringBuilder();
    for (String line : text.replaceAll("\r\n[ \t]", "").split("\r\n")) {
      int octets = 0;
      for (int i = 0; i < line.length(); i = line.offsetByCodePoints(i, 1)) {
        String character = Character.toString(line.codePointAt(i));
        int size = character.getBytes(StandardCharsets.UTF_8).length;
        if (octets + size > LONGEST_LINE) {
          out.append("\r\n ");
          octets = 1;
        }
        out.append(character);
        octets += size;
      }
      out.append("\r\n");
    }
    return out.toString();
  }
}
