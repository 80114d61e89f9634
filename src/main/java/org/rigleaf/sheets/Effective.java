package org.rigleaf.sheets;

/**
 * In which edition a piece last changed, for its foot and the contents.
 *
 * @param id id of the piece
 * @param edition number of that edition
 * @param date its date, as printed
 */
public record Effective(String id, String edition, String date) {}
