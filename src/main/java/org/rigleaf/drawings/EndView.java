package org.rigleaf.drawings;

import java.util.Arrays;
import java.util.List;
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
  private static final double HEADING = 11;

  private final Rig rig;
  private final View view;
  private final MapWords words;
  private final WallGear gear;
  private final Badges badges;
  private final double band; // how high the rig and its labels are together
  private final Board board;
  private final List<Site> sites;

  private EndView(Rig rig, View view, List<Gear> part, MapWords words) {
    this.rig = rig;
    this.view = view;
    this.words = words;
    gear = WallGear.of(rig, part, true);
    badges = gear.badges();
    Size size = Size.of(rig);
    double top = Levels.of(rig).top();
    double wide = size.width() + 2 * Math.max(size.streetSlides(), size.curbSlides());
    double scale = Math.min(HIGHEST / top, (Sheet.HALF - 2 * (lane() + GAP)) / wide);
    double high = HEAD + top * scale;
    band = Math.max(high, ROW * (gear.dotted().size() - gear.dotted().size() / 2));
    boolean mirrored = view == View.FRONT;
    double half = size.width() * scale / 2;
    double x0 = Sheet.HALF / 2 + (mirrored ? half : -half);
    board = new Board(x0, Sheet.EDGE + (band + high) / 2, scale, mirrored);
    sites = WallSites.of(rig, gear.dotted(), board, true);
  }

  /** X where leaders end at the left. */
  private double lane() {
    return Sheet.EDGE + badges.wide() + Sheet.SHELF;
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
    Foot foot = new Foot(1, Sheet.HALF - 2, gear.toScale(board), sites, words);
    Somewhere box = new Somewhere(rig, gear.coarse(), badges, words, 1, Sheet.HALF - 2);
    double low = Sheet.EDGE + band + 3;
    double strip = low + WORD;
    double under = strip + (gear.coarse().isEmpty() ? 0 : box.height() + 4);
    String alt = words.alt(view, rig, gear.codes(sites, false));
    Svg svg = new Svg().open(Sheet.HALF, under + foot.height(), alt);
    new EndElevation(svg, board, rig, view == View.REAR).draw();
    sides(svg, low + 10);
    callOuts(svg);
    box.draw(svg, strip);
    foot.draw(svg, under);
    return new Drawing(svg.close(), alt, gear.callOuts());
  }

  private void sides(Svg svg, double y) {
    boolean curb = board.mirrored();
    svg.text(1, y, HEADING, true, "start", words.say(curb ? "curb" : "street"));
    svg.text(Sheet.HALF - 1, y, HEADING, true, "end", words.say(curb ? "street" : "curb"));
  }

  private void callOuts(Svg svg) {
    double[] needs = new double[sites.size()];
    Arrays.fill(needs, ROW);
    Leaders.Lane left = new Leaders.Lane(lane(), Sheet.EDGE, Sheet.EDGE + band);
    Leaders.Lane right = new Leaders.Lane(Sheet.HALF - lane(), Sheet.EDGE, Sheet.EDGE + band);
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
}
