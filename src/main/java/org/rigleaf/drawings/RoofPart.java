package org.rigleaf.drawings;

import java.util.Arrays;
import java.util.Optional;
import org.rigleaf.rig.Gear;

/** What stands on a roof: which gear, how long along the rig and how high, in feet. */
enum RoofPart {
  AIR_CONDITIONER("climate.air-conditioners", 3, 1),
  SOLAR("electric.solar", 5, 0.25),
  FAN("climate.vent-fans", 1.3, 0.45),
  ANTENNA("body.antennas", 1.6, 0.9);

  private final String type;
  private final double length;
  private final double high;

  RoofPart(String type, double length, double high) {
    this.type = type;
    this.length = length;
    this.high = high;
  }

  double length() {
    return length;
  }

  double high() {
    return high;
  }

  boolean is(Gear gear) {
    return gear.type().equals(type);
  }

  static Optional<RoofPart> of(Gear gear) {
    return Arrays.stream(values()).filter(p -> p.is(gear)).findFirst();
  }

  /** Draws it over the middle of its place; {@code wide} is how long it looks from this side. */
  void draw(Pen pen, double along, double roof, double wide) {
    double from = along - wide / 2;
    double to = along + wide / 2;
    pen.open(name());
    switch (this) {
      case AIR_CONDITIONER ->
          pen.path(
              Outline.PART.filled(Svg.WHITE),
              Path.from(from, roof)
                  .to(from + 0.15, roof + high * 0.75)
                  .bend(from + 0.2, roof + high, from + 0.5, roof + high)
                  .to(to - 0.5, roof + high)
                  .bend(to - 0.2, roof + high, to - 0.15, roof + high * 0.75)
                  .to(to, roof)
                  .close());
      case SOLAR -> {
        pen.box(from, to, roof + 0.12, roof + high, 0, Outline.PART.filled(Svg.GRAY));
        pen.line(from + 0.4, roof, from + 0.4, roof + 0.12, Outline.PART);
        pen.line(to - 0.4, roof, to - 0.4, roof + 0.12, Outline.PART);
      }
      case FAN -> pen.box(from, to, roof, roof + high, 0.15, Outline.PART.filled(Svg.WHITE));
      case ANTENNA -> {
        pen.line(along, roof, along, roof + high, Outline.PART);
        pen.line(from, roof + high, to, roof + high, Outline.PART);
      }
    }
    pen.close();
  }
}
