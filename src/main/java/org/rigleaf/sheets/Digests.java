package org.rigleaf.sheets;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Tells whether something changed. */
public final class Digests {
  private Digests() {}

  /** SHA-256 of a text, in hexadecimal. */
  public static String digest(String text) {
    return digest(text.getBytes(StandardCharsets.UTF_8));
  }

  /** SHA-256 of some bytes, in hexadecimal. */
  public static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
