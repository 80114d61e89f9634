package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.figures.Feeds;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Generator;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Reference;
import org.rigleaf.rig.Rig;

/**
 * What feeds what on 120 V: supplies down the left, the panel, its breakers, what they feed. What
 * no breaker is said to feed hangs on a breaker that is not listed, beside the panel if there is
 * one.
 */
public final class MainsNet {
  private static final String INVERTER = "electric.inverter";
  private static final String PANEL = "electric.panel";
  private static final String UNLISTED = "unlisted";
  private static final int SUPPLY = 0;
  private static final int MAIN = 1;
  private static final int BREAKER = 2;
  private static final int LOAD = 3;

  private final Rig rig;
  private final Electric electric;
  private final NetWords words;
  private final NetDraft draft;

  private MainsNet(Rig rig, NetWords words) {
    this.rig = rig;
    this.electric = rig.electric();
    this.words = words;
    this.draft = new NetDraft(rig, words);
  }

  /** The net; empty if the rig has no 120 V. */
  public static Optional<Schematic> of(Rig rig, NetWords words) {
    MainsNet net = new MainsNet(rig, words);
    net.supplies();
    net.breakers();
    net.unlisted();
    net.inverter();
    Map<String, String> values =
        Map.of(
            "breakers", String.valueOf(net.draft.next(BREAKER)),
            "loads", String.valueOf(net.draft.next(LOAD)));
    return Optional.of(net.draft)
        .filter(d -> !d.isEmpty())
        .map(d -> d.schematic(words.phrase("net-mains-alt", values)));
  }

  // ---- from the post or the generator to the panel

  private void supplies() {
    List<String> chain = new ArrayList<>();
    Optional<Generator> generator = electric.generator();
    generator.filter(Generator::portable).ifPresent(g -> chain.add(generator(g)));
    electric.shore().ifPresent(s -> chain.add(shore(s)));
    electric.protector().ifPresent(p -> chain.add(protector(p)));
    electric.transfer().ifPresent(t -> chain.add(transfer(t)));
    panel(!chain.isEmpty() || generator.isPresent());
    for (int i = 1; i < chain.size(); i++) {
      draft.link(chain.get(i - 1), chain.get(i), Line.AC);
    }
    chain.stream().reduce((a, b) -> b).ifPresent(last -> draft.link(last, PANEL, Line.AC));
    generator.filter(g -> !g.portable()).ifPresent(this::builtIn);
  }

  private void builtIn(Generator generator) {
    String id = generator(generator);
    draft.link(id, electric.transfer().map(t -> t.gear().id()).orElse(PANEL), Line.AC);
  }

  private String generator(Generator g) {
    Optional<String> cord = Optional.of("net-by-cord").filter(p -> g.portable()).map(words::phrase);
    Stream<Optional<String>> lines = Stream.of(words.phrase("net-amount", g.rated()), cord);
    return supply(g.gear().id(), Shape.SOURCE, lines);
  }

  private String shore(Electric.Shore s) {
    return supply(s.gear().id(), Shape.SOURCE, Stream.of(words.phrase("net-amount", s.service())));
  }

  private String protector(Electric.Protector p) {
    return supply(p.gear().id(), Shape.DEVICE, Stream.of(words.phrase("net-waits", p.delay())));
  }

  private String transfer(Electric.Transfer t) {
    Optional<String> kind =
        t.kind().map(k -> words.phrase("net-transfer-" + k.text().replace(' ', '-')));
    return supply(t.gear().id(), Shape.SWITCH, Stream.of(kind));
  }

  private String supply(String id, Shape shape, Stream<Optional<String>> lines) {
    draft.gear(id, shape, SUPPLY, lines);
    return id;
  }

  private void panel(boolean fed) {
    Optional<String> main = main().flatMap(b -> words.phrase("net-main", b.rating()));
    Optional<String> legs =
        electric
            .shore()
            .filter(s -> s.service().known() && s.service().value() == 50)
            .map(s -> words.phrase("net-legs"));
    if (electric.panel().isPresent()) {
      draft.gear(PANEL, Shape.SWITCH, MAIN, 0, Stream.of(main, legs));
    } else if (fed) {
      String name = words.phrase("net-panel");
      draft.plain(PANEL, name, Shape.SWITCH, MAIN, 0, Stream.of(main, legs));
    }
  }

  private Optional<Electric.Breaker> main() {
    return electric.breakers().stream().filter(b -> b.name().equalsIgnoreCase("main")).findFirst();
  }

  // ---- from the panel to what it feeds

  private void breakers() {
    if (!draft.has(PANEL)) {
      return;
    }
    main().ifPresent(m -> m.feeds().forEach(f -> draft.link(PANEL, load(f), Line.AC)));
    electric.breakers().stream()
        .filter(b -> !Optional.of(b).equals(main()) && !feedsInverter(b))
        .forEach(this::breaker);
  }

  private boolean feedsInverter(Electric.Breaker breaker) {
    return breaker.feeds().stream()
        .anyMatch(f -> Feeds.meant(f, rig).filter(INVERTER::equals).isPresent());
  }

  private void breaker(Electric.Breaker b) {
    int lane = Math.max(draft.next(BREAKER), draft.next(LOAD));
    Optional<String> rating = words.phrase("net-amount", b.rating());
    draft.plain(b.id(), b.name(), Shape.SWITCH, BREAKER, lane, Stream.of(rating));
    draft.link(PANEL, b.id(), Line.AC);
    b.feeds().stream()
        .filter(f -> Feeds.meant(f, rig).filter(INVERTER::equals).isEmpty())
        .forEach(f -> draft.link(b.id(), load(f), Line.AC));
  }

  private void unlisted() {
    List<String> fed =
        electric.inverter().stream()
            .flatMap(i -> i.feeds().stream())
            .flatMap(f -> Feeds.meant(f, rig).stream())
            .toList();
    List<String> left = new ArrayList<>(Feeds.onMains(rig));
    electric.converter().ifPresent(c -> left.add(c.gear().id()));
    left.removeIf(id -> fed.contains(id) || draft.has(id));
    boolean supplied = draft.has(PANEL) || electric.inverter().isPresent();
    if (left.isEmpty() || !supplied) {
      return;
    }
    int lane = Math.max(draft.next(BREAKER), draft.next(LOAD));
    draft.plain(
        UNLISTED, words.phrase("net-no-breaker"), Shape.SWITCH, BREAKER, lane, Stream.empty());
    if (draft.has(PANEL)) {
      draft.link(PANEL, UNLISTED, Line.AC);
    }
    left.forEach(id -> draft.link(UNLISTED, load(id), Line.AC));
  }

  private void inverter() {
    electric
        .inverter()
        .ifPresent(
            i -> {
              electric.breakers().stream().filter(this::feedsInverter).forEach(this::breaker);
              int lane = Math.max(draft.next(BREAKER), draft.next(LOAD));
              Stream<Optional<String>> lines =
                  Stream.of(
                      words.phrase("net-amount", i.output()),
                      Optional.of(words.phrase("net-from-battery")));
              draft.gear(INVERTER, Shape.DEVICE, BREAKER, lane, lines);
              electric.breakers().stream()
                  .filter(this::feedsInverter)
                  .forEach(b -> draft.link(b.id(), INVERTER, Line.AC));
              i.feeds().forEach(f -> draft.link(INVERTER, load(f), Line.AC));
            });
  }

  private String load(Reference reference) {
    return Feeds.meant(reference, rig)
        .filter(id -> !id.startsWith("electric.breakers."))
        .map(this::load)
        .orElseGet(
            () -> {
              String id = "words." + Ids.of(reference.text());
              String name = NetText.sentence(reference.text());
              draft.plain(id, name, Shape.LOAD, LOAD, draft.next(LOAD), Stream.empty());
              return id;
            });
  }

  private String load(String id) {
    boolean converter = id.equals("electric.converter");
    Optional<String> makes = Optional.of("net-makes-dc").filter(p -> converter).map(words::phrase);
    draft.gear(
        id, converter ? Shape.DEVICE : Shape.LOAD, LOAD, Stream.of(makes, shed(id), protects(id)));
    return id;
  }

  private Optional<String> shed(String id) {
    return electric.loadShedding().stream()
        .flatMap(l -> l.sheds().stream())
        .filter(r -> Feeds.meant(r, rig).filter(id::equals).isPresent())
        .findFirst()
        .map(r -> words.phrase("net-shed"));
  }

  private Optional<String> protects(String id) {
    return electric.outlets().stream()
        .filter(o -> o.gear().id().equals(id) && !o.protects().isEmpty())
        .findFirst()
        .map(o -> String.join(", ", o.protects().stream().map(Reference::text).toList()))
        .map(what -> words.phrase("net-guards", Map.of("what", what)));
  }
}
