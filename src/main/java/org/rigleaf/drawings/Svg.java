package org.rigleaf.drawings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Writes SVG: plain elements, every text with its own x, y, size and anchor, no transforms, no ids.
 * Print can therefore lay HTML over each text, and two drawings can stand on one page.
 */
final class Svg {
  static final String BLACK = "#000000";
  static final String GRAY = "#555555";
  static final String WHITE = "#ffffff";

  /** How a line is drawn: stroke, width in points, dashes ('' is continuous), fill. */
  record Look(String stroke, double width, String dashes, String fill) {
    static Look line(double width) {
      return new Look(BLACK, width, "", "none");
    }

    static Look solid(String fill) {
      return new Look("none", 0, "", fill);
    }

    Look filled(String color) {
      return new Look(stroke, width, dashes, color);
    }

    Look dashed(String pattern) {
      return new Look(stroke, width, pattern, fill);
    }

    Look in(String color) {
      return new Look(color, width, dashes, fill);
    }
  }

  private final StringBuilder out = new StringBuilder();

  Svg open(double width, double height, String label) {
    return open(width, height, "img", label);
  }

  /** A picture whose words are read aloud one by one; no list beside it says the same. */
  Svg openWords(double width, double height, String label) {
    return open(width, height, "group", label);
  }

  private Svg open(double width, double height, String role, String label) {
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
        .append(number(width) + " " + number(height))
        .append("\" role=\"" + role + "\" aria-label=\"" + escape(label) + "\"")
        .append(" font-family=\"'DejaVu Sans Condensed', 'DejaVu Sans', Verdana, sans-serif\">\n");
    return this;
  }

  Svg openCallOut(String gear, String code) {
    out.append("<g data-gear=\"" + escape(gear) + "\" data-code=\"" + escape(code) + "\">\n");
    return this;
  }

  /** A group that says what it stands for, in pairs of name and value. */
  Svg openGroup(String... data) {
    out.append("<g");
    for (int i = 0; i < data.length; i += 2) {
      out.append(" data-" + data[i] + "=\"" + escape(data[i + 1]) + "\"");
    }
    out.append(">\n");
    return this;
  }

  Svg closeGroup() {
    out.append("</g>\n");
    return this;
  }

  Svg closeCallOut() {
    out.append("</g>\n");
    return this;
  }

  String close() {
    return out.append("</svg>\n").toString();
  }

  Svg line(double x1, double y1, double x2, double y2, Look look) {
    return element("line" + at("x1", x1) + at("y1", y1) + at("x2", x2) + at("y2", y2), look);
  }

  Svg leader(double... xy) {
    return element("polyline class=\"leader\" points=\"" + points(xy) + "\"", Look.line(0.4));
  }

  Svg polygon(Look look, double... xy) {
    return element("polygon points=\"" + points(xy) + "\"", look);
  }

  /** A path of absolute commands; numbers and letters alternate freely. */
  Svg path(Look look, Path path) {
    String d = path.steps().stream().map(Svg::command).collect(Collectors.joining(" "));
    return element("path d=\"" + d + "\"", look);
  }

  private static String command(Path.Step step) {
    String numbers =
        Arrays.stream(step.xy()).mapToObj(n -> " " + number(n)).collect(Collectors.joining());
    return step.command() + numbers;
  }

  Svg rect(double x, double y, double width, double height, double round, Look look) {
    String size = at("width", width) + at("height", height) + (round > 0 ? at("rx", round) : "");
    return element("rect" + at("x", x) + at("y", y) + size, look);
  }

  Svg circle(double x, double y, double radius, Look look) {
    return element("circle" + at("cx", x) + at("cy", y) + at("r", radius), look);
  }

  /** One line of text; y is its baseline, anchor is start, middle or end. */
  Svg text(double x, double y, double size, boolean bold, String anchor, String words) {
    out.append("<text" + at("x", x) + at("y", y) + at("font-size", size))
        .append(bold ? " font-weight=\"bold\"" : "")
        .append(" text-anchor=\"" + anchor + "\">" + escape(words) + "</text>\n");
    return this;
  }

  private Svg element(String start, Look look) {
    out.append("<" + start).append(" fill=\"" + look.fill() + "\"");
    if (look.width() > 0) {
      out.append(" stroke=\"" + look.stroke() + "\"" + at("stroke-width", look.width()));
    }
    if (!look.dashes().isEmpty()) {
      out.append(" stroke-dasharray=\"" + look.dashes() + "\"");
    }
    out.append("/>\n");
    return this;
  }

  private static String at(String name, double value) {
    return " " + name + "=\"" + number(value) + "\"";
  }

  private static String points(double... xy) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < xy.length; i += 2) {
      text.append(i == 0 ? "" : " ").append(number(xy[i]) + "," + number(xy[i + 1]));
    }
    return text.toString();
  }

  /** Hundredths of a point, the same bytes on every machine. */
  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Text that cannot become markup; characters that XML forbids become spaces. */
  static String escape(String text) {
    return text.replaceAll("[^\\t\\n\\r\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", " ")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
