package org.rigleaf.guidance;

/**
 * A stretch of words of one kind.
 *
 * @param kind plain text, a figure, or a line to fill in
 * @param text what is shown; empty for a line to fill in
 * @param key what is to be filled in; empty for the other kinds
 * @param mark the figure behind the text; {@link Mark#NONE} for the other kinds
 */
public record Run(Kind kind, String text, String key, Mark mark) {
  /** What a run is. */
  public enum Kind {
    TEXT,
    FIGURE,
    BLANK
  }

  /** Plain text. */
  public static Run text(String text) {
    return new Run(Kind.TEXT, text, "", Mark.NONE);
  }

  /** A figure, as shown. */
  public static Run figure(String text, Mark mark) {
    return new Run(Kind.FIGURE, text, "", mark);
  }

  /** A line to fill in by hand. */
  public static Run blank(String key) {
    return new Run(Kind.BLANK, "", key, Mark.NONE);
  }
}
