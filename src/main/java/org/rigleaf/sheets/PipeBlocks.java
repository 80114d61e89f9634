package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.rigleaf.drawings.CallOut;
import org.rigleaf.drawings.DrainsNet;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.drawings.PipeWords;
import org.rigleaf.drawings.PropaneNet;
import org.rigleaf.drawings.Schematic;
import org.rigleaf.drawings.SchematicParts;
import org.rigleaf.drawings.SchematicView;
import org.rigleaf.drawings.SchematicWords;
import org.rigleaf.drawings.WaterNet;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** The drawings of water, drains and propane. */
final class PipeBlocks {
  private final Rig rig;
  private final Wording wording;
  private final PlaceBlocks places;
  private final PipeWords words;

  PipeBlocks(Rig rig, Wording wording, Guide guide, PlaceBlocks places) {
    this.rig = rig;
    this.wording = wording;
    this.places = places;
    this.words = new PipeWords(guide.places()::name, wording::phrase, guide.filler()::written);
  }

  Optional<Schematic> water(WaterNet.State state) {
    return WaterNet.of(rig, words, state);
  }

  Optional<Schematic> drains() {
    return DrainsNet.of(rig, words);
  }

  Optional<Schematic> propane() {
    return PropaneNet.of(rig, words);
  }

  /** The net drawn, in parts if it is tall; with or without the places of its gear. */
  List<Block> blocks(String title, Optional<Schematic> net, boolean legend) {
    List<Block> blocks = new ArrayList<>();
    SchematicWords key = key();
    for (Schematic part : net.map(n -> SchematicParts.of(n, key)).orElse(List.of())) {
      Drawing drawing = SchematicView.draw(part, key);
      List<Legend> where = legend ? legend(drawing) : List.of();
      blocks.add(new DrawingBlock(title, drawing.svg(), drawing.alt(), where));
    }
    return blocks;
  }

  private List<Legend> legend(Drawing drawing) {
    Set<String> drawn = drawing.callOuts().stream().map(CallOut::gear).collect(Collectors.toSet());
    return places.legend().stream().filter(l -> drawn.contains(l.gear())).toList();
  }

  private SchematicWords key() {
    return new SchematicWords(
        each(Schematic.Line.values(), "letter"),
        each(Schematic.Line.values(), "line"),
        each(Schematic.Shape.values(), "shape"),
        wording.phrase("pipes-bar"));
  }

  private <E extends Enum<E>> Map<E, String> each(E[] all, String kind) {
    return Arrays.stream(all)
        .collect(
            Collectors.toMap(
                Function.identity(),
                e -> wording.phrase("pipes-" + kind + "-" + e.name().toLowerCase(Locale.ROOT))));
  }
}
