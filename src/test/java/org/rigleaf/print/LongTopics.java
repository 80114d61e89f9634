package org.rigleaf.print;

import java.util.List;
import java.util.stream.IntStream;
import org.rigleaf.guidance.Caution;
import org.rigleaf.guidance.Group;
import org.rigleaf.guidance.OnCard;
import org.rigleaf.guidance.Procedure;
import org.rigleaf.guidance.Reminder;
import org.rigleaf.guidance.Step;
import org.rigleaf.guidance.Words;
import org.rigleaf.sheets.Binder;
import org.rigleaf.sheets.CautionsBlock;
import org.rigleaf.sheets.DrawingBlock;
import org.rigleaf.sheets.Legend;
import org.rigleaf.sheets.ProcedureBlock;
import org.rigleaf.sheets.TableBlock;
import org.rigleaf.sheets.Topic;

/** Topics that run over pages, so that the places where pages break can be looked at and tested. */
final class LongTopics {
  static final int STEPS = 27;

  private LongTopics() {}

  static Binder binder() {
    Binder b = SampleBinder.binder();
    return new Binder(
        b.rig(),
        b.kind(),
        "",
        b.edition(),
        b.tabs(),
        List.of(steps(), cautions(), table(), map()),
        b.contacts(),
        b.paper(),
        b.cover());
  }

  private static Topic steps() {
    List<Group> groups =
        IntStream.range(0, 3)
            .mapToObj(
                g ->
                    new Group(
                        "Group " + (g + 1),
                        IntStream.rangeClosed(9 * g + 1, 9 * g + 9)
                            .mapToObj(LongTopics::step)
                            .toList()))
            .toList();
    return new Topic(
        "leave",
        "B9",
        "body",
        "Leave the site",
        false,
        List.of(
            new ProcedureBlock(
                new Procedure(
                    "leave",
                    "Leave the site",
                    "do-confirm",
                    45,
                    List.of(Words.of("the wheel wrench")),
                    Words.of("Someone stands behind the rig."),
                    List.of(reminder("danger", "DANGER"), reminder("warning", "WARNING")),
                    groups,
                    Words.of("Doneword: the rig is ready for the road.")))));
  }

  private static Step step(int number) {
    boolean warned = number % 7 == 0;
    return new Step(
        "leave.s" + number,
        number,
        Words.of("Do action" + number + " at the very end of the street side."),
        Words.of("You see sign" + number + " and it stays so for a while."),
        number % 5 == 0 ? Words.of("Call the keeper before you go on.") : Words.NONE,
        Words.NONE,
        number % 3 == 0 ? "W" + number : "",
        number % 3 == 0 ? "gear." + number : "",
        number % 3 == 0 ? Words.of("behind place" + number) : Words.NONE,
        warned ? List.of(reminder("caution", "CAUTION")) : List.of(),
        OnCard.YES);
  }

  private static Reminder reminder(String level, String signal) {
    return new Reminder(
        "moving-" + level,
        level,
        signal,
        Words.of("The rig rolls."),
        Words.of("Keep clear of its wheels while somebody else takes the chocks away."),
        "S9");
  }

  private static Topic cautions() {
    String[] levels = {"danger", "warning", "caution", "notice"};
    List<Caution> all =
        IntStream.range(0, 14)
            .mapToObj(
                i ->
                    new Caution(
                        i < 3 ? "moving-" + levels[i] : "hazard-" + i,
                        levels[i % 4],
                        levels[i % 4].toUpperCase(java.util.Locale.ROOT),
                        "moving",
                        Words.of("Hazard " + i + " moves without a sound once it is let go."),
                        Words.of("It can crush whoever stands in its way."),
                        List.of(
                            Words.of("Keep everyone clear of the wheels and the jack."),
                            Words.of("Chock both wheels of one side before you unhitch.")),
                        Words.of("A licensed technician repairs the brakes.")))
            .toList();
    return new Topic(
        "all-cautions",
        "S9",
        "safety",
        "Read before you start",
        false,
        List.of(
            new CautionsBlock("Moving", all.subList(0, 9)),
            new CautionsBlock("Water", all.subList(9, 14))));
  }

  private static Topic table() {
    List<List<Words>> rows =
        IntStream.rangeClosed(1, 50)
            .mapToObj(
                i ->
                    List.of(
                        Words.of("Job " + i),
                        Words.of("every " + i + " months"),
                        Words.of("Look at it from below and wipe off the dust of the road."),
                        Words.of("2026-05-02")))
            .toList();
    return new Topic(
        "upkeep",
        "U9",
        "upkeep",
        "Upkeep calendar",
        false,
        List.of(new TableBlock("", List.of("Job", "When", "How", "Due"), rows, "")));
  }

  private static Topic map() {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"map\""
            + " viewBox=\"0 0 520 553\"><rect x=\"1\" y=\"1\" width=\"518\" height=\"551\""
            + " fill=\"none\" stroke=\"#000\"/><text x=\"519\" y=\"550\" font-size=\"12\""
            + " text-anchor=\"end\">last corner</text></svg>";
    List<Legend> legend =
        IntStream.rangeClosed(1, 31)
            .mapToObj(
                i ->
                    new Legend(
                        "W" + i, "gear." + i, "Thing " + i, Words.of("street side, rear third")))
            .toList();
    return new Topic(
        "big-map",
        "R9",
        "rig",
        "System map",
        false,
        List.of(
            new DrawingBlock("System map", svg, "A plan as wide as the page, one corner", legend)));
  }
}
