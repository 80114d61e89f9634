package org.rigleaf.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Reference;
import org.rigleaf.rig.Rig;

/**
 * A source of 120 V: a plug, the generator or the inverter.
 *
 * @param id the part of its figures' ids: amperes of the post, 'generator' or 'inverter'
 * @param plug the plug, if it is one
 * @param rig the rig
 */
record Source(String id, Optional<Plug> plug, Rig rig) {
  static final String GENERATOR = "generator";
  static final String INVERTER = "inverter";

  /** All sources of a rig, plugs first. */
  static List<Source> of(Rig rig) {
    List<Source> all = new ArrayList<>();
    Plug.of(rig).forEach(p -> all.add(new Source(p.id(), Optional.of(p), rig)));
    rig.electric()
        .generator()
        .ifPresent(g -> all.add(new Source(GENERATOR, Optional.empty(), rig)));
    inverter(rig).ifPresent(all::add);
    return all;
  }

  /** The inverter, if the rig has one. */
  static Optional<Source> inverter(Rig rig) {
    return rig.electric().inverter().map(i -> new Source(INVERTER, Optional.empty(), rig));
  }

  /** True for the inverter, which lives off the bank. */
  boolean inverter() {
    return id.equals(INVERTER);
  }

  /** True if it reaches this load: the inverter only what it feeds, itself or by a breaker. */
  boolean feeds(LoadItem item) {
    return !inverter() || inverterFeeds().anyMatch(r -> item.meantBy(r, rig));
  }

  /** What the inverter feeds, with what the breakers feed that it feeds. */
  Stream<Reference> inverterFeeds() {
    List<Reference> direct =
        rig.electric().inverter().map(Electric.Inverter::feeds).orElse(List.of());
    Stream<Reference> through =
        rig.electric().breakers().stream()
            .filter(
                b ->
                    direct.stream()
                        .anyMatch(r -> rig.resolve(r).filter(b.id()::equals).isPresent()))
            .flatMap(b -> b.feeds().stream());
    return Stream.concat(direct.stream(), through);
  }

  /** Its limits; the one that binds is named 'limit' among the inputs. */
  LoadSearch.Limits limits(Inputs in) {
    Optional<Fact> main = main(rig);
    if (plug.isPresent()) {
      int legs = Shore.legs(plug.get().amps().value());
      double leg = Shore.VOLTS * in.of("limit", carriers(main));
      return new LoadSearch.Limits(legs, leg, legs * leg, branches(in));
    }
    if (inverter()) {
      Fact output = rig.electric().inverter().orElseThrow().output();
      double watts = in.of("limit", output);
      return new LoadSearch.Limits(1, watts, watts, branches(in));
    }
    return generator(main, in);
  }

  private LoadSearch.Limits generator(Optional<Fact> main, Inputs in) {
    double watts = in.of("limit", Generators.STEADY);
    int legs = rigLegs();
    double leg = main.map(m -> Shore.VOLTS * in.of("main", m)).orElse(watts);
    return new LoadSearch.Limits(legs, leg, Math.min(watts, legs * leg), branches(in));
  }

  private int rigLegs() {
    return rig.electric().shore().map(s -> Shore.legs(s.service().value())).orElse(1);
  }

  /** The limit in symbols. */
  String limitFormula() {
    if (plug.isPresent()) {
      return (Shore.legs(plug.get().amps().value()) == 2 ? "2 × " : "") + "120 V × {limit}";
    }
    boolean main = id.equals(GENERATOR) && main(rig).isPresent();
    return main ? "min({limit}, " + (rigLegs() == 2 ? "2 × " : "") + "120 V × {main})" : "{limit}";
  }

  private Fact carriers(Optional<Fact> main) {
    Plug p = plug.orElseThrow();
    Stream<Fact> cords =
        Stream.of(p.shore().cord(), p.shore().extension())
            .flatMap(Optional::stream)
            .map(Electric.Cord::rated);
    return Plug.least(
        Stream.of(p.path().stream(), cords, main.stream())
            .flatMap(s -> s)
            .filter(Fact::known)
            .toList());
  }

  private static boolean isMain(Electric.Breaker breaker) {
    return breaker.name().equalsIgnoreCase("main");
  }

  private static Optional<Fact> main(Rig rig) {
    return rig.electric().breakers().stream()
        .filter(Source::isMain)
        .map(Electric.Breaker::rating)
        .filter(Fact::known)
        .findFirst();
  }

  /** Watts of the branch breakers that feed a load, by their ids. */
  private Map<String, Double> branches(Inputs in) {
    Map<String, Double> limits = new LinkedHashMap<>();
    rig.electric().breakers().stream()
        .filter(b -> b.rating().known() && !isMain(b))
        .filter(b -> Loads.of(rig).stream().anyMatch(i -> feeds(b, i)))
        .forEach(b -> limits.put(b.id(), Shore.VOLTS * in.of(name(b.id()), b.rating())));
    return limits;
  }

  /** The name of a branch breaker among the inputs. */
  static String name(String breaker) {
    return "breaker-" + Ids.last(breaker);
  }

  /** Ids of the branch breakers that a load hangs on. */
  List<String> breakers(LoadItem item) {
    return rig.electric().breakers().stream()
        .filter(b -> feeds(b, item))
        .map(Electric.Breaker::id)
        .toList();
  }

  private boolean feeds(Electric.Breaker breaker, LoadItem item) {
    return breaker.feeds().stream().anyMatch(r -> item.meantBy(r, rig));
  }
}
