package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.figures.Feeds;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Reference;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Solar;

/**
 * What feeds what on the battery's volts: chargers, the bank and its disconnect, fuses, loads. What
 * the disconnect leaves live comes straight from the bank.
 */
public final class BatteryNet {
  private static final String BANK = "electric.batteries";
  private static final String DISCONNECT = "electric.disconnect";
  private static final String CONVERTER = "electric.converter";
  private static final String INVERTER = "electric.inverter";
  private static final int CHARGER = 0;
  private static final int STORE = 1;
  private static final int FUSE = 2;
  private static final int LOAD = 3;

  private final Rig rig;
  private final Electric electric;
  private final NetWords words;
  private final NetDraft draft;
  private final Map<String, String> names = new LinkedHashMap<>(); // of loads that are only words

  private BatteryNet(Rig rig, NetWords words) {
    this.rig = rig;
    this.electric = rig.electric();
    this.words = words;
    this.draft = new NetDraft(rig, words);
  }

  /** The net; empty if the rig has neither bank nor converter. */
  public static Optional<Schematic> of(Rig rig, NetWords words) {
    BatteryNet net = new BatteryNet(rig, words);
    if (rig.electric().batteries().isEmpty() && rig.electric().converter().isEmpty()) {
      return Optional.empty();
    }
    net.stores();
    net.chargers();
    net.loads();
    net.otherBanks();
    Map<String, String> values =
        Map.of(
            "chargers", String.valueOf(net.draft.next(CHARGER)),
            "loads", String.valueOf(net.draft.next(LOAD)));
    return Optional.of(net.draft)
        .filter(d -> !d.isEmpty())
        .map(d -> d.schematic(words.phrase("net-battery-alt", values)));
  }

  private void stores() {
    electric.batteries().ifPresent(b -> draft.gear(BANK, Shape.STORE, STORE, bank(b)));
    electric
        .disconnect()
        .filter(d -> draft.has(BANK))
        .ifPresent(
            d -> {
              Optional<String> road =
                  d.onTheRoad().map(s -> words.phrase("net-on-the-road-" + s.text()));
              draft.gear(DISCONNECT, Shape.SWITCH, STORE, Stream.of(road));
              draft.link(BANK, DISCONNECT, Line.DC);
            });
  }

  private Stream<Optional<String>> bank(BatteryBank bank) {
    return Stream.of(bank.type().map(t -> t.text()), batteries(bank));
  }

  /** How many batteries of what volts; the volts alone where their number is not known. */
  private Optional<String> batteries(BatteryBank bank) {
    if (!bank.inSeries().known() || !bank.strings().known()) {
      return words.phrase("net-each-volts", bank.voltage());
    }
    String count = String.valueOf(Math.round(bank.inSeries().value() * bank.strings().value()));
    return words
        .phrase("net-amount", bank.voltage())
        .map(volts -> words.phrase("net-batteries", Map.of("count", count, "each", volts)));
  }

  private void chargers() {
    electric.solar().ifPresent(s -> charger(s.gear().id(), Shape.SOURCE, solar(s)));
    electric
        .converter()
        .ifPresent(
            c -> {
              Optional<String> from = Optional.of(words.phrase("net-from-mains"));
              Optional<String> gives = words.phrase("net-amount", c.output());
              charger(CONVERTER, Shape.DEVICE, Stream.of(gives, from));
            });
    electric
        .alternatorCharging()
        .ifPresent(
            a -> {
              Optional<String> from = Optional.of(words.phrase("net-from-engine"));
              Optional<String> gives = words.phrase("net-amount", a.output());
              charger(a.gear().id(), Shape.DEVICE, Stream.of(gives, from));
            });
  }

  private Stream<Optional<String>> solar(Solar s) {
    Optional<String> each = words.phrase("net-amount", s.each());
    Optional<String> panels =
        each.filter(e -> s.panels().known())
            .map(
                e ->
                    words.phrase(
                        "net-panels",
                        Map.of("count", String.valueOf((int) s.panels().value()), "each", e)));
    return Stream.of(panels);
  }

  private void charger(String id, Shape shape, Stream<Optional<String>> lines) {
    draft.gear(id, shape, CHARGER, lines);
    if (draft.has(BANK)) {
      draft.link(id, BANK, Line.DC);
    }
  }

  // ---- from the bank to what it feeds

  private void loads() {
    Set<String> cut = ids(electric.disconnect().map(Electric.Disconnect::cuts));
    Set<String> live = ids(electric.disconnect().map(Electric.Disconnect::leaves));
    Set<String> all = new LinkedHashSet<>(cut);
    electric.fuses().forEach(f -> all.addAll(ids(Optional.of(f.feeds()))));
    all.addAll(Feeds.onBattery(rig));
    electric.inverter().ifPresent(i -> all.add(INVERTER));
    all.addAll(live);
    all.removeAll(otherBanked());
    all.remove(CONVERTER);
    Set<String> rest = new LinkedHashSet<>(all);
    rest.removeAll(cut);
    rest.removeAll(live);
    String feed = draft.has(BANK) ? BANK : CONVERTER;
    if (draft.has(DISCONNECT)) {
      feed(live, BANK, Optional.empty());
      feed(rest, BANK, Optional.of(words.phrase("net-cut-unknown")));
      feed(cut, DISCONNECT, Optional.empty());
    } else {
      feed(all, feed, Optional.empty());
    }
  }

  private Set<String> otherBanked() {
    Set<String> fed = new LinkedHashSet<>();
    electric.otherBanks().forEach(b -> fed.addAll(ids(Optional.of(b.feeds()))));
    return fed;
  }

  private Set<String> ids(Optional<List<Reference>> references) {
    Set<String> ids = new LinkedHashSet<>();
    references.stream().flatMap(List::stream).forEach(r -> ids.add(id(r)));
    return ids;
  }

  private String id(Reference reference) {
    return Feeds.meant(reference, rig)
        .orElseGet(
            () -> {
              String id = "words." + Ids.of(reference.text());
              names.put(id, NetText.sentence(reference.text()));
              return id;
            });
  }

  /** These loads from this box, those with a fuse of their own through that. */
  private void feed(Set<String> loads, String from, Optional<String> note) {
    List<String> left = new ArrayList<>(loads);
    for (Electric.Fuse fuse : electric.fuses()) {
      List<String> fused = left.stream().filter(ids(Optional.of(fuse.feeds()))::contains).toList();
      if (!fused.isEmpty()) {
        fuse(fuse, fused, from, note);
        left.removeAll(fused);
      }
    }
    left.forEach(id -> load(id, from, note));
  }

  private void fuse(Electric.Fuse fuse, List<String> loads, String from, Optional<String> note) {
    String id = fuse.id() + "." + Ids.last(from);
    int lane = Math.max(draft.next(FUSE), draft.next(LOAD));
    Optional<String> rating = words.phrase("net-amount", fuse.rating());
    draft.plain(id, fuse.name(), Shape.SWITCH, FUSE, lane, Stream.of(rating, fuse.place().words()));
    draft.link(from, id, Line.DC);
    loads.forEach(l -> load(l, id, note));
  }

  private void load(String id, String from, Optional<String> note) {
    int lane = draft.next(LOAD);
    if (names.containsKey(id)) {
      draft.plain(id, names.get(id), Shape.LOAD, LOAD, lane, Stream.of(note));
    } else if (id.equals(INVERTER)) {
      Optional<String> fuse = electric.inverter().flatMap(i -> words.phrase("net-fuse", i.fuse()));
      Optional<String> makes = Optional.of(words.phrase("net-makes-ac"));
      draft.gear(id, Shape.DEVICE, LOAD, Stream.of(fuse, makes, note));
    } else {
      draft.gear(id, Shape.LOAD, LOAD, Stream.of(note));
    }
    draft.link(from, id, Line.DC);
  }

  private void otherBanks() {
    for (Electric.OtherBank other : electric.otherBanks()) {
      String id = other.bank().gear().id();
      int lane = Math.max(draft.next(STORE), draft.next(LOAD));
      draft.gear(id, Shape.STORE, STORE, lane, bank(other.bank()));
      ids(Optional.of(other.feeds())).forEach(l -> load(l, id, Optional.empty()));
    }
  }
}
