package org.rigleaf.sheets;

import java.util.List;

/**
 * A drawing with its legend.
 *
 * @param title heading; may be empty
 * @param svg the drawing, trusted: made by this program, its text escaped
 * @param alt what it shows, for a reader who cannot see it
 * @param legend what the call-outs stand for; may be empty
 */
public record DrawingBlock(String title, String svg, String alt, List<Legend> legend)
    implements Block {
  /** Copies the list. */
  public DrawingBlock {
    legend = List.copyOf(legend);
  }

  @Override
  public String kind() {
    return "drawing";
  }
}
