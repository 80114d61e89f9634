package org.rigleaf.source;

/**
 * A place in a file, so that a message can point at it.
 *
 * @param file name of the file as the user gave it
 * @param line counted from 1
 * @param column counted from 1
 */
public record Position(String file, int line, int column) implements Comparable<Position> {
  /** The start of a file, for problems that concern all of it. */
  public static Position start(String file) {
    return new Position(file, 1, 1);
  }

  @Override
  public int compareTo(Position other) {
    if (!file.equals(other.file)) {
      return file.compareTo(other.file);
    }
    return line != other.line ? line - other.line : column - other.column;
  }

  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
