package org.rigleaf.figures;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;

/**
 * A post that the rig can plug into, straight or through one adapter aboard.
 *
 * @param post amperes of the post
 * @param adapter the adapter between, if one is needed
 * @param shore the rig's own inlet and cord
 */
record Plug(Fact post, Optional<Electric.Adapter> adapter, Electric.Shore shore) {

  /** The rig's own plug first, then its adapters; one plug a post size. */
  static List<Plug> of(Rig rig) {
    Map<String, Plug> plugs = new LinkedHashMap<>();
    rig.electric()
        .shore()
        .ifPresent(
            shore ->
                Stream.concat(
                        Stream.of(new Plug(shore.service(), Optional.empty(), shore)),
                        rig.electric().adapters().stream()
                            .filter(a -> fits(a, shore))
                            .map(a -> new Plug(a.fromPost(), Optional.of(a), shore)))
                    .filter(p -> p.post().known())
                    .forEach(p -> plugs.putIfAbsent(p.id(), p)));
    return List.copyOf(plugs.values());
  }

  private static boolean fits(Electric.Adapter adapter, Electric.Shore shore) {
    return !adapter.toRig().known()
        || !shore.service().known()
        || adapter.toRig().value() == shore.service().value();
  }

  /** The part of its figures' ids: the post's amperes. */
  String id() {
    double amps = post.value();
    String number = amps == Math.rint(amps) ? String.valueOf((long) amps) : String.valueOf(amps);
    return number.replace('.', '-');
  }

  /** Everything on the way from the post into the rig that carries the current. */
  List<Fact> path() {
    return Stream.concat(
            Stream.of(post, shore.service()),
            adapter.stream().flatMap(a -> Stream.of(a.toRig(), a.rated())))
        .filter(Fact::known)
        .toList();
  }

  /** Amperes a leg that the rig can draw here: the least on the way. */
  Fact amps() {
    return least(path());
  }

  /** The least of some known facts of one unit. */
  static Fact least(List<Fact> facts) {
    return facts.stream().min(Comparator.comparingDouble(Fact::value)).orElseThrow();
  }
}
