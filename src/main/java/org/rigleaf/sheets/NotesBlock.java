package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Words;

/**
 * What the keeper says of how things work.
 *
 * @param title heading
 * @param notes one for each thing
 */
public record NotesBlock(String title, List<Note> notes) implements Block {
  /** Copies the list. */
  public NotesBlock {
    notes = List.copyOf(notes);
  }

  /**
   * The keeper's words about one thing.
   *
   * @param gear its id
   * @param name its name
   */
  public record Note(String gear, String name, Words words) {}

  @Override
  public String kind() {
    return "notes";
  }
}
