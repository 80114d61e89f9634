package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Words;

/**
 * All that the template of a stay plan may see.
 *
 * @param rig name of the rig
 * @param kind kind of the rig, as printed
 * @param edition the rig's edition
 * @param draft the word for an edition that was not issued; empty for an issued one
 * @param blocks the trip in figures
 * @param stores names of the stores, the heads of the table of hours
 * @param days what each store holds, hour by hour
 * @param paper what it is printed on
 */
public record StayPlan(
    String rig,
    String kind,
    Edition edition,
    String draft,
    List<Block> blocks,
    List<Words> stores,
    List<Day> days,
    Paper paper) {
  /** Copies the lists. */
  public StayPlan {
    blocks = List.copyOf(blocks);
    stores = List.copyOf(stores);
    days = List.copyOf(days);
  }

  /** A day of the trip, 1 the day of arrival. */
  public record Day(int number, List<Hour> hours) {}

  /** An hour such as 15:00 and a cell for each store. */
  public record Hour(String time, List<Cell> cells) {}

  /**
   * What a store holds.
   *
   * @param text as printed
   * @param ended true from the hour on at which it can give or take no more
   * @param first true at that very hour
   */
  public record Cell(String text, boolean ended, boolean first) {}
}
