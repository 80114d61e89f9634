package org.rigleaf.sheets;

import org.rigleaf.guidance.Words;

/**
 * What a call-out stands for.
 *
 * @param code such as {@code W3}; empty for a thing without a code
 * @param gear id of the gear; empty for a thing that is no gear
 * @param name as printed
 * @param place where it is; may be empty
 */
public record Legend(String code, String gear, String name, Words place) {}
