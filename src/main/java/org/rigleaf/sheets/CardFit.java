package org.rigleaf.sheets;

import java.util.List;
import java.util.stream.Collectors;
import org.rigleaf.drawings.TextFit;
import org.rigleaf.guidance.Reminder;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Step;
import org.rigleaf.guidance.Words;

/**
 * Reckons how tall the parts of a card will print, a little on the safe side, in points. The
 * printer measures again and refuses what does not fit.
 */
record CardFit(CardSize size) {
  private static final String LONGEST_ID =
      " · K-10 · 1 of 9 · Edition 10 · 30 September 2026 · DRAFT";
  private static final double SPARE = 14; // of a card, for what rounding adds
  private static final double CALL_OUT = 12; // the box about a code
  private static final int LONG =
      24; // letters of a figure that may be broken, as words.ftlh has it

  double head(CardTask task) {
    double beside = task.qr().isEmpty() ? 0 : size.codePt() + CardSize.AIR;
    double inset = task.emergency() ? 4 * CardSize.AIR : 0;
    double title =
        lines(task.title(), size.title(), size.roomPt() - beside - inset, true) * size.titleLine();
    double head = Math.max(title + small(2), task.qr().isEmpty() ? 0 : size.codePt());
    return head + CardSize.AIR + CardSize.RULE + SPARE;
  }

  double foot(CardTask task, Words done) {
    String page = "Not so? Stop. See " + task.page() + " in the binder, or call ";
    String call = (task.page().isEmpty() ? "Call: " : page) + written(task.call());
    double end = lines(written(done), size.text(), size.roomPt(), true) * size.line();
    return small(lines(call, size.small(), size.roomPt(), true))
        + lines(task.rig() + LONGEST_ID, 10, size.roomPt(), true) * CardSize.FOOT_LINE
        + Math.max(end, size.line())
        + 3 * (CardSize.AIR + CardSize.RULE);
  }

  double part(String title) {
    double line = size.smallLine() + 1;
    return title.isEmpty()
        ? 0
        : lines(title, size.small() + 1, size.roomPt(), true) * line
            + 2 * CardSize.AIR
            + CardSize.RULE;
  }

  double line(CardLine line) {
    return line instanceof CardLine.OfStep s
        ? step(s.step(), s.see(), s.fallback())
        : fact((CardLine.Fact) line);
  }

  private double step(Step step, boolean see, boolean fallback) {
    double room = size.roomPt() - size.gutterPt();
    double box = step.code().isEmpty() ? 0 : CALL_OUT;
    String ifNot = !fallback || step.ifNot().empty() ? "" : "If not: " + written(step.ifNot());
    return reminders(step.reminders())
        + lines(written(step.action()), size.text(), room, true) * size.line()
        + small(words(step.code() + " " + written(step.place()), room - box))
        + small(words(written(step.note()), room))
        + small(see ? words(written(step.see()), room) : 0)
        + small(words(ifNot, room - size.small()))
        + 2 * CardSize.AIR;
  }

  double reminders(List<Reminder> reminders) {
    double room = size.roomPt() - size.signalPt() - 4 * CardSize.AIR - 4 * CardSize.RULE;
    return reminders.stream()
        .mapToDouble(
            r ->
                lines(written(r.command()), size.text(), room, true) * size.line()
                    + 2 * CardSize.AIR
                    + 4 * CardSize.RULE)
        .sum();
  }

  private double fact(CardLine.Fact fact) {
    boolean alone = fact.text().empty();
    double label = alone ? size.roomPt() : size.labelPt() - 4 * CardSize.AIR;
    double left = small(words(written(fact.label()), label));
    double text =
        lines(written(fact.text()), size.text(), size.roomPt() - size.labelPt(), true)
            * size.line();
    double pen = fact.text().plain().equals("___") ? CardSize.TO_WRITE : 0;
    return Math.max(Math.max(left, pen), alone ? 0 : text) + 2 * CardSize.AIR + CardSize.RULE;
  }

  /** A line to fill in takes the room of a few letters; an amount is not broken. */
  private static String written(Words words) {
    return words.runs().stream().map(CardFit::written).collect(Collectors.joining());
  }

  private static String written(Run run) {
    return switch (run.kind()) {
      case BLANK -> "MMMMMMM";
      case FIGURE -> run.text().length() > LONG ? run.text() : run.text().replace(' ', '_');
      default -> run.text();
    };
  }

  private int words(String text, double room) {
    return text.isBlank() ? 0 : lines(text, size.small(), room, false);
  }

  private double small(int lines) {
    return lines * size.smallLine();
  }

  private static int lines(String text, double size, double room, boolean bold) {
    return TextFit.lines(text, size, room, bold);
  }
}
