package org.rigleaf.guidance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Place;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;
import org.rigleaf.rig.Walk;

/** The stops of the walk round one rig: what saves a life first, then in walking order. */
public final class Stops {
  private final Rig rig;
  private final Wording wording;
  private final Guide guide;

  private Stops(Rig rig, Wording wording, Guide guide) {
    this.rig = rig;
    this.wording = wording;
    this.guide = guide;
  }

  /** The stops in the order of the walk. */
  public static List<Stop> of(Rig rig, Wording wording, Guide guide) {
    return new Stops(rig, wording, guide).all();
  }

  /** The same stops for rain: first what is inside, then what is outside. */
  public static List<Stop> inRain(List<Stop> stops) {
    return stops.stream().sorted(Comparator.comparing(s -> !s.inside())).toList();
  }

  private List<Stop> all() {
    List<StopText> here = wording.stops.values().stream().filter(this::applies).toList();
    Stream<StopText> first = here.stream().filter(StopText::first);
    Stream<StopText> walk =
        here.stream().filter(s -> !s.first()).sorted(Comparator.comparingDouble(this::step));
    List<StopText> ordered = Stream.concat(first, walk).toList();
    return Stream.iterate(1, n -> n + 1)
        .limit(ordered.size())
        .map(n -> stop(ordered.get(n - 1), n))
        .toList();
  }

  private boolean applies(StopText text) {
    boolean kit = text.kit().isEmpty() || text.kit().stream().anyMatch(guide::has);
    boolean told = !text.kit().isEmpty() || !text.condition().equals(Condition.ALWAYS);
    return kit && text.condition().holds(guide::has) && (told || !gear(text).isEmpty());
  }

  private double step(StopText text) {
    return text.inside() ? Walk.inside(place(text)) : Walk.step(place(text), text.usual());
  }

  private Place place(StopText text) {
    return anchor(text).map(Gear::place).orElse(Place.UNKNOWN);
  }

  /** The first of the first kind of gear that the rig has. */
  private Optional<Gear> anchor(StopText text) {
    return text.gear().stream()
        .flatMap(type -> gear(type, text.usual()).findFirst().stream())
        .findFirst();
  }

  private List<Gear> gear(StopText text) {
    return text.gear().stream().flatMap(type -> gear(type, text.usual())).toList();
  }

  private Stream<Gear> gear(String type, Face usual) {
    return rig.gear().stream()
        .filter(g -> g.type().equals(type))
        .sorted(Comparator.comparingDouble(g -> Walk.step(g.place(), usual)));
  }

  private Stop stop(StopText text, int number) {
    Face face = text.inside() ? Face.INSIDE : face(text);
    return new Stop(
        text.id(),
        number,
        text.title(),
        text.first(),
        face == Face.INSIDE,
        wording.phrase("leg-" + leg(text, face)),
        wording.phrase("face-" + face.text()),
        text.minutes(),
        note(text),
        Words.joined(guide.applying(text.say())),
        Words.joined(guide.applying(text.show())),
        guide.filler().fill(text.ask(), ""),
        things(text));
  }

  /** The side, the roof or the floor; inside, the third of the rig, where that is known. */
  private String leg(StopText text, Face face) {
    if (text.first()) {
      return "first";
    }
    Optional<String> third =
        place(text)
            .spot()
            .flatMap(s -> Walk.third(s, rig.identity().length()))
            .map(Spot.Zone::text);
    return face == Face.INSIDE ? third.map(t -> "inside-" + t).orElse("inside") : face.text();
  }

  private Face face(StopText text) {
    return place(text).spot().map(Spot::face).orElse(text.usual());
  }

  private Words note(StopText text) {
    boolean unlisted = text.kit().stream().anyMatch(k -> guide.has(k + ".unlisted"));
    return unlisted ? Words.of(wording.phrase("unlisted")) : Words.NONE;
  }

  /** What is shown; a line to fill in for the place of what must be found and is not listed. */
  private List<Stop.Thing> things(StopText text) {
    List<Stop.Thing> things = gear(text).stream().map(this::thing).toList();
    boolean wanted = text.first() || !text.kit().isEmpty();
    return things.isEmpty() && wanted
        ? text.gear().stream().limit(1).map(this::unlisted).toList()
        : things;
  }

  private Stop.Thing thing(Gear g) {
    String code = rig.codes().get(g.id());
    return new Stop.Thing(g.id(), code, guide.places().name(g.id()), guide.places().where(g.id()));
  }

  private Stop.Thing unlisted(String type) {
    return new Stop.Thing("", "", guide.places().name(type), guide.places().where(type));
  }
}
