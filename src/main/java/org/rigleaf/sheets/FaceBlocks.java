package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rigleaf.drawings.PanelFace;
import org.rigleaf.drawings.PanelFace.Box;
import org.rigleaf.drawings.PanelFace.Lamps;
import org.rigleaf.drawings.PanelFace.Row;
import org.rigleaf.drawings.PanelFace.Sign;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Places;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Circuit;
import org.rigleaf.rig.Electric.Fuse;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Reference;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Waste.Monitor;

/** The faces of the panels: breakers, fuses, the tank monitor and the switches on it. */
final class FaceBlocks {
  private static final String PANEL = "electric.panel";
  private static final String MAIN = "main"; // the breaker of this name limits the whole rig

  /**
   * Colors of blade fuses by amps, as ISO 8820-3 and SAE J1284 have them; written from memory and
   * compared with trade tables (DIN 72581), not with the standards. A fuse of other amps, and the
   * large kind with colors of its own, has no word.
   */
  private static final Map<Double, String> COLORS =
      Map.of(
          2.0, "gray", 3.0, "violet", 5.0, "tan", 7.5, "brown", 10.0, "red", 15.0, "blue", 20.0,
          "yellow", 25.0, "clear", 30.0, "green");

  private final Rig rig;
  private final Wording wording;
  private final Places places;

  FaceBlocks(Rig rig, Wording wording, Guide guide) {
    this.rig = rig;
    this.wording = wording;
    this.places = guide.places();
  }

  /** The breakers of the panel, the main one first. */
  List<Block> breakers(String title) {
    Stream<Row> rows =
        Stream.of(true, false)
            .flatMap(
                main -> rig.electric().breakers().stream().filter(b -> main == isMain(b.name())))
            .map(b -> row(isMain(b.name()) ? Sign.MAIN : Sign.BREAKER, b, ""));
    return blocks(title, "breakers", List.of(box(PANEL, Lamps.NONE, rows.toList())));
  }

  private static boolean isMain(String name) {
    return Ids.of(name).equals(MAIN);
  }

  /** The fuses of the panel, then those with a place of their own. */
  List<Block> fuses(String title) {
    List<Row> inside = new ArrayList<>();
    Map<String, List<Row>> outside = new LinkedHashMap<>();
    for (Fuse fuse : rig.electric().fuses()) {
      String color = color(fuse);
      Row row = row(color.isEmpty() ? Sign.FUSE : Sign.BLADE, fuse, color);
      if (fuse.place().known()) {
        String where = wording.phrase("face-elsewhere", Map.of("place", where(fuse.id())));
        outside.computeIfAbsent(where, w -> new ArrayList<>()).add(row);
      } else {
        inside.add(row);
      }
    }
    List<Box> boxes = new ArrayList<>(List.of(box(PANEL, Lamps.NONE, inside)));
    outside.forEach((where, rows) -> boxes.add(new Box("", "", where, "", Lamps.NONE, rows)));
    return blocks(title, "fuses", boxes);
  }

  private String color(Fuse fuse) {
    return Optional.ofNullable(COLORS.get(fuse.rating().value()))
        .map(c -> wording.phrase("face-color-" + c))
        .orElse("");
  }

  /** The lamps of the tank monitor, and the switches that stand on it. */
  List<Block> monitor(String title) {
    Optional<Monitor> monitor = rig.waste().monitor();
    List<Row> switches = monitor.stream().flatMap(m -> switches(m.gear())).toList();
    List<String> marks = monitor.map(Monitor::lamps).orElse(List.of());
    Lamps lamps = new Lamps(marks, monitor.flatMap(Monitor::lampsMean).orElse(""));
    return monitor
        .map(m -> blocks(title, "monitor", List.of(box(m.gear().id(), lamps, switches))))
        .orElse(List.of());
  }

  private Stream<Row> switches(Gear monitor) {
    List<String> names =
        Stream.of(
                Optional.of(wording.phrase("face-monitor-panel")),
                Optional.of(places.name(monitor.id())),
                monitor.place().words())
            .flatMap(Optional::stream)
            .map(FaceBlocks::lower)
            .toList();
    return rig.gear().stream().filter(g -> on(g, names)).map(this::row);
  }

  /** True if one of the places of its switch is this panel. */
  private boolean on(Gear gear, List<String> panel) {
    return Stream.of("switch", "switches")
        .flatMap(k -> Optional.ofNullable(rig.texts().get(gear.id() + "." + k)).stream())
        .flatMap(text -> Stream.concat(Stream.of(text), Stream.of(text.split(", "))))
        .map(FaceBlocks::lower)
        .anyMatch(place -> panel.stream().anyMatch(p -> same(place, p)));
  }

  /**
   * The same words, or the panel's words with a little before them ('on the panel by the door'), or
   * the start of them ('monitor panel' of 'monitor panel above the range').
   */
  private static boolean same(String place, String panel) {
    int words = place.split(" ").length;
    int more = words - panel.split(" ").length;
    return place.equals(panel)
        || more <= 2 && panel.contains(" ") && place.endsWith(" " + panel)
        || words > 1 && panel.startsWith(place + " ");
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT).strip();
  }

  private Row row(Gear gear) {
    String marked = rig.texts().getOrDefault(gear.id() + ".marked", "");
    String code = rig.codes().get(gear.id());
    return new Row(Sign.SWITCH, "", marked, "", places.name(gear.id()) + " (" + code + ")");
  }

  private Row row(Sign sign, Circuit c, String remark) {
    String amps =
        c.rating().known() ? wording.amounts().text(c.rating().value(), c.rating().unit()) : "";
    String feeds = c.feeds().stream().map(this::mentioned).collect(Collectors.joining(", "));
    return new Row(sign, amps, c.name(), remark, sign == Sign.MAIN ? whole(feeds) : feeds);
  }

  private String whole(String feeds) {
    String whole = wording.phrase("face-whole");
    return feeds.isEmpty() ? whole : whole + ": " + feeds;
  }

  /** Words in quotes stay as the keeper wrote them. */
  private String mentioned(Reference reference) {
    Optional<String> meant = reference.words() ? Optional.empty() : rig.resolve(reference);
    return meant.map(places::inSentence).orElse(reference.text());
  }

  private String where(String id) {
    return places.known(id) ? places.where(id).plain() : "";
  }

  private Box box(String gear, Lamps lamps, List<Row> rows) {
    String code = rig.codes().getOrDefault(gear, "");
    return new Box(code.isEmpty() ? "" : gear, code, places.name(gear), where(gear), lamps, rows);
  }

  private List<Block> blocks(String title, String what, List<Box> boxes) {
    List<Row> rows = boxes.stream().flatMap(b -> b.rows().stream()).toList();
    if (rows.isEmpty() && boxes.stream().allMatch(b -> b.lamps().marks().isEmpty())) {
      return List.of();
    }
    PanelFace.Words words =
        new PanelFace.Words(
            wording.phrase("face-feeds-" + what),
            wording.phrase("face-mean"),
            wording.phrase("face-note-" + what));
    Map<String, String> count = Map.of("count", String.valueOf(rows.size()));
    return PanelFace.draw(boxes, words, wording.phrase("face-alt-" + what, count)).stream()
        .map(d -> PlotBlocks.block(title, d))
        .toList();
  }
}
