package org.rigleaf.drawings;

import org.rigleaf.drawings.Schematic.Line;
import org.rigleaf.drawings.Svg.Look;

/** Dashes and width of every kind of line; a shut one is gray. */
final class LineLooks {
  private LineLooks() {}

  static Look of(Line line, boolean shut) {
    Look look =
        switch (line) {
          case AC -> Look.line(1.3);
          case DC -> Look.line(1.3).dashed("7 2.5");
          case COLD -> Look.line(2);
          case HOT -> Look.line(2).dashed("4 2");
          case WASTE -> Look.line(2).dashed("9 2 2 2");
          case PROPANE -> Look.line(1.5).dashed("1.5 1.5");
        };
    return shut ? look.in(Svg.GRAY).dashed("2 3") : look;
  }
}
