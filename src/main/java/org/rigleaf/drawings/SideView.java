package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/**
 * A long side seen square on, labels in a row above and a row below: the boundary labeling of
 * {@link Leaders}, turned by a quarter.
 */
final class SideView {
  private static final int MOST_NAMED = 10;
  private static final int NAME_LINES = 2;
  private static final double LEAST_NAME = 52;
  private static final double MOST_NAME = 112;
  private static final double HIGHEST = 140;
  private static final double GAP = 14;
  private static final double BESIDE = 8;
  private static final double BADGE_GAP = 3;
  private static final double NAME_GAP = 9;
  private static final double WORD = 66; // in the lowest line: front and rear

  private final Rig rig;
  private final View view;
  private final MapWords words;
  private final List<Gear> coarse;
  private final Badges badges;
  private final boolean named;
  private final double row;
  private final Board board;
  private final Size size;
  private final List<Site> sites;
  private final Leaders.Lane above;
  private final Leaders.Lane below;

  private SideView(Rig rig, View view, List<Gear> gear, MapWords words) {
    this.rig = rig;
    this.view = view;
    this.words = words;
    List<Gear> dotted = gear.stream().filter(g -> WallSites.dotted(g, false)).toList();
    coarse = gear.stream().filter(g -> !WallSites.dotted(g, false)).toList();
    badges = badges(rig, gear);
    int most = dotted.size() - dotted.size() / 2;
    named = dotted.size() <= MOST_NAMED;
    row = named ? named(dotted, (Sheet.WIDE - 2) / most) : badges.wide() + BADGE_GAP;
    size = Size.of(rig);
    double high = Levels.of(rig).top();
    double ahead = SideElevation.ahead(rig);
    double wide = ahead + size.length() + SideElevation.behind(rig);
    double scale = Math.min(HIGHEST / high, (Sheet.WIDE - 2 * BESIDE) / wide);
    double front = ahead * scale - wide * scale / 2; // of the coupler, from the middle
    boolean mirrored = view == View.CURB;
    double label = labelHigh();
    double top = Sheet.EDGE + (dotted.isEmpty() ? 0 : label + Sheet.SHELF + GAP);
    double ground = top + high * scale;
    double x0 = Sheet.WIDE / 2 + (mirrored ? -front : front);
    board = new Board(x0, ground, scale, mirrored);
    sites = WallSites.of(rig, dotted, board, false);
    above = new Leaders.Lane(top - GAP, 1, Sheet.WIDE - 1);
    below = new Leaders.Lane(ground + GAP, 1, Sheet.WIDE - 1);
  }

  /** Draws it, in parts where there is too much for two rows of labels. */
  static List<Drawing> draw(Rig rig, View view, MapWords words) {
    List<Gear> gear = rig.gear().stream().filter(view::shows).toList();
    Sites places = Sites.on(rig, new Plan(Size.of(rig), 0, 0, 1));
    double row = badges(rig, gear).wide() + BADGE_GAP;
    int most = 2 * (int) ((Sheet.WIDE - 2 * Sheet.EDGE) / row);
    return Parts.of(gear, most, places::aft).stream()
        .map(part -> new SideView(rig, view, part, words).draw())
        .toList();
  }

  private static Badges badges(Rig rig, List<Gear> gear) {
    return Badges.of(gear.stream().map(g -> MapWords.code(rig, g)).toList(), Badges.HIGH);
  }

  /** The least width of a label in which every name stands whole. */
  private double named(List<Gear> gear, double widest) {
    double room =
        DoubleStream.iterate(LEAST_NAME, r -> r < MOST_NAME, r -> r + 2)
            .filter(r -> gear.stream().allMatch(g -> fits(g, r)))
            .findFirst()
            .orElse(MOST_NAME);
    return Math.min(room + NAME_GAP, widest);
  }

  private boolean fits(Gear gear, double room) {
    return TextFit.fits(words.name(gear), Sheet.NAME_SIZE, room, NAME_LINES);
  }

  private double labelHigh() {
    return badges.high() + (named ? NAME_LINES * Sheet.NAME_LEADING + 2 : 0);
  }

  private Drawing draw() {
    Foot foot = new Foot(WORD, Sheet.WIDE - 2 * WORD, scale(), sites, words);
    List<Somewhere> boxes = boxes();
    int under = sites.size() / 2;
    double strip = board.ground() + (under == 0 ? 3 : GAP + Sheet.SHELF + labelHigh() + 3);
    double boxHigh = boxes.stream().mapToDouble(Somewhere::height).max().orElse(0);
    double low = strip + (boxHigh > 0 ? boxHigh + 4 : 0);
    String alt = words.alt(view, rig, codes());
    Svg svg = new Svg().open(Sheet.WIDE, low + foot.height(), alt);
    new SideElevation(svg, board, rig, view == View.STREET).draw();
    ends(svg, low + 11);
    callOuts(svg);
    boxes.forEach(b -> b.draw(svg, strip));
    foot.draw(svg, low);
    Set<String> drawn =
        Stream.concat(sites.stream().map(Site::gear), coarse.stream())
            .map(Gear::id)
            .collect(Collectors.toSet());
    return new Drawing(svg.close(), alt, CallOut.all(rig, drawn));
  }

  private double scale() {
    return size.toScale() && Levels.of(rig).measured() ? board.scale() : 0;
  }

  private void ends(Svg svg, double y) {
    boolean left = !board.mirrored();
    svg.text(1, y, 11, true, "start", words.say(left ? "front-left" : "rear"));
    svg.text(Sheet.WIDE - 1, y, 11, true, "end", words.say(left ? "rear" : "front-right"));
  }

  /** A box for each third of the rig, at its end of the drawing. */
  private List<Somewhere> boxes() {
    double third = Sheet.WIDE / Spot.Zone.values().length;
    List<Somewhere> boxes = new ArrayList<>();
    for (Spot.Zone zone : Spot.Zone.values()) {
      List<Gear> here =
          coarse.stream()
              .filter(g -> g.place().spot().flatMap(Spot::zone).filter(z -> z == zone).isPresent())
              .toList();
      int place = board.mirrored() ? Spot.Zone.REAR.ordinal() - zone.ordinal() : zone.ordinal();
      double x = third * place + Sheet.EDGE;
      boxes.add(new Somewhere(rig, here, badges, words, x, third - 2 * Sheet.EDGE));
    }
    return boxes;
  }

  private void callOuts(Svg svg) {
    List<Site> turned =
        sites.stream()
            .map(s -> new Site(s.gear(), s.code(), s.mark(), 0, s.along(), s.y(), s.x()))
            .toList();
    double[] needs = new double[sites.size()];
    java.util.Arrays.fill(needs, row);
    List<Leaders.Port> ports =
        Leaders.match(turned, sites.size() - sites.size() / 2, above, below, row, needs);
    for (int i = 0; i < sites.size(); i++) {
      Site site = sites.get(i);
      svg.openCallOut(site.gear().id(), site.code());
      callOut(svg, site, ports.get(i));
      svg.closeCallOut();
    }
  }

  /** A port's y is how far along its row stands, since all is turned. */
  private void callOut(Svg svg, Site site, Leaders.Port port) {
    double out = port.street() ? -1 : 1;
    double x = port.y();
    double edge = port.x() + out * Sheet.SHELF;
    svg.leader(site.x(), site.y(), x, port.x(), x, edge);
    site.mark().draw(svg, site.x(), site.y());
    double middle = edge + out * badges.high() / 2;
    badges.draw(svg, x - badges.wide() / 2, middle, site.code());
    if (named) {
      List<String> lines =
          TextFit.wrap(words.name(site.gear()), Sheet.NAME_SIZE, row - NAME_GAP, NAME_LINES);
      double first =
          port.street()
              ? middle - badges.high() / 2 - 4 - (lines.size() - 1) * Sheet.NAME_LEADING
              : middle + badges.high() / 2 + Sheet.NAME_LEADING;
      for (int i = 0; i < lines.size(); i++) {
        double y = first + i * Sheet.NAME_LEADING;
        svg.text(x, y, Sheet.NAME_SIZE, false, "middle", lines.get(i));
      }
    }
  }

  /** From front to rear, those of a third last. */
  private List<String> codes() {
    double out = board.mirrored() ? -1 : 1;
    List<String> dotted =
        IntStream.range(0, sites.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> out * sites.get(i).x()))
            .map(i -> sites.get(i).code())
            .toList();
    return Stream.concat(dotted.stream(), coarse.stream().map(g -> MapWords.code(rig, g))).toList();
  }
}
