package org.rigleaf.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The order of pages on the sheets of a booklet. */
class SignatureTest {
  private static final int SIDES = 4; // pages of a folded sheet

  /** Two sheets folded into one another and numbered by hand: taken apart, they read so. */
  @Test
  void eightPagesLieAsOnSheetsFoldedByHand() {
    assertEquals(List.of("8 1", "2 7", "6 3", "4 5"), sides(8));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4, 5, 8, 30, 76, 77})
  void foldedAndReadFromTheFrontThePagesCount(int pages) {
    List<Integer> read = folded(Signature.sides(pages));
    assertEquals(IntStream.rangeClosed(1, read.size()).boxed().toList(), read);
    assertTrue(read.size() >= pages && read.size() - pages < SIDES, "no sheet is wholly blank");
  }

  /** Lays sheet into sheet: each shows its right outer half, then its inner left, and so back. */
  private static List<Integer> folded(List<int[]> sides) {
    List<Integer> front = new ArrayList<>();
    Deque<Integer> back = new ArrayDeque<>();
    for (int sheet = 0; sheet < sides.size(); sheet += 2) {
      int[] outer = sides.get(sheet);
      int[] inner = sides.get(sheet + 1);
      front.add(outer[1]);
      front.add(inner[0]);
      back.push(outer[0]);
      back.push(inner[1]);
    }
    front.addAll(back);
    return front;
  }

  private static List<String> sides(int pages) {
    return Signature.sides(pages).stream()
        .map(side -> String.join(" ", Arrays.stream(side).mapToObj(String::valueOf).toList()))
        .toList();
  }
}
