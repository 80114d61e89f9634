package org.rigleaf.rig;

import org.rigleaf.source.Position;

/**
 * A mention of another thing of the rig, by name or id, or free words in quotes.
 *
 * @param text as written
 * @param words true if it stood in quotes, so that it need not match anything
 * @param path of the key that holds it
 * @param at where
 */
public record Reference(String text, boolean words, String path, Position at) {}
