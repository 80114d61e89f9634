package org.rigleaf.drawings;

import java.util.List;
import java.util.Map;
import org.rigleaf.drawings.Svg.Look;

/** Draws the call-outs: leader, dot, badge with the code, name. */
final class Labels {
  private static final double CODE_DROP = Sheet.CODE_SIZE * 0.711 / 2;
  private static final double NAME_DROP = Sheet.NAME_SIZE * 0.711 / 2;

  private final Svg svg;
  private final Sheet sheet;

  Labels(Svg svg, Sheet sheet) {
    this.svg = svg;
    this.sheet = sheet;
  }

  void draw(List<Site> sites, List<Leaders.Port> ports, Map<String, String> names) {
    for (int i = 0; i < sites.size(); i++) {
      Site site = sites.get(i);
      svg.openCallOut(site.gear().id(), site.code());
      draw(site, ports.get(i), names.getOrDefault(site.gear().id(), ""));
      svg.closeCallOut();
    }
  }

  private void draw(Site site, Leaders.Port port, String name) {
    double out = port.street() ? -1 : 1;
    double badge = port.x() + out * Sheet.SHELF + out * outer(port);
    svg.leader(site.x(), site.y(), port.x(), port.y(), badge, port.y());
    site.mark().draw(svg, site.x(), site.y());
    badge(port.street() ? badge - sheet.badgeWide() : badge, port.y(), site.code());
    if (sheet.names()) {
      double x = badge + out * (sheet.badgeWide() + Sheet.NAME_GAP);
      name(x, port.y(), port.street() ? "end" : "start", name);
    }
  }

  /** Without names every second badge stands further out, and its leader passes between two. */
  private double outer(Leaders.Port port) {
    return sheet.names() || port.row() % 2 == 0 ? 0 : sheet.badgeWide() + Sheet.NAME_GAP;
  }

  private void badge(double x, double y, String code) {
    double high = sheet.badgeHigh();
    Look look = Look.line(0.9).filled(Svg.WHITE);
    svg.rect(x, y - high / 2, sheet.badgeWide(), high, high / 2, look);
    double middle = x + sheet.badgeWide() / 2;
    svg.text(middle, y + CODE_DROP, Sheet.CODE_SIZE, true, "middle", code);
  }

  private void name(double x, double y, String anchor, String name) {
    List<String> lines = TextFit.wrap(name, Sheet.NAME_SIZE, sheet.nameRoom(), sheet.nameLines());
    double first = y + NAME_DROP - (lines.size() - 1) * Sheet.NAME_LEADING / 2;
    for (int i = 0; i < lines.size(); i++) {
      svg.text(x, first + i * Sheet.NAME_LEADING, Sheet.NAME_SIZE, false, anchor, lines.get(i));
    }
  }
}
