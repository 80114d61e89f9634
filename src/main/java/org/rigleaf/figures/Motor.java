package org.rigleaf.figures;

import java.util.List;
import org.rigleaf.rig.Answer;
import org.rigleaf.rig.Fact;
import org.rigleaf.rig.Rig;
import org.rigleaf.rig.TypicalValues;

/**
 * A motor on 120 V that takes more watts for a moment than it takes to run.
 *
 * @param gear id of the gear or load
 * @param starts watts while it starts, eased by its soft starter if it has one
 */
public record Motor(String gear, Fact starts) {
  private static final String SOFT_STARTER = "soft-starter.starts";

  /** Those of which the profile says what they take to start, on the generator if there is one. */
  public static List<Motor> onGenerator(Rig rig) {
    return on(rig, Source.GENERATOR);
  }

  /** The same for what the inverter feeds. */
  public static List<Motor> onInverter(Rig rig) {
    return on(rig, Source.INVERTER);
  }

  private static List<Motor> on(Rig rig, String source) {
    return Source.of(rig).stream()
        .filter(s -> s.id().equals(source))
        .flatMap(s -> Loads.of(rig).stream().filter(i -> i.mains() && s.feeds(i)))
        .filter(i -> i.starts().known())
        .map(i -> new Motor(i.gear(), eased(i, rig)))
        .toList();
  }

  private static Fact eased(LoadItem item, Rig rig) {
    boolean softly =
        rig.climate().airConditioners().stream()
            .anyMatch(a -> a.gear().id().equals(item.gear()) && a.softStarter() == Answer.YES);
    double share = softly ? TypicalValues.of(SOFT_STARTER).value() : 1;
    return item.starts().with(w -> w * share, item.starts().unit());
  }
}
