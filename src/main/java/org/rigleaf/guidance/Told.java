package org.rigleaf.guidance;

import java.util.List;

/**
 * What a notice says of one change of the rig.
 *
 * @param id of the entry of the wording
 * @param title what changed
 * @param first what to do before the first use
 * @param now what is different in use
 * @param withdrawn what held before and holds no more
 * @param tell who must be told
 */
public record Told(
    String id,
    String title,
    List<Words> first,
    List<Words> now,
    List<Words> withdrawn,
    List<Words> tell) {
  /** Copies the lists. */
  public Told {
    first = List.copyOf(first);
    now = List.copyOf(now);
    withdrawn = List.copyOf(withdrawn);
    tell = List.copyOf(tell);
  }
}
