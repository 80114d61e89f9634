package org.rigleaf.sheets;

import org.rigleaf.guidance.Words;

/**
 * A key figure.
 *
 * @param value the figure as shown
 * @param title what it is
 * @param meaning one line under it; may be empty
 * @param assumes marks such as {@code a c} into the list of typical values; may be empty
 */
public record FigureLine(Words value, String title, String meaning, String assumes) {}
