package org.rigleaf.guidance;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rigleaf.figures.Interval;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;
import org.rigleaf.source.Quantity;

/**
 * A task of upkeep as the wording has it, for all rigs.
 *
 * @param trade file of the wording in which it stands
 * @param every {@code 6 months} and the like, or the use before which it is due, one of {@link
 *     #USES}
 * @param interval the same, empty for a use
 * @param who the user or a technician
 * @param safety whether it is a safety matter to be late
 * @param at gear whose code and place print; all of them where it is a list
 * @param basis where the interval comes from
 */
record TaskText(
    String id,
    String trade,
    String title,
    Condition condition,
    String every,
    Optional<Interval> interval,
    Who who,
    boolean safety,
    List<String> cautions,
    Optional<String> at,
    TextTemplate action,
    TextTemplate see,
    TextTemplate how,
    String basis) {

  /** What a task may be tied to in place of the calendar. */
  private static final Set<String> USES =
      Set.of("each trip", "each drive", "each hook-up", "each dump", "each swap", "each storage");

  /** Who does it. */
  enum Who {
    YOU,
    TECHNICIAN
  }

  static TaskText read(String id, String trade, Fields entry, WordingCheck check) {
    String every = word(entry, "every");
    Optional<Interval> interval = Interval.parse(every, orAfter(entry, check));
    TaskText task =
        new TaskText(
            id,
            trade,
            word(entry, "title"),
            Condition.read(entry, check.traits, check.problems),
            every,
            interval,
            who(entry, check),
            entry.text("late").isPresent(),
            ProcedureText.cautions(entry, check),
            ProcedureText.at(entry, check),
            TextTemplate.read(entry, "action", check),
            TextTemplate.read(entry, "see", check),
            TextTemplate.read(entry, "how", check),
            word(entry, "basis"));
    entry.finish();
    if (interval.isEmpty() && !USES.contains(every)) {
      String cure = "write '6 months' or one of: " + USES;
      check.problem(entry.at(), entry.pathOf("every"), "not an interval: '" + every + "'", cure);
    }
    if (task.title.isEmpty() || task.action.empty() || task.basis.isEmpty()) {
      check.problem(entry.at(), id, "a task needs title, action and basis", "write them");
    }
    return task;
  }

  private static Optional<Quantity> orAfter(Fields entry, WordingCheck check) {
    Optional<Node.Text> text = entry.text("or-after");
    Optional<Quantity> after = text.flatMap(t -> Quantity.parse(t.value()));
    text.filter(t -> after.isEmpty())
        .ifPresent(
            t ->
                check.problem(
                    t.at(), entry.pathOf("or-after"), "not miles or hours", "write '12000 mi'"));
    return after;
  }

  private static Who who(Fields entry, WordingCheck check) {
    Optional<Node.Text> who = entry.text("who");
    who.filter(t -> !t.value().equals("technician"))
        .ifPresent(
            t ->
                check.problem(
                    t.at(),
                    entry.pathOf("who"),
                    "nobody called '" + t.value() + "'",
                    "write 'technician'; without the key it is you"));
    return who.isPresent() ? Who.TECHNICIAN : Who.YOU;
  }

  private static String word(Fields entry, String key) {
    return entry.text(key).map(Node.Text::value).orElse("");
  }

  /** The part of the calendar where it stands. */
  Band band() {
    return interval.map(i -> Band.of(i.every())).orElse(Band.USE);
  }
}
