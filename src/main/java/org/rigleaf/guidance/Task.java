package org.rigleaf.guidance;

import java.util.List;
import java.util.Optional;
import org.rigleaf.figures.Interval;

/**
 * A task of upkeep of one rig.
 *
 * @param id stable id, as a log names it; of a date on the gear, the gear's
 * @param trade the trade it belongs to
 * @param band the part of the calendar where it stands
 * @param title its name in a few words
 * @param action one sentence to act on
 * @param see what one should see; may be empty
 * @param how what else to know; may be empty
 * @param every how often, in words
 * @param who who does it, in words
 * @param basis where the interval comes from
 * @param spots the gear and where it is; may be empty
 * @param reminders cautions that stand before the action
 * @param interval how often by the calendar; empty for a task tied to a use or to one date
 * @param lastDone when it was done; a line to fill in if nobody said
 * @param due when it is next due, in words; may be empty
 * @param day the same day as {@code 2026-05-02}; empty if it is not known or there is none
 * @param late whether it was due before the edition, by the calendar or by the meter
 * @param safety whether that is a safety matter
 */
public record Task(
    String id,
    String trade,
    Band band,
    String title,
    Words action,
    Words see,
    Words how,
    String every,
    String who,
    String basis,
    List<Spot> spots,
    List<Reminder> reminders,
    Optional<Interval> interval,
    Words lastDone,
    Words due,
    String day,
    boolean late,
    boolean safety) {
  /** Copies the lists. */
  public Task {
    spots = List.copyOf(spots);
    reminders = List.copyOf(reminders);
  }

  /** A piece of gear: its call-out, which may be empty, and where it is. */
  public record Spot(String code, String gear, Words place) {}
}
