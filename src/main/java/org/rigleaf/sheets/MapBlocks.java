package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rigleaf.drawings.CallOut;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.drawings.NetWords;
import org.rigleaf.drawings.View;
import org.rigleaf.drawings.Views;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;

/** The system map: six views, each with the places of the gear that it alone lists. */
final class MapBlocks {
  private static final Set<View> NARROW = Set.of(View.FRONT, View.REAR, View.INSIDE);

  private final Rig rig;
  private final NetWords words;
  private final PlaceBlocks places;

  MapBlocks(Rig rig, NetWords words, PlaceBlocks places) {
    this.rig = rig;
    this.words = words;
    this.places = places;
  }

  /**
   * One view in as many parts as it takes. Without any place told the bare plan says it all, and an
   * inside without gear says no more than the plan.
   */
  List<Block> view(String title, View view) {
    boolean told =
        rig.gear().stream()
            .filter(g -> view != View.INSIDE || view.lists(g))
            .anyMatch(g -> g.place().spot().isPresent());
    List<Drawing> drawings = told || view == View.PLAN ? Views.draw(view, rig, words) : List.of();
    List<Block> blocks = new ArrayList<>();
    for (Drawing drawing : drawings) {
      Map<String, String> values =
          Map.of("title", title, "part", "" + (blocks.size() + 1), "parts", "" + drawings.size());
      String head = drawings.size() == 1 ? title : words.phrase(part(view), values);
      List<Legend> legend = legend(drawing, view);
      blocks.add(
          new DrawingBlock(head, drawing.svg(), drawing.alt(), legend, NARROW.contains(view)));
    }
    return blocks;
  }

  private static String part(View view) {
    return view == View.FRONT || view == View.REAR ? "map-part-across" : "map-part";
  }

  private List<Legend> legend(Drawing drawing, View view) {
    Set<String> drawn =
        drawing.callOuts().stream()
            .filter(CallOut::placed)
            .map(CallOut::gear)
            .filter(id -> rig.gear(id).filter(view::lists).isPresent())
            .collect(Collectors.toSet());
    return places.legend().stream().filter(l -> drawn.contains(l.gear())).toList();
  }

  /** Gear that is on no view, with the words that tell its place. */
  List<Block> unplaced(String title) {
    Set<String> told =
        rig.gear().stream()
            .filter(g -> g.place().spot().isPresent())
            .map(Gear::id)
            .collect(Collectors.toSet());
    List<Legend> legend = places.legend().stream().filter(l -> !told.contains(l.gear())).toList();
    return legend.isEmpty() ? List.of() : List.of(new LegendBlock(title, legend));
  }
}
