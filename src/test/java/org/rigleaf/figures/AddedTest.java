package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What a change adds to the weight; 72 FR 68442: the lesser of 1.5 % of the GVWR and 100 lb. */
class AddedTest {
  @Test
  void aLightRigIsFlaggedByItsShareAndAHeavyOneByAHundredPounds() {
    assertEquals(45, Added.boundPounds(3000), 1e-9); // 0.015 × 3,000
    assertEquals(99, Added.boundPounds(6600), 1e-9); // 0.015 × 6,600
    assertEquals(100, Added.boundPounds(14_000), 1e-9); // 0.015 × 14,000 = 210
  }

  @Test
  void addedPoundsAreToldAsAShareOfTheRating() {
    assertEquals(1.5, Added.sharePercent(99, 6600), 1e-9);
  }
}
