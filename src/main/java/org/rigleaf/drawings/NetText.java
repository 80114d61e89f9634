package org.rigleaf.drawings;

import java.util.Locale;

/** Small helps with words in boxes. */
final class NetText {
  private NetText() {}

  /** With a capital, as names of gear have. */
  static String sentence(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
