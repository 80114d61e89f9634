package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.rigleaf.drawings.CallOut;
import org.rigleaf.drawings.DrainsNet;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.drawings.PropaneNet;
import org.rigleaf.drawings.Schematic;
import org.rigleaf.drawings.SchematicParts;
import org.rigleaf.drawings.SchematicView;
import org.rigleaf.drawings.SchematicWords;
import org.rigleaf.drawings.WaterNet;
import org.rigleaf.rig.Rig;

/** The drawings of water, drains and propane. */
final class PipeBlocks {
  private final Rig rig;
  private final NetBlocks nets;
  private final PlaceBlocks places;

  PipeBlocks(Rig rig, NetBlocks nets, PlaceBlocks places) {
    this.rig = rig;
    this.nets = nets;
    this.places = places;
  }

  List<Block> water(String title, WaterNet.State state) {
    return blocks(title, WaterNet.of(rig, nets.words(), state), state == WaterNet.State.USE);
  }

  List<Block> drains(String title) {
    return blocks(title, DrainsNet.of(rig, nets.words()).stream().toList(), true);
  }

  List<Block> propane(String title) {
    return blocks(title, PropaneNet.of(rig, nets.words()).stream().toList(), true);
  }

  /** The nets drawn, in parts where one is tall; with or without the places of their gear. */
  private List<Block> blocks(String title, List<Schematic> drawn, boolean legend) {
    List<Block> blocks = new ArrayList<>();
    SchematicWords key = nets.key();
    for (Schematic net : drawn) {
      for (Schematic part : SchematicParts.of(net, key)) {
        Drawing drawing = SchematicView.draw(part, key);
        List<Legend> where = legend ? legend(drawing) : List.of();
        String head = nets.head(title, blocks.isEmpty());
        blocks.add(new DrawingBlock(head, drawing.svg(), drawing.alt(), where));
      }
    }
    return blocks;
  }

  private List<Legend> legend(Drawing drawing) {
    Set<String> drawn = drawing.callOuts().stream().map(CallOut::gear).collect(Collectors.toSet());
    return places.legend().stream().filter(l -> drawn.contains(l.gear())).toList();
  }
}
