package org.rigleaf.sheets;

import java.util.List;

/**
 * The unit that is exchanged: one to four pages that start on a right-hand page.
 *
 * @param id stable id
 * @param code such as {@code E1}; empty for front matter
 * @param section key of its {@link Tab}
 * @param title what it is about
 * @param emergency whether it must be read in a hurry: one page, large type, black edge
 * @param blocks what it holds, in order
 */
public record Topic(
    String id, String code, String section, String title, boolean emergency, List<Block> blocks) {
  /** Copies the list. */
  public Topic {
    blocks = List.copyOf(blocks);
  }
}
