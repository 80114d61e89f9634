package org.rigleaf.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rigleaf.RandomRigs;

/** One numbering: walking order at first, then kept. */
class CodesTest {
  private static Gear gear(String id, String at) {
    return new Gear(
        id,
        id,
        Optional.empty(),
        Letter.WATER,
        new Place(Optional.empty(), Spot.parse(at)),
        Optional.empty());
  }

  private static final List<Gear> FOUR =
      List.of(
          gear("pump", "inside 9 ft"),
          gear("inlet", "street 12 ft"),
          gear("fill", "street 16 ft"),
          gear("shower", "curb 20 ft"));

  @Test
  void theFirstEditionNumbersAlongTheWalkCurbSideBackAndStreetSideForward() {
    assertEquals(
        Map.of("shower", "W1", "fill", "W2", "inlet", "W3", "pump", "W4"),
        Codes.assign(FOUR, Map.of()));
  }

  @Test
  void issuedCodesAreKeptAndNewGearTakesTheNextFreeNumber() {
    Map<String, String> codes =
        Codes.assign(FOUR, Map.of("pump", "W1", "inlet", "W2", "fill", "W4"));
    assertEquals(Map.of("pump", "W1", "inlet", "W2", "fill", "W4", "shower", "W3"), codes);
  }

  @Test
  void theNumberOfGearThatIsGoneIsNotUsedAgain() {
    assertEquals(
        "W2",
        Codes.assign(List.of(gear("shower", "curb 20 ft")), Map.of("bidet", "W1")).get("shower"));
  }

  @Test
  void theKeepersOwnCodeWins() {
    Gear own =
        new Gear("pump", "pump", Optional.empty(), Letter.WATER, Place.UNKNOWN, Optional.of("W9"));
    assertEquals("W9", Codes.assign(List.of(own), Map.of("pump", "W1")).get("pump"));
  }

  @Test
  void noTwoPiecesOfGearOfARandomRigShareACode() {
    RandomRigs.all()
        .forEach(
            p -> {
              Rig rig = p.rig();
              assertEquals(
                  rig.gear().size(), rig.codes().values().stream().distinct().count(), p.name());
              assertTrue(
                  rig.codes().values().stream().allMatch(c -> c.matches("[EWDPCBRS][1-9]\\d*")));
            });
  }
}
