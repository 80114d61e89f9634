package org.rigleaf.drawings;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/** Front or rear as one stands facing it, half a page wide, with bare codes on both sides. */
final class EndView {
  private static final int MOST = 40;
  private static final double HIGHEST = 112;
  private static final double GAP = 14;
  private static final double ROW = 22;
  private static final double HEAD = 6; // room for a dot at the very top
  private static final double WORD = 14; // the line that says street and curb

  private final Rig rig;
  private final View view;
  private final MapWords words;
  private final List<Gear> coarse;
  private final Badges badges;
  private final Board board;
  private final Size size;
  private final double low;
  private final List<Site> sites;
  private final Leaders.Lane left;
  private final Leaders.Lane right;

  private EndView(Rig rig, View view, List<Gear> gear, MapWords words) {
    this.rig = rig;
    this.view = view;
    this.words = words;
    List<Gear> dotted = gear.stream().filter(g -> WallSites.dotted(g, true)).toList();
    coarse = gear.stream().filter(g -> !WallSites.dotted(g, true)).toList();
    badges = Badges.of(gear.stream().map(g -> MapWords.code(rig, g)).toList(), Badges.HIGH);
    size = Size.of(rig);
    double high = Levels.of(rig).top();
    double lane = Sheet.EDGE + badges.wide() + Sheet.SHELF;
    double wide = size.width() + 2 * Math.max(size.streetSlides(), size.curbSlides());
    double scale = Math.min(HIGHEST / high, (Sheet.HALF - 2 * (lane + GAP)) / wide);
    double rows = ROW * (dotted.size() - dotted.size() / 2);
    double band = Math.max(HEAD + high * scale, rows);
    low = Sheet.EDGE + band + 3;
    boolean mirrored = view == View.FRONT;
    double half = size.width() * scale / 2;
    double x0 = Sheet.HALF / 2 + (mirrored ? half : -half);
    board = new Board(x0, Sheet.EDGE + (band + HEAD + high * scale) / 2, scale, mirrored);
    sites = WallSites.of(rig, dotted, board, true);
    left = new Leaders.Lane(lane, Sheet.EDGE, Sheet.EDGE + band);
    right = new Leaders.Lane(Sheet.HALF - lane, Sheet.EDGE, Sheet.EDGE + band);
  }

  /** Draws it, in parts where there is too much for two columns of labels. */
  static List<Drawing> draw(Rig rig, View view, MapWords words) {
    List<Gear> gear = rig.gear().stream().filter(view::shows).toList();
    return Parts.of(gear, MOST, EndView::across).stream()
        .map(part -> new EndView(rig, view, part, words).draw())
        .toList();
  }

  private static double across(Gear gear) {
    return gear.place().spot().flatMap(Spot::across).orElse(0.0);
  }

  private Drawing draw() {
    Foot foot = new Foot(1, Sheet.HALF - 2, scale(), sites, words);
    Somewhere box = new Somewhere(rig, coarse, badges, words, 1, Sheet.HALF - 2);
    double strip = low + WORD;
    double under = strip + (coarse.isEmpty() ? 0 : box.height() + 4);
    String alt = words.alt(view, rig, codes());
    Svg svg = new Svg().open(Sheet.HALF, under + foot.height(), alt);
    new EndElevation(svg, board, rig, view == View.REAR).draw();
    svg.text(1, low + 10, 11, true, "start", words.say(board.mirrored() ? "curb" : "street"));
    String other = words.say(board.mirrored() ? "street" : "curb");
    svg.text(Sheet.HALF - 1, low + 10, 11, true, "end", other);
    callOuts(svg);
    box.draw(svg, strip);
    foot.draw(svg, under);
    Set<String> drawn =
        Stream.concat(sites.stream().map(Site::gear), coarse.stream())
            .map(Gear::id)
            .collect(Collectors.toSet());
    return new Drawing(svg.close(), alt, CallOut.all(rig, drawn));
  }

  private double scale() {
    return size.toScale() && Levels.of(rig).measured() ? board.scale() : 0;
  }

  private void callOuts(Svg svg) {
    double[] needs = new double[sites.size()];
    Arrays.fill(needs, ROW);
    List<Leaders.Port> ports = Leaders.match(sites, sites.size() / 2, left, right, ROW, needs);
    for (int i = 0; i < sites.size(); i++) {
      Site site = sites.get(i);
      Leaders.Port port = ports.get(i);
      double out = port.street() ? -1 : 1;
      double badge = port.x() + out * Sheet.SHELF;
      svg.openCallOut(site.gear().id(), site.code());
      svg.leader(site.x(), site.y(), port.x(), port.y(), badge, port.y());
      site.mark().draw(svg, site.x(), site.y());
      badges.draw(svg, port.street() ? badge - badges.wide() : badge, port.y(), site.code());
      svg.closeCallOut();
    }
  }

  /** From left to right, those without a dot last. */
  private List<String> codes() {
    List<String> dotted =
        IntStream.range(0, sites.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> sites.get(i).x()))
            .map(i -> sites.get(i).code())
            .toList();
    return Stream.concat(dotted.stream(), coarse.stream().map(g -> MapWords.code(rig, g))).toList();
  }
}
