package org.rigleaf.sheets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.drawings.PlanView;
import org.rigleaf.guidance.Guide;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** Drawings of the rig; one that has nothing to show is not printed. */
final class DrawingBlocks {
  private final Rig rig;
  private final PlaceBlocks places;
  private final FaceBlocks faces;
  private final Map<String, String> names; // of the gear, by id

  DrawingBlocks(Rig rig, Wording wording, Guide guide, PlaceBlocks places) {
    this.rig = rig;
    this.places = places;
    this.faces = new FaceBlocks(rig, wording, guide);
    this.names = new HashMap<>();
    rig.gear().forEach(g -> names.put(g.id(), guide.places().name(g.id())));
  }

  /** The drawings that a topic asks for. */
  List<Block> blocks(Show.Drawing show) {
    return switch (show.of()) {
      case "plan" -> List.of(plan(show.title()));
      case "breakers" -> faces.breakers(show.title());
      case "fuses" -> faces.fuses(show.title());
      case "monitor" -> faces.monitor(show.title());
      default -> throw new IllegalStateException("no drawing of '" + show.of() + "'");
    };
  }

  private Block plan(String title) {
    Drawing plan = PlanView.draw(rig, names);
    return new DrawingBlock(title, plan.svg(), plan.alt(), places.legend());
  }
}
