package org.rigleaf.source;

import java.util.ArrayList;
import java.util.List;

/** Collects every problem of a reading, so that the user sees all of them at once. */
public final class Problems {
  private final List<Problem> found = new ArrayList<>();

  /** Notes one problem. */
  public void add(Position at, String key, String wrong, String cure) {
    found.add(new Problem(at, key, wrong, cure));
  }

  /** True while nothing is wrong. */
  public boolean none() {
    return found.isEmpty();
  }

  /** All problems in the order of the file. */
  public List<Problem> sorted() {
    return found.stream().sorted().distinct().toList();
  }
}
