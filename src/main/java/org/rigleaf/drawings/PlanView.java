package org.rigleaf.drawings;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;

/** The rig from above, front at the top: all that is outside, or all that is inside. */
final class PlanView {
  private final Rig rig;
  private final View view;
  private final MapWords words;
  private final Sheet sheet;
  private final List<Site> sites;
  private final List<Leaders.Port> ports;

  private PlanView(Rig rig, View view, List<Gear> gear, MapWords words) {
    this.rig = rig;
    this.view = view;
    this.words = words;
    List<String> names = gear.stream().map(words::name).toList();
    List<String> codes = gear.stream().map(g -> MapWords.code(rig, g)).toList();
    int street = Leaders.streetCount(gear.stream().map(Sites::home).toList(), Sheet.capacity());
    int most = Math.max(street, gear.size() - street);
    Size size = Size.of(rig);
    sheet =
        view == View.INSIDE ? Sheet.half(size, most, codes) : Sheet.of(size, most, codes, names);
    sites = Sites.of(rig, gear, sheet.plan());
    double[] needs = names.stream().mapToDouble(sheet::need).toArray();
    ports = Leaders.match(sites, street, sheet.street(), sheet.curb(), sheet.row(), needs);
  }

  /** Draws it, in parts where there is too much for two columns of labels. */
  static List<Drawing> draw(Rig rig, View view, MapWords words) {
    List<Gear> gear = rig.gear().stream().filter(view::shows).toList();
    Sites places = Sites.on(rig, new Plan(Size.of(rig), 0, 0, 1));
    return Parts.of(gear, 2 * Sheet.capacity(), places::aft).stream()
        .map(part -> new PlanView(rig, view, part, words).draw())
        .toList();
  }

  private Drawing draw() {
    String alt = words.alt(view, rig, codes());
    Svg svg = new Svg().open(sheet.wide(), sheet.height(), alt);
    boolean inside = view == View.INSIDE;
    Openings openings = new Openings(svg, sheet.plan());
    openings.drawSlides(rig);
    Outline outline = new Outline(svg, sheet.plan());
    outline.draw(rig);
    if (!inside) {
      outline.drawAxles(rig);
      openings.drawOutside(rig);
    }
    openings.drawDoor(rig);
    new Furniture(svg, sheet, words).draw(rig, sites, inside);
    new Labels(svg, sheet).draw(sites, ports, words);
    Set<String> drawn = sites.stream().map(s -> s.gear().id()).collect(Collectors.toSet());
    return new Drawing(svg.close(), alt, CallOut.all(rig, drawn));
  }

  /** From front to rear. */
  private List<String> codes() {
    return IntStream.range(0, sites.size())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> sites.get(i).y()))
        .map(i -> sites.get(i).code())
        .toList();
  }
}
