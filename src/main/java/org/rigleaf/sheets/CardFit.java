package org.rigleaf.sheets;

import java.util.List;
import org.rigleaf.drawings.TextFit;
import org.rigleaf.guidance.Reminder;
import org.rigleaf.guidance.Step;
import org.rigleaf.guidance.Words;

/**
 * Reckons how tall the parts of a card will print, a little on the safe side, in points. The
 * printer measures again and refuses what does not fit.
 */
record CardFit(CardSize size) {
  static final double GAP = 3; // above and below a line of the card
  private static final double RULE = 6; // a rule and the air about it
  private static final double PADDED = 8; // inside a panel, and below it
  private static final double CALL_OUT = 12; // the box about a code

  double head(CardTask task) {
    double room = size.roomPt() - (task.qr().isEmpty() ? 0 : size.codePt() + GAP);
    double words = lines(task.title(), size.title(), room, true) * size.titleLine();
    double head = words + 2 * small(1) + RULE;
    return task.qr().isEmpty() ? head : Math.max(head, size.codePt() + RULE);
  }

  double foot(CardTask task, Words done) {
    double call = lines("Call: " + task.call().plain(), size.small(), size.roomPt(), true);
    double end = lines(done.plain(), size.text(), size.roomPt(), true) * size.line();
    return small(call) + 2 * small(1) + RULE + Math.max(end, size.line()) + 2 * RULE;
  }

  double part(String title) {
    return title.isEmpty()
        ? 0
        : lines(title, size.small() + 1, size.roomPt(), true) * (size.smallLine() + 1) + RULE;
  }

  double line(CardLine line) {
    return line instanceof CardLine.OfStep s ? step(s.step()) : fact((CardLine.Fact) line);
  }

  private double step(Step step) {
    double room = size.roomPt() - size.gutterPt();
    String place = step.code() + " " + step.place().plain();
    double box = step.code().isEmpty() ? 0 : CALL_OUT;
    return reminders(step.reminders())
        + lines(step.action().plain(), size.text(), room, true) * size.line()
        + small(words(place, room - box))
        + small(words(step.note().plain(), room))
        + small(words(step.see().plain(), room))
        + small(words(step.ifNot().empty() ? "" : "If not: " + step.ifNot().plain(), room))
        + 2 * GAP;
  }

  double reminders(List<Reminder> reminders) {
    double room = size.roomPt() - size.signalPt() - PADDED * 2;
    return reminders.stream()
        .mapToDouble(
            r -> lines(r.command().plain(), size.text(), room, true) * size.line() + PADDED)
        .sum();
  }

  private double fact(CardLine.Fact fact) {
    double label = size.labelPt() - PADDED;
    boolean alone = fact.text().empty();
    double room = size.roomPt() - size.labelPt();
    double left = small(words(fact.label().plain(), alone ? size.roomPt() : label));
    double right = lines(shown(fact.text()), size.text(), room, true) * size.line();
    return Math.max(left, alone ? 0 : right) + 2 * GAP + 1;
  }

  /** A line to fill in takes the room of a few letters. */
  private static String shown(Words words) {
    return words.plain().replace("___", "MMMMMMM");
  }

  private double words(String text, double room) {
    return text.isBlank() ? 0 : lines(text.replace("___", "MMMMMMM"), size.small(), room, false);
  }

  private double small(double lines) {
    return lines * size.smallLine();
  }

  private static int lines(String text, double size, double room, boolean bold) {
    return TextFit.lines(text, size, room, bold);
  }
}
