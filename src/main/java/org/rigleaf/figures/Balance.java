package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.PERCENT_SHARE;
import static org.rigleaf.source.Unit.POUND;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Log;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Road;

/**
 * How the weight of a rig lies on hitch and axles: a beam on two supports. A trailer's are the
 * coupler and the middle of its axles, a motorhome's its two axles. A scale overrules the beam.
 */
final class Balance {
  private static final String SOURCE =
      "the scale; else the unloaded weight and the moments of what is aboard; " + Aboard.TANKS;

  static final Entry HITCH =
      Entry.of("hitch.weight", POUND, SECOND_DERIVATION, SOURCE).rows(Balance::hitch);

  static final Entry LOAD =
      Entry.of(
              "axle.<n>.load",
              POUND,
              SECOND_DERIVATION,
              SOURCE + "; axles of a trailer share equally")
          .rows(Balance::loads);

  static final Entry SHARE =
      Entry.of(
              "hitch.share",
              PERCENT_SHARE,
              SECOND_DERIVATION,
              "of the weight as it travels, axles and hitch together")
          .rows(Balance::share);

  static final List<Entry> ENTRIES = List.of(HITCH, SHARE, LOAD);

  private Balance() {}

  /** Axles by number, as ids hold them; one if nobody says how many, none on a truck camper. */
  static List<String> axles(Rig rig) {
    int count = rig.identity().kind().motorized() ? 2 : towedAxles(rig);
    return IntStream.rangeClosed(1, count).mapToObj(Integer::toString).toList();
  }

  private static int towedAxles(Rig rig) {
    int told = Math.max(rig.identity().axles().size(), scale(rig).size());
    return rig.identity().kind().towable() ? Math.max(1, told) : 0;
  }

  /** What the axles weigh on a scale: none, all together, or each from the front. */
  private static List<Fact> scale(Rig rig) {
    return rig.log().weighed().map(Log.Weighed::axles).orElse(List.of());
  }

  private static void hitch(Rig rig, Rows rows) {
    if (!rig.identity().kind().towable()) {
      return;
    }
    Optional<Fact> scale = rig.log().weighed().map(Log.Weighed::hitch).filter(Fact::known);
    if (scale.isPresent()) {
      rows.number("{scale}", in -> in.of("scale", scale.get()));
    } else {
      Beam beam = trailer(rig);
      Fact unloaded = Weights.of(rig, "hitch-unloaded", Road.Weights::hitchUnloaded);
      rows.number(
          "{hitch-unloaded}" + beam.frontFormula(),
          in -> in.of("hitch-unloaded", unloaded) + beam.load(in).frontPounds());
    }
  }

  private static void loads(Rig rig, Rows rows) {
    boolean motorized = rig.identity().kind().motorized();
    boolean each = scale(rig).size() > 1;
    for (String n : axles(rig)) {
      if (each && (!motorized || scale(rig).size() == axles(rig).size())) {
        rows.number("{scale}", in -> in.of("scale", reading(rig, n)), n);
      } else if (motorized) {
        motorAxle(rig, n, rows);
      } else {
        towedAxle(rig, n, rows);
      }
    }
  }

  private static Fact reading(Rig rig, String n) {
    int index = Integer.parseInt(n) - 1;
    return index < scale(rig).size() ? scale(rig).get(index) : Fact.unknown("weighed.axles", POUND);
  }

  private static void towedAxle(Rig rig, String n, Rows rows) {
    int count = axles(rig).size();
    rows.number(
        allAxlesFormula(rig) + (count == 1 ? "" : " ÷ " + count),
        in -> {
          if (rig.identity().axles().isEmpty()) {
            in.missing("rig.axles");
          }
          return allAxles(rig, in) / count;
        },
        n);
  }

  private static String allAxlesFormula(Rig rig) {
    String aboard =
        Aboard.all(rig).stream().map(i -> " + " + i.formula()).collect(Collectors.joining());
    return scale(rig).isEmpty()
        ? "(" + Weights.unloadedFormula(rig) + aboard + " − {hitch})"
        : "{scale}";
  }

  private static double allAxles(Rig rig, Inputs in) {
    return scale(rig).isEmpty()
        ? Weights.unloaded(rig, in) + Aboard.pounds(Aboard.all(rig), in) - in.of("hitch", HITCH)
        : in.of("scale", scale(rig).get(0));
  }

  private static void motorAxle(Rig rig, String n, Rows rows) {
    Beam beam = motorhome(rig);
    boolean front = n.equals("1");
    rows.number(
        front ? "{front-unloaded}" + beam.frontFormula() : "{rear-unloaded}" + beam.rearFormula(),
        in -> {
          Beam.Load load = beam.load(in);
          return front
              ? in.of("front-unloaded", Weights.front(rig)) + load.frontPounds()
              : in.of("rear-unloaded", Weights.rear(rig)) + load.rearPounds();
        },
        n);
  }

  /** A trailer on its coupler and on the middle of its axles. */
  private static Beam trailer(Rig rig) {
    return new Beam(
        Aboard.all(rig),
        "",
        in -> 0,
        "(" + Ground.middleFormula(rig) + ")",
        in -> Ground.middleFeet(rig, in));
  }

  /** A motorhome on its two axles; without a wheelbase their places give it, front to rear. */
  private static Beam motorhome(Rig rig) {
    List<Fact> axles = rig.identity().axles();
    Fact wheelbase = rig.identity().wheelbase();
    boolean byPlaces =
        !wheelbase.known() && axles.size() > 1 && axles.get(1).value() > axles.get(0).value();
    return new Beam(
        Aboard.all(rig),
        "{axle-1}",
        in -> Ground.axleFeet(rig, 1, in),
        byPlaces ? "({axle-2} − {axle-1})" : "{wheelbase}",
        in ->
            byPlaces
                ? Ground.axleFeet(rig, 2, in) - Ground.axleFeet(rig, 1, in)
                : in.of("wheelbase", wheelbase));
  }

  private static void share(Rig rig, Rows rows) {
    if (rig.identity().kind().towable()) {
      rows.number(
          "100 × {hitch} ÷ (" + axlesFormula(rig) + " + {hitch})",
          in -> sharePercent(in.of("hitch", HITCH), axlePounds(rig, in)));
    }
  }

  /** The working of {@link #axlePounds}. */
  static String axlesFormula(Rig rig) {
    return Lp.braces(axles(rig).stream().map(n -> "load-" + n).toList(), " + ");
  }

  /** Pounds on all axles together. */
  static double axlePounds(Rig rig, Inputs in) {
    return axles(rig).stream().mapToDouble(n -> in.of("load-" + n, LOAD, n)).sum();
  }

  /** Per cent of a trailer's weight that rests on the hitch. */
  static double sharePercent(double hitchPounds, double axlesPounds) {
    return 100 * hitchPounds / (hitchPounds + axlesPounds);
  }
}
