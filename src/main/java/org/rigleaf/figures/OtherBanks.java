package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.AMPERE_HOUR;
import static org.rigleaf.source.Unit.VOLT_UNIT;
import static org.rigleaf.source.Unit.WATT_HOUR;

import java.util.List;
import java.util.Optional;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Rig;

/**
 * Banks beside the house bank, such as the engine battery: the same figures, and what they feed.
 */
final class OtherBanks {
  static final Entry VOLTAGE =
      Entry.of("bank.<id>.voltage", VOLT_UNIT, SECOND_DERIVATION, Batteries.VOLTAGE.source())
          .each("{each} × {series}", OtherBanks::of, OtherBanks::part, Batteries::volts);

  static final Entry CAPACITY =
      Entry.of("bank.<id>.capacity", AMPERE_HOUR, SECOND_DERIVATION, Batteries.CAPACITY.source())
          .each("{each} × {strings}", OtherBanks::of, OtherBanks::part, Batteries::ampHours);

  static final Entry ENERGY =
      Entry.of("bank.<id>.energy", WATT_HOUR, SECOND_DERIVATION, Batteries.ENERGY.source())
          .each("{volts} × {amp-hours}", OtherBanks::of, OtherBanks::part, OtherBanks::energy);

  static final Entry USABLE =
      Entry.of("bank.<id>.usable", WATT_HOUR, HOUSE_ASSUMPTION, Batteries.USABLE.source())
          .rows(
              (rig, rows) -> of(rig).forEach(b -> Batteries.usable(rig, b, rows, ENERGY, part(b))));

  static final List<Entry> ENTRIES = List.of(VOLTAGE, CAPACITY, ENERGY, USABLE);

  private OtherBanks() {}

  private static List<BatteryBank> of(Rig rig) {
    return rig.electric().otherBanks().stream().map(Electric.OtherBank::bank).toList();
  }

  private static String part(BatteryBank bank) {
    return bank.gear().part();
  }

  private static double energy(BatteryBank bank, Inputs in) {
    String id = part(bank);
    return Batteries.energyWh(in.of("volts", VOLTAGE, id), in.of("amp-hours", CAPACITY, id));
  }

  /** The id part of the first other bank that names a 12 V load among what it feeds. */
  static Optional<String> feeding(LoadItem item, Rig rig) {
    return rig.electric().otherBanks().stream()
        .filter(b -> b.feeds().stream().anyMatch(r -> item.meantBy(r, rig)))
        .map(b -> part(b.bank()))
        .findFirst();
  }
}
