package org.rigleaf.drawings;

import java.util.List;
import org.rigleaf.drawings.Svg.Look;
import org.rigleaf.rig.Rig;

/** The rig from the side that its door is on, with its length and height, for the cover. */
public final class Portrait {
  private static final double MOST_SCALE = 26;
  private static final double TYPE = 12;
  private static final double BELOW = 34;
  private static final double BESIDE = 124;
  private static final double EDGE = 2;
  private static final Look THIN = Look.line(0.7);

  private Portrait() {}

  /**
   * Draws it; the same rig and words give the same bytes.
   *
   * @param room the highest that it may be, in points
   * @param alt what it shows
   * @param length as printed; no dimension line where it is empty
   * @param height as printed, likewise
   */
  public static Drawing draw(Rig rig, double room, String alt, String length, String height) {
    boolean street = SideElevation.doorOnStreet(rig);
    double ahead = SideElevation.ahead(rig);
    double along = ahead + Size.of(rig).length() + SideElevation.behind(rig);
    double top = Levels.of(rig).top();
    double beside = height.isEmpty() ? 0 : BESIDE;
    double scale =
        Math.min(
            MOST_SCALE,
            Math.min((Sheet.WIDE - beside - 2 * EDGE) / along, (room - BELOW - EDGE) / top));
    double wide = along * scale;
    double left = (Sheet.WIDE - beside - wide) / 2;
    double ground = EDGE + top * scale;
    double x0 = street ? left + ahead * scale : left + wide - ahead * scale;
    Board board = new Board(x0, ground, scale, !street);
    Svg svg = new Svg().openWords(Sheet.WIDE, ground + BELOW, alt);
    new SideElevation(svg, board, rig, street).draw();
    length(svg, board, Size.of(rig).length(), length);
    height(svg, left + wide + 18, ground, board.y(top), height);
    return new Drawing(svg.close(), alt, List.of());
  }

  private static void length(Svg svg, Board board, double length, String words) {
    if (!words.isEmpty()) {
      double from = Math.min(board.x(0), board.x(length));
      double to = Math.max(board.x(0), board.x(length));
      double y = board.ground() + 10;
      svg.openGroup("part", "length");
      svg.line(from, y, to, y, THIN)
          .line(from, y - 4, from, y + 4, THIN)
          .line(to, y - 4, to, y + 4, THIN);
      svg.closeGroup();
      svg.text((from + to) / 2, y + 17, TYPE, true, "middle", words);
    }
  }

  private static void height(Svg svg, double x, double ground, double top, String words) {
    if (!words.isEmpty()) {
      svg.openGroup("part", "height");
      svg.line(x, top, x, ground, THIN)
          .line(x - 4, top, x + 4, top, THIN)
          .line(x - 4, ground, x + 4, ground, THIN);
      svg.closeGroup();
      svg.text(x + 8, (top + ground) / 2 + 4, TYPE, true, "start", words);
    }
  }
}
