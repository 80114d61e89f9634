package org.rigleaf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.rigleaf.guidance.Traits;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Node;

/**
 * Random profiles that are right: all kinds of rig, gear there or not, lists of none to three,
 * safety kit given, silent or none. The seed is fixed, so that a failure comes back; {@code
 * -Drigs=1000} draws more than the usual hundred.
 */
public final class RandomRigs {
  private static final long SEED = 31_07_2026;
  private static final int COUNT = Integer.getInteger("rigs", 100);

  /** What a rig without 120 V does not have, or does not say. */
  private static final Set<String> MAINS =
      Set.of(
          "electric.shore",
          "electric.adapters",
          "electric.protector",
          "electric.transfer",
          "electric.load-shedding",
          "electric.generator",
          "electric.inverter",
          "electric.converter",
          "electric.breakers",
          "electric.outlets",
          "electric.loads.on",
          "electric.loads.kind",
          "water.appliances",
          "climate.air-conditioners",
          "climate.refrigerator.kind",
          "climate.refrigerator.runs-on",
          "water.heater.fuel");

  private static final List<Profile> ALL =
      IntStream.range(0, COUNT).mapToObj(RandomRigs::draw).toList();

  private final Random random;
  private final String kind;
  private final boolean batteryAlone; // one rig in twelve

  private RandomRigs(long seed) {
    random = new Random(seed);
    batteryAlone = new Random(seed + 1).nextInt(12) == 0;
    kind = pick(RigFormat.choices(at(RigFormat.PATTERN, "rig", "kind")));
  }

  /** A profile and what sets it apart, for messages. */
  public record Profile(String name, Node.Mapping tree) {
    /** The text of the file. */
    public String yaml() {
      return RigFormat.yaml(tree);
    }

    /** The rig; fails with the text if it has problems. */
    public Rig rig() {
      try {
        return TestRigs.of(yaml());
      } catch (AssertionError e) {
        throw new AssertionError(name + ": " + e.getMessage() + "\n" + yaml(), e);
      }
    }
  }

  /** All random profiles of this run. */
  public static List<Profile> all() {
    return ALL;
  }

  /** A name and a kind and nothing else, to add things to one by one. */
  public static Profile barest() {
    Node rig =
        RigFormat.map(
            Map.of("name", RigFormat.text("Bare"), "kind", RigFormat.text("fifth wheel")));
    return new Profile("the barest rig", RigFormat.map(Map.of("rig", rig)));
  }

  private static Profile draw(int number) {
    RandomRigs rigs = new RandomRigs(SEED + number * 7919L);
    return new Profile("random rig " + number, rigs.group(RigFormat.PATTERN, ""));
  }

  /**
   * The profile with each thing of the format in turn taken away where it is there or added where
   * it is not, with each choice in turn, and with {@code none} for each thing that may have it.
   */
  public static List<Profile> variations(Profile base) {
    RandomRigs rigs = new RandomRigs(SEED);
    List<Profile> all = new ArrayList<>();
    for (String path : RigFormat.paths()) {
      if (!path.equals("rig") && !path.equals("rig.name") && !path.equals("rig.kind")) {
        Node.Mapping changed = rigs.toggle(base.tree(), RigFormat.PATTERN, path.split("\\."), 0);
        all.add(new Profile(base.name() + ", other " + path, changed));
      }
      for (String choice : rigs.alternatives(path)) {
        Node.Mapping set =
            rigs.change(
                base.tree(),
                RigFormat.PATTERN,
                path.split("\\."),
                0,
                old -> RigFormat.text(choice));
        all.add(new Profile(base.name() + ", " + path + " " + choice, set));
      }
    }
    return all;
  }

  private List<String> alternatives(String path) {
    String[] keys = path.split("\\.");
    Node pattern = at(RigFormat.PATTERN, keys);
    List<String> all = new ArrayList<>();
    if (keys.length > 1
        && names(at(RigFormat.PATTERN, Arrays.copyOf(keys, keys.length - 1)), keys)) {
      return all; // another name may be that of a neighbour
    }
    if (pattern instanceof Node.Text && RigFormat.choices(pattern).size() > 1) {
      all.addAll(RigFormat.choices(pattern));
    }
    if (RigFormat.mayBeNone(path)) {
      all.add("none");
    }
    return all;
  }

  /** True if the last key is the one that names the items of a list. */
  private static boolean names(Node list, String[] keys) {
    return list instanceof Node.Sequence
        && RigFormat.values(item(list)).keySet().iterator().next().equals(keys[keys.length - 1]);
  }

  private static Node at(Node pattern, String... keys) {
    Node node = pattern;
    for (String key : keys) {
      node = RigFormat.values(item(node)).get(key);
    }
    return node;
  }

  private static Node item(Node node) {
    return node instanceof Node.Sequence list ? list.items().get(0) : node;
  }

  // ---- drawing

  private Node.Mapping group(Node pattern, String path) {
    Map<String, Node> drawn = new LinkedHashMap<>();
    RigFormat.values(pattern)
        .forEach(
            (key, value) -> {
              String inner = RigFormat.join(path, key);
              boolean dead = batteryAlone && MAINS.contains(inner);
              if (RigFormat.fits(inner, kind) && !dead) {
                value(value, inner, drawn, key);
              }
            });
    return RigFormat.map(drawn);
  }

  private void value(Node pattern, String path, Map<String, Node> into, String key) {
    boolean safety = Traits.safetyKitPaths().contains(path);
    double none = !RigFormat.mayBeNone(path) ? 0 : safety ? 0.25 : 0.05;
    double roll = random.nextDouble();
    if (roll < none) {
      into.put(key, RigFormat.text("none"));
    } else if (needed(path) || roll < none + share(path)) {
      Node node = node(pattern, path);
      if (!empty(node)) {
        into.put(key, node);
      }
    }
  }

  private static boolean needed(String path) {
    return path.equals("rig") || path.equals("rig.name") || path.equals("rig.kind");
  }

  private static double share(String path) {
    if (path.endsWith("fitted")) {
      return 0.1;
    }
    long depth = path.chars().filter(c -> c == '.').count();
    return depth == 0 ? 0.85 : depth == 1 ? 0.6 : 0.7;
  }

  private static boolean empty(Node node) {
    return node instanceof Node.Sequence list
        ? list.items().isEmpty()
        : node instanceof Node.Mapping map && map.entries().isEmpty();
  }

  private Node node(Node pattern, String path) {
    if (pattern instanceof Node.Sequence list) {
      return RigFormat.list(items(list.items().get(0), path));
    }
    if (pattern instanceof Node.Mapping) {
      return group(pattern, path);
    }
    return RigFormat.text(path.equals("rig.kind") ? kind : pick(RigFormat.choices(pattern)));
  }

  private List<Node> items(Node pattern, String path) {
    Map.Entry<String, Node> naming = RigFormat.values(pattern).entrySet().iterator().next();
    List<String> names = new ArrayList<>(RigFormat.choices(naming.getValue()));
    Collections.shuffle(names, random);
    List<Node> items = new ArrayList<>();
    for (String name : names.subList(0, Math.min(names.size(), random.nextInt(4)))) {
      Map<String, Node> item = new LinkedHashMap<>(RigFormat.values(group(pattern, path)));
      item.put(naming.getKey(), RigFormat.text(name));
      items.add(RigFormat.map(item));
    }
    return items;
  }

  private <T> T pick(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  // ---- changing

  private Node.Mapping toggle(Node.Mapping tree, Node pattern, String[] keys, int depth) {
    return change(
        tree, pattern, keys, depth, old -> old == null ? filled(at(pattern, keys)) : null);
  }

  /** The tree with another value at the path; what the path needs above it is added. */
  private Node.Mapping change(
      Node.Mapping tree, Node pattern, String[] keys, int depth, UnaryOperator<Node> change) {
    Map<String, Node> values = new LinkedHashMap<>(RigFormat.values(tree));
    String key = keys[depth];
    Node inner = RigFormat.values(item(pattern)).get(key);
    Node old = values.get(key);
    Node now =
        depth == keys.length - 1 ? change.apply(old) : within(old, inner, keys, depth, change);
    if (now == null) {
      values.remove(key);
    } else {
      values.put(key, now);
    }
    return RigFormat.map(values);
  }

  private Node within(
      Node old, Node pattern, String[] keys, int depth, UnaryOperator<Node> change) {
    if (pattern instanceof Node.Sequence) {
      List<Node> items =
          new ArrayList<>(
              old instanceof Node.Sequence list ? list.items() : List.of(named(item(pattern))));
      items.set(0, change((Node.Mapping) items.get(0), pattern, keys, depth + 1, change));
      return RigFormat.list(items);
    }
    Node.Mapping group = old instanceof Node.Mapping map ? map : RigFormat.map(Map.of());
    return change(group, pattern, keys, depth + 1, change);
  }

  private Node named(Node pattern) {
    Map.Entry<String, Node> naming = RigFormat.values(pattern).entrySet().iterator().next();
    return RigFormat.map(Map.of(naming.getKey(), filled(naming.getValue())));
  }

  /** The barest value of a pattern that says that the thing is there. */
  private Node filled(Node pattern) {
    if (pattern instanceof Node.Sequence list) {
      return RigFormat.list(List.of(named(list.items().get(0))));
    }
    if (pattern instanceof Node.Mapping map) {
      Map.Entry<String, Node> first = RigFormat.values(map).entrySet().iterator().next();
      return RigFormat.map(Map.of(first.getKey(), filled(first.getValue())));
    }
    return RigFormat.text(pick(RigFormat.choices(pattern)));
  }
}
