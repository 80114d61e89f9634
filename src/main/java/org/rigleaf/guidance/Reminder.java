package org.rigleaf.guidance;

/**
 * A caution in short, where the danger is met.
 *
 * @param caution id of the caution
 * @param level {@code danger}, {@code warning}, {@code caution} or {@code notice}
 * @param signal the signal word as printed
 * @param hazard the hazard in a few words
 * @param command what to do about it
 * @param page code of the topic that tells the whole
 */
public record Reminder(
    String caution, String level, String signal, Words hazard, Words command, String page) {}
