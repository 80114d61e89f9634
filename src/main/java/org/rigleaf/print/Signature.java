package org.rigleaf.print;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * The pages of a saddle-stitched booklet as they lie on its sheets: printed on both sides, turned
 * over the short edge, laid in one pile, folded and stapled in the fold, they read in order. The
 * usual way of a printer; no source.
 */
final class Signature {
  private static final int SIDES = 4; // pages a sheet

  private Signature() {}

  /** Lays the pages of a document two on a side; blank ones fill the last sheet. */
  static void order(Document document) {
    List<Element> pages = Dom.ofClass(document, "bound");
    Element parent = (Element) pages.get(0).getParentNode();
    pages.forEach(Dom::remove);
    List<int[]> sides = sides(pages.size());
    for (int[] side : sides) {
      Element sheet = div(document, "sheet" + (side == sides.get(sides.size() - 1) ? " last" : ""));
      parent.appendChild(sheet);
      for (int slot = 0; slot < side.length; slot++) {
        if (side[slot] <= pages.size()) {
          Element page = pages.get(side[slot] - 1);
          page.setAttribute("class", page.getAttribute("class") + " half-" + slot);
          sheet.appendChild(page);
        }
      }
    }
  }

  /**
   * The numbers of the pages on each side of the sheets, left and right; the outermost sheet first,
   * its outer side before its inner one. A number past the last page is a blank one.
   */
  static List<int[]> sides(int pages) {
    int all = (pages + SIDES - 1) / SIDES * SIDES;
    List<int[]> sides = new ArrayList<>();
    for (int first = 1; first <= all / 2; first += 2) {
      int last = all + 1 - first;
      sides.add(new int[] {last, first});
      sides.add(new int[] {first + 1, last - 1});
    }
    return sides;
  }

  private static Element div(Document document, String name) {
    Element div = document.createElementNS(document.getDocumentElement().getNamespaceURI(), "div");
    div.setAttribute("class", name);
    return div;
  }
}
