package org.rigleaf.cli;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.rigleaf.guidance.Wording;
import org.rigleaf.print.Templates;
import org.rigleaf.sheets.Binder;
import org.rigleaf.sheets.BinderMaker;
import org.rigleaf.sheets.CardSheet;
import org.rigleaf.sheets.CardsMaker;
import org.rigleaf.sheets.Comparison;
import org.rigleaf.sheets.Effective;
import org.rigleaf.sheets.LabelMaker;
import org.rigleaf.sheets.LabelSheets;
import org.rigleaf.sheets.NoticeMaker;
import org.rigleaf.sheets.Paper;
import org.rigleaf.sheets.StayPlanMaker;
import org.rigleaf.sheets.Topic;
import org.rigleaf.sheets.WalkThrough;
import org.rigleaf.sheets.WalkThroughMaker;
import org.rigleaf.source.ProblemsFound;

/** The documents that exist, by the name of their files. */
record Sheets(Issuing issuing, BinderMaker maker, Options options, Templates templates) {
  private static final String BOOKLET = "booklet"; // says again what the cards say
  private static final Map<String, Maker> MADE = made();

  /** Makes one document; empty if there is nothing to say on it. */
  private interface Maker {
    Optional<Made> make(Sheets sheets) throws ProblemsFound, IOException;
  }

  private static Map<String, Maker> made() {
    Map<String, Maker> made = new LinkedHashMap<>();
    made.put("binder", Sheets::binder);
    made.put("stay", Sheets::stay);
    made.put("notice", Sheets::notice);
    made.put("walk-through", Sheets::walkThrough);
    made.put("labels", Sheets::labels);
    made.put("cards", Sheets::cards);
    made.put(BOOKLET, Sheets::booklet);
    return made;
  }

  /** Names of all documents. */
  static Set<String> names() {
    return MADE.keySet();
  }

  /** Names of those that are made if none is asked for by name. */
  static List<String> usual() {
    return MADE.keySet().stream().filter(n -> !n.equals(BOOKLET)).toList();
  }

  /** One document by its name; empty if there is nothing to say on it. */
  Optional<Made> make(String name) throws ProblemsFound, IOException {
    return MADE.get(name).make(this);
  }

  private Optional<Made> binder() {
    Paper paper = options.paper();
    Binder binder = maker.binder(paper, issuing.draft());
    List<String> topics = binder.topics().stream().map(t -> topic(t, binder)).toList();
    String html = templates.binder(binder, topics, issuing.effective("topic"), issuing.record());
    return Optional.of(new Made(html, paper));
  }

  private String topic(Topic topic, Binder binder) {
    return issuing.marked(topic, templates.topic(topic, binder));
  }

  private Optional<Made> stay() throws ProblemsFound, IOException {
    Profile trip = issuing.profile().onStay(options.stay());
    BinderMaker filler = trip.maker(options.units());
    return new StayPlanMaker(trip.rig(), trip.figures(), filler, Wording.english(options.units()))
        .plan(options.paper(), issuing.draft())
        .map(plan -> new Made(templates.sheet("stay", plan), options.paper()));
  }

  private Optional<Made> notice() {
    return issuing
        .comparison()
        .map(
            c ->
                new Made(
                    templates.sheet("notice", notice(c).notice(options.paper(), issuing.draft())),
                    options.paper()));
  }

  private Optional<Made> walkThrough() {
    WalkThrough walk =
        new WalkThroughMaker(issuing.profile().rig(), maker, Wording.english(options.units()))
            .walk(options.paper(), issuing.draft());
    return Optional.of(new Made(templates.sheet("walk-through", walk), options.paper()));
  }

  private Optional<Made> labels() throws ProblemsFound {
    Profile profile = issuing.profile();
    LabelSheets sheets =
        new LabelMaker(profile.rig(), maker, Wording.english(options.units()))
            .sheets(
                options.labels(), issuing.draft(), editions("label"), profile.file().toString());
    return Optional.of(new Made(templates.sheet("labels", sheets), sheets.paper()));
  }

  private Map<String, String> editions(String kind) {
    return issuing.effective(kind).stream()
        .collect(Collectors.toMap(Effective::id, Effective::edition));
  }

  private Optional<Made> booklet() {
    CardSheet sheet = CardSheet.folded(options.paper());
    Wording wording = Wording.english(options.units());
    CardsMaker cards = new CardsMaker(issuing.profile().rig(), maker, wording, sheet.size());
    return Optional.of(
        new Made(
            templates.sheet("booklet", cards.booklet(issuing.draft(), issuing.effective("card"))),
            options.paper(),
            Optional.of(sheet)));
  }

  private Optional<Made> cards() {
    CardSheet sheet = options.cards();
    Wording wording = Wording.english(options.units());
    CardsMaker cards = new CardsMaker(issuing.profile().rig(), maker, wording, sheet.size());
    return Optional.of(
        new Made(
            templates.sheet(
                "cards", cards.cards(sheet, issuing.draft(), issuing.effective("card"))),
            options.paper(),
            Optional.of(sheet)));
  }

  private NoticeMaker notice(Comparison comparison) {
    return new NoticeMaker(
        issuing.profile().rig(),
        maker,
        Wording.english(options.units()),
        comparison,
        issuing.causes(templates));
  }
}
