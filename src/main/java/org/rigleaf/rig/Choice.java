package org.rigleaf.rig;

import java.util.Locale;

/** An enum whose values a profile may write. */
public interface Choice {
  /** The enum constant's name. */
  String name();

  /** As the profile writes it: {@code TWIST_LOCK} is 'twist lock'. */
  default String text() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** As a trait ends: 'twist-lock'. */
  default String trait() {
    return Ids.of(text());
  }
}
