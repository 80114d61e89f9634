package org.rigleaf.rules;

/**
 * A sign as it is printed.
 *
 * @param page counted from 1
 * @param size type size in points, as drawn
 * @param rgb color, 0xRRGGBB
 * @param font name of the font
 * @param x left edge in points
 * @param y baseline in points from the top of the page
 */
record Glyph(int page, String sign, double size, int rgb, String font, double x, double y) {
  boolean bold() {
    return font.contains("Bold");
  }

  boolean white() {
    return rgb == 0xffffff;
  }
}
