package org.rigleaf.sheets;

import java.util.List;

/**
 * Every symptom that this rig can show, and where its checks stand.
 *
 * @param groups the topics with their symptoms, in the order of the binder
 */
public record SymptomsBlock(List<Group> groups) implements Block {
  /** Copies the list. */
  public SymptomsBlock {
    groups = List.copyOf(groups);
  }

  @Override
  public String kind() {
    return "symptoms";
  }

  /** A topic and what is found in it. */
  public record Group(String title, String code, List<Line> lines) {
    /** Copies the list. */
    public Group {
      lines = List.copyOf(lines);
    }
  }

  /** A symptom and the id of its fault. */
  public record Line(String symptom, String fault) {}
}
