package org.rigleaf.guidance;

import java.util.List;
import java.util.Locale;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/** A caution as the wording has it, for all rigs. */
record CautionText(
    String id,
    Level level,
    String group,
    Condition condition,
    TextTemplate hazard,
    TextTemplate consequence,
    List<ConditionalText> avoid,
    TextTemplate defer,
    TextTemplate brief,
    TextTemplate command) {

  /** How bad it can get; the word follows the injury. */
  enum Level {
    DANGER,
    WARNING,
    CAUTION,
    NOTICE;

    String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static CautionText read(String id, Fields entry, WordingCheck check) {
    CautionText caution =
        new CautionText(
            id,
            level(entry, check),
            entry.text("group").map(Node.Text::value).orElse(""),
            Condition.read(entry, check.traits, check.problems),
            TextTemplate.read(entry, "hazard", check),
            TextTemplate.read(entry, "consequence", check),
            ConditionalText.list(entry, "avoid", check),
            TextTemplate.read(entry, "defer", check),
            TextTemplate.read(entry, "short", check),
            TextTemplate.read(entry, "command", check));
    entry.finish();
    if (caution.hazard.empty()
        || caution.avoid.isEmpty()
        || caution.brief.empty()
        || caution.command.empty()) {
      check.problem(
          entry.at(), id, "a caution needs hazard, avoid, short and command", "write them");
    }
    return caution;
  }

  private static Level level(Fields entry, WordingCheck check) {
    String word = entry.text("level").map(Node.Text::value).orElse("");
    for (Level level : Level.values()) {
      if (level.key().equals(word)) {
        return level;
      }
    }
    check.problem(
        entry.at(),
        entry.pathOf("level"),
        "no level '" + word + "'",
        "danger, warning, caution or notice");
    return Level.WARNING;
  }
}
