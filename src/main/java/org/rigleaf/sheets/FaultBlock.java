package org.rigleaf.sheets;

import org.rigleaf.guidance.Fault;

/**
 * What to check at one symptom.
 *
 * @param fault the symptom and its checks
 */
public record FaultBlock(Fault fault) implements Block {

  @Override
  public String kind() {
    return "fault";
  }
}
