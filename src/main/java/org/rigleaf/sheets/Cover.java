package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Words;

/**
 * What the cover says beyond the name of the rig.
 *
 * @param document number of the document, such as {@code sedge binder}
 * @param reader whom it is for
 * @param keeper who made it and keeps the original
 * @param lines a few figures to recognise the rig by
 * @param limits what stands above this document, a sentence each
 * @param drawings one drawing of the rig, or none
 */
public record Cover(
    String document,
    String reader,
    String keeper,
    List<FigureLine> lines,
    List<Words> limits,
    List<DrawingBlock> drawings) {
  /** Copies the lists. */
  public Cover {
    lines = List.copyOf(lines);
    limits = List.copyOf(limits);
    drawings = List.copyOf(drawings);
  }
}
