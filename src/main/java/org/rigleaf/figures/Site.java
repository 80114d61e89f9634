package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.FOOT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.rigleaf.rig.Body;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;
import org.rigleaf.rig.Road;
import org.rigleaf.rig.Spot;
import org.rigleaf.rig.Stay;

/** The room a rig takes up on its site. */
final class Site {
  static final Entry LENGTH =
      Entry.of(
              "site.length",
              FOOT,
              SECOND_DERIVATION,
              "length and what opens at front and rear, such as beds; of several things at one end"
                  + " the deepest, and at the front what goes past the coupler. Absent for a camper,"
                  + " whose truck counts too")
          .rows(
              (rig, rows) -> {
                if (rig.identity().kind() != RigKind.TRUCK_CAMPER) {
                  room(rows, rig.identity().length(), ends(rig), List.of());
                }
              });

  static final Entry HITCHED =
      Entry.of(
              "site.length.hitched",
              FOOT,
              SECOND_DERIVATION,
              "both lengths end to end, closed; a ball mount or tow bar adds some inches, a"
                  + " fifth wheel over its truck's bed takes some feet off")
          .rows(
              (rig, rows) ->
                  other(rig)
                      .ifPresent(
                          o ->
                              rows.number(
                                  "{length} + {other}",
                                  in ->
                                      in.of("length", rig.identity().length())
                                          + in.of("other", o))));

  static final Entry WIDTH =
      Entry.of(
              "site.width",
              FOOT,
              SECOND_DERIVATION,
              "width, slides and awnings out; of several things on one side the deepest")
          .rows((rig, rows) -> room(rows, rig.identity().width(), sides(rig), slidesAnywhere(rig)));

  static final List<Entry> ENTRIES = List.of(LENGTH, HITCHED, WIDTH);

  private Site() {}

  /**
   * Something that opens outward at a wall, and how far.
   *
   * @param over what it opens over before it counts: the tongue of a trailer, at the front
   */
  private record Part(String id, Optional<Face> face, Fact out, Optional<Fact> over) {
    Part(String id, Optional<Face> face, Fact out) {
      this(id, face, out, Optional.empty());
    }

    boolean on(Face wall) {
      return face.filter(wall::equals).isPresent();
    }

    double feet(Inputs in) {
      double feet = in.of(id, out);
      return over.isPresent() ? Math.max(0, feet - in.of("starts", over.get())) : feet;
    }

    String formula() {
      String feet = "{" + id + "}";
      return over.isPresent() ? "max(0, " + feet + " − {starts})" : feet;
    }
  }

  /** The body's own size, and at each wall the deepest of what opens there. */
  private static void room(Rows rows, Fact body, List<List<Part>> walls, List<String> unknown) {
    String formula =
        walls.stream().map(w -> " + " + deepest(w)).collect(Collectors.joining("", "{body}", ""));
    rows.number(
        formula,
        in -> {
          unknown.forEach(in::missing);
          return in.of("body", body) + walls.stream().mapToDouble(w -> deepestFeet(w, in)).sum();
        });
  }

  private static String deepest(List<Part> wall) {
    String parts = wall.stream().map(Part::formula).collect(Collectors.joining(", "));
    return wall.size() == 1 ? parts : "max(" + parts + ")";
  }

  private static double deepestFeet(List<Part> wall, Inputs in) {
    return wall.stream().mapToDouble(p -> p.feet(in)).max().orElseThrow();
  }

  /** What opens at front and rear; a bed of which nobody says the end has an end of its own. */
  private static List<List<Part>> ends(Rig rig) {
    List<List<Part>> ends = walls(parts(rig), Face.FRONT, Face.REAR);
    beds(rig).stream().filter(b -> b.face().isEmpty()).map(List::of).forEach(ends::add);
    return ends;
  }

  private static List<Part> beds(Rig rig) {
    return rig.body().bedEnds().stream()
        .map(b -> new Part(b.gear().id(), wall(b.gear()), b.reach(), tongue(rig, wall(b.gear()))))
        .toList();
  }

  private static Optional<Fact> tongue(Rig rig, Optional<Face> wall) {
    Fact starts = rig.identity().bodyStarts();
    return wall.filter(Face.FRONT::equals).map(f -> starts).filter(Fact::known);
  }

  private static List<List<Part>> sides(Rig rig) {
    return walls(parts(rig), Face.STREET, Face.CURB);
  }

  private static List<List<Part>> walls(List<Part> parts, Face... faces) {
    List<List<Part>> walls = new ArrayList<>();
    for (Face face : faces) {
      List<Part> there = parts.stream().filter(p -> p.on(face)).toList();
      if (!there.isEmpty()) {
        walls.add(there);
      }
    }
    return walls;
  }

  /** Awnings are over the door, at the curb, unless their place says otherwise. */
  private static List<Part> parts(Rig rig) {
    Body body = rig.body();
    List<Part> parts = new ArrayList<>(beds(rig));
    body.slides()
        .forEach(
            s ->
                parts.add(
                    new Part(
                        s.gear().id(), wall(s.gear()), s.depth(), tongue(rig, wall(s.gear())))));
    for (Body.Awning awning : body.awnings()) {
      Face face = wall(awning.gear()).orElse(Face.CURB);
      parts.add(new Part(awning.gear().id(), Optional.of(face), awning.reach()));
    }
    return parts;
  }

  /** The places that are missing: a slide may be on any wall. */
  private static List<String> slidesAnywhere(Rig rig) {
    return rig.body().slides().stream()
        .map(Body.Slide::gear)
        .filter(g -> wall(g).isEmpty())
        .map(g -> g.id() + ".at")
        .toList();
  }

  private static Optional<Face> wall(Gear gear) {
    return gear.place()
        .spot()
        .map(Spot::face)
        .filter(f -> f == Face.FRONT || f == Face.STREET || f == Face.REAR || f == Face.CURB);
  }

  /** The length of what stands before a trailer or behind a motorhome; of this trip, if said. */
  private static Optional<Fact> other(Rig rig) {
    if (rig.identity().kind().motorized()) {
      return rig.road().towed().map(Road.Towed::length);
    }
    return rig.stay()
        .flatMap(Stay::towVehicle)
        .or(rig.road()::towVehicle)
        .map(Road.TowVehicle::length)
        .filter(f -> rig.identity().kind().towable());
  }
}
