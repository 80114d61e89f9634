package org.rigleaf.rig;

import org.rigleaf.source.Unit;

/**
 * A value that stands in where a profile is silent, always marked on the page.
 *
 * @param id stable id, the same as of its wording
 * @param value in {@code unit}
 * @param unit unit
 * @param source where it comes from, or 'common practice, no source'
 */
public record TypicalValue(String id, double value, Unit unit, String source) {}
