package org.rigleaf.rig;

import java.util.List;
import java.util.Optional;
import org.rigleaf.source.PartialDate;

/**
 * Alarms, extinguishers, exits. Silence means unknown; {@code fitted: none} or {@code alarms: none}
 * means not fitted.
 *
 * <pre>
 * safety:
 *   extinguishers: [{name: Door extinguisher, type: 5-B:C, where: left of the door, made: 2021}]
 *   alarms: [{watches: lp, replace-by: 2028-03, where: "floor level, galley"}]
 *   exits: [{name: Bedroom window, opens: "red handle up, push"}]
 * </pre>
 */
public record Safety(List<Extinguisher> extinguishers, List<Alarm> alarms, List<Exit> exits) {

  static Safety read(Section s) {
    return new Safety(
        s.items("extinguishers", "extinguisher", "name", Extinguisher::read),
        s.items("alarms", "alarm", "watches", Alarm::read),
        s.items("exits", "exit", "name", Exit::read));
  }

  /** A fire extinguisher. */
  public record Extinguisher(
      Gear gear,
      Optional<String> type,
      Optional<PartialDate> made,
      Optional<PartialDate> replaceBy) {
    static Extinguisher read(Section s) {
      return new Extinguisher(
          s.gear(Letter.SAFETY), s.words("type"), s.date("made"), s.date("replace-by"));
    }
  }

  /** What an alarm watches for. */
  public enum Watches implements Choice {
    LP,
    CARBON_MONOXIDE,
    SMOKE
  }

  /** The only answer to 'fitted'. */
  public enum Fitted implements Choice {
    NONE
  }

  /** An alarm and the date on its back. */
  public record Alarm(
      Gear gear, Optional<Watches> watches, Optional<PartialDate> replaceBy, boolean missing) {
    static Alarm read(Section s) {
      Optional<Watches> watches = s.choice("watches", Watches.class);
      boolean missing = s.choice("fitted", Fitted.class).isPresent();
      Gear gear = missing ? s.unregistered(Letter.SAFETY) : s.gear(Letter.SAFETY);
      return new Alarm(gear, watches, s.date("replace-by"), missing);
    }
  }

  /** A way out besides the door. */
  public record Exit(Gear gear, Optional<String> opens) {
    static Exit read(Section s) {
      return new Exit(s.gear(Letter.SAFETY), s.words("opens"));
    }
  }
}
