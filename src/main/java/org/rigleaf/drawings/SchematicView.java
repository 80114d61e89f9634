package org.rigleaf.drawings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.rigleaf.drawings.Net.Pin;
import org.rigleaf.drawings.Schematic.Box;
import org.rigleaf.drawings.Schematic.Link;
import org.rigleaf.drawings.Svg.Look;

/**
 * Draws what feeds what: columns of boxes, right-angled lines between them. Links of one kind that
 * leave a box share a stem and part at dots; other lines may cross, but never lie on each other.
 */
public final class SchematicView {
  private static final double JOINT = 2;
  private static final double KEY_GAP = 14;
  private static final double UNDER_LINE = 3.5; // from the foot of words to their line
  private static final double UNDER_ARROW = 5.5;

  private final Nets nets;
  private final Map<String, BoxText> texts = new HashMap<>();
  private final boolean letters; // lines of several kinds need one
  private Ranks columns;
  private Heights heights;
  private List<Channel> channels;

  private SchematicView(Schematic schematic) {
    nets = new Nets(schematic);
    letters = schematic.links().stream().map(Link::line).distinct().count() > 1;
    int[] tracks = new int[nets.ranks + 1];
    boolean again = true;
    while (again) {
      again = false;
      lay(tracks);
      for (int c = 0; c < tracks.length; c++) {
        again |= channels.get(c).tracks.size() > tracks[c];
        tracks[c] = Math.max(tracks[c], channels.get(c).tracks.size());
      }
    }
  }

  private void lay(int[] tracks) {
    columns = Ranks.of(nets, tracks, letters);
    nets.boxes.forEach(b -> texts.put(b.id(), BoxText.of(b, columns.width[b.rank()])));
    heights = Heights.of(nets, texts);
    channels = IntStream.rangeClosed(0, nets.ranks).mapToObj(c -> new Channel(nets, c)).toList();
  }

  /** Draws it with a key at its foot; the same schematic gives the same bytes. */
  public static Drawing draw(Schematic schematic, SchematicWords words) {
    SchematicView view = new SchematicView(schematic);
    SchematicKey key = new SchematicKey(schematic, words);
    Svg svg = new Svg();
    double foot = view.heights.bottom() + KEY_GAP;
    svg.open(Sheet.WIDE, foot + key.height(), schematic.alt());
    view.draw(svg, words);
    key.draw(svg, foot);
    return new Drawing(svg.close(), schematic.alt(), callOuts(schematic));
  }

  /** True if it stands on one page; if not, draw its {@link SchematicParts}. */
  static boolean fits(Schematic schematic, SchematicWords words) {
    SchematicView view = new SchematicView(schematic);
    double high = view.heights.bottom() + KEY_GAP + new SchematicKey(schematic, words).height();
    return high <= Sheet.TALLEST && !view.columns.cramped() && !view.heights.crowded();
  }

  private static List<CallOut> callOuts(Schematic schematic) {
    return schematic.boxes().stream()
        .filter(b -> !b.code().isEmpty())
        .map(b -> new CallOut(b.gear(), b.code(), true))
        .distinct()
        .toList();
  }

  private void draw(Svg svg, SchematicWords words) {
    for (Net net : nets.all) {
      List<String> to = net.links.stream().map(Link::to).toList();
      open(svg, net.first, String.join(" ", to));
      draw(svg, net, words);
      svg.closeGroup();
    }
    for (Link link : nets.straight) {
      open(svg, link, link.to());
      straight(svg, link, words);
      svg.closeGroup();
    }
    nets.boxes.forEach(b -> draw(svg, b));
  }

  private static void open(Svg svg, Link link, String to) {
    svg.openGroup("from", link.from(), "to", to, "line", link.line().name().toLowerCase());
  }

  private void draw(Svg svg, Net net, SchematicWords words) {
    Link link = net.first;
    Wires wires = new Wires(net, channels, columns);
    Look look = LineLooks.of(link.line(), link.shut());
    wires.pieces.forEach(p -> svg.line(p.x1(), p.y1(), p.x2(), p.y2(), look));
    wires.joints.stream()
        .distinct()
        .forEach(j -> svg.circle(j.x(), j.y(), JOINT, Look.solid(look.stroke())));
    Pin stem = net.stem();
    double out = Wires.outward(stem);
    label(svg, columns.port(stem) + 2.5 * out, stem.y - UNDER_LINE, out, letter(link, words), true);
    for (Pin pin : net.pins.subList(1, net.pins.size())) {
      if (!pin.passes()) {
        end(svg, pin);
      }
    }
  }

  private String letter(Link link, SchematicWords words) {
    return letters ? words.letters().getOrDefault(link.line(), "") : "";
  }

  private void end(Svg svg, Pin pin) {
    double x = columns.port(pin);
    double out = Wires.outward(pin);
    arrow(svg, x, pin.y, out, 0);
    if (pin.net.first.shut()) {
      bar(svg, x + Ranks.BAR * out, pin.y, true);
    }
    label(svg, x + 3 * out, pin.y - UNDER_ARROW, out, pin.words, false);
  }

  private static void label(Svg svg, double x, double y, double out, String words, boolean bold) {
    if (!words.isEmpty()) {
      svg.text(x, y, BoxText.SIZE, bold, out < 0 ? "end" : "start", words);
    }
  }

  /** An arrow with its tip here, that comes from the side named by (dx, dy). */
  private static void arrow(Svg svg, double x, double y, double dx, double dy) {
    double long_ = Ranks.ARROW;
    double half = Ranks.ARROW / 2;
    double footX = x + long_ * dx;
    double footY = y + long_ * dy;
    svg.polygon(
        Look.solid(Svg.BLACK),
        x,
        y,
        footX + half * dy,
        footY + half * dx,
        footX - half * dy,
        footY - half * dx);
  }

  private static void bar(Svg svg, double x, double y, boolean upright) {
    double dx = upright ? 0 : Ranks.ARROW;
    double dy = upright ? Ranks.ARROW : 0;
    svg.line(x - dx, y - dy, x + dx, y + dy, Look.line(2.4));
  }

  private void straight(Svg svg, Link link, SchematicWords words) {
    Box from = nets.box(link.from());
    Box to = nets.box(link.to());
    boolean down = from.lane() < to.lane();
    Box upper = down ? from : to;
    Box lower = down ? to : from;
    double x = columns.middle(from.rank());
    double top = heights.bottom(upper);
    double bottom = heights.top(lower);
    svg.line(x, top, x, bottom, LineLooks.of(link.line(), link.shut()));
    arrow(svg, x, down ? bottom : top, 0, down ? -1 : 1);
    if (link.shut()) {
      bar(svg, x, top + (bottom - top) / 2, false);
    }
    String label = (letter(link, words) + " " + link.words()).strip();
    label(svg, x + 7, top + 11, 1, label, link.words().isEmpty());
  }

  private void draw(Svg svg, Box box) {
    svg.openGroup("box", box.id());
    if (!box.gear().isEmpty() && !box.code().isEmpty()) {
      svg.openCallOut(box.gear(), box.code());
    }
    double x = columns.left[box.rank()];
    double wide = columns.width[box.rank()];
    BoxShape.draw(svg, box.shape(), x, heights.top(box), wide, heights.height(box));
    texts.get(box.id()).draw(svg, x, heights.top(box));
    if (!box.gear().isEmpty() && !box.code().isEmpty()) {
      svg.closeGroup();
    }
    svg.closeGroup();
  }
}
