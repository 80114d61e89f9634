package org.rigleaf.source;

/**
 * What a quantity measures, as a reader would call it, with an example that shows a right value.
 */
public enum Kind {
  LENGTH("a length", "25 ft 6 in"),
  VOLUME("a volume", "42 gal"),
  MASS("a weight", "5050 lb"),
  PRESSURE("a pressure", "65 psi"),
  TEMPERATURE("a temperature", "38 degF"),
  CURRENT("a current", "30 A"),
  VOLTAGE("a voltage", "12 V"),
  CHARGE("a battery capacity", "215 Ah"),
  POWER("a power or heat rate", "1440 W or 12000 Btu/h"),
  TIME("a time", "15 min"),
  FLOW("a flow", "3 gpm"),
  SPEED("a speed", "65 mph"),
  ANGLE("an angle", "3 deg"),
  TORQUE("a torque", "110 lb-ft"),
  GAUGE("a wire gauge", "10 AWG"),
  SHARE("a share", "1/3, 50 percent, full or empty"),
  COUNT("a plain number", "2"),
  DATE("a date", "2026-05-02"),
  ENERGY("an energy", "2580 Wh"),
  WORDS("words", "yes");

  private final String called;
  private final String example;

  Kind(String called, String example) {
    this.called = called;
    this.example = example;
  }

  /** The kind with its article, as in 'a volume'. */
  public String called() {
    return called;
  }

  /** A value of this kind, written as a profile would. */
  public String example() {
    return example;
  }
}
