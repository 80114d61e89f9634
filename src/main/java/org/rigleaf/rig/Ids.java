package org.rigleaf.rig;

import java.util.Locale;

/** Makes ids from names. */
public final class Ids {
  private Ids() {}

  /**
   * Lower case, hyphens for everything that is not a letter or digit: 'Roof air conditioner' is
   * 'roof-air-conditioner'.
   */
  public static String of(String name) {
    String id = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    return id.replaceAll("^-|-$", "");
  }

  /** The part of an id after its last dot: the item's own part. */
  public static String last(String id) {
    return id.substring(id.lastIndexOf('.') + 1);
  }
}
