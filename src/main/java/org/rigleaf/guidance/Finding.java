package org.rigleaf.guidance;

/**
 * Something about this rig that needs attention.
 *
 * @param id kind of the finding
 * @param about what it concerns, part of {@code data-finding}
 * @param severity safety or attention
 * @param topic the topic at whose head it stands, empty if none
 * @param text what is wrong and what to do
 */
public record Finding(String id, String about, String severity, String topic, Words text) {}
