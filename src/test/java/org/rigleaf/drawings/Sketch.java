package org.rigleaf.drawings;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** A drawing read back as shapes, so that tests measure what a reader sees. */
final class Sketch {
  final Document svg;

  Sketch(Drawing drawing) {
    this.svg = Jsoup.parse(drawing.svg(), "", Parser.xmlParser());
  }

  static double number(Element e, String key) {
    return Double.parseDouble(e.attr(key));
  }

  static double[] numbers(String list) {
    return Arrays.stream(list.trim().split("[\\s,A-Za-z]+"))
        .filter(s -> !s.isEmpty())
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  double wide() {
    return numbers(svg.selectFirst("svg").attr("viewBox"))[2];
  }

  double high() {
    return numbers(svg.selectFirst("svg").attr("viewBox"))[3];
  }

  List<Element> callOuts() {
    return svg.select("g[data-gear]");
  }

  Element callOut(String gear) {
    return svg.selectFirst("g[data-gear=" + gear + "]");
  }

  /** Both segments of a leader. */
  static List<Line2D> leader(Element callOut) {
    double[] xy = numbers(callOut.selectFirst(".leader").attr("points"));
    List<Line2D> lines = new ArrayList<>();
    for (int i = 0; i + 3 < xy.length; i += 2) {
      lines.add(new Line2D.Double(xy[i], xy[i + 1], xy[i + 2], xy[i + 3]));
    }
    return lines;
  }

  static double[] dot(Element callOut) {
    return Arrays.copyOf(numbers(callOut.selectFirst(".leader").attr("points")), 2);
  }

  static Rectangle2D badge(Element callOut) {
    return box(callOut.select("rect[rx]").last());
  }

  private static Rectangle2D box(Element rect) {
    return new Rectangle2D.Double(
        number(rect, "x"), number(rect, "y"), number(rect, "width"), number(rect, "height"));
  }

  List<Element> texts() {
    return svg.select("text");
  }

  /** Where the ink of a text can be: from the height of a capital to the tail of a g. */
  static Rectangle2D ink(Element text) {
    double size = number(text, "font-size");
    double width = TextFit.width(text.text(), size, text.hasAttr("font-weight"));
    double x = number(text, "x");
    double left =
        switch (text.attr("text-anchor")) {
          case "start" -> x;
          case "end" -> x - width;
          default -> x - width / 2;
        };
    return new Rectangle2D.Double(left, number(text, "y") - 0.72 * size, width, 0.93 * size);
  }

  /** Corners of every shape, texts included. */
  List<double[]> corners() {
    List<double[]> all = new ArrayList<>();
    for (Element e : svg.select("svg *")) {
      switch (e.tagName()) {
        case "text" -> box(all, ink(e));
        case "rect" -> box(all, box(e));
        case "line" -> {
          all.add(new double[] {number(e, "x1"), number(e, "y1")});
          all.add(new double[] {number(e, "x2"), number(e, "y2")});
        }
        case "circle" -> {
          double r = number(e, "r");
          all.add(new double[] {number(e, "cx") - r, number(e, "cy") - r});
          all.add(new double[] {number(e, "cx") + r, number(e, "cy") + r});
        }
        case "polyline", "polygon", "path" -> {
          double[] xy = numbers(e.attr("points") + e.attr("d"));
          for (int i = 0; i + 1 < xy.length; i += 2) {
            all.add(new double[] {xy[i], xy[i + 1]});
          }
        }
        default -> {}
      }
    }
    return all;
  }

  private static void box(List<double[]> all, Rectangle2D r) {
    all.add(new double[] {r.getMinX(), r.getMinY()});
    all.add(new double[] {r.getMaxX(), r.getMaxY()});
  }

  List<String> words() {
    return texts().stream().map(Element::text).collect(Collectors.toList());
  }
}
