package org.rigleaf.rig;

import org.rigleaf.source.Unit;

/** Limits the keeper sets: wind for the awning, the lowest temperature the rig is let out in. */
public record Limits(Fact wind, Fact lowestTemperature) {
  static Limits read(Section s) {
    return new Limits(
        s.positive("wind", Unit.MILE_PER_HOUR),
        s.between("lowest-temperature", Unit.FAHRENHEIT, -60, 80));
  }
}
