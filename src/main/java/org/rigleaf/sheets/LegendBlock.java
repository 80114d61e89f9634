package org.rigleaf.sheets;

import java.util.List;

/**
 * Gear that no drawing shows: code, name, place.
 *
 * @param title heading
 * @param legend in the order of the codes
 */
public record LegendBlock(String title, List<Legend> legend) implements Block {
  /** Copies the list. */
  public LegendBlock {
    legend = List.copyOf(legend);
  }

  @Override
  public String kind() {
    return "legend";
  }
}
