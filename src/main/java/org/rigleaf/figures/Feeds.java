package org.rigleaf.figures;

import java.util.List;
import java.util.Optional;
import org.rigleaf.figures.Device.Need;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Reference;
import org.rigleaf.rig.Rig;

/** What hangs on which supply, and which gear a mention of it means. */
public final class Feeds {
  private Feeds() {}

  /** Ids of all gear and loads that can run on 120 V, in the order of the profile. */
  public static List<String> onMains(Rig rig) {
    return needing(rig, Need.MAINS);
  }

  /** Ids of all gear and loads that need the battery's volts in some way of running. */
  public static List<String> onBattery(Rig rig) {
    return needing(rig, Need.BATTERY);
  }

  private static List<String> needing(Rig rig, Need need) {
    return Device.of(rig).stream()
        .filter(d -> d.ways().stream().anyMatch(w -> w.needs().contains(need)))
        .map(Device::gear)
        .distinct()
        .toList();
  }

  /** The gear that a circuit's mention means, a load before a breaker of the same name. */
  public static Optional<String> meant(Reference reference, Rig rig) {
    if (Ids.of(reference.text()).equals("inverter") && rig.electric().inverter().isPresent()) {
      return Optional.of("electric.inverter");
    }
    return Loads.of(rig).stream()
        .filter(i -> i.meantBy(reference, rig))
        .map(LoadItem::gear)
        .findFirst()
        .or(() -> rig.resolve(reference));
  }
}
