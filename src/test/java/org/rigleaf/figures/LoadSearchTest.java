package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The edges of the search: what is exactly at a limit runs, a sixteenth of a watt more does not.
 */
class LoadSearchTest {
  private static final int ALL = 0b1111;

  private static LoadSearch.Draw free(double watts) {
    return new LoadSearch.Draw(watts, -1, List.of());
  }

  private static LoadSearch twoLegs(double leg, LoadSearch.Draw... draws) {
    return new LoadSearch(
        List.of(), List.of(draws), new LoadSearch.Limits(2, leg, 2 * leg, Map.of()));
  }

  private static LoadSearch oneLeg(double watts, LoadSearch.Draw... draws) {
    return new LoadSearch(
        List.of(), List.of(draws), new LoadSearch.Limits(1, watts, watts, Map.of()));
  }

  // 4 x 3000 W are two and two: 6000 W a leg, exactly full
  @Test
  void fourLoadsOf3000WattsFillTwoLegsOf6000() {
    assertTrue(twoLegs(6000, free(3000), free(3000), free(3000), free(3000)).fits(ALL));
    assertFalse(twoLegs(6000, free(3000), free(3000), free(3000), free(3000.0625)).fits(ALL));
  }

  // 4001 + 1999 and 3500 + 2500 fill both legs; no other split of the four does
  @Test
  void theOnlySplitThatFitsIsFound() {
    assertTrue(twoLegs(6000, free(4001), free(3500), free(2500), free(1999)).fits(ALL));
    assertFalse(twoLegs(6000, free(4002), free(3500), free(2500), free(1998.5)).fits(ALL));
  }

  // 5000 W on one leg leave 1000 W there: 1500 W and 4500 W both go to the other, which they fill
  @Test
  void loadsThatMayGoEitherWayGoWhereTheFixedOnesLeaveRoom() {
    LoadSearch.Draw fixed = new LoadSearch.Draw(5000, 0, List.of());
    assertTrue(twoLegs(6000, fixed, free(1500), free(4500)).fits(0b111));
    assertFalse(twoLegs(6000, fixed, free(1500), free(4600)).fits(0b111));
    LoadSearch.Draw other = new LoadSearch.Draw(5000, 1, List.of());
    assertTrue(twoLegs(6000, other, free(1500), free(4500)).fits(0b111));
    assertFalse(twoLegs(6000, fixed, other, free(1500)).fits(0b111));
  }

  @Test
  void aSingleLegOf1000WattsIsNotHelpedByASupplyOf2000() {
    LoadSearch search =
        new LoadSearch(
            List.of(), List.of(free(1500)), new LoadSearch.Limits(1, 1000, 2000, Map.of()));
    assertFalse(search.fits(1));
    assertEquals(List.of(1), search.never());
  }

  @Test
  void aSixteenthOfAWattTooMuchIsTooMuch() {
    assertTrue(oneLeg(1800, free(1800)).fits(1));
    assertFalse(oneLeg(1800, free(1800.0625)).fits(1));
  }

  @Test
  void aBreakerCarriesItsRatingAndNoMore() {
    LoadSearch.Draw kettle = new LoadSearch.Draw(1200, -1, List.of("galley"));
    LoadSearch.Draw iron = new LoadSearch.Draw(600, -1, List.of("galley"));
    LoadSearch.Draw fan = new LoadSearch.Draw(400, -1, List.of());
    LoadSearch.Limits limits = new LoadSearch.Limits(1, 3600, 3600, Map.of("galley", 1800.0));
    LoadSearch exact = new LoadSearch(List.of(fan), List.of(kettle, iron), limits);
    assertTrue(exact.fits(0b11));
    assertEquals(Optional.empty(), exact.broken(0b11));
    LoadSearch.Limits less = new LoadSearch.Limits(1, 3600, 3600, Map.of("galley", 1799.0));
    LoadSearch over = new LoadSearch(List.of(fan), List.of(kettle, iron), less);
    assertFalse(over.fits(0b11));
    assertEquals(Optional.of("galley"), over.broken(0b11));
    assertEquals(List.of(0b11), over.apart());
    assertEquals(List.of(0b01, 0b10), over.largest());
  }

  // what is always on may break a limit by itself; then nothing runs beside it
  @Test
  void whereTheAlwaysOnLoadsAreTooMuchNothingFits() {
    LoadSearch search =
        new LoadSearch(
            List.of(free(2000)),
            List.of(free(500)),
            new LoadSearch.Limits(1, 1800, 1800, Map.of()));
    assertFalse(search.fits(0));
    assertEquals(List.of(), search.largest());
    assertEquals(List.of(1), search.never());
  }

  @Test
  void twentyChoicesAreTriedAndTwentyOneRefused() {
    LoadSearch.Limits limits = new LoadSearch.Limits(1, 1800, 1800, Map.of());
    LoadSearch twenty = new LoadSearch(List.of(), Collections.nCopies(20, free(90)), limits);
    assertTrue(twenty.fits((1 << 20) - 1)); // 20 x 90 = 1800
    List<LoadSearch.Draw> more = Collections.nCopies(21, free(90));
    assertThrows(IllegalArgumentException.class, () -> new LoadSearch(List.of(), more, limits));
  }
}
