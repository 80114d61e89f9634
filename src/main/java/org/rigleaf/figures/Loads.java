package org.rigleaf.figures;

import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.rig.Load.Supply.BATTERY;
import static org.rigleaf.rig.Load.Supply.MAINS;
import static org.rigleaf.source.Unit.AMPERE_UNIT;
import static org.rigleaf.source.Unit.VOLT_UNIT;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rigleaf.rig.Answer;
import org.rigleaf.rig.Climate;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Ids;
import org.rigleaf.rig.Load;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.TypicalValues;
import org.rigleaf.rig.Water;

/** All that draws power, and its current. */
final class Loads {
  private static final String CONVERTER_EFFICIENCY = "converter.efficiency";
  private static final String CONVERTER_VOLTAGE = "converter.voltage";
  private static final String COMPRESSOR_DRAW = "refrigerator.compressor-draw";

  /** Volts of the house wiring of a rig without a bank, nominal. */
  private static final double HOUSE_VOLTS = 12;

  static final Entry CURRENT =
      Entry.of(
              "load.<id>.current",
              AMPERE_UNIT,
              SECOND_DERIVATION,
              "watts over volts of its own supply")
          .rows(
              (rig, rows) ->
                  of(rig)
                      .forEach(
                          i ->
                              rows.number(
                                  currentFormula(i, rig), in -> current(i, rig, in), i.id())));

  /** Amperes of 12 V and of 120 V are never added up, so each load says which it has. */
  static final Entry VOLTAGE =
      Entry.of(
              "load.<id>.voltage",
              VOLT_UNIT,
              SECOND_DERIVATION,
              "the nominal voltage of its supply: 120 V, or the bank's")
          .rows(
              (rig, rows) ->
                  of(rig).stream()
                      .filter(i -> i.supply().isPresent())
                      .forEach(
                          i -> rows.number(voltsFormula(i, rig), in -> volts(i, rig, in), i.id())));

  static final List<Entry> ENTRIES = List.of(CURRENT, VOLTAGE);

  private Loads() {}

  /** All loads of a rig in the order of its profile; an id stands once, its own section first. */
  static List<LoadItem> of(Rig rig) {
    List<LoadItem> all = new ArrayList<>();
    rig.electric().converter().map(Loads::converter).ifPresent(all::add);
    rig.electric().loads().forEach(l -> all.add(listed(l)));
    rig.water().pump().ifPresent(p -> all.add(own("pump", p.gear(), BATTERY, p.draws())));
    rig.water().heater().flatMap(Loads::element).ifPresent(all::add);
    rig.climate()
        .furnace()
        .ifPresent(f -> all.add(own("furnace-blower", f.gear(), BATTERY, f.blower())));
    rig.climate().airConditioners().forEach(a -> all.add(airConditioner(a)));
    rig.climate().refrigerator().flatMap(Loads::refrigerator).ifPresent(all::add);
    Map<String, LoadItem> once = new LinkedHashMap<>();
    all.forEach(i -> once.merge(i.id(), i, Loads::better));
    return List.copyOf(once.values());
  }

  /** Of two loads with one id, the one whose draw is known, else the section's own. */
  private static LoadItem better(LoadItem first, LoadItem second) {
    LoadItem own = isListed(first) ? second : first;
    LoadItem other = own == first ? second : first;
    return own.draws().known() ? own : other;
  }

  private static boolean isListed(LoadItem item) {
    return item.gear().startsWith("electric.loads.");
  }

  private static LoadItem listed(Load l) {
    String id = Ids.last(l.id());
    return new LoadItem(
        id, l.name(), l.on(), l.draws(), l.starts(), l.continuous(), l.leg(), l.id());
  }

  private static LoadItem own(String id, Gear gear, Load.Supply supply, Fact draws) {
    Fact starts = Fact.unknown(gear.id() + ".starts", WATT_UNIT);
    return new LoadItem(
        id,
        gear.name().orElse(id),
        Optional.of(supply),
        draws,
        starts,
        Answer.NO,
        Optional.empty(),
        gear.id());
  }

  static LoadItem converter(Electric.Converter c) {
    return own("converter", c.gear(), MAINS, c.draws().or(c.output()));
  }

  private static Optional<LoadItem> element(Water.Heater h) {
    boolean electric = h.fuel().contains(Water.HeaterFuel.ELECTRIC) || h.element().known();
    return Optional.of(own("heater-element", h.gear(), MAINS, h.element())).filter(i -> electric);
  }

  private static LoadItem airConditioner(Climate.AirConditioner a) {
    return new LoadItem(
        a.gear().part(),
        a.gear().name().orElse(a.gear().part()),
        Optional.of(MAINS),
        a.draws(),
        a.starts(),
        a.continuous(),
        a.leg(),
        a.gear().id());
  }

  /** On 120 V what has an element or a household motor; on 12 V what has a 12 V compressor. */
  private static Optional<LoadItem> refrigerator(Climate.Refrigerator r) {
    Optional<Climate.RefrigeratorKind> kind = r.kind();
    boolean onMains = r.runsOn().contains(Climate.RefrigeratorSupply.MAINS);
    if (kind.filter(k -> k == Climate.RefrigeratorKind.COMPRESSOR).isPresent()) {
      Fact draws = r.draws().or(TypicalValues.of(COMPRESSOR_DRAW));
      return Optional.of(own("refrigerator", r.gear(), BATTERY, draws));
    }
    if (kind.filter(k -> k == Climate.RefrigeratorKind.HOUSEHOLD).isPresent()) {
      return Optional.of(own("refrigerator", r.gear(), MAINS, r.draws().or(r.element())));
    }
    return Optional.of(own("refrigerator", r.gear(), MAINS, r.element().or(r.draws())))
        .filter(i -> onMains || r.element().known());
  }

  /** Watts of a load at its own supply, by the inputs it is worked out from. */
  static double watts(LoadItem item, Rig rig, Inputs in) {
    double draws = in.of(item.id(), item.draws());
    if (!item.inAmps()) {
      return draws;
    }
    if (item.converter()) {
      double volts = in.typical("converter-volts", CONVERTER_VOLTAGE) * twelves(rig, in);
      return converterWatts(draws, volts, in.typical("converter-efficiency", CONVERTER_EFFICIENCY));
    }
    return draws * volts(item, rig, in);
  }

  /** How {@link #watts} works, in symbols. */
  static String wattsFormula(LoadItem item, Rig rig) {
    String draws = "{" + item.id() + "}";
    if (!item.inAmps()) {
      return draws;
    }
    return item.converter()
        ? draws + " × {converter-volts}" + twelvesFormula(rig) + " ÷ {converter-efficiency}"
        : draws + " × " + voltsFormula(item, rig);
  }

  private static double current(LoadItem item, Rig rig, Inputs in) {
    if (item.supply().isEmpty()) {
      in.missing(item.gear() + ".on");
    }
    return item.inAmps() && !item.converter()
        ? in.of(item.id(), item.draws())
        : amps(watts(item, rig, in), volts(item, rig, in));
  }

  private static String currentFormula(LoadItem item, Rig rig) {
    return item.inAmps() && !item.converter()
        ? "{" + item.id() + "}"
        : wattsFormula(item, rig) + " ÷ " + voltsFormula(item, rig);
  }

  private static double volts(LoadItem item, Rig rig, Inputs in) {
    if (item.mains()) {
      return Shore.VOLTS;
    }
    Optional<String> other = OtherBanks.feeding(item, rig);
    if (other.isPresent()) {
      return in.of("volts", OtherBanks.VOLTAGE, other.get());
    }
    return Batteries.bank(rig).isPresent() ? in.of("volts", Batteries.VOLTAGE) : HOUSE_VOLTS;
  }

  private static String voltsFormula(LoadItem item, Rig rig) {
    if (item.mains()) {
      return "120 V";
    }
    boolean bank = Batteries.bank(rig).isPresent() || OtherBanks.feeding(item, rig).isPresent();
    return bank ? "{volts}" : "12 V";
  }

  /** True for a 12 V load that no other bank feeds. */
  static boolean onHouseBank(LoadItem item, Rig rig) {
    return item.supply().filter(BATTERY::equals).isPresent()
        && OtherBanks.feeding(item, rig).isEmpty();
  }

  /** How many times 12 V the converter charges: by the bank, once without one. */
  private static double twelves(Rig rig, Inputs in) {
    return Batteries.bank(rig).isPresent()
        ? Batteries.twelves(in.of("bank", Batteries.VOLTAGE))
        : 1;
  }

  private static String twelvesFormula(Rig rig) {
    return Batteries.bank(rig).map(Batteries::timesTwelves).orElse("");
  }

  /** Watts a converter takes at 120 V while it gives its full amperes to the bank. */
  static double converterWatts(double outputAmps, double chargeVolts, double efficiency) {
    if (efficiency <= 0 || efficiency > 1) {
      throw new IllegalArgumentException("an efficiency is above 0 and at most 1");
    }
    return outputAmps * chargeVolts / efficiency;
  }

  /** Amperes of a load. */
  static double amps(double watts, double volts) {
    if (volts <= 0) {
      throw new IllegalArgumentException("a supply has more than 0 V");
    }
    return watts / volts;
  }
}
