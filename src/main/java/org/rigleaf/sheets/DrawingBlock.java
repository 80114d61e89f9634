package org.rigleaf.sheets;

import java.util.List;

/**
 * A drawing with its legend.
 *
 * @param title heading; may be empty
 * @param svg the drawing, trusted: made by this program, its text escaped
 * @param alt what it shows, for a reader who cannot see it
 * @param legend what the call-outs stand for; may be empty
 * @param beside true if the drawing is half as wide as the page and its legend stands beside it
 */
public record DrawingBlock(
    String title, String svg, String alt, List<Legend> legend, boolean beside) implements Block {
  /** Copies the list. */
  public DrawingBlock {
    legend = List.copyOf(legend);
  }

  /** A drawing with its legend under it. */
  public DrawingBlock(String title, String svg, String alt, List<Legend> legend) {
    this(title, svg, alt, legend, false);
  }

  @Override
  public String kind() {
    return "drawing";
  }
}
