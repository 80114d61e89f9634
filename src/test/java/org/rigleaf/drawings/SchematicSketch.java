package org.rigleaf.drawings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** A schematic read back: boxes, lines, words, and all that is wrong with them as a reader sees. */
final class SchematicSketch {
  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final double TOUCH = 0.02;

  /** A group of pieces of line that hang together, from one box to others. */
  record Run(String from, List<String> to, List<LineString> pieces) {}

  private final Sketch sketch;
  final Map<String, Geometry> boxes = new TreeMap<>();
  final List<Run> runs = new ArrayList<>();

  SchematicSketch(Drawing drawing) {
    sketch = new Sketch(drawing);
    for (Element g : sketch.svg.select("g[data-box]")) {
      boxes.put(g.attr("data-box"), outline(g));
    }
    for (Element g : sketch.svg.select("g[data-from]")) {
      List<LineString> pieces =
          g.select("line").stream()
              .filter(l -> !l.attr("stroke-width").equals("2.4") || l.hasAttr("stroke-dasharray"))
              .map(SchematicSketch::line)
              .toList();
      runs.add(new Run(g.attr("data-from"), List.of(g.attr("data-to").split(" ")), pieces));
    }
  }

  private static Geometry outline(Element g) {
    Element shape = g.select("rect, polygon").first();
    Envelope e = new Envelope();
    if (shape.tagName().equals("rect")) {
      double x = Sketch.number(shape, "x");
      double y = Sketch.number(shape, "y");
      e.expandToInclude(x, y);
      e.expandToInclude(x + Sketch.number(shape, "width"), y + Sketch.number(shape, "height"));
    } else {
      double[] xy = Sketch.numbers(shape.attr("points"));
      for (int i = 0; i < xy.length; i += 2) {
        e.expandToInclude(xy[i], xy[i + 1]);
      }
    }
    return SHAPES.toGeometry(e);
  }

  private static LineString line(Element l) {
    return SHAPES.createLineString(
        new Coordinate[] {
          new Coordinate(Sketch.number(l, "x1"), Sketch.number(l, "y1")),
          new Coordinate(Sketch.number(l, "x2"), Sketch.number(l, "y2"))
        });
  }

  List<Geometry> words() {
    return sketch.texts().stream().map(SchematicSketch::ink).toList();
  }

  private static Geometry ink(Element text) {
    var r = Sketch.ink(text);
    return SHAPES.toGeometry(new Envelope(r.getMinX(), r.getMaxX(), r.getMinY(), r.getMaxY()));
  }

  List<String> texts() {
    return sketch.words();
  }

  /** Words of one box, joined. */
  String textOf(String box) {
    return sketch.svg.selectFirst("g[data-box=" + box + "]").select("text").stream()
        .map(Element::text)
        .collect(Collectors.joining(" "));
  }

  double high() {
    return sketch.high();
  }

  /** True if a line that hangs together runs from one box to the other. */
  boolean joins(String from, String to) {
    return runs.stream()
        .filter(r -> r.from().equals(from) && r.to().contains(to))
        .map(SchematicSketch::whole)
        .anyMatch(w -> w.distance(boxes.get(from)) < TOUCH && w.distance(boxes.get(to)) < TOUCH);
  }

  /** All pieces as one geometry; fails if they fall apart. */
  private static Geometry whole(Run run) {
    Geometry fat =
        run.pieces().stream()
            .map(p -> p.buffer(TOUCH))
            .reduce(Geometry::union)
            .orElseThrow(() -> new AssertionError(run + " has no line"));
    if (fat.getNumGeometries() != 1) {
      throw new AssertionError(run + " falls apart");
    }
    return SHAPES.createGeometryCollection(run.pieces().toArray(new Geometry[0])).union();
  }

  /** What a careful reader would complain of. */
  List<String> complaints() {
    List<String> all = new ArrayList<>();
    boxesApart(all);
    linesClear(all);
    wordsClear(all);
    inside(all);
    return all;
  }

  private void boxesApart(List<String> all) {
    boxes.forEach(
        (a, g) ->
            boxes.forEach(
                (b, h) -> {
                  if (a.compareTo(b) < 0 && g.distance(h) < 2) {
                    all.add("boxes " + a + " and " + b + " touch");
                  }
                }));
  }

  private void linesClear(List<String> all) {
    record Piece(Run run, LineString line) {}
    List<Piece> pieces =
        runs.stream().flatMap(r -> r.pieces().stream().map(p -> new Piece(r, p))).toList();
    for (int i = 0; i < pieces.size(); i++) {
      Piece a = pieces.get(i);
      boxes.forEach(
          (id, box) -> {
            if (a.line().intersects(box.buffer(-TOUCH))) {
              all.add("a line of " + a.run().from() + " runs through box " + id);
            }
            boolean end = a.run().from().equals(id) || a.run().to().contains(id);
            if (!end && a.line().distance(box) < 2) {
              all.add("a line of " + a.run().from() + " touches box " + id);
            }
          });
      for (int j = i + 1; j < pieces.size(); j++) {
        Piece b = pieces.get(j);
        boolean along = a.line().intersection(b.line()).getLength() > TOUCH;
        boolean near = a.run() != b.run() && alike(a.line(), b.line()) < 3;
        if (along || near) {
          all.add("lines of " + a.run().from() + " and " + b.run().from() + " lie on each other");
        }
      }
    }
  }

  /** How far two parallel pieces that run side by side are apart; much if they do not. */
  private static double alike(LineString a, LineString b) {
    Envelope e = a.getEnvelopeInternal();
    Envelope f = b.getEnvelopeInternal();
    boolean level = e.getHeight() < TOUCH && f.getHeight() < TOUCH;
    boolean upright = e.getWidth() < TOUCH && f.getWidth() < TOUCH;
    return (level || upright) && !a.isEmpty() ? a.distance(b) : Double.MAX_VALUE;
  }

  private void wordsClear(List<String> all) {
    List<Element> texts = sketch.texts();
    for (int i = 0; i < texts.size(); i++) {
      Element text = texts.get(i);
      Geometry ink = ink(text);
      String own =
          text.closest("[data-box]") == null ? "" : text.closest("[data-box]").attr("data-box");
      boxes.forEach(
          (id, box) -> {
            if (id.equals(own) ? !box.covers(ink) : box.intersects(ink)) {
              all.add("'" + text.text() + "' and box " + id + " are in each other's way");
            }
          });
      runs.stream()
          .filter(r -> r.pieces().stream().anyMatch(p -> p.distance(ink) < 0.6))
          .forEach(r -> all.add("'" + text.text() + "' lies on a line of " + r.from()));
      for (Element other : texts.subList(i + 1, texts.size())) {
        if (ink.intersects(ink(other))) {
          all.add("'" + text.text() + "' and '" + other.text() + "' overlap");
        }
      }
    }
  }

  private void inside(List<String> all) {
    for (double[] xy : sketch.corners()) {
      if (xy[0] < 0.4
          || xy[1] < 0.4
          || xy[0] > sketch.wide() - 0.4
          || xy[1] > sketch.high() - 0.4) {
        all.add("outside: " + xy[0] + " " + xy[1]);
      }
    }
    if (sketch.wide() != 488) {
      all.add("wide: " + sketch.wide());
    }
  }

  /** Ids of the boxes of one column from the top down. */
  List<String> column(String box) {
    double x = boxes.get(box).getEnvelopeInternal().getMinX();
    return boxes.entrySet().stream()
        .filter(e -> Math.abs(e.getValue().getEnvelopeInternal().getMinX() - x) < 1)
        .sorted(
            java.util.Comparator.comparingDouble(e -> e.getValue().getEnvelopeInternal().getMinY()))
        .map(Map.Entry::getKey)
        .toList();
  }

  Stream<String> links() {
    return runs.stream().flatMap(r -> r.to().stream().map(t -> r.from() + " > " + t));
  }
}
