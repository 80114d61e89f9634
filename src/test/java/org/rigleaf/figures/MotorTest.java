package org.rigleaf.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;
import org.rigleaf.rig.Rig;

/** Which motors a source has to start. */
class MotorTest {
  @Test
  void onlyMotorsWithKnownStartsCountAndTheInverterHasThoseItFeeds() {
    Rig rig =
        TestRigs.of(
            "rig: {name: T, kind: class c, length: 24 ft}\nelectric: {generator: {surge: 4000 W},"
                + " inverter: {surge: 2000 W, feeds: Saw}, loads: [{name: Mixer, on: 120 V, draws:"
                + " 300 W}, {name: Saw, on: 120 V, draws: 900 W, starts: 1800 W}, {name: Pump, on:"
                + " 120 V, draws: 500 W, starts: 1500 W}]}");
    assertEquals(
        List.of("electric.loads.saw", "electric.loads.pump"),
        Motor.onGenerator(rig).stream().map(Motor::gear).toList());
    assertEquals(
        List.of("electric.loads.saw"), Motor.onInverter(rig).stream().map(Motor::gear).toList());
  }
}
