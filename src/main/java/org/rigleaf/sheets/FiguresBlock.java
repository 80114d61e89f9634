package org.rigleaf.sheets;

import java.util.List;

/**
 * Key figures, set large.
 *
 * @param title heading; may be empty
 * @param lines one figure each
 */
public record FiguresBlock(String title, List<FigureLine> lines) implements Block {
  /** Copies the list. */
  public FiguresBlock {
    lines = List.copyOf(lines);
  }

  @Override
  public String kind() {
    return "figures";
  }
}
