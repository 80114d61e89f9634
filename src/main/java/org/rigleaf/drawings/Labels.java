package org.rigleaf.drawings;

import java.util.List;

/** Draws the call-outs of a plan: leader, dot, badge with the code, name. */
final class Labels {
  private static final double NAME_DROP = Sheet.NAME_SIZE * 0.711 / 2;

  private final Svg svg;
  private final Sheet sheet;

  Labels(Svg svg, Sheet sheet) {
    this.svg = svg;
    this.sheet = sheet;
  }

  void draw(List<Site> sites, List<Leaders.Port> ports, MapWords words) {
    for (int i = 0; i < sites.size(); i++) {
      Site site = sites.get(i);
      svg.openCallOut(site.gear().id(), site.code());
      draw(site, ports.get(i), words.name(site.gear()));
      svg.closeCallOut();
    }
  }

  private void draw(Site site, Leaders.Port port, String name) {
    double out = port.street() ? -1 : 1;
    double wide = sheet.badges().wide();
    double badge = port.x() + out * Sheet.SHELF;
    svg.leader(site.x(), site.y(), port.x(), port.y(), badge, port.y());
    site.mark().draw(svg, site.x(), site.y());
    sheet.badges().draw(svg, port.street() ? badge - wide : badge, port.y(), site.code());
    if (sheet.names()) {
      double x = badge + out * (wide + Sheet.NAME_GAP);
      name(x, port.y(), port.street() ? "end" : "start", name);
    }
  }

  private void name(double x, double y, String anchor, String name) {
    List<String> lines = TextFit.wrap(name, Sheet.NAME_SIZE, sheet.nameRoom(), sheet.nameLines());
    double first = y + NAME_DROP - (lines.size() - 1) * Sheet.NAME_LEADING / 2;
    for (int i = 0; i < lines.size(); i++) {
      svg.text(x, first + i * Sheet.NAME_LEADING, Sheet.NAME_SIZE, false, anchor, lines.get(i));
    }
  }
}
