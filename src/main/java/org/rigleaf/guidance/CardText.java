package org.rigleaf.guidance;

import java.util.List;
import java.util.Set;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/**
 * A task that has a card of its own, as the wording has it.
 *
 * @param id stable, so that a notice can name it
 * @param title as printed; empty where the task has the title of its procedure
 * @param emergency set apart, with no code to scan
 * @param mode of a card of facts: {@code look-up} or {@code read-do}; procedures have their own
 * @param condition of the rigs that need it
 * @param shows the procedure it takes its steps from, the fault it takes its checks from, or the
 *     facts to look up
 */
public record CardText(
    String id,
    String title,
    boolean emergency,
    String mode,
    Condition condition,
    List<Show> shows) {

  private static final List<String> MODES = List.of("look-up", "read-do");

  /** The house rules; the facts of a topic, by its id. */
  private static final Set<String> CARD_LISTINGS = Set.of("rules", "topic");

  static CardText read(String id, Fields entry, WordingCheck check) {
    CardText card =
        new CardText(
            id,
            entry.text("title").map(Node.Text::value).orElse(""),
            entry.text("emergency").isPresent(),
            entry.text("mode").map(Node.Text::value).orElse("look-up"),
            Condition.read(entry, check.traits, check.problems),
            TopicText.shows(entry, check));
    entry.finish();
    if (!card.shows.stream().allMatch(CardText::fits)) {
      String cure = "use procedure, fault, pairs, rules or topic";
      check.problem(entry.at(), id, "a card cannot show this block", cure);
    }
    if (!MODES.contains(card.mode)) {
      check.problem(entry.at(), id, "no mode '" + card.mode + "'", "use one of " + MODES);
    }
    return card;
  }

  private static boolean fits(Show show) {
    return show instanceof Show.OfProcedure
        || show instanceof Show.OfFault
        || show instanceof Show.Pairs
        || show instanceof Show.Listing l && CARD_LISTINGS.contains(l.what());
  }
}
