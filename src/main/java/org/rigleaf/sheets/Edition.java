package org.rigleaf.sheets;

/**
 * The edition of the whole document.
 *
 * @param number 1 for the first
 * @param date as printed; may be empty
 * @param note what it brings; may be empty
 */
public record Edition(int number, String date, String note) {}
