package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.POUND;

import java.util.List;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Road;

/** What axles and tires may carry beyond the load of their axle. */
final class Axles {
  static final Entry MARGIN =
      Entry.of("axle.<n>.margin", POUND, SECOND_DERIVATION, "the axle's rating less its load")
          .rows((rig, rows) -> Balance.axles(rig).forEach(n -> margin(rig, n, rows)));

  static final Entry TIRES =
      Entry.of(
              "tire.<n>.margin",
              POUND,
              SECOND_DERIVATION,
              "what the tires of an axle may carry (49 CFR 571.110 S4.2.2.1) less its load")
          .rows(Axles::tires);

  static final List<Entry> ENTRIES = List.of(MARGIN, TIRES);

  private Axles() {}

  private static void margin(Rig rig, String n, Rows rows) {
    rows.number(
        "{rating} − {load}",
        in -> Weights.marginPounds(in.of("rating", rating(rig, n)), in.of("load", Balance.LOAD, n)),
        n);
  }

  /** One rating told for several axles is that of each. */
  private static Fact rating(Rig rig, String n) {
    if (rig.identity().kind().motorized()) {
      return n.equals("1")
          ? Weights.of(rig, "front.rating", w -> w.front().rating())
          : Weights.of(rig, "rear.rating", w -> w.rear().rating());
    }
    List<Fact> told = rig.road().weights().map(Road.Weights::axleRatings).orElse(List.of());
    int index = told.size() == 1 ? 0 : Integer.parseInt(n) - 1;
    return index < told.size() ? told.get(index) : Fact.unknown("road.weights.axle-ratings", POUND);
  }

  private static void tires(Rig rig, Rows rows) {
    List<String> axles = Balance.axles(rig);
    for (Tires.AxleTires axle : Tires.byAxle(rig)) {
      if (axles.contains(axle.part())) {
        String share = axle.axles() == 1 ? "" : " ÷ " + axle.axles();
        rows.number(
            "{count}" + share + " × {carries} − {load}", in -> tires(axle, in), axle.part());
      }
    }
  }

  private static double tires(Tires.AxleTires axle, Inputs in) {
    double carries =
        in.of("count", axle.tires().count())
            / axle.axles()
            * in.of("carries", axle.tires().carries());
    return Weights.marginPounds(carries, in.of("load", Balance.LOAD, axle.part()));
  }
}
