package org.rigleaf.drawings;

import java.util.List;
import org.rigleaf.drawings.PanelFace.Box;
import org.rigleaf.drawings.PanelFace.Words;
import org.rigleaf.drawings.Svg.Look;

/** The head of a box: its code and name, where it is, and its lamps if it has some. */
final class FaceHead {
  private static final double TEXT = 12;
  private static final double LEADING = 14;
  private static final double CODE = 13;
  private static final double BADGE_HIGH = 18;
  private static final double LEFT = 9;
  private static final double ROOM = PanelFace.FRAME - LEFT - 6;
  private static final double LAMP = 8;
  private static final double LAMPS_HIGH = 44;
  private static final double LEAST_LAMP = 40;
  private static final double MEAN_GAP = 6;

  private final Box box;
  private final String mean;
  private final double badge;
  private final List<String> names;
  private final List<String> places;

  FaceHead(Box box, Words words) {
    this.box = box;
    boolean said = !box.lamps().mean().isEmpty();
    this.mean = box.lamps().marks().isEmpty() ? "" : words.mean() + (said ? " " : "");
    this.badge = box.code().isEmpty() ? 0 : TextFit.width(box.code(), CODE, true) + 12;
    this.names = FaceRow.bold(box.name(), TEXT, ROOM - badge - (badge > 0 ? 6 : 0));
    this.places = TextFit.wrap(box.place(), PanelFace.SMALL, ROOM, 6);
  }

  double height() {
    return PanelFace.PAD + nameHigh() + places.size() * PanelFace.SMALL_LEADING + lampsHigh() + 2;
  }

  private double nameHigh() {
    double lines = names.size() * LEADING;
    return badge > 0 ? Math.max(BADGE_HIGH + 2, lines + 4) : lines;
  }

  private List<String> meaning() {
    return TextFit.wrap(mean + box.lamps().mean(), TEXT, ROOM, 8);
  }

  private double lampsHigh() {
    if (box.lamps().marks().isEmpty()) {
      return 0;
    }
    int rows = (box.lamps().marks().size() + across() - 1) / across();
    double blank = box.lamps().mean().isEmpty() ? LEADING : 0;
    return rows * LAMPS_HIGH + meaning().size() * LEADING + blank + MEAN_GAP;
  }

  /** How many lamps stand in a row. */
  private int across() {
    double widest =
        box.lamps().marks().stream()
            .mapToDouble(m -> TextFit.width(m, TEXT, true) + 8)
            .max()
            .orElse(0);
    return Math.max(1, (int) (ROOM / Math.max(LEAST_LAMP, widest)));
  }

  void draw(Svg svg, double top) {
    double y = top + PanelFace.PAD;
    if (badge > 0) {
      svg.openCallOut(box.gear(), box.code());
      svg.rect(LEFT, y, badge, BADGE_HIGH, BADGE_HIGH / 2, Look.line(0.9).filled(Svg.WHITE));
      double middle = y + BADGE_HIGH / 2 + CODE * 0.711 / 2;
      svg.text(LEFT + badge / 2, middle, CODE, true, "middle", box.code());
      svg.closeCallOut();
    }
    double x = LEFT + badge + (badge > 0 ? 6 : 0);
    double line = y + (badge > 0 ? 13.5 : 10.5);
    for (String name : names) {
      svg.text(x, line, TEXT, true, "start", name);
      line += LEADING;
    }
    y += nameHigh();
    for (String place : places) {
      y += PanelFace.SMALL_LEADING;
      svg.text(LEFT, y - 3, PanelFace.SMALL, false, "start", place);
    }
    lamps(svg, y);
  }

  private void lamps(Svg svg, double top) {
    List<String> marks = box.lamps().marks();
    if (marks.isEmpty()) {
      return;
    }
    double pitch = ROOM / Math.min(across(), marks.size());
    double y = top;
    for (int i = 0; i < marks.size(); i++) {
      int column = i % across();
      y += i > 0 && column == 0 ? LAMPS_HIGH : 0;
      double x = LEFT + (column + 0.5) * pitch;
      svg.circle(x, y + 16, LAMP, Look.line(1.2));
      String mark = marks.get(i);
      double fits = ROOM / TextFit.width(mark, TEXT, true) * TEXT;
      svg.text(x, y + 38, Plan.clamp(fits, PanelFace.SMALL, TEXT), true, "middle", mark);
    }
    meaning(svg, y + LAMPS_HIGH + MEAN_GAP);
  }

  private void meaning(Svg svg, double top) {
    double y = top;
    for (String line : meaning()) {
      y += LEADING;
      svg.text(LEFT, y - 3.5, TEXT, false, "start", line);
    }
    if (box.lamps().mean().isEmpty()) {
      svg.line(LEFT, y + LEADING - 2, LEFT + ROOM, y + LEADING - 2, PanelFace.LINE);
    }
  }
}
