package org.rigleaf.sheets;

/**
 * Whom to call.
 *
 * @param name as printed
 * @param phone as printed; may be empty
 * @param when what to call about, or the hours; may be empty
 */
public record Contact(String name, String phone, String when) {}
