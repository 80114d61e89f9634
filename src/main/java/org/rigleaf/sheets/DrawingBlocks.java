package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.drawings.View;
import org.rigleaf.drawings.WaterNet;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** Drawings of the rig; one that has nothing to show is not printed. */
final class DrawingBlocks {
  private final MapBlocks map;
  private final FaceBlocks faces;
  private final NetBlocks nets;
  private final PipeBlocks pipes;

  DrawingBlocks(Rig rig, Figures figures, Wording wording, Guide guide, PlaceBlocks places) {
    this.faces = new FaceBlocks(rig, wording, guide);
    this.nets = new NetBlocks(rig, figures, guide, wording);
    this.pipes = new PipeBlocks(rig, nets, places);
    this.map = new MapBlocks(rig, nets.words(), places);
  }

  /** The drawings that a topic asks for. */
  List<Block> blocks(Show.Drawing show) {
    return switch (show.of()) {
      case "plan" -> map.view(show.title(), View.PLAN);
      case "street-side" -> map.view(show.title(), View.STREET);
      case "curb-side" -> map.view(show.title(), View.CURB);
      case "front" -> map.view(show.title(), View.FRONT);
      case "rear" -> map.view(show.title(), View.REAR);
      case "inside" -> map.view(show.title(), View.INSIDE);
      case "breakers" -> faces.breakers(show.title());
      case "fuses" -> faces.fuses(show.title());
      case "monitor" -> faces.monitor(show.title());
      case "water-use" -> pipes.water(show.title(), WaterNet.State.USE);
      case "water-fill" -> pipes.water(show.title(), WaterNet.State.FILL);
      case "water-winter" -> pipes.water(show.title(), WaterNet.State.WINTER);
      case "drains" -> pipes.drains(show.title());
      case "propane" -> pipes.propane(show.title());
      case "mains" -> nets.mains(show.title());
      case "battery" -> nets.battery(show.title());
      case "bank" -> nets.bank(show.title());
      default -> throw new IllegalStateException("no drawing of '" + show.of() + "'");
    };
  }

  /** Gear that no view of the map shows. */
  List<Block> unplaced(String title) {
    return map.unplaced(title);
  }
}
