package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.drawings.DamagePlan;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.guidance.Leg;
import org.rigleaf.guidance.Stop;
import org.rigleaf.guidance.Stops;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** Lays out the walk round the rig for the person who hands it over. */
public final class WalkThroughMaker {
  private final Rig rig;
  private final BinderMaker maker;
  private final Wording wording;

  /** A maker for this rig. */
  public WalkThroughMaker(Rig rig, BinderMaker maker, Wording wording) {
    this.rig = rig;
    this.maker = maker;
    this.wording = wording;
  }

  /** The walk-through on this paper; {@code draft} as for a binder. */
  public WalkThrough walk(Paper paper, boolean draft) {
    List<Stop> stops = Stops.of(rig, wording, maker.guide());
    Drawing outline = DamagePlan.draw(rig, new PrintedWords(wording, maker.guide()));
    return new WalkThrough(
        rig.identity().name(),
        wording.phrase("kind-" + rig.identity().kind().trait()),
        maker.edition(),
        draft ? wording.phrase("draft") : "",
        maker.blocks(wording.walk("before")),
        stops.stream().mapToInt(Stop::minutes).sum(),
        Leg.of(stops),
        Leg.of(Stops.inRain(stops)),
        new DrawingBlock("", outline.svg(), outline.alt(), List.of()),
        maker.blocks(wording.walk("after")),
        paper);
  }
}
