package org.rigleaf.guidance;

/**
 * What a printed figure promises to other programs.
 *
 * @param id id of the figure
 * @param value the value in the register's one unit, whatever unit is shown
 * @param unit symbol of that unit
 * @param from {@code given} or {@code typical}
 * @param assumes ids of the typical values it leans on, with spaces between; may be empty
 */
public record Mark(String id, String value, String unit, String from, String assumes) {
  /** The mark of a run that is no figure: a template never meets a null. */
  public static final Mark NONE = new Mark("", "", "", "", "");
}
