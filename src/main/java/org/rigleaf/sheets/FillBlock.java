package org.rigleaf.sheets;

import java.util.List;

/**
 * Lines to write on by hand.
 *
 * @param title heading; may be empty
 * @param labels what to write, one a line
 */
public record FillBlock(String title, List<String> labels) implements Block {
  /** Copies the list. */
  public FillBlock {
    labels = List.copyOf(labels);
  }

  @Override
  public String kind() {
    return "fill";
  }
}
