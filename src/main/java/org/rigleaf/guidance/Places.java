package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Place;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;
import org.rigleaf.source.Unit;

/**
 * Says where things are and what they are called: the keeper's words first, else the measured place
 * in plain words.
 */
public final class Places {
  private final Rig rig;
  private final Wording wording;

  /** Places of one rig. */
  public Places(Rig rig, Wording wording) {
    this.rig = rig;
    this.wording = wording;
  }

  /**
   * Where a piece of gear is, and what panel or label call it; a line to fill in if nobody said
   * where. The label of gear with a switch is that of the switch.
   */
  public Words where(String id) {
    boolean switched = text(id + ".switch").isPresent() || text(id + ".switches").isPresent();
    return switched ? place(id) : labelled(id, place(id));
  }

  /** Words about the place of a thing or of its switch, with the words that stand on it. */
  Words labelled(String id, Words place) {
    return text(id + ".marked")
        .map(m -> Words.of(wording.phrase("marked", Map.of("marked", m))))
        .map(m -> new Words(Stream.concat(place.runs().stream(), m.runs().stream()).toList()))
        .orElse(place);
  }

  private Words place(String id) {
    Optional<String> said =
        rig.gear(id)
            .flatMap(g -> words(g.place()))
            .or(() -> text(id + ".where"))
            .or(() -> text(id + ".kept"))
            .or(() -> measured(id));
    return said.map(Words::of).orElse(new Words(List.of(Run.blank(id + ".where"))));
  }

  /** True if a place is known. */
  public boolean known(String id) {
    return where(id).runs().stream().noneMatch(r -> r.kind() == Run.Kind.BLANK);
  }

  private Optional<String> text(String path) {
    return Optional.ofNullable(rig.texts().get(path));
  }

  /** How far back a thing is that has no code, such as a piece of the load. */
  private Optional<String> measured(String id) {
    return Optional.ofNullable(rig.facts().get(id + ".at"))
        .filter(Fact::known)
        .map(at -> wording.phrase(back(), Map.of("feet", feet(at.value()))));
  }

  private Optional<String> words(Place place) {
    return place.words().or(() -> place.spot().map(this::words));
  }

  private String words(Spot spot) {
    List<String> parts = new ArrayList<>();
    parts.add(wording.phrase("face-" + spot.face().text()));
    spot.zone()
        .filter(z -> !z.text().equals(spot.face().text()))
        .ifPresent(z -> parts.add(wording.phrase("zone-" + z.text())));
    spot.aft()
        .filter(a -> a > 0)
        .ifPresent(a -> parts.add(wording.phrase(back(spot), Map.of("feet", feet(a)))));
    spot.up().ifPresent(u -> parts.add(wording.phrase("up", Map.of("feet", feet(u)))));
    return String.join(", ", parts);
  }

  private String back(Spot spot) {
    return spot.face() == Face.REAR ? "forward-of-rear" : back();
  }

  private String back() {
    return switch (rig.identity().kind()) {
      case TRUCK_CAMPER -> "back-of-nose";
      case CLASS_A, CLASS_B, CLASS_C -> "back-of-bumper";
      default -> "back-of-coupling";
    };
  }

  private String feet(double feet) {
    return wording.amounts().text(feet, Unit.FOOT);
  }

  /**
   * The name of a thing as a heading: the keeper's own, with its kind where the name alone would
   * not say it.
   */
  public String name(String id) {
    String own = text(id + ".name").or(() -> text(Ids.parent(id) + ".name")).orElse("");
    String type = rig.gear(id).map(org.rigleaf.rig.Gear::type).orElse(id);
    Optional<String> label = wording.label(type).filter(l -> !own.isEmpty());
    String name =
        label
            .map(l -> l.replace("{name}", own))
            .or(() -> inList(id) ? kind(id) : Optional.empty())
            .or(() -> text(id + ".name"))
            .or(() -> kind(type))
            .orElse(Ids.last(id).replace('-', ' '));
    return name.isEmpty()
        ? name
        : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /**
   * True for an item of a list, which always has a name, if only that of its kind:
   * safety.alarms.smoke.
   */
  private boolean inList(String id) {
    return kind(Ids.parent(id)).isPresent() && rig.gear(Ids.parent(id)).isEmpty();
  }

  private Optional<String> kind(String type) {
    String name = wording.gear(type).title();
    return name.isEmpty() ? Optional.empty() : Optional.of(name);
  }

  /** The bare name of a list item, as the keeper wrote it; {@code front} of tires is an axle. */
  public String bare(String id) {
    return text(id + ".name").map(name -> spoken(Ids.parent(id), name)).orElseGet(() -> name(id));
  }

  /** A value of the profile as a page says it: {@code class a} of a kind is 'class A motorhome'. */
  String spoken(String path, String value) {
    return wording.find(Ids.last(path) + "-" + Ids.of(value)).orElse(value);
  }

  /** A thing's name inside a sentence: 'the side awning'. */
  public String inSentence(String id) {
    return small(name(id));
  }

  /**
   * Starts small with an everyday word. 'TV antenna' stays, and so does a word that the wording
   * does not use: it may be the name of a person.
   */
  String small(String name) {
    String first = name.split("[^A-Za-z]", 2)[0];
    String small = first.toLowerCase(Locale.ROOT);
    boolean shout = first.length() > 1 && Character.isUpperCase(first.charAt(1));
    return !shout && wording.small(small) ? small + name.substring(first.length()) : name;
  }

  /** An axle by its number, front to rear: a motorhome has a front and a rear one. */
  public String axle(String number) {
    return Optional.of("axle-" + number + "-motor")
        .filter(key -> rig.identity().kind().motorized())
        .flatMap(wording::find)
        .orElseGet(() -> wording.phrase("row-axle", Map.of("x", number)));
  }

  /** The same inside a sentence: 'front axle'. */
  String axleInSentence(String number) {
    return axle(number).toLowerCase(Locale.ROOT);
  }

  /** The printed name of a load that has a section of its own, such as the heater's element. */
  public String loadName(String part) {
    String name = wording.gear("load." + part).title();
    return name.isEmpty() ? part.replace('-', ' ') : name;
  }
}
