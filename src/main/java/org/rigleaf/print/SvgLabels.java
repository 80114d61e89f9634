package org.rigleaf.print;

import java.util.List;
import java.util.Locale;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Lays the words of a drawing over it as HTML, at the same places: the renderer would print SVG
 * text as outlines, which can be neither searched nor read aloud.
 */
final class SvgLabels {
  /** Where the baseline of our face stands below the top of a line as high as its size. */
  private static final double BASELINE = 0.846;

  private static final double WIDEST = 1000;

  /** On A4 a drawing is a thirtieth smaller; its words are never smaller than this. */
  private static final double SMALLEST = 10;

  private final Element svg;
  private final Element frame;
  private final double scale;
  private final double left;
  private final double top;

  private SvgLabels(Element svg, double widest) {
    this.svg = svg;
    String[] box = svg.getAttribute("viewBox").trim().split("[ ,]+");
    left = Double.parseDouble(box[0]);
    top = Double.parseDouble(box[1]);
    double width = Double.parseDouble(box[2]);
    double height = Double.parseDouble(box[3]);
    scale = Math.min(1, widest / width);
    Element parent = (Element) svg.getParentNode();
    frame = svg.getOwnerDocument().createElementNS(parent.getNamespaceURI(), "div");
    frame.setAttribute(
        "style", "position: relative; margin: 0 auto;" + pt("width", width) + pt("height", height));
    parent.replaceChild(frame, svg);
    frame.appendChild(svg);
    svg.setAttribute("style", "display: block; " + pt("width", width) + pt("height", height));
    svg.setAttribute("width", "" + width * scale / 0.75);
    svg.setAttribute("height", "" + height * scale / 0.75);
  }

  /**
   * Gives every drawing its alternative text and its labels.
   *
   * @param widest widest drawing that fits, in points; a wider one is scaled down
   * @throws IllegalArgumentException if a label is turned or shifted, which print could not follow
   */
  static void lay(Document document, double widest) {
    for (Element svg : Dom.named(document, "svg")) {
      svg.setAttribute("alt", alt(svg));
      List<Element> texts = Dom.named(svg, "text");
      if (!texts.isEmpty()) {
        SvgLabels labels = new SvgLabels(svg, widest);
        texts.forEach(labels::label);
      }
    }
  }

  private static String alt(Element svg) {
    String label = svg.getAttribute("aria-label");
    if (svg.getParentNode() instanceof Element drawn && drawn.hasAttribute("data-alt")) {
      label = drawn.getAttribute("data-alt");
    }
    return label;
  }

  private void label(Element text) {
    refuseTransforms(text);
    double size = Math.max(SMALLEST, number(inherited(text, "font-size", "12")) * scale);
    double x = (number(text.getAttribute("x")) - left) * scale;
    double baseline = (number(text.getAttribute("y")) - top) * scale;
    String anchor = inherited(text, "text-anchor", "start");
    double start =
        switch (anchor) {
          case "middle" -> x - WIDEST / 2;
          case "end" -> x - WIDEST;
          default -> x;
        };
    String align =
        switch (anchor) {
          case "middle" -> "center";
          case "end" -> "right";
          default -> "left";
        };
    Element span = Dom.append(frame, "span", "class", "label");
    span.setTextContent(text.getTextContent());
    span.setAttribute(
        "style",
        "position: absolute; z-index: 2; white-space: nowrap; text-align: "
            + align
            + ";"
            + raw("left", start)
            + raw("top", baseline - BASELINE * size)
            + raw("width", WIDEST)
            + raw("font-size", size)
            + raw("line-height", size)
            + "font-weight: "
            + weight(inherited(text, "font-weight", "400"))
            + "; color: "
            + inherited(text, "fill", "#000")
            + ";");
    Dom.remove(text);
  }

  private void refuseTransforms(Element text) {
    for (Node n = text; n instanceof Element e; n = n.getParentNode()) {
      if (e.hasAttribute("transform")) {
        throw new IllegalArgumentException(
            "a label of a drawing is transformed: " + text.getTextContent());
      }
    }
  }

  private String inherited(Element text, String attribute, String otherwise) {
    for (Node n = text; n instanceof Element e; n = n.getParentNode()) {
      if (e.hasAttribute(attribute) && (e == text || !attribute.equals("fill"))) {
        return e.getAttribute(attribute);
      }
      if (n == svg) {
        break;
      }
    }
    return otherwise;
  }

  private static String weight(String weight) {
    return weight.equals("bold") || weight.compareTo("600") >= 0 && weight.length() == 3
        ? "700"
        : "400";
  }

  private static double number(String text) {
    return text.isEmpty() ? 0 : Double.parseDouble(text.replaceAll("(px|pt)$", ""));
  }

  private String pt(String property, double unscaled) {
    return raw(property, unscaled * scale);
  }

  private static String raw(String property, double points) {
    return String.format(Locale.ROOT, "%s: %.3fpt; ", property, points);
  }
}
