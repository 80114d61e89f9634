package org.rigleaf.sheets;

import java.util.List;
import java.util.Map;
import org.rigleaf.drawings.Drawing;
import org.rigleaf.drawings.Portrait;
import org.rigleaf.guidance.Filler;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.RigKind;

/** The picture of the rig on the cover, as large as the rest of the cover lets it be. */
final class Portraits {
  private static final double MM = 72 / 25.4;

  /** What always stands on the cover: the plate, whom it is for, the foot. In points. */
  private static final double PLATE = 160;

  private static final double READER = 64;
  private static final double FOOT = 66;

  /** What may stand on it; a finding or a figure's meaning may take two lines. */
  private static final double FIGURE = 64;

  private static final double FINDINGS = 60;
  private static final double FINDING = 34;
  private static final double CONTACT = 33;

  private static final double LEAST = 80;
  private static final double MOST = 230;

  private Portraits() {}

  /** The drawing; empty where findings fill the cover. */
  static List<DrawingBlock> of(
      Rig rig, Wording wording, Filler filler, Paper paper, int lines, int findings) {
    double taken = PLATE + READER + FOOT + lines * FIGURE + rig.contacts().size() * CONTACT;
    double urgent = findings == 0 ? 0 : FINDINGS + findings * FINDING;
    double room = Math.min(MOST, paper.textHeightMm() * MM - taken - urgent);
    if (room < LEAST) {
      return List.of();
    }
    String kind = wording.phrase("kind-" + rig.identity().kind().trait());
    String alt = wording.phrase("portrait-alt", Map.of("rig", rig.identity().name(), "kind", kind));
    String length = words(rig.identity().length(), "portrait-length", wording, filler);
    String height =
        folds(rig) ? "" : words(rig.identity().height(), "portrait-height", wording, filler);
    Drawing drawing = Portrait.draw(rig, room, alt, length, height);
    return List.of(new DrawingBlock("", drawing.svg(), drawing.alt(), List.of()));
  }

  /** It is drawn with its roof lifted; its height is the one it drives at. */
  private static boolean folds(Rig rig) {
    return rig.identity().kind() == RigKind.FOLDING_TRAILER;
  }

  private static String words(Fact fact, String phrase, Wording wording, Filler filler) {
    return fact.known() ? wording.phrase(phrase, Map.of("amount", filler.written(fact))) : "";
  }
}
