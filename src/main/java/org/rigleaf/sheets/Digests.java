package org.rigleaf.sheets;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * Tells from a topic's HTML whether it changed: the digest, and with it the edition in which the
 * topic last changed.
 */
public final class Digests {
  private Digests() {}

  /**
   * The effective edition of each topic. Nothing was issued yet, so all are of the edition at hand.
   *
   * @param html the topics' HTML without furniture, in the order of the binder
   */
  public static List<Effective> of(Binder binder, List<String> html) {
    List<Effective> effective = new ArrayList<>();
    for (int i = 0; i < html.size(); i++) {
      Topic topic = binder.topics().get(i);
      String edition = String.valueOf(binder.edition().number());
      effective.add(
          new Effective(
              topic.id(),
              topic.code(),
              topic.title(),
              edition,
              binder.edition().date(),
              digest(html.get(i))));
    }
    return effective;
  }

  /** SHA-256 of a text, in hexadecimal. */
  public static String digest(String text) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
