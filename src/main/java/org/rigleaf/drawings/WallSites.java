package org.rigleaf.drawings;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.rig.Body;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/**
 * Puts a dot on a wall that is seen square on where each piece of gear is. What nobody told is not
 * made up: such a dot is an arrow along which the gear may be, or the gear has no dot at all.
 */
final class WallSites {
  private static final double ON_TONGUE = 2.2; // where nobody told a height, in feet

  private final Rig rig;
  private final Board board;
  private final boolean end;
  private final double extent;
  private final Levels levels;
  private final Size size;

  private WallSites(Rig rig, Board board, boolean end) {
    this.size = Size.of(rig);
    this.rig = rig;
    this.board = board;
    this.end = end;
    this.extent = end ? size.width() : size.length();
    this.levels = Levels.of(rig);
  }

  /** A dot for each of these pieces of gear, in their order; each can have one. */
  static List<Site> of(Rig rig, List<Gear> gear, Board board, boolean end) {
    WallSites sites = new WallSites(rig, board, end);
    Apart apart = new Apart(sites::within);
    gear.forEach(g -> apart.place(sites.site(g)));
    return apart.placed();
  }

  private Site site(Gear gear) {
    Spot spot = gear.place().spot().orElseThrow();
    Optional<Double> along = end ? spot.across() : spot.aft().map(a -> a + shape(gear) / 2);
    Optional<Double> up = spot.up().or(() -> drawn(gear));
    Mark mark = along.isEmpty() ? Mark.LEVEL : up.isEmpty() ? Mark.UPRIGHT : Mark.WALL;
    double x = board.x(Plan.clamp(along.orElse(extent / 2), 0, extent));
    double y = board.y(Plan.clamp(up.orElseGet(() -> middle(gear)), 0, levels.top()));
    return new Site(gear, MapWords.code(rig, gear), mark, 0, mark == Mark.UPRIGHT, x, y);
  }

  /** The middle of what is there, for a dot whose height nobody told. */
  private double middle(Gear gear) {
    return onTongue(gear) ? ON_TONGUE : (levels.under() + levels.roof()) / 2;
  }

  private boolean onTongue(Gear gear) {
    Spot spot = gear.place().spot().orElseThrow();
    return size.kind().ballCoupled()
        && spot.face() == Face.FRONT
        && spot.aft().filter(a -> a < size.starts()).isPresent();
  }

  /** The middle of what the outline shows of it by itself. */
  private Optional<Double> drawn(Gear gear) {
    double door = levels.floor() + WallParts.DOOR_HIGH / 2;
    return switch (gear.type()) {
      case "body.door", "safety.exits" -> Optional.of(door);
      case "body.steps" -> Optional.of(levels.floor() / 2).filter(u -> !end);
      case "body.slides" ->
          Optional.of((levels.floor() + WallParts.slideTop(levels)) / 2)
              .filter(u -> shape(gear) > 0);
      case "body.awnings" ->
          Optional.of(levels.roof() - WallParts.AWNING_DOWN).filter(u -> shape(gear) > 0);
      case "body.ramp" -> Optional.of(door).filter(u -> end);
      case "body.tongue-jack" -> Optional.of(Tongue.JACK_HEAD).filter(u -> onTongue(gear));
      case "propane.cylinders" -> Optional.of(Tongue.CYLINDER).filter(u -> onTongue(gear));
      default -> Optional.empty();
    };
  }

  /** Length along the wall of gear that is drawn as a shape: its place is its front end. */
  private double shape(Gear gear) {
    Stream<Fact> widths =
        Stream.concat(
            rig.body().slides().stream().filter(s -> s.gear() == gear).map(Body.Slide::width),
            rig.body().awnings().stream().filter(a -> a.gear() == gear).map(Body.Awning::width));
    return widths.filter(Fact::known).mapToDouble(Fact::value).findFirst().orElse(0);
  }

  private boolean within(Site site) {
    double one = board.x(0);
    double other = board.x(extent);
    return site.x() >= Math.min(one, other)
        && site.x() <= Math.max(one, other)
        && site.y() >= board.y(levels.top())
        && site.y() <= board.y(0);
  }
}
