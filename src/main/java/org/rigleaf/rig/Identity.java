package org.rigleaf.rig;

import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.FOOT;

import java.util.List;

/**
 * What the rig is and how big. Distances of places run back from the coupler or king pin of a
 * towable, from the front bumper of a motorhome.
 *
 * <pre>
 * rig:
 *   name: Sedge
 *   kind: travel trailer
 *   length: 24 ft 8 in
 *   body: {starts: 3 ft 9 in, length: 20 ft 11 in}
 * </pre>
 */
public record Identity(
    String name,
    RigKind kind,
    Fact year,
    Fact length,
    Fact bodyStarts,
    Fact bodyLength,
    Fact width,
    Fact height,
    Fact insideHeight,
    List<Fact> axles,
    Fact wheelbase,
    Fact jack,
    Fact track,
    Fact belted,
    Place seats) {

  static Identity read(Section s) {
    s.photo();
    Fact[] body =
        s.part("body", b -> new Fact[] {b.notNegative("starts", FOOT), b.positive("length", FOOT)});
    Seats seats = s.part("seats", Seats::read);
    return new Identity(
        s.required("name"),
        s.requiredChoice("kind", RigKind.class),
        s.between("year", COUNT, 1930, 2100),
        s.between("length", FOOT, 5, 60),
        body[0],
        body[1],
        s.between("width", FOOT, 4, 12),
        s.between("height", FOOT, 3, 15),
        s.between("inside-height", FOOT, 3, 12),
        s.quantities("axles", FOOT),
        s.positive("wheelbase", FOOT),
        s.notNegative("jack", FOOT),
        s.between("track", FOOT, 3, 10),
        seats.belted(),
        seats.place());
  }

  private record Seats(Fact belted, Place place) {
    static Seats read(Section s) {
      return new Seats(s.between("belted", COUNT, 1, 20), s.place());
    }
  }
}
