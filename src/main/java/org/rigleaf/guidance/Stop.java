package org.rigleaf.guidance;

import java.util.List;

/**
 * A stop of the walk-through.
 *
 * @param number in the order of the walk
 * @param first one of those that come before the walk
 * @param inside whether it is inside the rig
 * @param leg the part of the rig under whose heading it stands, as printed
 * @param where the side of the rig, as printed
 * @param note that safety kit is not listed; may be empty
 * @param ask a question that the newcomer answers
 * @param gear what is shown, in the order of the walk
 */
public record Stop(
    String id,
    int number,
    String title,
    boolean first,
    boolean inside,
    String leg,
    String where,
    int minutes,
    Words note,
    Words say,
    Words show,
    Words ask,
    List<Thing> gear) {
  /** Copies the list. */
  public Stop {
    gear = List.copyOf(gear);
  }

  /**
   * A thing to show.
   *
   * @param gear its id; empty for what the profile does not list
   * @param code as printed; empty as well
   */
  public record Thing(String gear, String code, String name, Words place) {}
}
