package org.rigleaf.rig;

import java.util.Locale;
import java.util.regex.Pattern;

/** Makes ids from names. */
public final class Ids {
  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final Pattern ENDS = Pattern.compile("^-|-$");

  private Ids() {}

  /**
   * Lower case, hyphens for everything that is not a letter or digit: 'Roof air conditioner' is
   * 'roof-air-conditioner'.
   */
  public static String of(String name) {
    String id = OTHER.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("-");
    return ENDS.matcher(id).replaceAll("");
  }

  /** The part of an id after its last dot: the item's own part. */
  public static String last(String id) {
    return id.substring(id.lastIndexOf('.') + 1);
  }

  /** The id before its last dot; itself if it has none. */
  public static String parent(String id) {
    return id.contains(".") ? id.substring(0, id.lastIndexOf('.')) : id;
  }
}
