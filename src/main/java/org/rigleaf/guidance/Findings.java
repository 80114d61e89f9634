package org.rigleaf.guidance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoublePredicate;
import org.rigleaf.figures.Amounts;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.figures.Motor;
import org.rigleaf.figures.Value;
import org.rigleaf.figures.Weights;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Generator;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.TypicalValues;
import org.rigleaf.source.Unit;

/**
 * Finds what needs attention: kit that is missing or past its date, loads that never run, sources
 * that are asked too much, weights beyond a rating. Dates count from the edition, never from a
 * clock.
 */
public final class Findings {
  /** The tank is low but not empty: a fifth full. House rule. */
  private static final String LOW_TANK = ".20";

  private final Rig rig;
  private final Figures figures;
  private final Wording wording;
  private final Guide guide;
  private final List<Finding> found = new ArrayList<>();

  private Findings(Rig rig, Figures figures, Wording wording, Guide guide) {
    this.rig = rig;
    this.figures = figures;
    this.wording = wording;
    this.guide = guide;
  }

  /** All findings, safety first. */
  public static List<Finding> of(Rig rig, Figures figures, Wording wording, Guide guide) {
    Findings findings = new Findings(rig, figures, wording, guide);
    Traits.safetyKitPaths().stream().filter(p -> !p.equals("propane")).forEach(findings::kit);
    rig.edition().date().ifPresent(findings::dates);
    findings.loads();
    rig.electric().generator().ifPresent(findings::generator);
    rig.electric().inverter().ifPresent(findings::inverter);
    findings.weights();
    findings.heat();
    findings.upkeep();
    return findings.found.stream()
        .sorted(Comparator.comparing(f -> !f.severity().equals("safety")))
        .toList();
  }

  private void add(String id, String about, Map<String, String> told) {
    add(id, about, wording.findings.get(id).topic(), told);
  }

  private void add(String id, String about, String topic, Map<String, String> told) {
    Map<String, String> values = new HashMap<>(Map.of("name", guide.places().name(about)));
    values.putAll(told);
    Wording.ConditionalFinding text = wording.findings.get(id);
    Words words = guide.filler().fill(text.text(), about);
    List<Run> runs =
        words.runs().stream()
            .map(
                r ->
                    r.kind() == Run.Kind.BLANK && values.containsKey(r.key())
                        ? Run.text(values.get(r.key()))
                        : r)
            .toList();
    found.add(new Finding(id, about, text.severity(), topic, new Words(runs)));
  }

  private void kit(String path) {
    if (path.equals("safety.alarms.lp") && guide.has("propane.none")) {
      return;
    }
    boolean alarm = path.startsWith("safety.alarms") || path.equals("safety.extinguishers");
    if (guide.has(path + ".none") && alarm) {
      add("kit-missing", path, Map.of());
    } else if (guide.has(path + ".unlisted")) {
      add("kit-not-listed", path, Map.of());
    }
  }

  private void dates(LocalDate edition) {
    MarkedDate.of(rig, figures).stream()
        .filter(
            d ->
                d.kind()
                    != MarkedDate.Kind.TIRE) // a tire is past its time by its age, not its year
        .filter(d -> d.day().filter(day -> day.isBefore(edition)).isPresent())
        .forEach(
            d ->
                add(
                    d.kind().key() + "-past-date",
                    d.about(),
                    Map.of("date", Amounts.date(d.day().orElseThrow()))));
    tires();
  }

  /** Upkeep that was due before the edition, at the head of its part of the calendar. */
  private void upkeep() {
    for (Task task : guide.upkeep()) {
      if (task.late()) {
        String id = task.safety() ? "upkeep-late-safety" : "upkeep-late";
        add(
            id,
            task.id(),
            calendar(task),
            Map.of("name", task.title(), "date", task.due().plain()));
      }
    }
  }

  /** The topic whose calendar holds the task. */
  private String calendar(Task task) {
    return wording.topics().stream()
        .filter(
            t -> t.shows().stream().anyMatch(s -> s instanceof Show.Calendar c && c.holds(task)))
        .map(TopicText::id)
        .findFirst()
        .orElse("");
  }

  private String axle(String number) {
    return guide.places().axleInSentence(number);
  }

  private void tires() {
    for (Figure f : figures.all()) {
      if (f.id().matches("tire\\.[^.]+\\.age")
          && f.number() > TypicalValues.of("tire.years").value()) {
        String axle = f.id().split("\\.")[1];
        add("tire-past-age", "tire." + axle, Map.of("axle", axle(axle)));
      }
    }
  }

  private void loads() {
    rig.electric()
        .shore()
        .filter(s -> s.service().known())
        .ifPresent(
            s -> {
              String id = "together." + Math.round(s.service().value()) + ".never";
              figures
                  .find(id)
                  .map(f -> (Value.Loads) f.value())
                  .ifPresent(
                      l ->
                          l.ids()
                              .forEach(
                                  load ->
                                      add(
                                          "load-never-runs",
                                          load,
                                          Map.of("name", guide.filler().loadName(load)))));
            });
  }

  /**
   * Weights beyond what label, axle, tire or tow vehicle allow, and a hitch that is badly loaded.
   */
  private void weights() {
    each("weight.margin", v -> v < 0, "cargo-too-heavy");
    each("axle.<n>.margin", v -> v < 0, "axle-overloaded");
    each("tire.<n>.margin", v -> v < 0, "tires-overloaded");
    each("tow.payload", v -> v < 0, "payload-too-small");
    each("tow.rear-axle", v -> v < 0, "rear-axle-overloaded");
    each("tow.combined", v -> v < 0, "combined-too-heavy");
    each("hitch.share", v -> guide.has("ball-coupled") && (v < 10 || v > 15), "hitch-share-ball");
    each("hitch.share", v -> guide.has("pin-coupled") && (v < 15 || v > 25), "hitch-share-pin");
    Weights.conflictingSum(rig)
        .ifPresent(
            sum ->
                add(
                    "cargo-label-conflict",
                    "weight.cargo",
                    Map.of("sum", wording.amounts().text(sum, Unit.POUND))));
  }

  /** A furnace too weak for the stay's cold, a tank too small to feed all burners in a frost. */
  private void heat() {
    each("furnace.duty.worst", v -> v > 100, "furnace-cannot-hold");
    figures
        .find("lp.all-burners")
        .ifPresent(
            all -> each("lp.vapor.<percent>", LOW_TANK, v -> v < all.number(), "vapor-short"));
  }

  /** A finding for every figure of this pattern whose number is wrong. */
  private void each(String pattern, DoublePredicate wrong, String finding) {
    each(pattern, "", wrong, finding);
  }

  private void each(String pattern, String end, DoublePredicate wrong, String finding) {
    for (Figure f : figures.all()) {
      boolean meant = f.entry().pattern().equals(pattern) && f.id().endsWith(end);
      if (meant && wrong.test(f.number())) {
        String id = f.id().replaceFirst("\\.margin$", "");
        String over = wording.amounts().text(Math.abs(f.number()), f.unit());
        add(finding, id, Map.of("axle", axle(Ids.last(id)), "over", over));
      }
    }
  }

  private void generator(Generator generator) {
    starting("generator-cannot-start", Motor.onGenerator(rig), generator.surge());
  }

  /** An inverter that asks too much of its bank, or of which a motor asks too much. */
  private void inverter(Electric.Inverter inverter) {
    starting("inverter-cannot-start", Motor.onInverter(rig), inverter.surge());
    beyond("inverter-beyond-fuse", inverter, inverter.fuse());
    rig.electric()
        .batteries()
        .ifPresent(b -> beyond("inverter-beyond-bank", inverter, b.dischargeLimit()));
  }

  private void beyond(String id, Electric.Inverter inverter, Fact limit) {
    figures
        .find("inverter.current")
        .filter(f -> f.number() > limit.value())
        .ifPresent(f -> add(id, inverter.gear().id(), Map.of("limit", amount(limit))));
  }

  /** Motors that want more watts to start than a source gives for a moment; none if unknown. */
  private void starting(String id, List<Motor> motors, Fact surge) {
    motors.stream()
        .filter(m -> m.starts().value() > surge.value())
        .forEach(
            m -> add(id, m.gear(), Map.of("starts", amount(m.starts()), "surge", amount(surge))));
  }

  private String amount(Fact fact) {
    return wording.amounts().text(fact.value(), fact.unit());
  }
}
