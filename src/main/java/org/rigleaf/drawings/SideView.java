package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Spot;

/** A long side seen square on, labels in a row above and a row below. */
final class SideView {
  private static final double HIGHEST = 140;
  private static final double GAP = 14; // between the rig and the ends of the leaders
  private static final double BESIDE = 8;
  private static final double WORD = 66; // in the lowest line: front and rear
  private static final double HEADING = 11;

  private final Rig rig;
  private final View view;
  private final MapWords words;
  private final WallGear gear;
  private final RowLabels labels;
  private final Board board;
  private final List<Site> sites;

  private SideView(Rig rig, View view, List<Gear> part, MapWords words) {
    this.rig = rig;
    this.view = view;
    this.words = words;
    gear = WallGear.of(rig, part, false);
    labels = RowLabels.of(gear, words);
    board = board();
    sites = WallSites.of(rig, gear.dotted(), board, false);
  }

  private Board board() {
    double high = Levels.of(rig).top();
    double ahead = SideElevation.ahead(rig);
    double wide = ahead + Size.of(rig).length() + SideElevation.behind(rig);
    double scale = Math.min(HIGHEST / high, (Sheet.WIDE - 2 * BESIDE) / wide);
    double front = ahead * scale - wide * scale / 2; // of the coupler, from the middle
    boolean mirrored = view == View.CURB;
    double above = labels.high(gear.dotted().size());
    double ground = Sheet.EDGE + above + (above > 0 ? GAP : 0) + high * scale;
    double x0 = Sheet.WIDE / 2 + (mirrored ? -front : front);
    return new Board(x0, ground, scale, mirrored);
  }

  /** Draws it, in parts where there is too much for two rows of labels. */
  static List<Drawing> draw(Rig rig, View view, MapWords words) {
    List<Gear> gear = rig.gear().stream().filter(view::shows).toList();
    Sites places = Sites.on(rig, new Plan(Size.of(rig), 0, 0, 1));
    int most = RowLabels.capacity(WallGear.of(rig, gear, false).badges());
    return Parts.of(gear, most, places::aft).stream()
        .map(part -> new SideView(rig, view, part, words).draw())
        .toList();
  }

  private Drawing draw() {
    Foot foot = new Foot(WORD, Sheet.WIDE - 2 * WORD, gear.toScale(board), sites, words);
    List<Somewhere> boxes = boxes();
    double below = labels.high(sites.size() / 2);
    double strip = board.ground() + 3 + (below > 0 ? GAP + below : 0);
    double boxHigh = boxes.stream().mapToDouble(Somewhere::height).max().orElse(0);
    double low = strip + (boxHigh > 0 ? boxHigh + 4 : 0);
    String alt = words.alt(view, rig, gear.codes(sites, board.mirrored()));
    Svg svg = new Svg().open(Sheet.WIDE, low + foot.height(), alt);
    new SideElevation(svg, board, rig, view == View.STREET).draw();
    labels.draw(svg, sites, board.y(Levels.of(rig).top()) - GAP, board.ground() + GAP);
    boxes.forEach(b -> b.draw(svg, strip));
    ends(svg, low + 11);
    foot.draw(svg, low);
    return new Drawing(svg.close(), alt, gear.callOuts());
  }

  private void ends(Svg svg, double y) {
    boolean left = !board.mirrored();
    svg.text(1, y, HEADING, true, "start", words.say(left ? "front-left" : "rear"));
    svg.text(Sheet.WIDE - 1, y, HEADING, true, "end", words.say(left ? "rear" : "front-right"));
  }

  /** A box for each third of the rig, at its end of the drawing. */
  private List<Somewhere> boxes() {
    double third = Sheet.WIDE / Spot.Zone.values().length;
    List<Somewhere> boxes = new ArrayList<>();
    for (Spot.Zone zone : Spot.Zone.values()) {
      List<Gear> here =
          gear.coarse().stream()
              .filter(g -> g.place().spot().flatMap(Spot::zone).filter(z -> z == zone).isPresent())
              .toList();
      int place = board.mirrored() ? Spot.Zone.REAR.ordinal() - zone.ordinal() : zone.ordinal();
      double x = third * place + Sheet.EDGE;
      boxes.add(new Somewhere(rig, here, labels.badges(), words, x, third - 2 * Sheet.EDGE));
    }
    return boxes;
  }
}
