package org.rigleaf.rig;

/** The letter of a system, the first sign of every code. */
public enum Letter {
  ELECTRICITY("E"),
  WATER("W"),
  DRAINS("D"),
  PROPANE("P"),
  CLIMATE("C"),
  BODY("B"),
  ROAD("R"),
  SAFETY("S");

  private final String sign;

  Letter(String sign) {
    this.sign = sign;
  }

  /** The printed letter. */
  public String sign() {
    return sign;
  }
}
