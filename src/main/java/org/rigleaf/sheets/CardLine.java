package org.rigleaf.sheets;

import org.rigleaf.guidance.Step;
import org.rigleaf.guidance.Words;

/** One line of a card. */
public sealed interface CardLine {
  /** Names the way it is set. */
  String kind();

  /** A step with its number on the card. */
  record OfStep(int number, Step step) implements CardLine {
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
