package org.rigleaf.guidance;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One action.
 *
 * @param id {@code procedure.step}
 * @param number the number printed
 * @param action one sentence to act on
 * @param see what one should see, hear or read; may be empty
 * @param ifNot what to do when one does not; may be empty
 * @param note the house's note on kit that the profile does not mention; may be empty
 * @param code call-out such as {@code W3}; may be empty
 * @param gear id of the gear that the code stands for; may be empty
 * @param place where the gear is; may be empty
 * @param reminders cautions that stand before the action
 * @param card what stands of it on the card of its task
 */
public record Step(
    String id,
    int number,
    Words action,
    Words see,
    Words ifNot,
    Words note,
    String code,
    String gear,
    Words place,
    List<Reminder> reminders,
    OnCard card) {
  /** Copies the list. */
  public Step {
    reminders = List.copyOf(reminders);
  }

  /** The same step in other words. */
  public Step said(UnaryOperator<Words> way) {
    return new Step(
        id,
        number,
        way.apply(action),
        way.apply(see),
        way.apply(ifNot),
        note,
        code,
        gear,
        place,
        reminders,
        card);
  }
}
