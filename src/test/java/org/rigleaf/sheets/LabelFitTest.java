package org.rigleaf.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rigleaf.RandomRigs;
import org.rigleaf.figures.Figures;
import org.rigleaf.guidance.Label;
import org.rigleaf.guidance.Wording;
import org.rigleaf.rig.Gear;
import org.rigleaf.rig.Rig;
import org.rigleaf.source.ProblemsFound;

/** Labels of random rigs: none is too full, and those that save from harm carry their words. */
class LabelFitTest {
  /** A word that must stand on every label of a kind of gear. */
  private static final Map<String, String> WORDS =
      Map.of(
          "waste.black.handle", "BLACK",
          "waste.gray.handle", "GRAY",
          "waste.black.flush-inlet", "Never the drinking hose",
          "water.city-inlet", "Drinking water only",
          "water.fill", "Drinking water only",
          "propane.cylinders", "Turn clockwise to shut",
          "road.fuel", "No other fuel");

  private final List<String> faults = new ArrayList<>();

  @Test
  void noLabelOfAnyRigIsTooFull() {
    for (RandomRigs.Profile profile : RandomRigs.all()) {
      Rig rig = profile.rig();
      LabelMaker maker = maker(rig);
      for (LabelGrid grid : LabelGrid.all().values()) {
        try {
          maker.sheets(grid, true, Map.of(), profile.name());
        } catch (ProblemsFound e) {
          faults.add(e.getMessage());
        }
      }
    }
    assertEquals(List.of(), faults.stream().limit(30).toList());
  }

  @Test
  void eachPieceOfGearHasOneLabelWithItsWords() {
    for (RandomRigs.Profile profile : RandomRigs.all()) {
      Rig rig = profile.rig();
      List<Label> labels = maker(rig).labels();
      if (new HashSet<>(labels.stream().map(Label::id).toList()).size() != labels.size()) {
        faults.add(profile.name() + ": an id stands twice");
      }
      rig.gear().forEach(g -> check(profile.name(), g, labels));
    }
    assertEquals(List.of(), faults.stream().limit(30).toList());
  }

  private void check(String where, Gear gear, List<Label> labels) {
    List<Label> here = labels.stream().filter(l -> l.gear().equals(gear.id())).toList();
    String words =
        here.size() == 1 ? here.get(0).word().plain() + " " + here.get(0).text().plain() : "";
    if (here.size() != 1 || !words.contains(WORDS.getOrDefault(gear.type(), ""))) {
      faults.add(where + ": " + gear.id() + ": " + here);
    }
    if (words.contains("{") || words.contains("null")) {
      faults.add(where + ": prints " + words);
    }
  }

  private static LabelMaker maker(Rig rig) {
    BinderMaker binder = BinderMaker.of(rig, Figures.of(rig), Wording.english(), Map.of());
    return new LabelMaker(rig, binder, Wording.english());
  }

  /** ANSI Z535.4-2011 Annex B, as a maker of safety signs quotes it. */
  @ParameterizedTest
  @CsvSource({"2, 10", "3, 12", "4, 14", "5, 16"})
  void typeIsAsLargeAsTheDistanceAsks(int feet, int points) {
    assertEquals(points, ReadingSize.points(feet));
    assertThrows(IllegalArgumentException.class, () -> ReadingSize.points(6));
  }

  @Test
  void aSheetThatDoesNotAddUpIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new LabelGrid("x", Paper.LETTER, 3, 10, 66.675, 25.4, 4.7625, 12.7, 3.6, 0));
  }

  @Test
  void whatIsWrongInALabelSheetIsNamedWithItsLine() {
    String wrong =
        """
        one: {paper: legal, columns: three, rows: 10, width: 1 lb, height: 1 in, left: 0 in, top: 0 in, gap-across: 0 in}
        two: {paper: letter, columns: 1, rows: 1, width: 8 in, height: 11 in, left: 0 in, top: 0 in, gap-across: 0 in, gap-down: 0 in}
        """;
    ProblemsFound found =
        assertThrows(ProblemsFound.class, () -> LabelGrids.read(wrong, "sheets.yaml"));
    List<String> told = found.problems().stream().map(Object::toString).toList();
    assertEquals(5, told.size(), told.toString());
    for (String part :
        List.of(
            "sheets.yaml:1:14: one.paper: 'legal': one of [letter, a4]",
            "sheets.yaml:1:30: one.columns: 'three': a whole number",
            "one.width: '1 lb': a length",
            "one.gap-down: is missing: a length",
            "sheets.yaml:2:6: two.paper: two adds up to 203.2 x 279.4 mm")) {
      assertTrue(told.stream().anyMatch(t -> t.contains(part)), part + " in " + told);
    }
  }
}
