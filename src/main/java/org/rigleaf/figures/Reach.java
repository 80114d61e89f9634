package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.source.Unit.FOOT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Kit;
import org.rigleaf.rig.Rig;

/** How far cord and hoses reach along the ground from where they leave the rig. */
final class Reach {
  private static final String SOURCE =
      "the lengths aboard, less the height from which they hang; the whole length where the height"
          + " is not known";

  static final Entry CORD = entry("reach.cord", Reach::cord);
  static final Entry WATER = entry("reach.water", Reach::drinkingHose);
  static final Entry SEWER = entry("reach.sewer", Reach::sewerHose);

  static final List<Entry> ENTRIES = List.of(CORD, WATER, SEWER);

  private Reach() {}

  /**
   * What is laid out.
   *
   * @param lengths of its pieces
   * @param up height of the inlet or outlet, if known
   */
  private record Line(List<Fact> lengths, Optional<Fact> up) {}

  private static Entry entry(String id, Function<Rig, Optional<Line>> line) {
    return Entry.of(id, FOOT, HOUSE_ASSUMPTION, SOURCE)
        .rows((rig, rows) -> line.apply(rig).ifPresent(l -> reach(l, rows)));
  }

  private static void reach(Line line, Rows rows) {
    String sum = line.lengths().size() == 1 ? "{length-1}" : "{length-1} + {length-2}";
    rows.number(
        line.up().isPresent() ? "max(0, " + sum + " − {height})" : sum,
        in -> {
          double feet = 0;
          for (int i = 0; i < line.lengths().size(); i++) {
            feet += in.of("length-" + (i + 1), line.lengths().get(i));
          }
          return reachFeet(feet, line.up().map(up -> in.of("height", up)).orElse(0.0));
        });
  }

  /** Cord and extension; a cord that nobody speaks of is there, an extension is not. */
  private static Optional<Line> cord(Rig rig) {
    Optional<Electric.Shore> shore = rig.electric().shore();
    if (shore.isEmpty()) {
      return Optional.empty();
    }
    List<Fact> lengths = new ArrayList<>();
    if (!rig.has("electric.shore.cord.none")) {
      lengths.add(
          shore.get().cord().map(Electric.Cord::length).orElse(unknown("electric.shore.cord")));
    }
    shore.get().extension().map(Electric.Cord::length).ifPresent(lengths::add);
    return lengths.isEmpty()
        ? Optional.empty()
        : Optional.of(new Line(lengths, up(rig, shore.map(Electric.Shore::gear))));
  }

  private static Optional<Line> drinkingHose(Rig rig) {
    return hose(rig, "kit.drinking-hose", rig.kit().drinkingHose(), rig.water().cityInlet())
        .map(length -> new Line(List.of(length), up(rig, rig.water().cityInlet())));
  }

  private static Optional<Line> sewerHose(Rig rig) {
    return sewerHoseLength(rig)
        .map(length -> new Line(List.of(length), up(rig, rig.waste().outlet())));
  }

  /** The length of the sewer hose, known or not; empty where there is no hose. */
  static Optional<Fact> sewerHoseLength(Rig rig) {
    return hose(rig, "kit.sewer-hose", rig.kit().sewerHose(), rig.waste().outlet());
  }

  /** A hose that nobody speaks of is there if the rig has the fitting for it. */
  private static Optional<Fact> hose(
      Rig rig, String path, Optional<Kit.Piece> hose, Optional<Gear> fitting) {
    return hose.map(Kit.Piece::length)
        .or(() -> fitting.filter(f -> !rig.has(path + ".none")).map(f -> unknown(path)));
  }

  private static Fact unknown(String path) {
    return Fact.unknown(path + ".length", FOOT);
  }

  private static Optional<Fact> up(Rig rig, Optional<Gear> gear) {
    return gear.map(g -> rig.facts().get(g.id() + ".at.up"));
  }

  /**
   * Feet along the ground that a cord or hose reaches, never below nothing.
   *
   * @param heightFeet from which it hangs straight down
   */
  static double reachFeet(double lengthFeet, double heightFeet) {
    return Math.max(0, lengthFeet - heightFeet);
  }
}
