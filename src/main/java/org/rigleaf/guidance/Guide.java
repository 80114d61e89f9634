package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;

/** The guidance of one rig: the procedures and cautions that apply, with their words filled in. */
public final class Guide {
  private final Rig rig;
  private final Wording wording;
  private final Filler filler;
  private final Places places;
  private final RigTraits traits;
  private final Cautions cautions;
  private final Steps steps;
  private final Map<String, Procedure> procedures = new LinkedHashMap<>();
  private final Upkeep upkeep;
  private final Map<String, Fault> faults = new LinkedHashMap<>();

  /**
   * The guidance of a rig.
   *
   * @param topics codes of the topics by id, as far as they are counted
   */
  public Guide(Rig rig, Figures figures, Wording wording, Map<String, String> topics) {
    this.rig = rig;
    this.wording = wording;
    this.filler = new Filler(rig, figures, wording, topics);
    this.places = new Places(rig, wording);
    this.traits = RigTraits.of(rig);
    this.cautions = new Cautions(wording, traits, filler, Map.copyOf(topics));
    this.steps = new Steps(wording, filler, places, traits, cautions);
    this.upkeep = new Upkeep(rig, figures, wording, this);
    wording.procedures.values().stream()
        .filter(p -> traits.holds(p.condition()))
        .forEach(p -> procedures.put(p.id(), procedure(p)));
    wording.faults.values().stream()
        .filter(f -> traits.holds(f.condition()))
        .forEach(f -> faults.put(f.id(), fault(f)));
  }

  /** The procedures that apply, by id. */
  public Map<String, Procedure> procedures() {
    return procedures;
  }

  /** The upkeep that this rig wants, in the order of the wording. */
  public List<Task> upkeep() {
    return upkeep.tasks();
  }

  /** The dates that stand on this rig's gear, after which it must be replaced or tested. */
  public List<Task> markedDates() {
    return upkeep.dates();
  }

  /** The faults that can happen to this rig, by id. */
  public Map<String, Fault> faults() {
    return faults;
  }

  /** True if this trait holds for the rig. */
  public boolean has(String trait) {
    return traits.has(trait);
  }

  /** Everything that the wording may ask of this rig. */
  public Set<String> traits() {
    return Collections.unmodifiableSet(traits.all());
  }

  /** The events that the printed steps complete, by step id, in the order of the steps. */
  public Map<String, List<String>> events() {
    return steps.events();
  }

  /** The things with a note of the keeper's that the steps of a procedure speak of, by id. */
  public Set<String> noted(String procedure) {
    Set<String> noted = new LinkedHashSet<>();
    steps.subjects(procedure).forEach(s -> withNote(s).ifPresent(noted::add));
    return noted;
  }

  private Optional<String> withNote(String path) {
    return rig.texts().containsKey(path + ".note")
        ? Optional.of(path)
        : path.contains(".") ? withNote(Ids.parent(path)) : Optional.empty();
  }

  /** True if a condition holds for the rig, or inside a list for the item with this id. */
  public boolean holds(Condition condition, String item) {
    return traits.holds(condition, item);
  }

  /** The ids of the items of a list, in the order of the profile. */
  public List<String> ids(String list) {
    return traits.ids(list);
  }

  /** Every caution that is triggered, gravest first within the order of the wording's groups. */
  public List<Caution> cautions() {
    return cautions.all();
  }

  /** What stands before an action of these cautions, those that are triggered. */
  List<Reminder> reminders(List<String> ids) {
    return cautions.reminders(ids);
  }

  /** Fills a text of the wording for this rig. */
  public Filler filler() {
    return filler;
  }

  /** Names and places of this rig. */
  public Places places() {
    return places;
  }

  private Words fill(TextTemplate text) {
    return filler.fill(text, "");
  }

  private Procedure procedure(ProcedureText p) {
    Steps.Counter counter = new Steps.Counter(p.id());
    List<Group> groups = new ArrayList<>();
    for (ProcedureText.GroupText g : p.groups()) {
      List<Step> made = traits.holds(g.condition()) ? steps.of(g.items(), counter) : List.of();
      if (!made.isEmpty()) {
        groups.add(new Group(g.title(), made));
      }
    }
    return new Procedure(
        p.id(),
        p.title(),
        p.mode(),
        p.minutes(),
        applying(p.need()),
        Words.joined(applying(p.stopIf())),
        cautions.reminders(p.cautions()),
        groups,
        fill(p.done()));
  }

  private Fault fault(FaultText f) {
    List<Step> checks = steps.of(f.checks(), new Steps.Counter(f.id()));
    List<Fault.Stop> stops =
        f.stops().stream()
            .filter(s -> traits.holds(s.condition()))
            .map(s -> new Fault.Stop(s.who(), wording.phrase("stop-" + s.who()), fill(s.text())))
            .toList();
    Words call = new Words(List.of(filler.contact()));
    return new Fault(f.id(), f.symptom(), cautions.reminders(f.cautions()), checks, stops, call);
  }

  /**
   * What must be said of the way in which the rig changed.
   *
   * @param before traits of the rig before
   * @param facts paths of the facts that differ
   */
  public List<Told> told(Set<String> before, Set<String> facts) {
    return wording.changes.values().stream()
        .filter(c -> c.happened(before, traits.all(), facts))
        .map(
            c ->
                new Told(
                    c.id(),
                    c.title(),
                    applying(c.first()),
                    applying(c.now()),
                    applying(c.withdrawn(), before),
                    applying(c.tell())))
        .toList();
  }

  /** Those of the texts that hold for the rig, filled in. */
  List<Words> applying(List<ConditionalText> texts) {
    return applying(texts, traits.all());
  }

  private List<Words> applying(List<ConditionalText> texts, Set<String> rig) {
    return texts.stream()
        .filter(t -> t.condition().holds(rig::contains))
        .map(t -> fill(t.text()))
        .toList();
  }
}
