package org.rigleaf.sheets;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.rigleaf.figures.Figure;
import org.rigleaf.guidance.Filler;
import org.rigleaf.guidance.Places;
import org.rigleaf.guidance.Wording;
import org.rigleaf.guidance.Words;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Rig;

/** Words for the parts of figure ids: plugs, months, slopes, tanks, loads. */
final class Labels {
  private final Rig rig;
  private final Wording wording;
  private final Filler filler;
  private final Places places;

  Labels(Rig rig, Wording wording, Filler filler, Places places) {
    this.rig = rig;
    this.wording = wording;
    this.filler = filler;
    this.places = places;
  }

  /** The title of a figure family. */
  String title(String pattern) {
    return wording.figure(pattern).title();
  }

  /** The value of a figure, with its mark. */
  Words value(Figure figure) {
    return new Words(List.of(filler.run(figure)));
  }

  /** What a part of an id means, by the variable's name. */
  String of(String variable, String part) {
    return switch (variable) {
      case "a" -> plug(part);
      case "state" -> wording.find("state-" + part).orElseGet(() -> plug(part));
      case "store" -> wording.find("store-" + part).orElseGet(() -> named(part));
      case "people" -> wording.phrase("people-" + part);
      case "what" -> wording.find("what-" + part).orElseGet(() -> named(part));
      case "lp|electric|both" -> wording.phrase("fuel-" + part); // as the register names it
      case "fuel", "sky", "source" -> wording.phrase(variable + "-" + part);
      case "axle" -> places.axle(part);
      case "month" -> part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1);
      case "slope", "strength", "percent", "duty", "check", "midnight", "hour" ->
          wording.phrase("row-" + variable, Map.of("x", part.replace('-', '.')));
      default -> named(part);
    };
  }

  private String plug(String part) {
    return wording.find("a-" + part).orElseGet(() -> wording.phrase("row-a", Map.of("x", part)));
  }

  private String named(String path) {
    String part = Ids.last(path);
    Optional<Gear> gear = rig.gear().stream().filter(g -> g.part().equals(part)).findFirst();
    return gear.map(g -> places.name(g.id())).orElseGet(() -> listItem(part));
  }

  private String listItem(String part) {
    return rig.texts().entrySet().stream()
        .filter(e -> e.getKey().endsWith("." + part + ".name"))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElseGet(() -> filler.loadName(Ids.of(part)));
  }
}
