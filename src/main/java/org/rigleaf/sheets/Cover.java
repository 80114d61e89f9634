package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.guidance.Finding;
import org.rigleaf.guidance.Words;

/**
 * What the cover says beyond the name of the rig.
 *
 * @param document what kind of document it is
 * @param reader whom it is for
 * @param keeper who made it and keeps the original
 * @param lines a few figures to recognise the rig by
 * @param limits what stands above this document, a sentence each
 * @param findings what must be put right before anybody sleeps in the rig
 * @param portrait the rig from the side; one, or none where the findings fill the cover
 */
public record Cover(
    String document,
    String reader,
    String keeper,
    List<FigureLine> lines,
    List<Words> limits,
    List<Finding> findings,
    List<DrawingBlock> portrait) {
  /** Copies the lists. */
  public Cover {
    lines = List.copyOf(lines);
    limits = List.copyOf(limits);
    findings = List.copyOf(findings);
    portrait = List.copyOf(portrait);
  }
}
