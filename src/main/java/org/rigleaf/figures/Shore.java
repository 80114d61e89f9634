package org.rigleaf.figures;

import static org.rigleaf.figures.Check.PUBLISHED;
import static org.rigleaf.figures.Check.SECOND_DERIVATION;
import static org.rigleaf.source.Unit.COUNT;
import static org.rigleaf.source.Unit.PERCENT_SHARE;
import static org.rigleaf.source.Unit.VOLT_UNIT;
import static org.rigleaf.source.Unit.WATT_UNIT;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;

/** Shore power: what each post can give, and what the cord takes of it. */
final class Shore {
  /** Volts of a household circuit, nominal: ANSI C84.1. */
  static final double VOLTS = 120;

  /** The least a site should give, volts: ANSI C84.1 range A, service. */
  private static final double LOW_VOLTS = 114;

  /** Amperes of the one service with two legs: 120/240 V, four wires. */
  private static final double TWO_LEG_AMPS = 50;

  /** Share of its rating that a circuit may carry for three hours or more: NEC 210.20(A). */
  private static final double STEADY_SHARE = 0.8;

  /** Annealed copper at 20 degC, ohm metres: IEC 60028, 100 % IACS. */
  private static final double COPPER_OHM_METRES = 1.7241e-8;

  /** Change of that per kelvin: IEC 60028. */
  private static final double COPPER_PER_KELVIN = 0.00393;

  /** A warm cord, kelvin above 20 degC: the 75 degC of NEC Chapter 9 Table 8. */
  private static final double CORD_RISE_KELVIN = 55;

  /** Stranded over solid, as the two columns of NEC Chapter 9 Table 8 stand to each other. */
  private static final double STRANDED = 1.02;

  static final Entry POWER =
      Entry.of("shore.<a>.power", WATT_UNIT, PUBLISHED, "legs times 120 V times amperes")
          .rows(eachPlug("{legs} × 120 V × {amps}", Shore::power));

  static final Entry STEADY =
      Entry.of("shore.<a>.steady", WATT_UNIT, PUBLISHED, "NEC 210.20(A): 80 % for three hours")
          .rows(eachPlug("0.80 × {power}", (p, in) -> steadyWatts(in.of("power", POWER, p.id()))));

  static final Entry DROP =
      Entry.of(
              "cord.<a>.drop",
              PERCENT_SHARE,
              PUBLISHED,
              "ASTM B258 wire, IEC 60028 copper at 75 °C, stranded 2 % more: Ω for 1,000 ft; out and"
                  + " back, one leg")
          .rows(Shore::drops);

  static final Entry LEFT_120 =
      Entry.of("cord.<a>.left-120", VOLT_UNIT, SECOND_DERIVATION, "120 V less the drop")
          .rows((rig, rows) -> left(VOLTS, rig, rows));

  static final Entry LEFT_114 =
      Entry.of("cord.<a>.left-114", VOLT_UNIT, SECOND_DERIVATION, "114 V less the drop")
          .rows((rig, rows) -> left(LOW_VOLTS, rig, rows));

  static final List<Entry> ENTRIES = List.of(POWER, STEADY, DROP, LEFT_120, LEFT_114);

  private Shore() {}

  private static BiConsumer<Rig, Rows> eachPlug(
      String formula, ToDoubleBiFunction<Plug, Inputs> value) {
    return (rig, rows) -> {
      Plug.of(rig).forEach(p -> rows.number(formula, in -> value.applyAsDouble(p, in), p.id()));
      rig.electric()
          .shore()
          .filter(s -> !s.service().known())
          .ifPresent(s -> rows.number(formula, in -> in.of("amps", s.service())));
    };
  }

  private static double power(Plug plug, Inputs in) {
    Fact amps = plug.amps();
    return powerWatts(in.of("legs", amps.with(Shore::legs, COUNT)), in.of("amps", amps));
  }

  private static void drops(Rig rig, Rows rows) {
    rig.electric()
        .shore()
        .map(Shore::cords)
        .filter(c -> !c.isEmpty())
        .ifPresent(
            cords -> {
              String ends = cords.size() == 1 ? "" : " + {length-2} × " + ohms(cords.get(1), "-2");
              String wire = "({length} × " + ohms(cords.get(0), "") + ends + ")";
              String formula = "100 × 2 × {amps} × " + wire + " ÷ 1,000 ft ÷ 120 V";
              eachPlug(formula, (p, in) -> drop(p, cords, in)).accept(rig, rows);
            });
  }

  /** Ohms of 1,000 ft of a cord's wire. */
  private static String ohms(Electric.Cord cord, String mark) {
    String ohms =
        cord.gauge().known() ? Amounts.number(strandedOhmsPer1000Ft(cord.gauge().value()), 3) : "";
    return ohms + " Ω ({gauge" + mark + "})";
  }

  private static List<Electric.Cord> cords(Electric.Shore shore) {
    return Stream.of(shore.cord(), shore.extension()).flatMap(Optional::stream).toList();
  }

  private static double drop(Plug plug, List<Electric.Cord> cords, Inputs in) {
    double amps = in.of("amps", plug.amps());
    double volts = 0;
    for (int i = 0; i < cords.size(); i++) {
      String mark = i == 0 ? "" : "-2";
      double feet = in.of("length" + mark, cords.get(i).length());
      double gauge = in.of("gauge" + mark, cords.get(i).gauge());
      volts += dropVolts(amps, feet, strandedOhmsPer1000Ft(gauge));
    }
    return 100 * volts / VOLTS;
  }

  private static void left(double postVolts, Rig rig, Rows rows) {
    String formula = Math.round(postVolts) + " V − 120 V × {drop} ÷ 100";
    Plug.of(rig).stream()
        .filter(p -> !cords(p.shore()).isEmpty())
        .forEach(
            p ->
                rows.number(
                    formula, in -> leftVolts(postVolts, in.of("drop", DROP, p.id())), p.id()));
  }

  /** Legs of 120 V that a plug of this size brings: two for 50 A, else one. */
  static int legs(double amps) {
    return amps == TWO_LEG_AMPS ? 2 : 1;
  }

  /** Watts of a post: volt-amperes of all legs. Source: check case of NEC 551.71. */
  static double powerWatts(double legs, double amps) {
    return legs * VOLTS * amps;
  }

  /** Watts for three hours or more. Source: NEC 210.20(A). */
  static double steadyWatts(double powerWatts) {
    return STEADY_SHARE * powerWatts;
  }

  /**
   * Ohms of 1,000 ft of solid copper wire at 75 degC: geometry of ASTM B258, copper of IEC 60028.
   *
   * @param gauge AWG number; 1/0 is 0
   * @throws IllegalArgumentException outside AWG 4/0 to 40, where ASTM B258 ends
   */
  static double solidOhmsPer1000Ft(double gauge) {
    if (gauge < -3 || gauge > 40) {
      throw new IllegalArgumentException("no wire of gauge " + gauge);
    }
    double inches = 0.005 * Math.pow(92, (36 - gauge) / 39);
    double squareMetres = Math.PI / 4 * Math.pow(inches * 0.0254, 2);
    double ohmMetres = COPPER_OHM_METRES * (1 + COPPER_PER_KELVIN * CORD_RISE_KELVIN);
    return ohmMetres * 1000 * 0.3048 / squareMetres;
  }

  /** The same of stranded wire, as cords have it. */
  static double strandedOhmsPer1000Ft(double gauge) {
    return STRANDED * solidOhmsPer1000Ft(gauge);
  }

  /**
   * Volts lost in a cord, out and back.
   *
   * @throws IllegalArgumentException for a current or length below zero
   */
  static double dropVolts(double amps, double oneWayFt, double ohmsPer1000Ft) {
    if (amps < 0 || oneWayFt < 0) {
      throw new IllegalArgumentException("a current and a length are not below zero");
    }
    return 2 * amps * oneWayFt * ohmsPer1000Ft / 1000;
  }

  /** Volts left behind the cord, from the volts at the post and the drop in per cent of 120 V. */
  static double leftVolts(double postVolts, double dropPercent) {
    return postVolts - VOLTS * dropPercent / 100;
  }
}
