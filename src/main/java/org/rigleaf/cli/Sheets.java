package org.rigleaf.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.rigleaf.guidance.Wording;
import org.rigleaf.print.Templates;
import org.rigleaf.sheets.Binder;
import org.rigleaf.sheets.Comparison;
import org.rigleaf.sheets.NoticeMaker;
import org.rigleaf.sheets.Paper;
import org.rigleaf.sheets.Topic;

/** The documents that exist, by the name of their files. */
record Sheets(Issuing issuing, Paper paper, Templates templates) {
  private static final Map<String, Function<Sheets, Optional<Made>>> MADE = made();

  private static Map<String, Function<Sheets, Optional<Made>>> made() {
    Map<String, Function<Sheets, Optional<Made>>> made = new LinkedHashMap<>();
    made.put("binder", Sheets::binder);
    made.put("notice", Sheets::notice);
    return made;
  }

  /** Names of all documents. */
  static Set<String> names() {
    return MADE.keySet();
  }

  /** One document by its name; empty if there is nothing to say on it. */
  Optional<Made> make(String name) {
    return MADE.get(name).apply(this);
  }

  private Optional<Made> binder() {
    Binder binder = issuing.profile().maker().binder(paper, issuing.draft());
    List<String> topics = binder.topics().stream().map(t -> topic(t, binder)).toList();
    return Optional.of(new Made(templates.binder(binder, topics, issuing.effective()), paper));
  }

  private String topic(Topic topic, Binder binder) {
    return issuing.marked(topic, templates.topic(topic, binder));
  }

  private Optional<Made> notice() {
    return issuing
        .comparison()
        .map(
            c ->
                new Made(
                    templates.sheet("notice", notice(c).notice(paper, issuing.draft())), paper));
  }

  private NoticeMaker notice(Comparison comparison) {
    Profile profile = issuing.profile();
    return new NoticeMaker(
        profile.rig(), profile.maker(), Wording.english(), comparison, issuing.causes(templates));
  }
}
