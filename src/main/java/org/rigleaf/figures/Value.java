package org.rigleaf.figures;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** What a figure says: a number, a day, a word of the closed list, or a set of loads. */
public sealed interface Value {
  /** As {@code data-value} holds it. */
  String data();

  /** A number in the figure's unit; at least four significant digits are kept. */
  record Number(double number) implements Value {
    /** Refuses what is not a number. */
    public Number {
      if (!Double.isFinite(number)) {
        throw new IllegalArgumentException("a figure must be a finite number");
      }
    }

    @Override
    public String data() {
      java.math.BigDecimal exact = new java.math.BigDecimal(number);
      return exact.round(new java.math.MathContext(6)).stripTrailingZeros().toPlainString();
    }
  }

  /** A day. */
  record Day(LocalDate day) implements Value {
    @Override
    public String data() {
      return day.toString();
    }
  }

  /** A word. */
  record Word(Words word) implements Value {
    @Override
    public String data() {
      return word.text();
    }
  }

  /**
   * A thing of the rig, such as a tank.
   *
   * @param id as it stands in figure ids
   * @param gear its gear id
   */
  record Thing(String id, String gear) implements Value {
    @Override
    public String data() {
      return id;
    }
  }

  /** Ids of loads, in the order of the profile. */
  record Loads(List<String> ids) implements Value {
    @Override
    public String data() {
      return String.join(" ", ids);
    }
  }

  /** The closed list of words. */
  enum Words {
    YES,
    NO,
    PART,
    KEEPS_UP,
    NEVER;

    /** As printed in {@code data-value}. */
    public String text() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
