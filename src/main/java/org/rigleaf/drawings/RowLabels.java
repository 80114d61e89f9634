package org.rigleaf.drawings;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.rigleaf.rig.Gear;

/**
 * Labels in a row above and a row below a drawing: the boundary labeling of {@link Leaders}, turned
 * by a quarter. All are as wide as the widest, so that no order of them can overlap.
 *
 * @param named true if names stand at the codes
 * @param row from the middle of one label to that of the next
 */
record RowLabels(Badges badges, MapWords words, boolean named, double row) {
  private static final int MOST_NAMED = 10;
  private static final int NAME_LINES = 2;
  private static final double LEAST_NAME = 52;
  private static final double MOST_NAME = 112;
  private static final double BADGE_GAP = 3;
  private static final double NAME_GAP = 9;
  private static final double ROOM = Sheet.WIDE - 2 * Sheet.EDGE;

  /** Names where there are few, else bare codes. */
  static RowLabels of(WallGear gear, MapWords words) {
    Badges badges = gear.badges();
    int most = inOneRow(gear.dotted().size());
    return gear.dotted().size() <= MOST_NAMED
        ? new RowLabels(badges, words, true, named(gear.dotted(), words, ROOM / most))
        : new RowLabels(badges, words, false, badges.wide() + BADGE_GAP);
  }

  /** How many bare codes both rows hold. */
  static int capacity(Badges badges) {
    return 2 * (int) (ROOM / (badges.wide() + BADGE_GAP));
  }

  /** The upper row, which is the fuller one. */
  private static int inOneRow(int labels) {
    return labels - labels / 2;
  }

  /** The least width of a label in which every name stands whole. */
  private static double named(List<Gear> gear, MapWords words, double widest) {
    double room =
        DoubleStream.iterate(LEAST_NAME, r -> r < MOST_NAME, r -> r + 2)
            .filter(r -> gear.stream().allMatch(g -> fits(words.name(g), r)))
            .findFirst()
            .orElse(MOST_NAME);
    return Math.min(room + NAME_GAP, widest);
  }

  private static boolean fits(String name, double room) {
    return TextFit.fits(name, Sheet.NAME_SIZE, room, NAME_LINES);
  }

  /** Height of a row of so many labels, leaders' ends included; none take none. */
  double high(int labels) {
    double names = named ? NAME_LINES * Sheet.NAME_LEADING + 2 : 0;
    return labels == 0 ? 0 : Sheet.SHELF + badges.high() + names;
  }

  void draw(Svg svg, List<Site> sites, double above, double below) {
    double[] needs = new double[sites.size()];
    Arrays.fill(needs, row);
    List<Site> turned = sites.stream().map(s -> s.moved(s.y(), s.x())).toList();
    List<Leaders.Port> ports =
        Leaders.match(turned, inOneRow(sites.size()), lane(above), lane(below), row, needs);
    for (int i = 0; i < sites.size(); i++) {
      Site site = sites.get(i);
      svg.openCallOut(site.gear().id(), site.code());
      draw(svg, site, ports.get(i));
      svg.closeCallOut();
    }
  }

  private static Leaders.Lane lane(double y) {
    return new Leaders.Lane(y, Sheet.EDGE, Sheet.EDGE + ROOM);
  }

  /** A port's y is how far along its row it stands, since all is turned. */
  private void draw(Svg svg, Site site, Leaders.Port port) {
    double out = port.street() ? -1 : 1;
    double x = port.y();
    double edge = port.x() + out * Sheet.SHELF;
    svg.leader(site.x(), site.y(), x, port.x(), x, edge);
    site.mark().draw(svg, site.x(), site.y());
    badges.draw(svg, x - badges.wide() / 2, edge + out * badges.high() / 2, site.code());
    if (named) {
      name(svg, x, edge + out * badges.high(), port.street(), words.name(site.gear()));
    }
  }

  private void name(Svg svg, double x, double edge, boolean over, String name) {
    List<String> lines = TextFit.wrap(name, Sheet.NAME_SIZE, row - NAME_GAP, NAME_LINES);
    double first =
        over ? edge - 4 - (lines.size() - 1) * Sheet.NAME_LEADING : edge + Sheet.NAME_LEADING;
    for (int i = 0; i < lines.size(); i++) {
      double y = first + i * Sheet.NAME_LEADING;
      svg.text(x, y, Sheet.NAME_SIZE, false, "middle", lines.get(i));
    }
  }
}
