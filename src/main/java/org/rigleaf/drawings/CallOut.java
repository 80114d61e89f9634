package org.rigleaf.drawings;

/**
 * A numbered pointer to a piece of gear.
 *
 * @param gear its id
 * @param code its code, {@code W3}
 * @param placed true if the drawing shows it; false if nobody said where it is
 */
public record CallOut(String gear, String code, boolean placed) {}
