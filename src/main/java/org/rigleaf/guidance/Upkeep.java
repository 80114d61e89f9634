package org.rigleaf.guidance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.figures.Interval;
import org.rigleaf.figures.Value;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;

/**
 * The upkeep of one rig: the tasks that apply, when each was last done and is due, and the dates
 * that stand on the gear. The clock is never read: late means late on the edition's date.
 */
public final class Upkeep {
  private final Rig rig;
  private final Figures figures;
  private final Wording wording;
  private final Guide guide;

  Upkeep(Rig rig, Figures figures, Wording wording, Guide guide) {
    this.rig = rig;
    this.figures = figures;
    this.wording = wording;
    this.guide = guide;
  }

  /** How often each task that applies to the rig is due by the calendar, by the task. */
  public static Map<String, Interval> intervals(Rig rig, Wording wording) {
    Set<String> traits = Traits.of(rig);
    Map<String, Interval> all = new LinkedHashMap<>();
    wording.tasks.values().stream()
        .filter(t -> t.condition().holds(traits::contains))
        .forEach(t -> t.interval().ifPresent(i -> all.put(t.id(), i)));
    return all;
  }

  /** The tasks that apply, in the order of the wording. */
  List<Task> tasks() {
    return wording.tasks.values().stream()
        .filter(t -> t.condition().holds(guide::has))
        .map(this::task)
        .toList();
  }

  /** The dates that stand on the gear, as tasks. */
  List<Task> dates() {
    return MarkedDate.of(rig, figures).stream().map(this::dated).toList();
  }

  private Task task(TaskText t) {
    boolean dated = t.interval().isPresent();
    Optional<LocalDate> day = figures.find("due." + t.id()).map(f -> ((Value.Day) f.value()).day());
    return new Task(
        t.id(),
        t.trade(),
        t.band(),
        t.title(),
        guide.filler().fill(t.action(), ""),
        guide.filler().fill(t.see(), ""),
        guide.filler().fill(t.how(), ""),
        every(t),
        wording.phrase("who-" + Ids.of(t.who().name())),
        wording.phrase("basis", Map.of("basis", t.basis())),
        t.at().map(this::spots).orElse(List.of()),
        guide.reminders(t.cautions()),
        t.interval(),
        dated ? lastDone(t.id()) : Words.NONE,
        dated ? due(t.id()) : Words.NONE,
        day.map(LocalDate::toString).orElse(""),
        day.filter(this::past).isPresent() || meterPassed(t.id()),
        t.safety());
  }

  private String every(TaskText t) {
    String words =
        wording
            .find("every-" + Ids.of(t.every()))
            .orElseGet(() -> wording.phrase("every", Map.of("interval", t.every())));
    return t.interval()
        .flatMap(Interval::orAfter)
        .map(q -> wording.amounts().text(q.value(), q.unit()))
        .map(after -> wording.phrase("or-after", Map.of("every", words, "after", after)))
        .orElse(words);
  }

  /** The gear with this id, or all of a list. */
  private List<Task.Spot> spots(String at) {
    List<String> items =
        rig.gear().stream().filter(g -> g.type().equals(at)).map(Gear::id).toList();
    List<String> single = guide.has(at) ? List.of(at) : List.of();
    return (items.isEmpty() ? single : items).stream().map(this::spot).toList();
  }

  private Task.Spot spot(String id) {
    return new Task.Spot(rig.codes().getOrDefault(id, ""), id, guide.places().where(id));
  }

  private Words lastDone(String task) {
    return Optional.ofNullable(rig.log().lastDone().get(task))
        .map(done -> Words.of(Amounts.date(done.on())))
        .orElse(new Words(List.of(Run.blank("last-done." + task))));
  }

  private Words due(String task) {
    List<Run> runs = new ArrayList<>();
    for (String end : List.of("", ".miles", ".hours")) {
      Optional<Figure> figure = figures.find("due." + task + end);
      if (figure.isPresent() && !runs.isEmpty()) {
        runs.add(Run.text(wording.phrase("due-or")));
      }
      figure.map(guide.filler()::run).ifPresent(runs::add);
    }
    return runs.isEmpty() ? Words.of(wording.phrase("due-not-known")) : new Words(runs);
  }

  private boolean past(LocalDate day) {
    return rig.edition().date().filter(day::isBefore).isPresent();
  }

  /** The meter of the log shows what the task was to be done at. */
  private boolean meterPassed(String task) {
    return rig.log()
        .readings()
        .filter(
            r ->
                passed(figures.find("due." + task + ".miles"), r.miles().value())
                    || passed(figures.find("due." + task + ".hours"), r.generatorHours().value()))
        .isPresent();
  }

  private static boolean passed(Optional<Figure> limit, double shown) {
    return limit.filter(f -> shown >= f.number()).isPresent();
  }

  private Task dated(MarkedDate d) {
    boolean tire = d.kind() == MarkedDate.Kind.TIRE;
    String name =
        tire
            ? wording.phrase(
                "tires-of-axle", Map.of("axle", guide.places().axleInSentence(Ids.last(d.about()))))
            : guide.places().name(d.about());
    String phrase = "dated-" + d.kind().key();
    return new Task(
        d.about(),
        "",
        Band.LONGER,
        name,
        Words.of(wording.phrase(phrase, Map.of("name", name))),
        Words.NONE,
        Words.NONE,
        wording.phrase("every-date"),
        wording.phrase(phrase + "-who"),
        wording.phrase("basis", Map.of("basis", wording.phrase(phrase + "-basis"))),
        tire ? List.of() : List.of(spot(d.about())),
        List.of(),
        Optional.empty(),
        Words.NONE,
        due(d),
        d.day().map(LocalDate::toString).orElse(""),
        d.day().filter(this::past).isPresent(),
        true);
  }

  private Words due(MarkedDate d) {
    return d.figure()
        .map(f -> new Words(List.of(guide.filler().run(f))))
        .or(() -> d.day().map(day -> Words.of(Amounts.date(day))))
        .orElse(new Words(List.of(Run.blank(d.key()))));
  }
}
