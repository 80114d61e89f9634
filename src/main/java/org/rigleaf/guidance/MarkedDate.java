package org.rigleaf.guidance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.rigleaf.figures.Figure;
import org.rigleaf.figures.Figures;
import org.rigleaf.figures.Tires;
import org.rigleaf.figures.Value;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Safety;
import org.rigleaf.source.PartialDate;

/**
 * A date that stands on a piece of gear: after it, the gear has to be replaced or tested.
 *
 * @param kind what bears the date
 * @param about id of the gear; of tires {@code tire.1}, the axle from the front
 * @param key the fact or figure that tells the date
 * @param day the last good day; empty if nobody said
 * @param figure the figure behind it, if one is
 */
record MarkedDate(
    Kind kind, String about, String key, Optional<LocalDate> day, Optional<Figure> figure) {
  /** What bears such a date. */
  enum Kind {
    ALARM,
    EXTINGUISHER,
    CYLINDER,
    TIRE;

    /** The word in the ids of phrases and findings. */
    String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** The dates of a rig, those that nobody told included. */
  static List<MarkedDate> of(Rig rig, Figures figures) {
    List<MarkedDate> all = new ArrayList<>();
    for (Safety.Alarm alarm : rig.safety().alarms()) {
      if (!alarm.missing()) {
        all.add(stamped(Kind.ALARM, alarm.gear(), alarm.replaceBy()));
      }
    }
    for (Safety.Extinguisher e : rig.safety().extinguishers()) {
      all.add(stamped(Kind.EXTINGUISHER, e.gear(), e.replaceBy()));
    }
    rig.propane().ifPresent(p -> p.cylinders().forEach(c -> all.add(cylinder(c.gear(), figures))));
    Tires.byAxle(rig).forEach(axle -> all.add(tire(axle.part(), figures)));
    return all;
  }

  private static MarkedDate stamped(Kind kind, Gear gear, Optional<PartialDate> date) {
    String key = gear.id() + ".replace-by";
    return new MarkedDate(kind, gear.id(), key, date.map(PartialDate::last), Optional.empty());
  }

  private static MarkedDate cylinder(Gear gear, Figures figures) {
    String id = "lp." + gear.part() + ".requalify";
    Optional<Figure> figure = figures.find(id);
    Optional<LocalDate> day = figure.map(f -> ((Value.Day) f.value()).day());
    return new MarkedDate(Kind.CYLINDER, gear.id(), id, day, figure);
  }

  /** A tire's time ends with the year. */
  private static MarkedDate tire(String axle, Figures figures) {
    String id = "tire." + axle + ".replace";
    Optional<Figure> figure = figures.find(id);
    Optional<LocalDate> day = figure.map(f -> LocalDate.of((int) f.number(), 12, 31));
    return new MarkedDate(Kind.TIRE, "tire." + axle, id, day, figure);
  }
}
