package org.rigleaf.drawings;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;

/** The words of the system map, whose phrases share a prefix. */
record MapWords(NetWords words) {
  private static final int LONGEST_ALT = 250;
  private static final int LONGEST_NAME = 60;

  String say(String phrase) {
    return words.phrase("map-" + phrase);
  }

  String mark(Mark mark) {
    return say("mark-" + mark.name().toLowerCase(Locale.ROOT));
  }

  String name(Gear gear) {
    return words.name(gear.id());
  }

  /** The number that is written on the map with its name beside it. */
  static String code(Rig rig, Gear gear) {
    return rig.codes().getOrDefault(gear.id(), "?");
  }

  /** What an outline without gear shows, for those who cannot see it. */
  String alt(String drawing, Rig rig) {
    return words.phrase("map-alt-" + drawing, Map.of("rig", name(rig), "kind", kind(rig)));
  }

  /** What a view shows: its codes in this order, as many as an alternative text may hold. */
  String alt(View view, Rig rig, List<String> codes) {
    String all = codes.isEmpty() ? say("none") : String.join(", ", codes);
    for (int kept = codes.size(); ; kept--) {
      String alt = alt(view, rig, kept == codes.size() ? all : some(codes, kept));
      if (alt.length() <= LONGEST_ALT || kept <= 0) {
        return alt;
      }
    }
  }

  private String some(List<String> codes, int kept) {
    String more = "" + (codes.size() - kept);
    String first = String.join(", ", codes.subList(0, kept));
    return words.phrase("map-and-more", Map.of("codes", first, "count", more));
  }

  private String alt(View view, Rig rig, String codes) {
    return words.phrase(
        "map-alt-" + view.name().toLowerCase(Locale.ROOT),
        Map.of("rig", name(rig), "kind", kind(rig), "codes", codes));
  }

  private static String name(Rig rig) {
    String name = rig.identity().name().strip();
    return name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME - 1) + "…" : name;
  }

  private String kind(Rig rig) {
    return words.phrase("kind-" + rig.identity().kind().trait());
  }
}
