package org.rigleaf.drawings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rigleaf.drawings.Schematic.Box;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Link;
import org.rigleaf.drawings.Schematic.Shape;

/** What holds in every schematic, whatever feeds whatever. */
class SchematicViewTest {
  private static final SchematicWords WORDS =
      new SchematicWords(
          each(Line.values(), l -> l.name().substring(0, 1)),
          each(Line.values(), l -> "carries " + l.name()),
          each(Shape.values(), s -> "is a " + s.name()),
          "shut");
  private static final String[] NAMES = {
    "Roof air conditioner", "Pump", "Battery disconnect", "Cold low point", "Main", "Converter"
  };
  private static final String ALT = "Boxes in ranks, with links between them.";

  private static <T> Map<T, String> each(T[] all, Function<T, String> words) {
    return Stream.of(all).collect(Collectors.toMap(t -> t, words));
  }

  /** Links mostly to the right, some back, some down, some over several ranks. */
  private static Schematic random(Random random) {
    int ranks = 2 + random.nextInt(3);
    List<Box> boxes = new ArrayList<>();
    for (int rank = 0; rank < ranks; rank++) {
      for (int lane = 0; lane < 9; lane++) {
        if (random.nextInt(9) < 5) {
          boxes.add(box(boxes.size(), rank, lane, random));
        }
      }
    }
    List<Link> links = new ArrayList<>();
    for (int i = 0; boxes.size() > 1 && i < boxes.size() * 1.1; i++) {
      Box a = boxes.get(random.nextInt(boxes.size()));
      Box b = boxes.get(random.nextInt(boxes.size()));
      boolean turn = a.rank() > b.rank() && random.nextInt(4) > 0;
      Line line = Line.values()[random.nextInt(3)];
      String words = random.nextInt(4) == 0 ? "20 A" : "";
      if (a != b && Math.abs(a.rank() - b.rank()) < 3) {
        Box from = turn ? b : a;
        Box to = turn ? a : b;
        links.add(new Link(from.id(), to.id(), line, random.nextInt(6) == 0, words));
      }
    }
    return new Schematic(boxes, links, ALT);
  }

  private static Box box(int number, int rank, int lane, Random random) {
    List<String> words = new ArrayList<>(List.of(NAMES[random.nextInt(NAMES.length)]));
    IntStream.range(0, random.nextInt(3)).forEach(i -> words.add(12 * (i + 1) + " V"));
    boolean gear = random.nextBoolean();
    String id = "box" + number;
    Shape shape = Shape.values()[random.nextInt(5)];
    return new Box(
        id, gear ? "g" + number : "", gear ? "E" + number : "", words, shape, rank, lane);
  }

  @Test
  void linesAndWordsKeepOutOfEachOthersWay() throws Exception {
    List<String> all = new ArrayList<>();
    Random random = new Random(1971);
    for (int i = 0; i < 60; i++) {
      Schematic schematic = random(random);
      List<Schematic> parts = SchematicParts.of(schematic, WORDS);
      for (Schematic part : parts) {
        Drawing drawing = SchematicView.draw(part, WORDS);
        keep(i, drawing);
        SchematicSketch sketch = new SchematicSketch(drawing);
        int number = i;
        sketch.complaints().forEach(c -> all.add(number + ": " + c));
        assertTrue(sketch.high() <= 553 || parts.size() > 1 && lanes(part) == 1, "" + i);
        part.links().forEach(l -> assertTrue(sketch.joins(l.from(), l.to()), l.toString()));
        assertEquals(drawing, SchematicView.draw(part, WORDS), "same bytes");
      }
      for (Link link : schematic.links()) {
        assertEquals(
            1, parts.stream().filter(p -> p.links().contains(link)).count(), i + ": " + link);
      }
    }
    assertEquals("", String.join("\n", all));
  }

  private static long lanes(Schematic part) {
    return part.boxes().stream().map(Box::lane).distinct().count();
  }

  private static void keep(int number, Drawing drawing) throws IOException {
    if (System.getProperty("keep") != null) {
      Files.writeString(Path.of(System.getProperty("keep") + number + ".svg"), drawing.svg());
    }
  }

  @Test
  void whatIsTooTallComesInPartsThatFitAndShowEveryBoxAndLink() {
    List<Box> boxes = new ArrayList<>(List.of(box("panel", "Panel", 0, 0)));
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      boxes.add(box("b" + i, "Breaker " + i, 1, i));
      boxes.add(box("l" + i, "Load " + i, 2, i));
      links.add(new Link("panel", "b" + i, Line.AC, false, ""));
      links.add(new Link("b" + i, "l" + i, Line.AC, false, ""));
    }
    List<SchematicSketch> parts =
        SchematicParts.of(new Schematic(boxes, links, ALT), WORDS).stream()
            .map(s -> new SchematicSketch(SchematicView.draw(s, WORDS)))
            .toList();
    assertTrue(parts.size() > 1 && parts.size() < 4, parts.size() + " parts");
    parts.forEach(p -> assertTrue(p.high() <= 553, "" + p.high()));
    parts.forEach(p -> assertEquals(List.of(), p.complaints()));
    for (Link link : links) {
      assertEquals(1, parts.stream().filter(p -> p.runs.size() > 0 && has(p, link)).count());
    }
  }

  private static boolean has(SchematicSketch part, Link link) {
    return part.links().anyMatch((link.from() + " > " + link.to())::equals);
  }

  private static Box box(String id, String name, int rank, int lane) {
    return new Box(id, "", "", List.of(name), Shape.LOAD, rank, lane);
  }

  @Test
  void oneMoreLoadLeavesTheOthersInTheirOrderAndPlace() {
    List<Box> boxes = new ArrayList<>(List.of(box("panel", "Panel", 0, 0)));
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      boxes.add(box("b" + i, "Breaker " + i, 1, i));
      boxes.add(box("l" + i, "Load " + i, 2, i));
      links.add(new Link("panel", "b" + i, Line.AC, false, ""));
      links.add(new Link("b" + i, "l" + i, Line.AC, false, ""));
    }
    SchematicSketch before = drawn(boxes, links);
    boxes.add(box("l8", "Load 8", 2, 8));
    links.add(new Link("b7", "l8", Line.AC, false, ""));
    SchematicSketch after = drawn(boxes, links);
    List<String> loads = new ArrayList<>(after.column("l0"));
    loads.remove("l8");
    assertEquals(before.column("l0"), loads);
    assertEquals(before.column("b0"), after.column("b0"));
    before.boxes.forEach(
        (id, box) ->
            assertEquals(
                box.getEnvelopeInternal().getMinY(),
                after.boxes.get(id).getEnvelopeInternal().getMinY(),
                id));
  }

  private static SchematicSketch drawn(List<Box> boxes, List<Link> links) {
    return new SchematicSketch(SchematicView.draw(new Schematic(boxes, links, ALT), WORDS));
  }
}
