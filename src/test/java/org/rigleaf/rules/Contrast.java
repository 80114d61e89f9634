package org.rigleaf.rules;

import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.TreeMap;

/** Contrast ratio of WCAG 2.2: (L1 + 0.05) / (L2 + 0.05), L the relative luminance of sRGB. */
final class Contrast {
  private Contrast() {}

  static double of(int a, int b) {
    double la = luminance(a);
    double lb = luminance(b);
    return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
  }

  /** What this sign needs: 7 to 1, large ones 4.5 to 1. */
  static double least(Glyph g) {
    return g.size() >= 17.95 || g.bold() && g.size() >= 13.95 ? 4.5 : 7;
  }

  /** The color that a white sign stands on: the one seen most in its box that is not its own. */
  static int behind(BufferedImage page, Glyph g) {
    Map<Integer, Integer> seen = new TreeMap<>();
    for (int x = (int) g.x() - 2; x < g.x() + g.size() * 0.8; x++) {
      for (int y = (int) (g.y() - g.size() * 0.9); y < g.y() + 2; y++) {
        if (x >= 0 && y >= 0 && x < page.getWidth() && y < page.getHeight()) {
          seen.merge(page.getRGB(x, y) & 0xffffff, 1, Integer::sum);
        }
      }
    }
    seen.remove(0xffffff);
    return seen.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(0xffffff);
  }

  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16 & 255)
        + 0.7152 * linear(rgb >> 8 & 255)
        + 0.0722 * linear(rgb & 255);
  }

  private static double linear(int value) {
    double c = value / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
