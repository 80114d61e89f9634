package org.rigleaf.print;

import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Makes the printed document out of the delivered one: running heads and feet in a version for each
 * side of the leaf, page numbers, bookmarks, the style for paper.
 */
final class Furniture {
  private Furniture() {}

  /** Changes the document in place. */
  static void fit(Document document, String style) {
    Element head = Dom.named(document, "head").get(0);
    Dom.named(head, "style").forEach(Dom::remove);
    Dom.append(head, "style").setTextContent(style);
    Dom.ofClass(document, "folio").forEach(e -> Dom.append(e, "span", "class", "pages"));
    Dom.ofClass(document, "furniture").forEach(Furniture::mirror);
    Dom.ofClass(document, "procedure").forEach(Furniture::keepTail);
    bookmarks(document, head);
  }

  private static void mirror(Element furniture) {
    for (String part : new String[] {"head", "foot", "tab"}) {
      for (Element one : Dom.ofClass(furniture, part)) {
        Element other = (Element) one.cloneNode(true);
        one.setAttribute("class", one.getAttribute("class") + " " + part + "-right");
        other.setAttribute("class", other.getAttribute("class") + " " + part + "-left");
        furniture.appendChild(other);
      }
    }
  }

  /** Keeps the closing line of a task on the page of its last two steps. */
  private static void keepTail(Element procedure) {
    List<Element> lists = Dom.ofClass(procedure, "steps");
    List<Element> done = Dom.ofClass(procedure, "done");
    if (lists.isEmpty() || done.isEmpty()) {
      return;
    }
    Element list = lists.get(lists.size() - 1);
    Element group = (Element) list.getParentNode();
    List<Element> steps = Dom.ofClass(list, "step");
    Element tail = Dom.append(procedure, "div", "class", "tail");
    if (steps.size() <= 2) {
      tail.appendChild(group);
    } else {
      Element last = Dom.append(tail, "ol", "class", "steps");
      steps.subList(steps.size() - 2, steps.size()).forEach(last::appendChild);
      group.setAttribute("class", "group continues");
    }
    tail.appendChild(done.get(0));
  }

  /** A bookmark a topic, under its section. */
  private static void bookmarks(Document document, Element head) {
    Element list = Dom.append(head, "bookmarks");
    Element section = null;
    for (Element leaf : Dom.ofClass(document, "leaf")) {
      String title = leaf.getAttribute("data-section");
      if (title.isEmpty()) {
        bookmark(list, leaf.getAttribute("data-bookmark"), leaf);
      } else {
        if (section == null || !section.getAttribute("name").equals(title)) {
          section = bookmark(list, title, leaf);
        }
        bookmark(section, leaf.getAttribute("data-bookmark"), leaf);
      }
    }
  }

  private static Element bookmark(Element parent, String name, Element leaf) {
    return Dom.append(parent, "bookmark", "name", name, "href", "#" + leaf.getAttribute("id"));
  }
}
