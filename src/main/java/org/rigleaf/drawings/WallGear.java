package org.rigleaf.drawings;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/**
 * The gear on a wall that is seen square on.
 *
 * @param dotted of which enough is told for a dot on the wall
 * @param coarse of which only the wall or an end of it is told
 */
record WallGear(Rig rig, List<Gear> dotted, List<Gear> coarse) {
  /** Sorts gear on an end of the rig or on a long side. */
  static WallGear of(Rig rig, List<Gear> gear, boolean end) {
    return new WallGear(
        rig,
        gear.stream().filter(g -> dotted(g, end)).toList(),
        gear.stream().filter(g -> !dotted(g, end)).toList());
  }

  private static boolean dotted(Gear gear, boolean end) {
    Spot spot = gear.place().spot().orElseThrow();
    return end ? spot.across().isPresent() || spot.up().isPresent() : spot.aft().isPresent();
  }

  private Stream<Gear> all() {
    return Stream.concat(dotted.stream(), coarse.stream());
  }

  Badges badges() {
    return Badges.of(all().map(g -> MapWords.code(rig, g)).toList(), Badges.HIGH);
  }

  List<CallOut> callOuts() {
    Set<String> drawn = all().map(Gear::id).collect(Collectors.toSet());
    return CallOut.all(rig, drawn);
  }

  /** From one end of the wall to the other, those without a dot last. */
  List<String> codes(List<Site> sites, boolean rightToLeft) {
    Comparator<Site> order = Comparator.comparingDouble(s -> rightToLeft ? -s.x() : s.x());
    Stream<String> codes = sites.stream().sorted(order).map(Site::code);
    return Stream.concat(codes, coarse.stream().map(g -> MapWords.code(rig, g))).toList();
  }

  /** Points a foot for the scale under the drawing; 0 where typical lengths stand in. */
  double toScale(Board board) {
    return Size.of(rig).toScale() && Levels.of(rig).measured() ? board.scale() : 0;
  }
}
