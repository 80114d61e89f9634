package org.rigleaf.figures;

import static org.rigleaf.figures.Check.HOUSE_ASSUMPTION;
import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.AMPERE_HOUR;
import static org.rigleaf.source.Unit.VOLT_UNIT;
import static org.rigleaf.source.Unit.WATT_HOUR;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rigleaf.rig.Answer;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Rig;

/** The house bank: volts, amp-hours, energy, what of it may be used, what a rested one reads. */
final class Batteries {
  static final Entry VOLTAGE =
      Entry.of("bank.voltage", VOLT_UNIT, SECOND_DERIVATION, "batteries in series add their volts")
          .one("{each} × {series}", Batteries::bank, Batteries::volts);

  static final Entry CAPACITY =
      Entry.of(
              "bank.capacity",
              AMPERE_HOUR,
              SECOND_DERIVATION,
              "strings in parallel add their amp-hours")
          .one("{each} × {strings}", Batteries::bank, Batteries::ampHours);

  static final Entry ENERGY =
      Entry.of("bank.energy", WATT_HOUR, SECOND_DERIVATION, "volts times amp-hours")
          .one(
              "{volts} × {amp-hours}",
              Batteries::bank,
              (b, in) -> energyWh(in.of("volts", VOLTAGE), in.of("amp-hours", CAPACITY)));

  static final Entry USABLE =
      Entry.of(
              "bank.usable",
              WATT_HOUR,
              HOUSE_ASSUMPTION,
              "usable share by common practice; cold: 0.006 a degree C, a battery trade's rule for"
                  + " the 10 to 20 hour rate")
          .rows((rig, rows) -> bank(rig).ifPresent(b -> usable(rig, b, rows, ENERGY)));

  static final Entry RESTED =
      Entry.of(
              "rest.<percent>",
              VOLT_UNIT,
              PUBLISHED,
              "flooded lead-acid at 80 F, rested; table credited to the Battery Council")
          .rows((rig, rows) -> bank(rig).filter(Batteries::flooded).ifPresent(b -> rested(rows)));

  static final List<Entry> ENTRIES = List.of(VOLTAGE, CAPACITY, ENERGY, USABLE, RESTED);

  /**
   * Volts of a rested 12 V flooded battery at 80 F by per cent of charge; other tables differ by a
   * few hundredths (studylib.net/doc/18054160, seen quoted, not in the original).
   */
  private static final Map<Integer, Double> RESTED_VOLTS = restedVolts();

  /** Volts of half a 12 V block. */
  private static final double VOLTS_OF_A_SIX = 6;

  /** Volts of the battery of that table. */
  private static final double TABLE_VOLTS = 12;

  /** Share of the capacity lost a degree C below 25 C, at the 10 to 20 hour rate. */
  private static final double COLD_SHARE_PER_CELSIUS = 0.006;

  private static final double RATED_CELSIUS = 25;

  private static final double FREEZING_FAHRENHEIT = 32;

  private Batteries() {}

  /** The house bank, if there is one. */
  static Optional<BatteryBank> bank(Rig rig) {
    return rig.electric().batteries();
  }

  /** Volts of a bank. */
  static double volts(BatteryBank bank, Inputs in) {
    return seriesVolts(in.of("each", bank.voltage()), in.of("series", bank.inSeries()));
  }

  /** Amp-hours of a bank. */
  static double ampHours(BatteryBank bank, Inputs in) {
    return parallelAmpHours(in.of("each", bank.capacity()), in.of("strings", bank.strings()));
  }

  private static boolean flooded(BatteryBank bank) {
    return bank.type().filter(BatteryBank.Chemistry.FLOODED_LEAD_ACID::equals).isPresent();
  }

  /** The usable energy of a bank whose energy stands under an entry. */
  static void usable(Rig rig, BatteryBank bank, Rows rows, Entry energy, String... parts) {
    rows.number(
        "{energy} × " + usableFormula(rig, bank),
        in ->
            usableWh(
                in.of("energy", energy, parts), usableShare(bank, in), coldFactor(rig, bank, in)),
        parts);
  }

  /** The working of {@link #usableShare} times {@link #coldFactor}. */
  static String usableFormula(Rig rig, BatteryBank bank) {
    return "{usable}" + (feelsCold(rig, bank) ? " × " + coldFormula(bank) : "");
  }

  /** The working of {@link #coldFactor} where {@link #feelsCold}. */
  private static String coldFormula(BatteryBank bank) {
    return "min(1, 1 + 0.006 × ((" + temperature(bank) + " − 32) ÷ 1.8 − 25))";
  }

  /** The name of the bank's temperature among the inputs. */
  static String temperature(BatteryBank bank) {
    return bank.inside() == Answer.YES ? "{inside}" : "{low}";
  }

  /** The share of the bank one may take out: the keeper's, else by the kind of battery. */
  static double usableShare(BatteryBank bank, Inputs in) {
    String typical = lead(bank, in) ? "usable.lead" : "usable.lithium";
    return in.of("usable", bank.usable(), typical);
  }

  /** True of lithium without a heater, which takes no charge in frost. */
  static boolean freezes(BatteryBank bank) {
    return bank.type().filter(BatteryBank.Chemistry.LITHIUM::equals).isPresent()
        && bank.heated() != Answer.YES;
  }

  /** True if it is so cold that such a bank takes no charge: common practice, on several pages. */
  static boolean frozen(double fahrenheit) {
    return fahrenheit <= FREEZING_FAHRENHEIT;
  }

  /** The share of the charge that stays in the bank. */
  static double kept(BatteryBank bank, Inputs in) {
    String typical = lead(bank, in) ? "efficiency.charge-lead" : "efficiency.charge-lithium";
    return in.typical("charge-efficiency", typical);
  }

  /** True of a lead bank; a kind that nobody said is missing. */
  static boolean lead(BatteryBank bank, Inputs in) {
    if (bank.type().isEmpty()) {
      in.missing(bank.gear().id() + ".type");
    }
    return bank.type().filter(BatteryBank.Chemistry::lead).isPresent();
  }

  /**
   * True if the cold of the stay counts: a lead bank, and a temperature to reckon with. Lithium,
   * and a bank without a stay, keep all they hold.
   */
  static boolean feelsCold(Rig rig, BatteryBank bank) {
    boolean lead = bank.type().filter(BatteryBank.Chemistry::lead).isPresent();
    return lead && temperatureKnown(rig, bank);
  }

  /** True if the stay says, or a typical value stands in for, how warm the bank is. */
  static boolean temperatureKnown(Rig rig, BatteryBank bank) {
    return rig.stay().filter(s -> bank.inside() == Answer.YES || s.low().known()).isPresent();
  }

  /** What cold leaves of the capacity. */
  static double coldFactor(Rig rig, BatteryBank bank, Inputs in) {
    return feelsCold(rig, bank) ? coldShare(celsius(fahrenheit(bank, Trip.stay(rig), in))) : 1;
  }

  /**
   * How cold the bank gets, where {@link #temperatureKnown}. A bank of which nobody says where it
   * is counts as outside, which gives the smaller figure.
   */
  static double fahrenheit(BatteryBank bank, Trip trip, Inputs in) {
    if (bank.inside() == Answer.YES) {
      return trip.inside(in);
    }
    if (bank.inside() == Answer.UNKNOWN) {
      in.typical("outside", "batteries.outside");
    }
    return trip.low(in);
  }

  /** The same on a trip, whose night may be another than the stay's. */
  static double coldFactor(BatteryBank bank, Trip trip, Inputs in) {
    boolean lead = bank.type().filter(BatteryBank.Chemistry::lead).isPresent();
    boolean felt = trip.usual().isPresent() ? lead : feelsCold(trip.rig(), bank);
    return felt ? coldShare(celsius(fahrenheit(bank, trip, in))) : 1;
  }

  private static void rested(Rows rows) {
    RESTED_VOLTS.forEach(
        (percent, volts) ->
            rows.number(
                volts + " V × {bank} ÷ 12 V",
                in -> restedVolts(percent, in.of("bank", VOLTAGE)),
                percent.toString()));
  }

  private static Map<Integer, Double> restedVolts() {
    Map<Integer, Double> volts = new LinkedHashMap<>();
    volts.put(100, 12.65);
    volts.put(75, 12.45);
    volts.put(50, 12.24);
    volts.put(25, 12.06);
    volts.put(0, 11.89);
    return volts;
  }

  /**
   * How many times 12 V a bank has by its nominal volts, counted in sixes: a lithium bank of 12.8 V
   * or 25.6 V is one of 12 V or 24 V here.
   *
   * @throws IllegalArgumentException without volts
   */
  static double twelves(double bankVolts) {
    if (bankVolts <= 0) {
      throw new IllegalArgumentException("a bank has more than 0 V");
    }
    return Math.max(1, Math.floor(bankVolts / VOLTS_OF_A_SIX)) / 2;
  }

  /** ' × 2' in the working of what counts twice on a bank of 24 V; empty where it counts once. */
  static String timesTwelves(BatteryBank bank) {
    if (!bank.voltage().known() || !bank.inSeries().known()) {
      return "";
    }
    double twelves = twelves(seriesVolts(bank.voltage().value(), bank.inSeries().value()));
    return twelves == 1 ? "" : " × " + Amounts.number(twelves, 1);
  }

  /** Volts of a string of equal batteries. */
  static double seriesVolts(double eachVolts, double inSeries) {
    return eachVolts * inSeries;
  }

  /** Amp-hours of equal strings side by side. */
  static double parallelAmpHours(double eachAmpHours, double strings) {
    return eachAmpHours * strings;
  }

  /** Energy in watt-hours. */
  static double energyWh(double volts, double ampHours) {
    return volts * ampHours;
  }

  /** Watt-hours that may be taken out, by the share that is usable and what the cold leaves. */
  static double usableWh(double energyWh, double usableShare, double coldShare) {
    return energyWh * usableShare * coldShare;
  }

  /**
   * What is left of a lead battery's capacity at a temperature: 0.6 % less a degree C below 25 C
   * (velapower.com/support, seen), never more than all.
   *
   * @throws IllegalArgumentException below -60 C, where a straight line says nothing
   */
  static double coldShare(double celsius) {
    if (celsius < -60) {
      throw new IllegalArgumentException("too cold for a battery: " + celsius + " C");
    }
    return Math.min(1, 1 + COLD_SHARE_PER_CELSIUS * (celsius - RATED_CELSIUS));
  }

  /** Degrees C of degrees F. */
  static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  /**
   * Volts of a rested flooded bank at 80 F.
   *
   * @param percent charge: 100, 75, 50, 25 or 0
   * @param bankVolts volts of the bank by name, such as 12 or 24
   * @throws IllegalArgumentException for a charge that the table does not list
   */
  static double restedVolts(int percent, double bankVolts) {
    Double volts = RESTED_VOLTS.get(percent);
    if (volts == null) {
      throw new IllegalArgumentException("no row for " + percent + " per cent");
    }
    return volts * bankVolts / TABLE_VOLTS;
  }
}
