package org.rigleaf.sheets;

/**
 * In which edition a topic last changed.
 *
 * @param id id of the topic
 * @param code such as {@code E1}; may be empty
 * @param title title of the topic
 * @param edition number of that edition
 * @param date its date, as printed
 * @param digest of the topic's HTML
 */
public record Effective(
    String id, String code, String title, String edition, String date, String digest) {}
