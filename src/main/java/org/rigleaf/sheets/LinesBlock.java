package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Words;

/**
 * Short sentences, a line each.
 *
 * @param title heading; may be empty
 * @param lines the sentences
 */
public record LinesBlock(String title, List<Words> lines) implements Block {
  /** Copies the list. */
  public LinesBlock {
    lines = List.copyOf(lines);
  }

  @Override
  public String kind() {
    return "lines";
  }
}
