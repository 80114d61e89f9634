package org.rigleaf.guidance;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The cautions that one rig triggers, and what stands of them before an action. */
record Cautions(Wording wording, RigTraits traits, Filler filler, Map<String, String> topicCodes) {
  /** Every caution that is triggered, gravest first within the order of the wording's groups. */
  List<Caution> all() {
    return wording.cautions.values().stream()
        .filter(c -> traits.holds(c.condition()))
        .map(this::caution)
        .toList();
  }

  private Caution caution(CautionText c) {
    List<Words> avoid =
        c.avoid().stream()
            .filter(a -> traits.holds(a.condition()))
            .map(a -> fill(a.text()))
            .toList();
    return new Caution(
        c.id(),
        c.level().key(),
        signal(c),
        c.group(),
        fill(c.hazard()),
        fill(c.consequence()),
        avoid,
        fill(c.defer()));
  }

  /** What stands before an action of these cautions, those that are triggered; gravest first. */
  List<Reminder> reminders(List<String> ids) {
    return ids.stream()
        .map(wording.cautions::get)
        .filter(c -> traits.holds(c.condition()))
        .sorted(Comparator.comparing(CautionText::level))
        .map(this::reminder)
        .toList();
  }

  private Reminder reminder(CautionText c) {
    String topic = wording.topicOfCautions(c.group()).map(topicCodes::get).orElse("");
    return new Reminder(
        c.id(), c.level().key(), signal(c), fill(c.brief()), fill(c.command()), topic);
  }

  private String signal(CautionText c) {
    return wording.phrase("signal-" + c.level().key());
  }

  private Words fill(TextTemplate text) {
    return filler.fill(text, "");
  }
}
