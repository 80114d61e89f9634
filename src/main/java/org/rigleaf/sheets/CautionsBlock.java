package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Caution;

/**
 * Cautions told in full, in the grouped section only.
 *
 * @param title heading; may be empty
 * @param cautions the cautions, in order
 */
public record CautionsBlock(String title, List<Caution> cautions) implements Block {
  /** Copies the list. */
  public CautionsBlock {
    cautions = List.copyOf(cautions);
  }

  @Override
  public String kind() {
    return "cautions";
  }
}
