package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.rig.Ids;

/** Makes the numbered steps of one rig from the items of the wording. */
final class Steps {
  private final Wording wording;
  private final Filler filler;
  private final Places places;
  private final RigTraits traits;
  private final Cautions cautions;
  private final Map<String, List<String>> events = new LinkedHashMap<>();
  private final Map<String, Set<String>> subjects = new LinkedHashMap<>(); // by procedure

  Steps(Wording wording, Filler filler, Places places, RigTraits traits, Cautions cautions) {
    this.wording = wording;
    this.filler = filler;
    this.places = places;
    this.traits = traits;
    this.cautions = cautions;
  }

  /** Numbers the steps of one procedure or fault, through all of its groups. */
  static final class Counter {
    private final String procedure;
    private int number;

    Counter(String procedure) {
      this.procedure = procedure;
    }
  }

  /** The events that the steps made so far complete, by step id, in the order of the steps. */
  Map<String, List<String>> events() {
    return events;
  }

  /** The things that the steps of a procedure speak of. */
  Set<String> subjects(String procedure) {
    return subjects.getOrDefault(procedure, Set.of());
  }

  List<Step> of(List<Item> items, Counter counter) {
    return of(items, "", counter);
  }

  private List<Step> of(List<Item> items, String item, Counter counter) {
    List<Step> steps = new ArrayList<>();
    for (Item i : items) {
      if (i instanceof Item.StepText s) {
        step(s, item, counter).ifPresent(steps::add);
      } else if (i instanceof Item.ByText by) {
        steps.addAll(of(block(by, item), item, counter));
      } else if (i instanceof Item.EachText each && traits.holds(each.condition(), item)) {
        traits.ids(each.list()).forEach(id -> steps.addAll(of(each.steps(), id, counter)));
      }
    }
    return steps;
  }

  private List<Item> block(Item.ByText by, String item) {
    String path = by.path().startsWith(".") ? item + by.path() : by.path();
    Optional<String> value = Optional.ofNullable(traits.rig().texts().get(path)).map(Ids::of);
    return value.map(v -> by.cases().getOrDefault(v, by.otherwise())).orElse(by.unknown());
  }

  private Optional<Step> step(Item.StepText s, String item, Counter counter) {
    boolean dropped = s.kit().filter(k -> traits.has(k + ".none") || !traits.has(k)).isPresent();
    if (dropped || !traits.holds(s.condition(), item)) {
      return Optional.empty();
    }
    counter.number++;
    String id = counter.procedure + "." + s.id() + (item.isEmpty() ? "" : "." + Ids.last(item));
    events.put(id, s.does());
    String gear =
        s.at().map(a -> a.equals(".") ? item : a.startsWith(".") ? item + a : a).orElse("");
    speaksOf(counter.procedure, s, gear, item);
    String code = traits.rig().codes().getOrDefault(gear, "");
    boolean unlisted = s.kit().filter(k -> traits.has(k + ".unlisted")).isPresent();
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
            cautions.reminders(s.cautions()),
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

  private void speaksOf(String procedure, Item.StepText s, String gear, String item) {
    Set<String> all = subjects.computeIfAbsent(procedure, p -> new LinkedHashSet<>());
    all.addAll(List.of(gear, item));
    List.of(s.action(), s.see(), s.ifNot()).forEach(t -> all.addAll(t.subjects(item)));
  }
}
