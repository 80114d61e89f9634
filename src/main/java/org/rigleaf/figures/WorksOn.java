package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.WORD;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.rigleaf.figures.Value.Words;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Reference;
import org.rigleaf.rig.Rig;

/**
 * What works in which state of the rig: yes, no, or part. Derived from the supplies that a type of
 * gear needs and from what feeds them here. 'Part' is said of gear that does half its work: an
 * absorption refrigerator on 12 V only keeps what is cold; an air conditioner runs on this plug,
 * but no more on a hot afternoon.
 */
final class WorksOn {
  static final Entry WORKS =
      Entry.of(
              "works-on.<gear>.<state>",
              WORD,
              SECOND_DERIVATION,
              "the supplies its type needs, and what feeds them here")
          .rows(WorksOn::rows);

  static final List<Entry> ENTRIES = List.of(WORKS);

  private WorksOn() {}

  private static void rows(Rig rig, Rows rows) {
    Map<String, Device> once = new LinkedHashMap<>();
    Device.of(rig).forEach(d -> once.putIfAbsent(d.part(), d));
    for (Device device : once.values()) {
      String formula =
          device.ways().stream().map(Device.Way::formula).collect(Collectors.joining(", or "));
      for (State state : State.of(rig)) {
        rows.value(
            formula, in -> new Value.Word(works(device, state, in)), device.part(), state.id());
      }
    }
  }

  private static Words works(Device device, State state, Inputs in) {
    device.unknown().ifPresent(in::missing);
    Words best = Words.NO;
    for (Device.Way way : device.ways()) {
      Words word =
          way.needs().stream()
              .map(n -> has(n, device, state, in))
              .reduce(way.gives(), WorksOn::less);
      if (word == Words.YES) {
        return word;
      }
      best = word == Words.PART ? word : best;
    }
    return best;
  }

  private static Words less(Words a, Words b) {
    if (a == Words.NO || b == Words.NO) {
      return Words.NO;
    }
    return a == Words.PART || b == Words.PART ? Words.PART : Words.YES;
  }

  private static Words has(Device.Need need, Device device, State state, Inputs in) {
    return switch (need) {
      case PROPANE -> word(state.propane(in));
      case BATTERY -> word(state.battery(device.gear(), in));
      case ENGINE -> word(state.engine());
      case MAINS ->
          state
              .mains()
              .filter(m -> !m.inverter() || state.inverterOn(in))
              .map(m -> mains(device, m, in))
              .orElse(Words.NO);
    };
  }

  private static Words word(boolean yes) {
    return yes ? Words.YES : Words.NO;
  }

  private static Words mains(Device device, Source source, Inputs in) {
    if (source.inverter() && !inverterFeeds(device, source, in)) {
      return Words.NO;
    }
    if (device.load().isEmpty() || !device.load().get().mains()) {
      return Words.YES;
    }
    LoadItem load = device.load().get();
    if (!LoadTable.of(source, false, in).runs(load)) {
      return Words.NO;
    }
    return !load.cools() || LoadTable.of(source, true, in).runs(load) ? Words.YES : Words.PART;
  }

  private static boolean inverterFeeds(Device device, Source source, Inputs in) {
    List<Reference> feeds = source.inverterFeeds().toList();
    if (feeds.isEmpty()) {
      in.missing("electric.inverter.feeds");
    }
    return device.load().filter(source::feeds).isPresent()
        || feeds.stream().anyMatch(r -> means(r, device.gear(), source.rig()));
  }

  /** By name or id, or by words that say the same, one or many: 'galley outlets'. */
  private static boolean means(Reference reference, String gear, Rig rig) {
    String words = Ids.of(reference.text());
    return rig.resolve(reference).filter(gear::equals).isPresent()
        || words.equals(Ids.last(gear))
        || words.equals(Ids.last(gear) + "s");
  }
}
