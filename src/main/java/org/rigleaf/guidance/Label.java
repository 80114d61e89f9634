package org.rigleaf.guidance;

/**
 * A label to stick on.
 *
 * @param id of its gear, or its own
 * @param gear id of its gear; empty if it belongs to none
 * @param code of its gear; may be empty
 * @param word in large type; may be none
 * @param name of what it is stuck to
 * @param text what to know there; may be none
 * @param feet from how far it is read
 */
public record Label(
    String id, String gear, String code, Words word, String name, Words text, int feet) {}
