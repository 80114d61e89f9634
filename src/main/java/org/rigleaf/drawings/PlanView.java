package org.rigleaf.drawings;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;

/** The system map: the rig from above, front at the top, every piece of gear with its code. */
public final class PlanView {
  private PlanView() {}

  /**
   * Draws the map; the same rig and names give the same bytes.
   *
   * @param rig whose gear has codes
   * @param names printed names by gear id; gear without one shows its code alone
   */
  public static Drawing draw(Rig rig, Map<String, String> names) {
    List<Gear> gear = placed(rig);
    List<String> words = gear.stream().map(g -> names.getOrDefault(g.id(), "")).toList();
    int street = Leaders.streetCount(gear.stream().map(Sites::home).toList(), capacity(gear));
    int most = Math.max(street, gear.size() - street);
    Sheet sheet =
        Sheet.of(Size.of(rig), most, gear.stream().map(g -> code(rig, g)).toList(), words);
    List<Site> sites = Sites.of(rig, gear, sheet.plan());
    double[] needs = words.stream().mapToDouble(sheet::need).toArray();
    List<Leaders.Port> ports =
        Leaders.match(sites, street, sheet.street(), sheet.curb(), sheet.row(), needs);
    String alt = PlanWords.alt(rig.identity(), sites.size());
    return new Drawing(svg(rig, names, sheet, sites, ports, alt), alt, callOuts(rig, sites));
  }

  /** Gear with a spot, as much of it as two columns of bare codes can hold. */
  private static List<Gear> placed(Rig rig) {
    return rig.gear().stream()
        .filter(g -> g.place().spot().isPresent())
        .limit(2L * Sheet.capacity(false))
        .toList();
  }

  private static int capacity(List<Gear> gear) {
    return Sheet.capacity(gear.size() <= 2 * Sheet.capacity(true));
  }

  static String code(Rig rig, Gear gear) {
    return rig.codes().getOrDefault(gear.id(), "?");
  }

  private static String svg(
      Rig rig,
      Map<String, String> names,
      Sheet sheet,
      List<Site> sites,
      List<Leaders.Port> ports,
      String alt) {
    Svg svg = new Svg().open(Sheet.WIDE, sheet.height(), alt);
    Openings openings = new Openings(svg, sheet.plan());
    openings.drawSlides(rig);
    new Outline(svg, sheet.plan()).draw(rig);
    openings.drawRest(rig);
    new Furniture(svg, sheet).draw(rig, sites);
    new Labels(svg, sheet).draw(sites, ports, names);
    return svg.close();
  }

  private static List<CallOut> callOuts(Rig rig, List<Site> sites) {
    Set<String> drawn = sites.stream().map(s -> s.gear().id()).collect(Collectors.toSet());
    return rig.gear().stream()
        .map(g -> new CallOut(g.id(), code(rig, g), drawn.contains(g.id())))
        .toList();
  }
}
