package org.rigleaf.rig;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.rigleaf.source.Kind;
import org.rigleaf.source.Quantity;
import org.rigleaf.source.Unit;

/**
 * A measured place: {@code street 19 ft up 3 ft}, or a coarse one: {@code street rear}, {@code
 * front}.
 *
 * @param face which face
 * @param zone front, middle or rear where only that is said
 * @param aft feet back from the coupler, king pin or front bumper; on the rear face forward from
 *     the rear bumper
 * @param across feet from the street-side wall
 * @param up feet above the ground
 */
public record Spot(
    Face face,
    Optional<Zone> zone,
    Optional<Double> aft,
    Optional<Double> across,
    Optional<Double> up) {
  /** A third of the rig's length. */
  public enum Zone implements Choice {
    FRONT,
    MIDDLE,
    REAR
  }

  /** Reads a spot; empty if it is not of the form above. */
  public static Optional<Spot> parse(String text) {
    List<String> words = List.of(text.strip().split("\\s+"));
    Optional<Face> face = find(Face.values(), words.get(0));
    if (face.isEmpty()) {
      return Optional.empty();
    }
    Optional<Zone> end = find(Zone.values(), words.get(0));
    if (words.size() == 1 && end.isPresent()) {
      return Optional.of(new Spot(face.get(), end, none(), none(), none()));
    }
    if (words.size() == 2 && find(Zone.values(), words.get(1)).isPresent()) {
      return Optional.of(
          new Spot(face.get(), find(Zone.values(), words.get(1)), none(), none(), none()));
    }
    return measured(face.get(), words);
  }

  private static Optional<Spot> measured(Face face, List<String> words) {
    int across = words.indexOf("across");
    int up = words.indexOf("up");
    int aftEnd = across > 0 ? across : up > 0 ? up : words.size();
    int acrossEnd = up > 0 ? up : words.size();
    Optional<Double> aft = feet(words.subList(1, aftEnd));
    Optional<Double> side = across > 0 ? feet(words.subList(across + 1, acrossEnd)) : none();
    Optional<Double> height = up > 0 ? feet(words.subList(up + 1, words.size())) : none();
    boolean bad = aft.isEmpty() || (across > 0 && side.isEmpty()) || (up > 0 && height.isEmpty());
    return bad
        ? Optional.empty()
        : Optional.of(new Spot(face, Optional.empty(), aft, side, height));
  }

  private static Optional<Double> feet(List<String> words) {
    return Quantity.parse(String.join(" ", words))
        .filter(q -> q.unit().kind() == Kind.LENGTH && q.value() >= 0)
        .map(q -> q.in(Unit.FOOT));
  }

  private static Optional<Double> none() {
    return Optional.empty();
  }

  private static <E extends Choice> Optional<E> find(E[] values, String word) {
    return Arrays.stream(values).filter(v -> v.text().equals(word)).findFirst();
  }
}
