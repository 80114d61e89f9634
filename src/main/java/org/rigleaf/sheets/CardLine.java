package org.rigleaf.sheets;

import org.rigleaf.guidance.Step;
import org.rigleaf.guidance.Words;

/** One line of a card. */
public sealed interface CardLine {
  /** Names the way it is set. */
  String kind();

  /**
   * A step.
   *
   * @param number counted over the cards of the task
   * @param see true if the card says what one should see: in an emergency, where a danger is met,
   *     and where the line names a value of this rig; the rest is plain, or stands in the binder
   * @param fallback true if the card says what to do when it does not go so: in an emergency, and
   *     where a danger is met; for the rest the foot of the card names the page that does
   */
  record OfStep(int number, Step step, boolean see, boolean fallback) implements CardLine {
    @Override
    public String kind() {
      return "step";
    }
  }

  /** A fact with its label; a label alone is a sentence of its own. */
  record Fact(Words label, Words text) implements CardLine {
    @Override
    public String kind() {
      return "fact";
    }
  }
}
