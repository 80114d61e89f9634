package org.rigleaf.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the known word that a misspelt one most likely meant. */
public final class Nearest {
  private Nearest() {}

  /** The known word within a third of the word's length in edits, if there is one. */
  public static Optional<String> to(String word, Collection<String> known) {
    int most = Math.max(1, (word.length() + 1) / 3);
    return known.stream()
        .filter(k -> distance(word, k) <= most)
        .min(Comparator.comparingInt((String k) -> distance(word, k)).thenComparing(k -> k));
  }

  /** Levenshtein distance, counting a swap of neighbours as one edit. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int best = Math.min(d[i - 1][j - 1] + cost, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
