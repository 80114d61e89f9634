package org.rigleaf.guidance;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.rigleaf.rig.BatteryBank;
import org.rigleaf.rig.Climate;
import org.rigleaf.rig.Electric;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.Road;
import org.rigleaf.rig.Water;

/**
 * What wording may ask of a rig. Most traits come free from the profile (a path that is given, a
 * yes, an enum value); the computed ones stand here, one line each. Safety kit counts as present
 * unless the profile says {@code none}: silence means unknown.
 */
public final class Traits {
  private static final Map<String, Predicate<Rig>> COMPUTED = computed();

  /** Safety kit by path, and the rigs that should have it. */
  private static final Map<String, Predicate<Rig>> SAFETY_KIT = safetyKit();

  private Traits() {}

  private static Map<String, Predicate<Rig>> computed() {
    Map<String, Predicate<Rig>> all = new LinkedHashMap<>();
    all.put("always", rig -> true);
    all.put("towable", rig -> rig.identity().kind().towable());
    all.put("motorized", rig -> rig.identity().kind().motorized());
    all.put("ball-coupled", rig -> rig.identity().kind().ballCoupled());
    all.put("pin-coupled", rig -> rig.has("rig.kind.fifth-wheel"));
    all.put(
        "lead-acid",
        rig ->
            rig.electric()
                .batteries()
                .flatMap(BatteryBank::type)
                .filter(BatteryBank.Chemistry::lead)
                .isPresent());
    all.put("plumbed", Traits::plumbed);
    all.put("sewered", Traits::sewered);
    all.put(
        "engine-exhaust",
        rig -> rig.identity().kind().motorized() || rig.has("electric.generator"));
    all.put(
        "auto-jacks",
        rig -> rig.has("body.levelling.kind.hydraulic") || rig.has("body.levelling.kind.electric"));
    all.put(
        "built-in-generator",
        rig -> rig.electric().generator().filter(g -> !g.portable()).isPresent());
    all.put("towed-car", Traits::towsCar);
    all.put("tow-vehicle-wanted", rig -> rig.identity().kind().towable() && !vehicleKnown(rig));
    all.put("truck-wanted", rig -> rig.has("rig.kind.truck-camper") && !vehicleKnown(rig));
    all.put(
        "furnace-on-propane",
        rig -> rig.climate().furnace().filter(f -> f.burns(Climate.FurnaceFuel.LP)).isPresent());
    all.put(
        "camper-comes-off",
        rig -> rig.has("rig.kind.truck-camper") && !rig.has("body.camper-legs.none"));
    all.put("garage", rig -> rig.has("rig.kind.toy-hauler") || rig.has("body.ramp"));
    all.put("fuel-station", rig -> rig.has("road.fuel") && !rig.identity().kind().motorized());
    all.put("pressure-water", Traits::underPressure);
    all.put("few-chocks", Traits::fewChocks);
    Stream.of(15, 20, 30, 50).forEach(a -> all.put("service-" + a, rig -> serviceOf(rig, a)));
    all.put("winter-valve", Traits::winterValve);
    all.put("mains", Traits::mains);
    all.put("panel", rig -> !rig.has("electric.panel.none"));
    return all;
  }

  private static Map<String, Predicate<Rig>> safetyKit() {
    Map<String, Predicate<Rig>> all = new LinkedHashMap<>();
    all.put("kit.chocks", rig -> true);
    all.put("kit.regulator", Traits::underPressure);
    all.put("kit.drinking-hose", Traits::plumbed);
    all.put("kit.gloves", Traits::sewered);
    all.put("safety.alarms.smoke", rig -> true);
    all.put("safety.alarms.carbon-monoxide", rig -> true);
    all.put("safety.alarms.lp", rig -> !rig.has("propane.none"));
    all.put("safety.extinguishers", rig -> true);
    all.put("safety.exits", rig -> true);
    all.put(
        "road.breakaway",
        rig -> rig.identity().kind().towable() && !rig.has("road.brakes.kind.none"));
    all.put("propane", rig -> true);
    return all;
  }

  /** Every trait of this rig. */
  public static Set<String> of(Rig rig) {
    Set<String> traits = new LinkedHashSet<>(rig.traits());
    COMPUTED.forEach(
        (name, test) -> {
          if (test.test(rig)) {
            traits.add(name);
          }
        });
    SAFETY_KIT.forEach((path, wanted) -> addKit(traits, rig, path, wanted));
    return traits;
  }

  private static void addKit(Set<String> traits, Rig rig, String path, Predicate<Rig> wanted) {
    if (missing(rig, path)) {
      traits.remove(path);
      traits.add(path + ".none");
    } else if (!traits.contains(path) && wanted.test(rig)) {
      traits.add(path);
      traits.add(path + ".unlisted");
    }
  }

  private static boolean missing(Rig rig, String path) {
    boolean alarm = path.startsWith("safety.alarms.");
    boolean noAlarm =
        alarm
            && (rig.has("safety.alarms.none")
                || rig.safety().alarms().stream()
                    .anyMatch(a -> a.missing() && a.gear().id().equals(path)));
    return noAlarm || rig.has(path + ".none");
  }

  /** Every trait that some rig can have. */
  public static Set<String> possible() {
    Set<String> all = new LinkedHashSet<>(Rig.possibleTraits());
    all.addAll(COMPUTED.keySet());
    for (String path : SAFETY_KIT.keySet()) {
      all.add(path);
      all.add(path + ".none");
      all.add(path + ".unlisted");
    }
    return all;
  }

  /** The paths of safety kit that is never dropped by silence. */
  public static Set<String> safetyKitPaths() {
    return SAFETY_KIT.keySet();
  }

  /** Fewer than two wheels need, a chock on both sides of each. */
  private static boolean fewChocks(Rig rig) {
    return rig.kit().chocks().filter(c -> c.count().known() && c.count().value() < 4).isPresent();
  }

  private static boolean serviceOf(Rig rig, double amps) {
    return rig.electric()
        .shore()
        .map(Electric.Shore::service)
        .filter(s -> s.known() && s.value() == amps)
        .isPresent();
  }

  private static boolean plumbed(Rig rig) {
    return rig.has("water.fresh") || rig.has("water.city-inlet") || rig.has("water.fill");
  }

  /** True if 120 V comes from somewhere; what runs on it tells that it does. */
  private static boolean mains(Rig rig) {
    Stream<String> electric =
        Stream.of(
            "shore",
            "adapters",
            "protector",
            "transfer",
            "load-shedding",
            "generator",
            "inverter",
            "converter",
            "breakers",
            "outlets");
    Stream<String> others =
        Stream.of(
            "electric.loads.on.120-v",
            "electric.loads.kind.microwave",
            "electric.loads.kind.induction",
            "electric.loads.kind.plug-heater",
            "water.appliances",
            "climate.air-conditioners",
            "climate.refrigerator.kind.household",
            "climate.refrigerator.runs-on.120-v",
            "water.heater.fuel.electric");
    return electric.anyMatch(key -> rig.has("electric." + key)) || others.anyMatch(rig::has);
  }

  private static boolean sewered(Rig rig) {
    return rig.has("waste.black") || rig.has("waste.gray");
  }

  private static boolean towsCar(Rig rig) {
    return rig.identity().kind().motorized()
        && rig.road().towed().filter(Road.Towed::onItsOwnWheels).isPresent();
  }

  private static boolean vehicleKnown(Rig rig) {
    return rig.has("road.tow-vehicle") || rig.has("stay.tow-vehicle");
  }

  /** The fill valve has a position that draws from a jug of antifreeze. */
  private static boolean winterValve(Rig rig) {
    return rig.water()
        .fill()
        .flatMap(Water.Fill::valve)
        .filter(Water.Valve::drawsFromJug)
        .isPresent();
  }

  /** A tap's pressure can reach its pipes; a tank that is only poured full never meets it. */
  private static boolean underPressure(Rig rig) {
    boolean poured = rig.has("water.fill.style.gravity") && !rig.has("water.city-inlet");
    return plumbed(rig) && !poured;
  }
}
