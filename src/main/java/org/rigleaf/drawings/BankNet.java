package org.rigleaf.drawings;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Schematic.Shape;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;

/** The house bank battery by battery: those of a string from left to right, strings under it. */
public final class BankNet {
  private static final int MOST_IN_SERIES = 4; // side by side on a page
  private static final int MOST_STRINGS = 8;
  private static final String MINUS = "minus";
  private static final String PLUS = "plus";

  private BankNet() {}

  /**
   * The bank; empty if it is one battery, if its count is not known, or if it has more than a page
   * can show.
   *
   * @param volts of the whole bank, as the sheets print it
   * @param capacity amp-hours of the whole bank; either is empty if not known
   */
  public static Optional<Schematic> of(
      Rig rig, NetWords words, Optional<String> volts, Optional<String> capacity) {
    return rig.electric()
        .batteries()
        .filter(b -> b.inSeries().known() && b.strings().known())
        .filter(b -> count(b.inSeries()) * count(b.strings()) > 1)
        .filter(b -> count(b.inSeries()) <= MOST_IN_SERIES && count(b.strings()) <= MOST_STRINGS)
        .map(b -> draw(b, new NetDraft(rig, words), words, Stream.of(volts, capacity)));
  }

  private static int count(Fact fact) {
    return (int) fact.value();
  }

  private static Schematic draw(
      BatteryBank bank, NetDraft draft, NetWords words, Stream<Optional<String>> whole) {
    int series = count(bank.inSeries());
    int strings = count(bank.strings());
    draft.plain(MINUS, words.phrase("net-minus"), Shape.SOURCE, 0, 0, Stream.empty());
    for (int s = 0; s < strings; s++) {
      String last = MINUS;
      for (int b = 0; b < series; b++) {
        String number = String.valueOf(s * series + b + 1);
        String name = words.phrase("net-battery", Map.of("number", number));
        Stream<Optional<String>> lines =
            Stream.of(
                words.phrase("net-amount", bank.voltage()),
                words.phrase("net-amount", bank.capacity()));
        draft.plain("battery" + number, name, Shape.STORE, b + 1, s, lines);
        draft.link(last, "battery" + number, Line.DC);
        last = "battery" + number;
      }
      if (s == 0) {
        draft.plain(PLUS, words.phrase("net-plus"), Shape.LOAD, series + 1, 0, whole);
      }
      draft.link(last, PLUS, Line.DC);
    }
    Map<String, String> values =
        Map.of("strings", String.valueOf(strings), "series", String.valueOf(series));
    return draft.schematic(words.phrase("net-bank-alt", values));
  }
}
