package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The ledger against closed forms where they are exact, and its balance on random days. */
class LedgerTest {
  private static double[] at(int hour, double amount) {
    return Hours.each(h -> h == hour ? amount : 0);
  }

  @Test
  void aSteadyDrawLastsStoreOverDraw() {
    // 1,000 down to 400 at 240 a day: 600 / 240
    Ledger ledger = Ledger.of(Store.drawn(1000, 400, Hours.evenly(240)));
    assertEquals(2.5, ledger.days().orElseThrow(), 1e-9);
  }

  @Test
  void theEndWithinAnHourIsOnAStraightLine() {
    // 9 gallons are gone after 1 at 18:00 and 8 of the 16 in the hour from 07:00: 16.5 h from 15:00
    Ledger ledger = Ledger.of(Store.drawn(9, 0, Hours.plus(at(18, 1), at(7, 16))));
    assertEquals(16.5 / 24, ledger.days().orElseThrow(), 1e-9);
  }

  @Test
  void whatIsReachedInTheVeryFirstHourCounts() {
    assertEquals(0.25 / 24, Ledger.of(Store.drawn(4, 0, at(15, 16))).days().orElseThrow(), 1e-9);
  }

  @Test
  void aStoreThatStartsAtItsFloorLastsNoTime() {
    assertEquals(0, Ledger.of(Store.room(4, 3, 1, at(3, 1))).days().orElseThrow());
  }

  @Test
  void aTankFillsWithTheRoomItHas() {
    // 30 gallons with 3 in them: at 3 a day full after 9 days
    assertEquals(9, Ledger.of(Store.room(30, 3, 0, Hours.evenly(3))).days().orElseThrow(), 1e-9);
    // to two thirds, 20 gallons: 17 at 3 a day
    assertEquals(
        17 / 3.0, Ledger.of(Store.room(30, 3, 10, Hours.evenly(3))).days().orElseThrow(), 1e-9);
  }

  @Test
  void thirtyDaysAreTheHorizon() {
    assertEquals(30, Ledger.of(Store.drawn(30, 0, Hours.evenly(1))).days().orElseThrow(), 1e-9);
    assertTrue(Ledger.of(Store.drawn(30.01, 0, Hours.evenly(1))).days().isEmpty());
  }

  @Test
  void onlyWhatAnHourBringsBeyondItsDrawLosesByCharging() {
    // 100 full at 50; in the hour from 15:00 come 30 and go 10: the 20 beyond keep 0.5, that is 10
    Store store = new Store(50, 0, 100, at(15, 30), at(15, 10), 0.5);
    assertEquals(60, Ledger.of(store).level()[1], 1e-9);
    // 10 come and 30 go: 20 less, nothing lost
    Store down = new Store(50, 0, 100, at(15, 10), at(15, 30), 0.5);
    assertEquals(30, Ledger.of(down).level()[1], 1e-9);
  }

  @Test
  void sunThatBringsWhatTheNightTakesKeepsUpForGood() {
    // by night 120 Wh go, by day 150 come, of which 120 / 0.85 = 141.2 are enough
    Store store =
        new Store(
            1000,
            500,
            1000,
            Hours.each(h -> h == 12 ? 150 : 0),
            Hours.each(h -> h == 0 ? 120 : 0),
            0.85);
    assertTrue(Ledger.of(store).days().isEmpty());
    Store tooLittle =
        new Store(
            1000,
            500,
            1000,
            Hours.each(h -> h == 12 ? 100 : 0),
            Hours.each(h -> h == 0 ? 120 : 0),
            0.85);
    // 120 - 85 = 35 lost a day: the 12th midnight begins at 1000 - 11 x 35 = 615 and takes 120,
    // of which 115 reach the floor: 9 + 11 x 24 + 115/120 hours
    assertEquals(273.958333 / 24, Ledger.of(tooLittle).days().orElseThrow(), 1e-6);
  }

  @Test
  void midnightAndTheFirstNight() {
    // one an hour from 100 at 15:00: 91 at midnight, 67 at the next; least of the night at 08:00
    Ledger ledger = Ledger.of(Store.drawn(100, 0, Hours.evenly(24)));
    assertEquals(91, ledger.midnight(1), 1e-9);
    assertEquals(67, ledger.midnight(2), 1e-9);
    assertEquals(83, ledger.leastOfFirstNight(), 1e-9);
  }

  @Test
  void theNightBeginsAt20() {
    // 10 go in the hour before 20:00 and come back in the hour after: at 20:00 it is at its least
    Store store = new Store(100, 0, 100, at(20, 10), at(19, 10), 1);
    assertEquals(90, Ledger.of(store).leastOfFirstNight(), 1e-9);
    Store before = new Store(100, 0, 100, at(19, 10), at(18, 10), 1);
    assertEquals(100, Ledger.of(before).leastOfFirstNight(), 1e-9);
    Store after = new Store(100, 0, 100, at(9, 10), at(8, 10), 1);
    assertEquals(100, Ledger.of(after).leastOfFirstNight(), 1e-9);
  }

  @Test
  void itNeverHoldsMoreThanItCanNorLessThanNothing() {
    Ledger full = Ledger.of(new Store(90, 0, 100, at(15, 30), at(16, 0), 1));
    assertEquals(100, full.level()[1], 1e-9);
    assertEquals(20, full.spilled() - 29 * 30, 1e-9); // every later day spills all 30
    Ledger empty = Ledger.of(new Store(10, 0, 100, at(16, 0), at(15, 30), 1));
    assertEquals(0, empty.level()[1], 1e-9);
    assertEquals(20 + 29 * 30, empty.lacked(), 1e-9);
  }

  @Test
  void theBookBalances() {
    Random random = new Random(7);
    for (int i = 0; i < 300; i++) {
      double full = 1 + random.nextInt(5000);
      double start = full * random.nextDouble();
      double[] in = Hours.each(h -> random.nextInt(3) == 0 ? random.nextDouble() * full / 5 : 0);
      double[] out = Hours.each(h -> random.nextDouble() * full / 20);
      Ledger l =
          Ledger.of(new Store(start, start / 2, full, in, out, 0.5 + random.nextDouble() / 2));
      double end = l.level()[l.level().length - 1];
      assertEquals(start + l.brought() - l.taken() - l.spilled() + l.lacked(), end, full * 1e-9);
      assertEquals(30 * Arrays.stream(out).sum(), l.taken(), full * 1e-9);
      assertTrue(l.brought() <= 30 * Arrays.stream(in).sum() + 1e-9);
    }
  }

  @Test
  void moreInStoreNeverLastsLess() {
    Random random = new Random(8);
    for (int i = 0; i < 300; i++) {
      double[] in = Hours.each(h -> random.nextInt(4) == 0 ? random.nextDouble() * 30 : 0);
      double[] out = Hours.each(h -> random.nextDouble() * 20);
      double full = 50 + random.nextInt(1000);
      double less = Ledger.of(new Store(full, full / 2, full, in, out, 0.9)).days().orElse(99);
      double big = full * (1 + random.nextDouble());
      double more = Ledger.of(new Store(big, big / 2, big, in, out, 0.9)).days().orElse(99);
      assertTrue(more >= less - 1e-9, more + " < " + less);
    }
  }
}
