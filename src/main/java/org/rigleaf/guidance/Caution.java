package org.rigleaf.guidance;

import java.util.List;

/**
 * A hazard told in full.
 *
 * @param id id of the caution
 * @param level {@code danger}, {@code warning}, {@code caution} or {@code notice}
 * @param signal the signal word as printed
 * @param group the trade it belongs to
 * @param hazard what the hazard is
 * @param consequence what happens
 * @param avoid what to do, one command an entry
 * @param defer whom to ask or call; may be empty
 */
public record Caution(
    String id,
    String level,
    String signal,
    String group,
    Words hazard,
    Words consequence,
    List<Words> avoid,
    Words defer) {
  /** Copies the list. */
  public Caution {
    avoid = List.copyOf(avoid);
  }
}
