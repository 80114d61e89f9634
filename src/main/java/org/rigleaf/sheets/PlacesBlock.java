package org.rigleaf.sheets;

import java.util.List;

/**
 * Where a few things are, set large.
 *
 * @param title heading; may be empty
 * @param items name and place of each
 */
public record PlacesBlock(String title, List<Legend> items) implements Block {
  /** Copies the list. */
  public PlacesBlock {
    items = List.copyOf(items);
  }

  @Override
  public String kind() {
    return "places";
  }
}
