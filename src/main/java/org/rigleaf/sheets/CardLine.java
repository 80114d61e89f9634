package org.rigleaf.sheets;

import java.util.function.UnaryOperator;
import org.rigleaf.guidance.Step;
import org.rigleaf.guidance.Words;

/** One line of a card. */
public sealed interface CardLine {
  /** Names the way it is set. */
  String kind();

  /** The same line in other words. */
  CardLine said(UnaryOperator<Words> way);

  /**
   * A step.
   *
   * @param number counted over the cards of the task
   * @param see true if the card says what one should see: where it names a value or an amount, and
   *     where the card says what to do when it is not so; the rest is plain
   * @param fallback true if the card says what to do when it does not go so: in an emergency, and
   *     where a danger is met; for the rest the foot of the card names the page that does
   */
  record OfStep(int number, Step step, boolean see, boolean fallback) implements CardLine {
    @Override
    public String kind() {
      return "step";
    }

    @Override
    public CardLine said(UnaryOperator<Words> way) {
      return new OfStep(number, step.said(way), see, fallback);
    }
  }

  /** A fact with its label; a label alone is a sentence of its own. */
  record Fact(Words label, Words text) implements CardLine {
    @Override
    public String kind() {
      return "fact";
    }

    @Override
    public CardLine said(UnaryOperator<Words> way) {
      return new Fact(way.apply(label), way.apply(text));
    }
  }
}
