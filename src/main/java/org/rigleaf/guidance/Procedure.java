package org.rigleaf.guidance;

import java.util.List;

/**
 * A task from start to its closing state.
 *
 * @param id id of the procedure
 * @param title what is reached by it
 * @param mode {@code read-do} or {@code do-confirm}
 * @param minutes how long a newcomer takes; 0 where nobody has timed it
 * @param need what to have in hand; may be empty
 * @param stopIf when to stop; may be empty
 * @param reminders cautions that stand at the head
 * @param groups the steps
 * @param done the state at the end; may be empty
 */
public record Procedure(
    String id,
    String title,
    String mode,
    int minutes,
    List<Words> need,
    Words stopIf,
    List<Reminder> reminders,
    List<Group> groups,
    Words done) {
  /** Copies the lists. */
  public Procedure {
    need = List.copyOf(need);
    reminders = List.copyOf(reminders);
    groups = List.copyOf(groups);
  }

  /** All steps in order. */
  public List<Step> steps() {
    return groups.stream().flatMap(g -> g.steps().stream()).toList();
  }
}
