package org.rigleaf.source;

/**
 * One thing wrong in a file, with its cure.
 *
 * @param at where
 * @param key dotted path of the key, empty when the whole file is meant
 * @param wrong what is wrong
 * @param cure what would be right
 */
public record Problem(Position at, String key, String wrong, String cure)
    implements Comparable<Problem> {
  @Override
  public int compareTo(Problem other) {
    return at.compareTo(other.at);
  }

  @Override
  public String toString() {
    return at + ": " + (key.isEmpty() ? "" : key + ": ") + wrong + ": " + cure;
  }
}
