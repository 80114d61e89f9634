package org.rigleaf.guidance;

import java.time.Period;

/** A part of the upkeep calendar: how often its tasks are due. */
public enum Band {
  USE,
  MONTH,
  SEASON,
  YEAR,
  LONGER;

  static Band of(Period every) {
    long months = every.toTotalMonths();
    return months <= 1 ? MONTH : months < 12 ? SEASON : months == 12 ? YEAR : LONGER;
  }
}
