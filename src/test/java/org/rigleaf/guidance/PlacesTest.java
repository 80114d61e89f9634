package org.rigleaf.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/** A measured place in words, where the keeper gave none. */
class PlacesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "front | front",
        "front front | front",
        "rear | rear",
        "street rear | street side (driver's), toward the rear",
        "street 19 ft up 3 ft | street side (driver's), 19 ft back from the hitch, 3 ft up",
        "rear 0 ft up 2 ft | rear, 2 ft up"
      })
  void aPlaceReadsAsItWasTold(String at, String words) {
    Rig rig =
        TestRigs.of(
            "rig: {name: Reed, kind: travel trailer}\nelectric: {shore: {at: " + at + "}}\n");
    assertEquals(words, new Places(rig, Wording.english()).where("electric.shore").plain());
  }
}
