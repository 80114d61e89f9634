package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Label;

/**
 * All that the template of the labels may see.
 *
 * @param rig name of the rig
 * @param kind kind of the rig, as printed
 * @param edition the rig's edition
 * @param draft the word for an edition that was not issued; empty for an issued one
 * @param grid where the labels are
 * @param clear millimeters between the edge of a label and its words
 * @param codeWide points that the code has
 * @param code its type size
 * @param pages of labels
 * @param paper what it is printed on
 */
public record LabelSheets(
    String rig,
    String kind,
    Edition edition,
    String draft,
    LabelGrid grid,
    double clear,
    double codeWide,
    double code,
    List<List<Cell>> pages,
    Paper paper) {
  /** Copies the list. */
  public LabelSheets {
    pages = List.copyOf(pages);
  }

  /**
   * A label in its place.
   *
   * @param label what stands on it
   * @param edition the one in which it last changed
   * @param left millimeters from the edge of the paper
   * @param top the same from the top
   * @param points type size of name and text
   * @param word type size of the large word
   */
  public record Cell(
      Label label, String edition, double left, double top, double points, double word) {}
}
