package org.rigleaf.sheets;

import java.util.List;

/**
 * All that the template of the cards may see.
 *
 * @param rig name of the rig
 * @param draft the word for an edition that was not issued; empty for an issued one
 * @param pages the cards, as many a page as the paper holds
 */
public record Cards(String rig, String draft, List<List<Face>> pages) {
  /** Copies the lists. */
  public Cards {
    pages = pages.stream().map(List::copyOf).toList();
  }

  /** A card with the edition in which its task last changed. */
  public record Face(CardTask task, CardTask.Card card, Effective effective) {}
}
