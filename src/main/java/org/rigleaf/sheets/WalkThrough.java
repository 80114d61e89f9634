package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Leg;

/**
 * All that the template of a walk-through may see.
 *
 * @param rig name of the rig
 * @param kind kind of the rig, as printed
 * @param edition the rig's edition
 * @param draft the word for an edition that was not issued; empty for an issued one
 * @param before what to prepare
 * @param minutes all stops together
 * @param legs all stops in the order of the walk, joined by the part of the rig
 * @param rain the same with those inside first
 * @param damage an outline to mark
 * @param after what is written down at the end
 * @param paper what it is printed on
 */
public record WalkThrough(
    String rig,
    String kind,
    Edition edition,
    String draft,
    List<Block> before,
    int minutes,
    List<Leg> legs,
    List<Leg> rain,
    DrawingBlock damage,
    List<Block> after,
    Paper paper) {
  /** Copies the lists. */
  public WalkThrough {
    before = List.copyOf(before);
    legs = List.copyOf(legs);
    rain = List.copyOf(rain);
    after = List.copyOf(after);
  }
}
