package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Finding;

/**
 * What needs attention on this rig.
 *
 * @param title heading
 * @param findings safety first
 */
public record FindingsBlock(String title, List<Finding> findings) implements Block {
  /** Copies the list. */
  public FindingsBlock {
    findings = List.copyOf(findings);
  }

  @Override
  public String kind() {
    return "findings";
  }
}
