package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Task;

/**
 * Tasks of upkeep as a table to tick off, and where they have dates, lines for those to come.
 *
 * @param title heading; may be empty
 * @param note what comes before any of them
 * @param record heading of the lines to write on, empty for none
 * @param tasks the tasks, in order
 */
public record CalendarBlock(String title, String note, String record, List<Task> tasks)
    implements Block {
  /** Copies the list. */
  public CalendarBlock {
    tasks = List.copyOf(tasks);
  }

  @Override
  public String kind() {
    return "calendar";
  }
}
