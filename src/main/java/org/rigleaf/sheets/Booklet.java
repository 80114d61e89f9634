package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Words;

/**
 * All that the template of the booklet may see: the tasks of the cards, bound.
 *
 * @param rig name of the rig
 * @param kind what it is
 * @param draft the word for an edition that was not issued; empty for an issued one
 * @param edition of the profile
 * @param call whom to call
 * @param contents tasks with their first pages, as many a page as it holds
 * @param faces the cards, a page each
 */
public record Booklet(
    String rig,
    String kind,
    String draft,
    Edition edition,
    Words call,
    List<List<Line>> contents,
    List<Cards.Face> faces) {
  /** Copies the lists. */
  public Booklet {
    contents = contents.stream().map(List::copyOf).toList();
    faces = List.copyOf(faces);
  }

  /**
   * A line of the contents.
   *
   * @param emergency set apart
   * @param page the page on which the task begins
   */
  public record Line(String title, boolean emergency, int page) {}
}
