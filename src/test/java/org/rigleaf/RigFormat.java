package org.rigleaf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rigleaf.guidance.Traits;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Node;
import org.rigleaf.source.Position;
import org.rigleaf.source.Problems;
import org.rigleaf.source.Yaml;

/** The pattern that random profiles are drawn from, and small tools for trees of a profile. */
public final class RigFormat {
  /** The whole pattern; see the head of the file. */
  static final Node.Mapping PATTERN = read();

  private static final Position NOWHERE = Position.start("");
  private static final Set<String> GEAR = Rig.possibleGear();

  /** Parts of what is there; no rig is without them, so that no profile says {@code none}. */
  private static final Set<String> NEVER_NONE =
      Set.of(
          "body.door",
          "climate.furnace.thermostat",
          "propane.tank.valve",
          "road.fuel",
          "waste.black.handle");

  private static final List<String> TOWED =
      List.of(
          "road.hitch", "road.tow-vehicle", "road.breakaway", "road.brakes", "body.tongue-jack");
  private static final List<String> DRIVEN =
      List.of("rig.wheelbase", "rig.seats", "road.weights.gcwr");

  private RigFormat() {}

  private static Node.Mapping read() {
    Problems problems = new Problems();
    Path file = Path.of("src/test/resources/random/format.yaml");
    try {
      Node root = Yaml.read(file, "format.yaml", problems).orElse(null);
      if (root instanceof Node.Mapping map && problems.none()) {
        return map;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    throw new AssertionError(problems.sorted());
  }

  /** The values that a text of the pattern offers. */
  static List<String> choices(Node pattern) {
    return List.of(((Node.Text) pattern).value().split(" \\| "));
  }

  /** True if a profile may say {@code none} under this path. */
  static boolean mayBeNone(String path) {
    return GEAR.contains(path) && !NEVER_NONE.contains(path)
        || Traits.safetyKitPaths().contains(path);
  }

  /** True if a rig of this kind can have what stands under this path. */
  static boolean fits(String path, String kind) {
    boolean motorized = kind.startsWith("class");
    boolean towed = !motorized && !kind.equals("truck camper");
    return (towed || !TOWED.contains(path)) && (motorized || !DRIVEN.contains(path));
  }

  static Node.Text text(String value) {
    return new Node.Text(value, true, NOWHERE);
  }

  static Node.Mapping map(Map<String, Node> values) {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    values.forEach((k, v) -> entries.put(k, new Node.Entry(NOWHERE, v)));
    return new Node.Mapping(entries, NOWHERE);
  }

  static Node.Sequence list(List<Node> items) {
    return new Node.Sequence(items, NOWHERE);
  }

  /** The values of a map by key, in order. */
  static Map<String, Node> values(Node map) {
    Map<String, Node> values = new LinkedHashMap<>();
    ((Node.Mapping) map).entries().forEach((k, e) -> values.put(k, e.value()));
    return values;
  }

  /** Every path of the pattern, groups before their keys; items of lists have no part of own. */
  static List<String> paths() {
    List<String> paths = new ArrayList<>();
    collect(PATTERN, "", paths);
    return paths;
  }

  private static void collect(Node pattern, String path, List<String> into) {
    Node inner = pattern instanceof Node.Sequence s ? s.items().get(0) : pattern;
    if (inner instanceof Node.Mapping) {
      values(inner)
          .forEach(
              (key, value) -> {
                into.add(join(path, key));
                collect(value, join(path, key), into);
              });
    }
  }

  static String join(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** A tree as the text of a profile, every value in quotes. */
  public static String yaml(Node.Mapping profile) {
    return values(profile).entrySet().stream()
        .map(e -> e.getKey() + ": " + flow(e.getValue()) + "\n")
        .collect(Collectors.joining());
  }

  private static String flow(Node node) {
    if (node instanceof Node.Mapping map) {
      return values(map).entrySet().stream()
          .map(e -> e.getKey() + ": " + flow(e.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (node instanceof Node.Sequence list) {
      return list.items().stream().map(RigFormat::flow).collect(Collectors.joining(", ", "[", "]"));
    }
    String value = ((Node.Text) node).value();
    return value.contains(" & ")
        ? "[\"" + value.replace(" & ", "\", \"") + "\"]"
        : '"' + value + '"';
  }
}
