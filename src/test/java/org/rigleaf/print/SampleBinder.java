package org.rigleaf.print;

import java.util.List;
import java.util.stream.IntStream;
import org.rigleaf.guidance.Caution;
import org.rigleaf.guidance.Group;
import org.rigleaf.guidance.Mark;
import org.rigleaf.guidance.OnCard;
import org.rigleaf.guidance.Procedure;
import org.rigleaf.guidance.Reminder;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Step;
import org.rigleaf.guidance.Words;
import org.rigleaf.sheets.Binder;
import org.rigleaf.sheets.Block;
import org.rigleaf.sheets.CautionsBlock;
import org.rigleaf.sheets.Contact;
import org.rigleaf.sheets.Cover;
import org.rigleaf.sheets.DrawingBlock;
import org.rigleaf.sheets.Edition;
import org.rigleaf.sheets.Effective;
import org.rigleaf.sheets.FigureLine;
import org.rigleaf.sheets.FiguresBlock;
import org.rigleaf.sheets.FillBlock;
import org.rigleaf.sheets.Legend;
import org.rigleaf.sheets.LinesBlock;
import org.rigleaf.sheets.Paper;
import org.rigleaf.sheets.PlacesBlock;
import org.rigleaf.sheets.ProcedureBlock;
import org.rigleaf.sheets.Tab;
import org.rigleaf.sheets.TableBlock;
import org.rigleaf.sheets.Topic;

/**
 * Arrowhead, a trailer of the Heron Flats Trailer Library: a binder with every kind of block, and
 * with a name that tries to break out of its text.
 */
final class SampleBinder {
  static final String HOSTILE = "<b>Arrow</b> ${7*7} </svg>";

  private static final String LIVE_METAL = "energised-body";

  private SampleBinder() {}

  static Binder binder() {
    return binder(Paper.LETTER);
  }

  static Binder binder(Paper paper) {
    return new Binder(
        "Arrowhead",
        "travel trailer",
        "DRAFT",
        new Edition(2, "2026-05-02", "New batteries and a new charger"),
        tabs(),
        topics(),
        List.of(
            new Contact("Heron Flats Trailer Library", "555 0143", "every day, 8 to 20"),
            new Contact("Emergency", "911", "fire, injury, gas you cannot stop")),
        paper,
        cover());
  }

  static List<Effective> effective() {
    return topics().stream()
        .map(
            t ->
                new Effective(
                    t.id(),
                    t.section().equals("electricity") ? "2" : "1",
                    t.section().equals("electricity") ? "2026-05-02" : "2025-04-18"))
        .toList();
  }

  static String html(Templates templates, Binder binder) {
    List<String> topics = binder.topics().stream().map(t -> templates.topic(t, binder)).toList();
    return templates.binder(binder, topics, effective(), List.of(binder.edition()));
  }

  private static List<Tab> tabs() {
    return List.of(
        new Tab("emergencies", "!", "Emergencies"),
        new Tab("first", "1", "First night"),
        new Tab("safety", "S", "Safety"),
        new Tab("rig", "R", "The rig"),
        new Tab("electricity", "E", "Electricity"),
        new Tab("water", "W", "Water"),
        new Tab("drains", "D", "Drains and tanks"),
        new Tab("propane", "P", "Propane (LP)"),
        new Tab("climate", "C", "Climate and kitchen"),
        new Tab("body", "B", "Body"),
        new Tab("upkeep", "U", "Upkeep"));
  }

  private static Cover cover() {
    return new Cover(
        "Arrowhead binder",
        "Whoever sleeps in Arrowhead for the first time",
        "Heron Flats Trailer Library",
        List.of(
            line("11 ft 2 in", "Height", "with the air conditioner", ""),
            line("24 ft 6 in", "Length", "coupler to rear bumper", ""),
            line("6,200 lb", "Most it may weigh", "loaded, on its own wheels and the hitch", "")),
        List.of(
            Words.of("The maker's manuals and the plates on the rig come before this binder."),
            Words.of("Local codes and the rules of the site come before this binder."),
            Words.of(
                "Gas, brakes and house current are repaired by a licensed technician, nobody else."),
            Words.of("A line to write on means that we do not know. We do not guess.")),
        List.of(),
        List.of());
  }

  static List<Topic> topics() {
    return List.of(
        topic("emergency-fire", "S1", "emergencies", "Fire", true, fire(), siteLines()),
        topic("emergency-shock", "S2", "emergencies", "Electric shock", true, shock(), siteLines()),
        topic("six-things", "F1", "first", "Six things to know first", false, sixThings()),
        topic("cautions", "S3", "safety", "Read before you start", false, cautions()),
        topic("glance", "R1", "rig", "Rig at a glance", false, glance(), tires(), words()),
        topic("map", "R2", "rig", "System map", false, map()),
        topic("shore-power", "E1", "electricity", "Connect shore power", false, power()),
        topic("loads", "E2", "electricity", "What runs together", false, figures(), loads()),
        topic("water-start", "W1", "water", "Water on, water off", false, waterOn(), waterOff()),
        topic("dump", "D1", "drains", "Empty the tanks", false, dump()),
        topic("typical", "U1", "upkeep", "Typical values to check", false, typical(), notes()));
  }

  private static Topic topic(
      String id, String code, String section, String title, boolean emergency, Block... blocks) {
    return new Topic(id, code, section, title, emergency, List.of(blocks));
  }

  private static Block fire() {
    return new ProcedureBlock(
        new Procedure(
            "fire",
            "Fire",
            "read-do",
            1,
            List.of(),
            Words.of("Smoke fills the room or the fire is larger than a pan."),
            List.of(),
            List.of(
                new Group(
                    "Do this now",
                    List.of(
                        step("fire.out", 1, "Get everyone out.", "All stand upwind of the rig."),
                        step("fire.away", 2, "Stay out.", ""),
                        step("fire.call", 3, "Call 911.", "You read out the site lines below."))),
                new Group(
                    "From outside, if the path is clear",
                    List.of(
                        at(
                            step("fire.gas", 4, "Close the gas valve.", "It stops at the right."),
                            "P1",
                            "propane.cylinders",
                            "front, under the cover"),
                        step(
                            "fire.post",
                            5,
                            "Switch off the breaker at the post.",
                            "It points OFF."),
                        at(
                            step("fire.small", 6, "Aim a small fire's base.", "The flame dies."),
                            "S4",
                            "safety.extinguishers.door",
                            "right of the door, at knee height"),
                        step("fire.tow", 7, "Keep people 100 ft away.", "")))),
            Words.of("All are out, counted, and help is on its way.")));
  }

  private static Block shock() {
    return new ProcedureBlock(
        new Procedure(
            "shock",
            "Electric shock",
            "read-do",
            1,
            List.of(),
            Words.of("You would have to touch the person or the rig."),
            List.of(
                new Reminder(
                    LIVE_METAL,
                    "danger",
                    "DANGER",
                    Words.of("Live metal on the rig."),
                    Words.of("Do not touch the person yet."),
                    "S3")),
            List.of(
                new Group(
                    "Do this now",
                    List.of(
                        step("shock.off", 1, "Switch off at the post.", "It points to OFF."),
                        step("shock.call", 2, "Call 911.", ""),
                        step("shock.breath", 3, "Check for breath.", "The chest rises.")))),
            Words.of("The power is off and help is on its way.")));
  }

  private static Block siteLines() {
    return new FillBlock(
        "Say this on the phone", List.of("Site number", "Address", "Where the phone works"));
  }

  private static Block sixThings() {
    return new PlacesBlock(
        "",
        List.of(
            place("S5", "safety.exits", "Exits", "the door, and the window over the bed"),
            place("S4", "safety.extinguishers.door", "Extinguisher", "right of the door"),
            place("P1", "propane.cylinders", "Gas shut-off", "front, under the cover"),
            place("E3", "electric.panel", "Power shut-off", "under the wardrobe, street side"),
            place("W2", "water.pump", "Water shut-off", "switch by the sink"),
            place("S6", "safety.alarms", "Alarms", "ceiling over the table; floor by the bed")));
  }

  private static Legend place(String code, String gear, String name, String place) {
    return new Legend(code, gear, name, Words.of(place));
  }

  private static Block cautions() {
    return new CautionsBlock(
        "Electricity",
        List.of(
            new Caution(
                LIVE_METAL,
                "danger",
                "DANGER",
                "electricity",
                Words.of("The metal of the rig carries live voltage because the ground is lost."),
                Words.of("It kills whoever stands on the ground and touches the rig."),
                List.of(
                    Words.of("Let nobody touch the rig."),
                    Words.of("Switch off the breaker at the post without touching the rig.")),
                Words.of("A licensed electrician tests the rig and its cord.")),
            new Caution(
                "hot-plug",
                "warning",
                "WARNING",
                "electricity",
                Words.of("A worn or loose plug heats up under load."),
                Words.of("It can burn you or set the rig on fire."),
                List.of(
                    Words.of("Feel the plug after 30 min of heavy load."),
                    Words.of("Switch off and call the keeper if it is too hot to hold.")),
                Words.of("An electrician replaces a browned plug or inlet.")),
            new Caution(
                "hot-tap-water",
                "caution",
                "CAUTION",
                "electricity",
                Words.of("Water straight from the heater is hot enough to hurt."),
                Words.of("It can scald a hand."),
                List.of(Words.of("Open the cold tap first.")),
                Words.NONE),
            new Caution(
                "pump-dry",
                "notice",
                "NOTICE",
                "electricity",
                Words.of("The pump runs with an empty tank."),
                Words.of("Its seals wear out."),
                List.of(Words.of("Switch off the pump at the first spit of air.")),
                Words.NONE)));
  }

  private static Block glance() {
    return new FiguresBlock(
        "",
        List.of(
            line("11 ft 2 in", "Height", "Measured to the top of the air conditioner.", ""),
            line("1,140 lb", "Load it still takes", "People, water and things together.", "a"),
            line("38.0 gal", "Fresh water", "317 lb when full.", ""),
            line("65 psi", "Tires, cold", "All four, before driving.", "")));
  }

  private static Block tires() {
    return new TableBlock(
        "Tires",
        List.of("Tire", "Cold pressure", "Date code"),
        List.of(
            row("Front left", "65 psi", "2223"),
            row("Front right", "65 psi", "2223"),
            List.of(
                Words.of("Rear left"),
                Words.of("65 psi"),
                new Words(List.of(Run.blank("tire.rear-left"))))),
        "Read the date code on the wall of the tire: week, then year.");
  }

  private static Block words() {
    return new LinesBlock(
        "Names",
        List.of(
            Words.of("Its name in the register is " + HOSTILE + "."),
            new Words(
                List.of(
                    Run.text("Press "),
                    Run.code("W2", "water.pump"),
                    Run.text(" first; the alarm code is 1l I0 O, 10 µA, 5 Ω, ≥ 12 °C.")))));
  }

  private static Block map() {
    StringBuilder svg =
        new StringBuilder(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"map\""
                + " viewBox=\"0 0 488 500\" width=\"488\" height=\"500\">"
                + "<rect x=\"164\" y=\"30\" width=\"160\" height=\"440\" fill=\"none\""
                + " stroke=\"#000\" stroke-width=\"1.4\"/>"
                + "<text x=\"244\" y=\"20\" font-size=\"12\" text-anchor=\"middle\""
                + " font-weight=\"bold\">FRONT</text>");
    String[] names = {"Shore inlet", "Panel", "Pump", "Heater", "City inlet", "Gas & valve"};
    for (int i = 0; i < names.length; i++) {
      int y = 80 + 60 * i;
      boolean street = i % 2 == 0;
      int x = street ? 130 : 358;
      svg.append(
          String.format(
              "<g data-gear=\"gear.%d\" data-code=\"W%d\"><circle cx=\"%d\" cy=\"%d\" r=\"12\""
                  + " fill=\"#fff\" stroke=\"#000\"/><path d=\"M%d %d L244 %d\" stroke=\"#000\""
                  + " stroke-width=\"0.4\"/><text x=\"%d\" y=\"%d\" font-size=\"12.5\""
                  + " font-weight=\"bold\" text-anchor=\"middle\">W%d</text><text x=\"%d\""
                  + " y=\"%d\" font-size=\"10\" text-anchor=\"%s\">%s</text></g>",
              i,
              i + 1,
              x,
              y,
              street ? 142 : 346,
              y,
              y,
              x,
              y + 4,
              i + 1,
              street ? 114 : 374,
              y + 4,
              street ? "end" : "start",
              names[i].replace("&", "&amp;")));
    }
    svg.append("</svg>");
    return new DrawingBlock(
        "System map",
        svg.toString(),
        "Plan of the trailer from above, front at the top, with six call-outs",
        IntStream.range(0, names.length)
            .mapToObj(i -> place("W" + (i + 1), "gear." + i, names[i], "street side, 6 ft back"))
            .toList());
  }

  private static Block power() {
    Reminder live =
        new Reminder(
            LIVE_METAL,
            "danger",
            "DANGER",
            Words.of("Live metal on the rig."),
            Words.of("Feel a tingle? Let nobody touch the rig."),
            "S3");
    Reminder hot =
        new Reminder(
            "hot-plug",
            "warning",
            "WARNING",
            Words.of("Plug hot under load."),
            Words.of("Push it home until it locks."),
            "S3");
    return new ProcedureBlock(
        new Procedure(
            "connect-shore-power",
            "Connect shore power",
            "read-do",
            10,
            List.of(Words.of("the power cord"), Words.of("the household adapter")),
            Words.of("You feel a tingle, smell burning, or find a browned plug."),
            List.of(live),
            List.of(
                new Group(
                    "At the post",
                    List.of(
                        step(
                            "connect-shore-power.breaker",
                            1,
                            "Switch off the breaker at the post.",
                            "The handle points to OFF."),
                        ifNot(
                            step(
                                "connect-shore-power.look",
                                2,
                                "Look at the outlet.",
                                "It is dry, clean and not browned."),
                            "Ask the site for another post."),
                        remind(
                            step(
                                "connect-shore-power.plug",
                                3,
                                "Push the plug into the outlet.",
                                "It sits flush."),
                            hot))),
                new Group(
                    "At the rig",
                    List.of(
                        at(
                            step(
                                "connect-shore-power.inlet",
                                4,
                                "Turn the cord into the inlet.",
                                "It clicks and does not pull out."),
                            "E1",
                            "electric.shore",
                            "street side, rear third, knee height"),
                        step(
                            "connect-shore-power.on",
                            5,
                            "Switch on the breaker at the post.",
                            "The protector shows green after 128 s."),
                        noted(
                            step(
                                "connect-shore-power.volts",
                                6,
                                "Read the voltage.",
                                "It shows 108 to 126 V."),
                            "Not listed for this rig: have a meter before first use.")))),
            Words.of("The rig runs on shore power.")));
  }

  private static Block figures() {
    return new FiguresBlock(
        "What the connection gives",
        List.of(
            line("3,600 W", "From a 30 A outlet", "All things together.", ""),
            line("1,800 W", "From a household outlet", "One large thing at a time.", "b")));
  }

  private static Block loads() {
    return new TableBlock(
        "Draws",
        List.of("Thing", "Draws", "On 30 A", "On 15 A"),
        List.of(
            row("Air conditioner", "1,650 W", "yes", "no"),
            row("Water heater, electric", "1,440 W", "yes", "alone"),
            row("Microwave", "1,500 W", "yes", "alone"),
            row("Converter", "600 W", "yes", "yes")),
        "The numbers are from the plates.");
  }

  private static Block waterOn() {
    List<Step> steps =
        IntStream.rangeClosed(1, 9)
            .mapToObj(
                i ->
                    at(
                        step(
                            "water-on." + i,
                            i,
                            "Open cold tap number " + i + " until the water runs clear.",
                            "Water runs without a spit of air."),
                        "W" + i,
                        "water.tap." + i,
                        "galley, left of the stove"))
            .toList();
    return new ProcedureBlock(
        new Procedure(
            "water-on",
            "Water on",
            "do-confirm",
            15,
            List.of(
                Words.of("the drinking-water hose"), Words.of("the regulator"), Words.of("gloves")),
            Words.of("A joint drips."),
            List.of(),
            List.of(new Group("Fill the pipes", steps)),
            Words.of("Every tap runs.")));
  }

  private static Block waterOff() {
    return new ProcedureBlock(
        new Procedure(
            "water-off",
            "Water off",
            "read-do",
            0,
            List.of(),
            Words.NONE,
            List.of(),
            List.of(
                new Group(
                    "",
                    List.of(
                        step("water-off.pump", 1, "Switch off the pump.", "The light goes out."),
                        step("water-off.tap", 2, "Open the cold tap.", "The flow stops.")))),
            Words.of("No pipe is under pressure.")));
  }

  private static Block dump() {
    return new ProcedureBlock(
        new Procedure(
            "dump-tanks",
            "Empty the tanks",
            "read-do",
            25,
            List.of(Words.of("gloves"), Words.of("the sewer hose")),
            Words.of("The sign at the hole does not say that dumping is allowed."),
            List.of(),
            List.of(
                new Group(
                    "Black tank first",
                    List.of(
                        step("dump-tanks.cap", 1, "Take off the cap.", "Nothing runs out."),
                        step("dump-tanks.hose", 2, "Lock the hose on.", "It does not turn."),
                        at(
                            step(
                                "dump-tanks.black",
                                3,
                                "Pull the BLACK handle.",
                                "You hear a rush."),
                            "D2",
                            "waste.black.handle",
                            "street side, behind the wheel"),
                        step("dump-tanks.wait", 4, "Wait for silence.", "No sound in the hose.")))),
            Words.of("Both handles are pushed in and the cap is on.")));
  }

  private static Block typical() {
    return new TableBlock(
        "",
        List.of("Mark", "Taken as", "Where to look"),
        List.of(
            List.of(
                new Words(List.of(Run.assumed("a", "water.density"))),
                new Words(List.of(figure("typical.water", "8.34 lb/gal", "typical"))),
                Words.of("Same everywhere.")),
            List.of(
                new Words(List.of(Run.assumed("b", "outlet.household"))),
                new Words(List.of(figure("typical.outlet", "15 A", "typical"))),
                Words.of("On the breaker at the post."))),
        "");
  }

  private static Block notes() {
    return new FillBlock("What you found", List.of("Mark and value", "Mark and value, again"));
  }

  private static FigureLine line(String value, String title, String meaning, String assumes) {
    String id = title.toLowerCase(java.util.Locale.ROOT).replace(' ', '.');
    String from = assumes.isEmpty() ? "given" : "typical";
    return new FigureLine(new Words(List.of(figure(id, value, from))), title, meaning, assumes);
  }

  private static Run figure(String id, String text, String from) {
    String[] parts = text.split(" ", 2);
    return Run.figure(
        text.replace(' ', '\u00a0'), new Mark(id, parts[0].replace(",", ""), parts[1], from, ""));
  }

  private static List<Words> row(String... cells) {
    return java.util.Arrays.stream(cells).map(Words::of).toList();
  }

  private static Step step(String id, int number, String action, String see) {
    return new Step(
        id,
        number,
        Words.of(action),
        Words.of(see),
        Words.NONE,
        Words.NONE,
        "",
        "",
        Words.NONE,
        List.of(),
        OnCard.YES);
  }

  private static Step at(Step s, String code, String gear, String place) {
    return new Step(
        s.id(),
        s.number(),
        s.action(),
        s.see(),
        s.ifNot(),
        s.note(),
        code,
        gear,
        Words.of(place),
        s.reminders(),
        OnCard.YES);
  }

  private static Step ifNot(Step s, String text) {
    return new Step(
        s.id(),
        s.number(),
        s.action(),
        s.see(),
        Words.of(text),
        s.note(),
        s.code(),
        s.gear(),
        s.place(),
        s.reminders(),
        OnCard.YES);
  }

  private static Step noted(Step s, String text) {
    return new Step(
        s.id(),
        s.number(),
        s.action(),
        s.see(),
        s.ifNot(),
        Words.of(text),
        s.code(),
        s.gear(),
        s.place(),
        s.reminders(),
        OnCard.YES);
  }

  private static Step remind(Step s, Reminder... reminders) {
    return new Step(
        s.id(),
        s.number(),
        s.action(),
        s.see(),
        s.ifNot(),
        s.note(),
        s.code(),
        s.gear(),
        s.place(),
        List.of(reminders),
        OnCard.YES);
  }
}
