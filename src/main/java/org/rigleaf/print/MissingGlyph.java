package org.rigleaf.print;

/** A character that none of the embedded fonts can print, so that the page would lose it. */
public final class MissingGlyph extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final int character;

  /**
   * Names the character.
   *
   * @param character its code point
   * @param near the words it stands in
   */
  MissingGlyph(int character, String near) {
    super(
        String.format(
            "no font has %s (U+%04X, %s), in: %s",
            Character.toString(character), character, Character.getName(character), near));
    this.character = character;
  }

  /** The code point. */
  public int character() {
    return character;
  }
}
