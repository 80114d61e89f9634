package org.rigleaf.drawings;

import java.util.List;
import org.rigleaf.rig.Rig;

/** The system map: the rig from six sides, every placed piece of gear with its code. */
public final class Views {
  private Views() {}

  /**
   * Draws one view; the same rig and words give the same bytes.
   *
   * @return more than one drawing where a crowd is split along the rig rather than shrunk
   */
  public static List<Drawing> draw(View view, Rig rig, NetWords words) {
    MapWords said = new MapWords(words);
    return switch (view) {
      case PLAN, INSIDE -> PlanView.draw(rig, view, said);
      case STREET, CURB -> SideView.draw(rig, view, said);
      case FRONT, REAR -> EndView.draw(rig, view, said);
    };
  }
}
