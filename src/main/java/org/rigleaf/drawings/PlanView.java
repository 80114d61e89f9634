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
    Size size = Size.of(rig);
    List<Site> rough = fitting(Sites.of(rig, new Plan(size, 0, 0, 1)));
    int street = Leaders.streetCount(rough, capacity(rough.size()));
    int most = Math.max(street, rough.size() - street);
    List<String> words = rough.stream().map(s -> names.getOrDefault(s.gear().id(), "")).toList();
    Sheet sheet = Sheet.of(size, most, rough.stream().map(Site::code).toList(), words);
    List<Site> sites = fitting(Sites.of(rig, sheet.plan()));
    double[] needs = words.stream().mapToDouble(sheet::need).toArray();
    List<Leaders.Port> ports =
        Leaders.match(sites, street, sheet.street(), sheet.curb(), sheet.row(), needs);
    String alt = PlanWords.alt(rig.identity(), sites.size());
    return new Drawing(svg(rig, names, sheet, sites, ports, alt), alt, callOuts(rig, sites));
  }

  /** Sites on a plan of one point a foot tell how many labels go where; places come later. */
  private static int capacity(int sites) {
    return Sheet.capacity(sites <= 2 * Sheet.capacity(true));
  }

  private static List<Site> fitting(List<Site> sites) {
    return sites.subList(0, Math.min(sites.size(), 2 * Sheet.capacity(false)));
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
        .map(Gear::id)
        .map(id -> new CallOut(id, rig.codes().getOrDefault(id, "?"), drawn.contains(id)))
        .toList();
  }
}
