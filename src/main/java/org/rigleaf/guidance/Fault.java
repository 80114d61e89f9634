package org.rigleaf.guidance;

import java.util.List;

/**
 * What to check at one symptom.
 *
 * @param id id of the fault
 * @param symptom as a newcomer says it
 * @param reminders cautions that stand before the checks
 * @param checks what the reader may look at, the likeliest first
 * @param stops where somebody else takes over
 * @param call whom to call
 */
public record Fault(
    String id,
    String symptom,
    List<Reminder> reminders,
    List<Step> checks,
    List<Stop> stops,
    Words call) {
  /** Copies the lists. */
  public Fault {
    reminders = List.copyOf(reminders);
    checks = List.copyOf(checks);
    stops = List.copyOf(stops);
  }

  /**
   * A sign at which the reader stops.
   *
   * @param who {@code technician} or {@code emergency}
   * @param by who takes over, in words
   * @param text the sign, and what to leave alone
   */
  public record Stop(String who, String by, Words text) {}
}
