package org.rigleaf.figures;

import static org.rigleaf.rig.Load.Supply.MAINS;

import java.util.Optional;
import org.rigleaf.rig.Answer;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Load;
import org.rigleaf.rig.Reference;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.Unit;

/**
 * One thing that draws power, from the list of loads or from a section of its own.
 *
 * @param id the part of its figures' ids
 * @param name the keeper's name for it, or its id
 * @param supply what it runs on, if said
 * @param draws watts, or amperes at its own supply; of a converter without watts, amperes out
 * @param starts watts while its motor starts
 * @param continuous runs three hours or more at a stretch
 * @param leg the leg of a two-leg panel that it hangs on
 * @param gear id of the gear or load it is
 */
record LoadItem(
    String id,
    String name,
    Optional<Load.Supply> supply,
    Fact draws,
    Fact starts,
    Answer continuous,
    Optional<Load.Leg> leg,
    String gear) {

  /** An air conditioner, which draws more on a hot afternoon. */
  boolean cools() {
    return gear.startsWith("climate.air-conditioners.");
  }

  /** The converter, which is always on. */
  boolean converter() {
    return gear.equals("electric.converter");
  }

  /** Runs on 120 V. */
  boolean mains() {
    return supply.filter(s -> s == MAINS).isPresent();
  }

  /** Its draw is given in amperes. */
  boolean inAmps() {
    return draws.unit() == Unit.AMPERE_UNIT;
  }

  /** True if a reference of the profile, a name or words, means this load. */
  boolean meantBy(Reference reference, Rig rig) {
    String words = Ids.of(reference.text());
    String type = Ids.of(gear);
    return words.equals(id)
        || words.equals(type)
        || words.equals(type + "-element")
        || rig.resolve(reference).filter(gear::equals).isPresent();
  }
}
