package org.rigleaf.print;

/** A card that does not hold what stands on it; nothing is shrunk or cut off for it. */
public final class CardTooTall extends RuntimeException {
  private static final long serialVersionUID = 1;

  /**
   * Names the card.
   *
   * @param card its code, title and number
   * @param millimeters by how much it is too tall
   */
  CardTooTall(String card, double millimeters) {
    super(
        String.format(java.util.Locale.ROOT, "the card %s is %.1f mm too tall", card, millimeters));
  }
}
