package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.rigleaf.TestRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Rig;

/** Where the tow vehicle is unknown, its side is left to fill in and the rig's is printed. */
class TowWorksheetTest {
  private static List<Run> topic(String kind, String road) {
    Rig rig =
        TestRigs.of(
            "rig: {name: Reed, kind: "
                + kind
                + ", axles: 14 ft}\nwater: {fresh: {holds: 10 gal, at: under 14 ft}}\n"
                + "road: {weights: {unloaded: 5000 lb, hitch-unloaded: 700 lb}"
                + road
                + "}\n");
    return BinderMaker.of(rig, Figures.of(rig), Wording.english(), Map.of())
        .binder(Paper.LETTER, true)
        .topics()
        .stream()
        .filter(t -> t.id().equals("tow-vehicle"))
        .flatMap(t -> Texts.of(t).stream())
        .toList();
  }

  private static List<String> keys(List<Run> runs, Run.Kind kind) {
    return runs.stream().filter(r -> r.kind() == kind).map(Run::text).distinct().toList();
  }

  private static long blanks(List<Run> runs) {
    return runs.stream().filter(r -> r.kind() == Run.Kind.BLANK).count();
  }

  @Test
  void aTrailerPrintsItsHitchWeightTwiceAndLinesForTheVehicle() {
    List<Run> runs = topic("travel trailer", "");
    assertEquals(List.of("700 lb"), keys(runs, Run.Kind.FIGURE));
    // payload 4 and what is left; rear axle 4 and what is left; combined 3, GVWR, what is left
    assertEquals(15, blanks(runs));
  }

  @Test
  void aPinHasNoLever() {
    assertEquals(14, blanks(topic("fifth wheel", "")));
  }

  @Test
  void aCamperPrintsItsWeightAndWater() {
    List<Run> runs = topic("truck camper", "");
    assertEquals(List.of("83 lb"), keys(runs, Run.Kind.FIGURE));
    assertTrue(runs.stream().anyMatch(r -> r.text().equals("5,000 lb")));
    assertEquals(6, blanks(runs));
  }

  @Test
  void aKnownVehicleOrAMotorhomeGetsNoLines() {
    String vehicle =
        ", tow-vehicle: {payload-label: 1500 lb, people: 300 lb, bed-cargo: 0 lb, hitch-hardware: 0"
            + " lb}";
    List<Run> runs = topic("travel trailer", vehicle);
    assertEquals(List.of("500 lb"), keys(runs, Run.Kind.FIGURE).subList(0, 1));
    assertEquals(0, blanks(runs));
    assertEquals(List.of(), topic("class c", ""));
  }
}
