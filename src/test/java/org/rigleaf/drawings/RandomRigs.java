package org.rigleaf.drawings;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.rigleaf.rig.Face;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Vocabulary;
import org.rigleaf.source.Problems;
import org.rigleaf.source.ProblemsFound;
import org.rigleaf.source.Yaml;

/** Rigs for the drawing tests: from a few lines of YAML, or made up from a seed. */
final class RandomRigs {
  private static final String[] KINDS = {
    "travel trailer",
    "fifth wheel",
    "folding trailer",
    "truck camper",
    "toy hauler",
    "class a",
    "class b",
    "class c"
  };
  private static final String[] SIDES = {"street", "curb"};
  private static final String[] INNER = {"inside", "roof", "under"};

  private static final String[] ALL = {"street", "curb", "rear", "front", "roof", "inside"};
  private static final String[] THIRDS = {"front", "middle", "rear"};

  private final Random random;

  RandomRigs(long seed) {
    this.random = new Random(seed);
  }

  static Rig rig(String yaml) {
    Problems problems = new Problems();
    byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
    try {
      return Rig.read(
          Yaml.read(bytes, "test.yaml", problems).orElseThrow(),
          Optional.empty(),
          Map.of(),
          Vocabulary.NONE,
          file -> null);
    } catch (ProblemsFound e) {
      throw new AssertionError(e.getMessage() + "\n" + yaml, e);
    }
  }

  /** Names of one to four words. */
  static Map<String, String> names(Rig rig) {
    String[] words = {"Water", "heater bypass", "carbon monoxide", "alarm", "outlet"};
    Map<String, String> names = new TreeMap<>();
    for (Gear g : rig.gear()) {
      int h = Math.floorMod(g.id().hashCode(), 97);
      names.put(g.id(), words[h % 5] + (h % 3 == 0 ? "" : " " + words[h / 5 % 5]));
    }
    return names;
  }

  /** A rig with that many places, of any kind and size. */
  Rig next(int gear) {
    double length = 14 + random.nextInt(30);
    StringBuilder yaml = new StringBuilder("rig:\n  name: Reed\n");
    yaml.append("  kind: " + KINDS[random.nextInt(KINDS.length)] + "\n");
    if (random.nextInt(4) > 0) {
      yaml.append("  length: " + length + " ft\n");
    }
    if (random.nextInt(4) > 0) {
      yaml.append("  width: " + (6.5 + random.nextInt(5) / 2.0) + " ft\n");
    }
    if (random.nextInt(4) > 0) {
      yaml.append("  height: " + (8 + random.nextInt(11) / 2.0) + " ft\n");
    }
    yaml.append("  axles: [" + length * 0.5 + " ft, " + length * 0.62 + " ft]\n");
    yaml.append("body:\n  door: {at: curb " + length * 0.4 + " ft}\n");
    yaml.append("  slides: [{name: Big slide, at: street " + length * 0.3 + " ft, ");
    yaml.append("width: 7 ft, depth: " + (1 + random.nextInt(3)) + " ft}]\n");
    yaml.append("safety:\n  exits:\n");
    places(gear - 2, length).forEach(yaml::append);
    return rig(yaml.toString());
  }

  /** A rig with that many places on one face, most of them close together. */
  Rig crowd(Face face, int gear) {
    StringBuilder yaml =
        new StringBuilder("rig: {name: Crowd, kind: travel trailer, length: 26 ft,");
    yaml.append(" width: 8 ft, height: 11 ft}\nsafety:\n  exits:\n");
    for (int i = 0; i < gear; i++) {
      double aft = random.nextInt(3) == 0 ? random.nextInt(27) : 16 + random.nextInt(8) / 4.0;
      String across = " across " + random.nextInt(9) + " ft up " + random.nextInt(9) + " ft";
      yaml.append("    - {name: Window " + i + ", at: " + face.text() + " " + aft + " ft" + across);
      yaml.append("}\n");
    }
    return rig(yaml.toString());
  }

  private List<String> places(int count, double length) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      lines.add("    - {name: Window " + i + ", at: " + place(length) + "}\n");
    }
    return lines;
  }

  private String place(double length) {
    double aft = Math.round(random.nextDouble() * length * 4) / 4.0;
    String across = " across " + random.nextInt(9) + " ft";
    return switch (random.nextInt(8)) {
      case 0, 1, 2 -> SIDES[random.nextInt(2)] + " " + aft + " ft" + up();
      case 3 -> "front " + random.nextInt(4) + " ft" + across + up();
      case 4 -> "rear 0 ft" + (random.nextBoolean() ? across : "") + up();
      case 5 -> ALL[random.nextInt(ALL.length)] + " " + THIRDS[random.nextInt(3)];
      default -> INNER[random.nextInt(3)] + " " + aft + " ft" + across;
    };
  }

  private String up() {
    return random.nextInt(4) == 0 ? "" : " up " + random.nextInt(10) + " ft";
  }
}
