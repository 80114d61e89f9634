package org.rigleaf.sheets;

import org.rigleaf.guidance.Procedure;

/**
 * A task with its steps.
 *
 * @param procedure the task
 */
public record ProcedureBlock(Procedure procedure) implements Block {

  @Override
  public String kind() {
    return "procedure";
  }
}
