package org.rigleaf.guidance;

import java.util.List;

/**
 * Up to nine steps done in one go.
 *
 * @param title where or on what; may be empty
 * @param steps the steps, in order
 */
public record Group(String title, List<Step> steps) {
  /** Copies the list. */
  public Group {
    steps = List.copyOf(steps);
  }
}
