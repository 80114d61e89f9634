package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.rigleaf.figures.Figures;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;

/** The guidance of one rig: the procedures and cautions that apply, with their words filled in. */
public final class Guide {
  private final Rig rig;
  private final Wording wording;
  private final Filler filler;
  private final Places places;
  private final Set<String> traits;
  private final Map<String, String> topics; // code of each printed topic by id
  private final Map<String, List<String>> events = new LinkedHashMap<>();
  private final Map<String, Procedure> procedures = new LinkedHashMap<>();
  private final Upkeep upkeep;
  private final Map<String, Fault> faults = new LinkedHashMap<>();
  private final Map<String, Set<String>> subjects = new LinkedHashMap<>(); // by procedure

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
    this.traits = Traits.of(rig);
    this.topics = Map.copyOf(topics);
    this.upkeep = new Upkeep(rig, figures, wording, this);
    wording.procedures.values().stream()
        .filter(p -> p.condition().holds(traits::contains))
        .forEach(p -> procedures.put(p.id(), procedure(p)));
    wording.faults.values().stream()
        .filter(f -> f.condition().holds(traits::contains))
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
    return traits.contains(trait);
  }

  /** Everything that the wording may ask of this rig. */
  public Set<String> traits() {
    return Collections.unmodifiableSet(traits);
  }

  /** The events that the printed steps complete, by step id, in the order of the steps. */
  public Map<String, List<String>> events() {
    return events;
  }

  /** The things with a note of the keeper's that the steps of a procedure speak of, by id. */
  public Set<String> noted(String procedure) {
    Set<String> noted = new LinkedHashSet<>();
    subjects.getOrDefault(procedure, Set.of()).forEach(s -> withNote(s).ifPresent(noted::add));
    return noted;
  }

  private Optional<String> withNote(String path) {
    return rig.texts().containsKey(path + ".note")
        ? Optional.of(path)
        : path.contains(".") ? withNote(Ids.parent(path)) : Optional.empty();
  }

  /** True if a condition holds for the rig, or inside a list for the item with this id. */
  public boolean holds(Condition condition, String item) {
    return condition.holds(inside(item));
  }

  /** Fills a text of the wording for this rig. */
  public Filler filler() {
    return filler;
  }

  /** Names and places of this rig. */
  public Places places() {
    return places;
  }

  /** Every caution that is triggered, gravest first within the order of the wording's groups. */
  public List<Caution> cautions() {
    return wording.cautions.values().stream()
        .filter(c -> c.condition().holds(traits::contains))
        .map(this::caution)
        .toList();
  }

  private Caution caution(CautionText c) {
    List<Words> avoid =
        c.avoid().stream()
            .filter(a -> a.condition().holds(traits::contains))
            .map(a -> fill(a.text()))
            .toList();
    String signal = wording.phrase("signal-" + c.level().key());
    return new Caution(
        c.id(),
        c.level().key(),
        signal,
        c.group(),
        fill(c.hazard()),
        fill(c.consequence()),
        avoid,
        fill(c.defer()));
  }

  private Words fill(TextTemplate text) {
    return filler.fill(text, "");
  }

  /** What stands before an action of these cautions, those that are triggered. */
  List<Reminder> reminders(List<String> cautions) {
    return cautions.stream()
        .map(wording.cautions::get)
        .filter(c -> c.condition().holds(traits::contains))
        .sorted(Comparator.comparing(CautionText::level))
        .map(
            c ->
                new Reminder(
                    c.id(),
                    c.level().key(),
                    wording.phrase("signal-" + c.level().key()),
                    fill(c.brief()),
                    fill(c.command()),
                    wording.topicOfCautions(c.group()).map(topics::get).orElse("")))
        .toList();
  }

  private Procedure procedure(ProcedureText p) {
    Counter counter = new Counter(p.id());
    List<Group> groups = new ArrayList<>();
    for (ProcedureText.GroupText g : p.groups()) {
      boolean holds = g.condition().holds(traits::contains);
      List<Step> steps = holds ? steps(g.items(), "", counter) : List.of();
      if (!steps.isEmpty()) {
        groups.add(new Group(g.title(), steps));
      }
    }
    return new Procedure(
        p.id(),
        p.title(),
        p.mode(),
        p.minutes(),
        applying(p.need()),
        Words.joined(applying(p.stopIf())),
        reminders(p.cautions()),
        groups,
        fill(p.done()));
  }

  private Fault fault(FaultText f) {
    List<Step> checks = steps(f.checks(), "", new Counter(f.id()));
    List<Fault.Stop> stops =
        f.stops().stream()
            .filter(s -> s.condition().holds(traits::contains))
            .map(s -> new Fault.Stop(s.who(), wording.phrase("stop-" + s.who()), fill(s.text())))
            .toList();
    Words call = new Words(List.of(filler.contact()));
    return new Fault(f.id(), f.symptom(), reminders(f.cautions()), checks, stops, call);
  }

  /**
   * What must be said of the way in which the rig changed.
   *
   * @param before traits of the rig before
   * @param facts paths of the facts that differ
   */
  public List<Told> told(Set<String> before, Set<String> facts) {
    return wording.changes.values().stream()
        .filter(c -> c.happened(before, traits, facts))
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
    return applying(texts, traits);
  }

  private List<Words> applying(List<ConditionalText> texts, Set<String> rig) {
    return texts.stream()
        .filter(t -> t.condition().holds(rig::contains))
        .map(t -> fill(t.text()))
        .toList();
  }

  private static final class Counter {
    private final String procedure;
    private int number;

    Counter(String procedure) {
      this.procedure = procedure;
    }
  }

  private List<Step> steps(List<Item> items, String item, Counter counter) {
    List<Step> steps = new ArrayList<>();
    for (Item i : items) {
      if (i instanceof Item.StepText s) {
        step(s, item, counter).ifPresent(steps::add);
      } else if (i instanceof Item.ByText by) {
        steps.addAll(steps(block(by, item), item, counter));
      } else if (i instanceof Item.EachText each && each.condition().holds(inside(item))) {
        ids(each.list()).forEach(id -> steps.addAll(steps(each.steps(), id, counter)));
      }
    }
    return steps;
  }

  private List<Item> block(Item.ByText by, String item) {
    String path = by.path().startsWith(".") ? item + by.path() : by.path();
    Optional<String> value = Optional.ofNullable(rig.texts().get(path)).map(Ids::of);
    return value.map(v -> by.cases().getOrDefault(v, by.otherwise())).orElse(by.unknown());
  }

  /** The ids of the items of a list, in the order of the profile. */
  public List<String> ids(String list) {
    Set<String> ids = new LinkedHashSet<>();
    rig.gear().stream().filter(g -> g.type().equals(list)).forEach(g -> ids.add(g.id()));
    rig.texts().keySet().stream()
        .filter(k -> k.startsWith(list + ".") && k.endsWith(".name"))
        .map(k -> k.substring(0, k.length() - ".name".length()))
        .filter(k -> k.lastIndexOf('.') == list.length())
        .forEach(ids::add);
    return List.copyOf(ids);
  }

  private Predicate<String> inside(String item) {
    return trait -> trait.startsWith(".") ? itemHas(item + trait) : traits.contains(trait);
  }

  private boolean itemHas(String path) {
    String parent = path.substring(0, path.lastIndexOf('.'));
    boolean value =
        Optional.ofNullable(rig.texts().get(parent))
            .map(Ids::of)
            .filter(Ids.last(path)::equals)
            .isPresent();
    boolean fact = rig.facts().containsKey(path) && rig.facts().get(path).known();
    return value || fact || rig.texts().containsKey(path) || rig.gear(path).isPresent();
  }

  private Optional<Step> step(Item.StepText s, String item, Counter counter) {
    boolean dropped =
        s.kit().filter(k -> traits.contains(k + ".none") || !traits.contains(k)).isPresent();
    if (dropped || !s.condition().holds(inside(item))) {
      return Optional.empty();
    }
    counter.number++;
    String id = counter.procedure + "." + s.id() + (item.isEmpty() ? "" : "." + Ids.last(item));
    events.put(id, s.does());
    String gear =
        s.at().map(a -> a.equals(".") ? item : a.startsWith(".") ? item + a : a).orElse("");
    subjects(counter.procedure, s, gear, item);
    String code = rig.codes().getOrDefault(gear, "");
    boolean unlisted = s.kit().filter(k -> traits.contains(k + ".unlisted")).isPresent();
    return Optional.of(
        new Step(
            id,
            counter.number,
            filler.fill(s.action(), item),
            filler.fill(s.see(), item),
            filler.fill(s.ifNot(), item),
            unlisted ? Words.of(wording.phrase("unlisted")) : Words.NONE,
            code,
            code.isEmpty() ? "" : gear,
            place(gear),
            reminders(s.cautions()),
            s.card()));
  }

  /** Kit has no code, so that its place alone would read as the place of the work. */
  private Words place(String gear) {
    if (gear.isEmpty()) {
      return Words.NONE;
    }
    List<Run> runs = new ArrayList<>(places.where(gear).runs());
    if (gear.startsWith("kit.")) {
      runs.add(0, Run.text(wording.phrase("kept") + " "));
    }
    return new Words(runs);
  }

  private void subjects(String procedure, Item.StepText s, String gear, String item) {
    Set<String> all = subjects.computeIfAbsent(procedure, p -> new LinkedHashSet<>());
    all.addAll(List.of(gear, item));
    List.of(s.action(), s.see(), s.ifNot()).forEach(t -> all.addAll(t.subjects(item)));
  }
}
