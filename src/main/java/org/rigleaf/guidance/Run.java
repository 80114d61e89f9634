package org.rigleaf.guidance;

/**
 * A stretch of words of one kind.
 *
 * @param kind what the run is
 * @param text what is shown; empty for a line to fill in
 * @param key what is to be filled in; gear of a call-out; typical value of a mark; id of a topic;
 *     else empty
 * @param mark the figure behind the text; {@link Mark#NONE} for the other kinds
 */
public record Run(Kind kind, String text, String key, Mark mark) {
  /** What a run is. */
  public enum Kind {
    TEXT,
    FIGURE,
    /** A line to write on; the key says what. */
    BLANK,
    /** A call-out such as {@code W3}; the key is the gear. */
    CODE,
    /** The row of a typical value to check; the key is its id. */
    ASSUMED,
    /** Title and code of another topic; the key is its id. */
    TOPIC
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

  /** A call-out. */
  public static Run code(String code, String gear) {
    return new Run(Kind.CODE, code, gear, Mark.NONE);
  }

  /** Names another topic. */
  public static Run topic(String text, String id) {
    return new Run(Kind.TOPIC, text, id, Mark.NONE);
  }

  /** Names a typical value in the list of those to check. */
  public static Run assumed(String text, String id) {
    return new Run(Kind.ASSUMED, text, id, Mark.NONE);
  }
}
