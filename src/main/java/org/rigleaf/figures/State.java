package org.rigleaf.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Propane;
import org.rigleaf.rig.Reference;
import org.rigleaf.rig.Rig;

/**
 * How the rig stands: what feeds it.
 *
 * @param id the part of its figures' ids
 * @param mains the source of 120 V, if there is one
 * @param rig the rig
 */
record State(String id, Optional<Source> mains, Rig rig) {
  static final String BATTERY = "battery";
  static final String PROPANE_OFF = "propane-off";
  static final String TOWING = "towing";

  /** The states this rig can be in. */
  static List<State> of(Rig rig) {
    List<State> all = new ArrayList<>();
    if (rig.electric().batteries().isPresent()) {
      all.add(new State(BATTERY, Optional.empty(), rig));
    }
    List<Source> sources = Source.of(rig);
    sources.forEach(s -> all.add(new State(s.id(), Optional.of(s), rig)));
    if (rig.propane().isPresent()) {
      Optional<Source> best = sources.stream().filter(s -> !s.inverter()).findFirst();
      all.add(new State(PROPANE_OFF, best, rig));
    }
    all.add(new State(TOWING, sources.stream().filter(Source::inverter).findFirst(), rig));
    return all;
  }

  /** Propane reaches the appliances. On the road as the profile says; elsewhere it is open. */
  boolean propane(Inputs in) {
    if (id.equals(PROPANE_OFF) || rig.has("propane.none")) {
      return false;
    }
    if (!id.equals(TOWING)) {
      return true;
    }
    Optional<Electric.Switched> road = rig.propane().flatMap(Propane::onTheRoad);
    if (road.isEmpty()) {
      in.missing("propane.on-the-road");
    }
    return road.filter(s -> s == Electric.Switched.ON).isPresent();
  }

  /**
   * 12 V reaches this gear: from the bank, or from the converter where there is 120 V. On the road
   * with the battery switch off only what the switch leaves on.
   */
  boolean battery(String gear, Inputs in) {
    boolean bank = rig.electric().batteries().isPresent();
    boolean charged = mains.filter(m -> !m.inverter()).isPresent();
    boolean fed = bank || (charged && rig.electric().converter().isPresent());
    return fed && (!id.equals(TOWING) || switchedOn(gear, in));
  }

  /** On the road an inverter gives 120 V only while the battery switch leaves it on. */
  boolean inverterOn(Inputs in) {
    return !id.equals(TOWING) || switchedOn("electric.inverter", in);
  }

  /** The engine runs: on the road, if the rig has one. */
  boolean engine() {
    return id.equals(TOWING) && rig.identity().kind().motorized();
  }

  private boolean switchedOn(String gear, Inputs in) {
    Optional<Electric.Disconnect> battery = rig.electric().disconnect();
    if (battery.isEmpty()) {
      return true;
    }
    if (battery.get().onTheRoad().isEmpty()) {
      in.missing("electric.disconnect.on-the-road");
    }
    return battery.get().onTheRoad().filter(s -> s == Electric.Switched.ON).isPresent()
        || battery.get().leaves().stream().anyMatch(r -> means(r, gear));
  }

  private boolean means(Reference reference, String gear) {
    return rig.resolve(reference).filter(gear::equals).isPresent();
  }
}
