package org.rigleaf.sheets;

/**
 * Cards side by side on a paper, to be cut; or each on a page of its own size.
 *
 * @param size of a card
 * @param widthMm of the page
 * @param heightMm of the page
 * @param across cards side by side
 * @param down cards one under the other
 * @param folded two pages of a booklet beside one another, folded between them and not cut
 */
public record CardSheet(
    CardSize size, double widthMm, double heightMm, int across, int down, boolean folded) {
  private static final double TRIFLE = 1e-6; // two halves of a sheet fill it

  /** A card a page. */
  public static CardSheet single(CardSize size) {
    return new CardSheet(size, size.widthMm(), size.heightMm(), 1, 1, false);
  }

  /** As many as stand on the paper, upright or on its side. */
  public static CardSheet on(Paper paper, CardSize size) {
    CardSheet upright = cut(size, paper.widthMm(), paper.heightMm());
    CardSheet aside = cut(size, paper.heightMm(), paper.widthMm());
    return aside.count() > upright.count() ? aside : upright;
  }

  /** The paper on its side, two pages beside one another: half a letter, or A5. */
  public static CardSheet folded(Paper paper) {
    CardSize half = paper == Paper.A4 ? CardSize.A5 : CardSize.HALF_LETTER;
    return new CardSheet(half, paper.heightMm(), paper.widthMm(), 2, 1, true);
  }

  private static CardSheet cut(CardSize size, double widthMm, double heightMm) {
    int across = (int) (widthMm / size.widthMm() + TRIFLE);
    int down = (int) (heightMm / size.heightMm() + TRIFLE);
    return new CardSheet(size, widthMm, heightMm, across, down, false);
  }

  /** Cards a page. */
  public int count() {
    return across * down;
  }

  /** True if the page is the card, so that nothing is cut. */
  public boolean whole() {
    return count() == 1 && widthMm == size.widthMm() && heightMm == size.heightMm();
  }

  /** From the left edge of the page to the first card. */
  public double leftMm() {
    return (widthMm - across * size.widthMm()) / 2;
  }

  /** From the top edge of the page to the first card. */
  public double topMm() {
    return (heightMm - down * size.heightMm()) / 2;
  }
}
