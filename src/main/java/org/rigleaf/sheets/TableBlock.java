package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Words;

/**
 * A table; the first cell of a row is its header.
 *
 * @param title heading; may be empty
 * @param heads one a column
 * @param rows cells, as many as there are heads
 * @param note a line under the table; may be empty
 */
public record TableBlock(String title, List<String> heads, List<List<Words>> rows, String note)
    implements Block {
  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if a row has more or fewer cells than there are heads
   */
  public TableBlock {
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<Words> row : rows) {
      if (row.size() != heads.size()) {
        throw new IllegalArgumentException(
            title + ": a row of " + row.size() + " cells under " + heads.size() + " heads");
      }
    }
  }

  @Override
  public String kind() {
    return "table";
  }
}
