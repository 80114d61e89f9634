package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Told;

/**
 * All that the template of a notice may see: what changed between two editions, and what to do with
 * the sheets at hand.
 *
 * @param rig name of the rig
 * @param kind kind of the rig, as printed
 * @param draft the word for an edition that was not issued; empty for an issued one
 * @param from the edition that the reader holds
 * @param to the one that replaces it
 * @param cause whether the rig, the wording or both changed, in words
 * @param works what was done to the rig
 * @param told what follows from it
 * @param lines the figures that every notice shows, line by line
 * @param added what the change adds to the weight, in sentences; empty if nothing
 * @param figures all other figures that differ
 * @param more a sentence on those left out; may be empty
 * @param lists what was added or withdrawn: cautions, steps, findings
 * @param whole a sentence if the whole binder is printed again; empty otherwise
 * @param swaps what to take out and put in
 * @param always what every edition prints again
 * @param paper what it is printed on
 */
public record Notice(
    String rig,
    String kind,
    String draft,
    Edition from,
    Edition to,
    String cause,
    List<Work> works,
    List<Told> told,
    List<Line> lines,
    List<String> added,
    List<Row> figures,
    String more,
    List<Listed> lists,
    String whole,
    List<Swap> swaps,
    String always,
    Paper paper) {

  /** What was done to the rig; what nobody said is empty. */
  public record Work(String what, String why, String by, String on, String adds) {}

  /** One of the lines that every notice has. */
  public record Line(String title, List<Row> rows, String more) {}

  /**
   * A figure before and now.
   *
   * @param before as printed then; empty if it is new
   * @param now as printed now; empty if it is gone
   * @param difference with its sign; empty where there is none to tell
   */
  public record Row(String id, String title, String before, String now, String difference) {}

  /** Things of one kind that were added or withdrawn. */
  public record Listed(String id, String title, List<String> items) {}

  /**
   * A piece to exchange.
   *
   * @param remove number and date of the edition to take out; empty if the piece is new
   * @param insert the same of the one to put in; empty if the piece is gone
   * @param cause what changed it, in a word
   */
  public record Swap(
      String kind,
      String id,
      String code,
      String title,
      String remove,
      String insert,
      String cause) {}
}
