package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A sentence or two, ready to print.
 *
 * @param runs the stretches it is made of, in order; none where there is nothing to say
 */
public record Words(List<Run> runs) {
  /** Nothing to say. */
  public static final Words NONE = new Words(List.of());

  /** Copies the list, so that words stay as they were made. */
  public Words {
    runs = List.copyOf(runs);
  }

  /** Plain text; none where the text is empty. */
  public static Words of(String text) {
    return text.isEmpty() ? NONE : new Words(List.of(Run.text(text)));
  }

  /** One text after the other, a space between. */
  static Words joined(List<Words> sentences) {
    List<Run> runs = new ArrayList<>();
    for (Words sentence : sentences) {
      if (!runs.isEmpty()) {
        runs.add(Run.text(" "));
      }
      runs.addAll(sentence.runs());
    }
    return new Words(runs);
  }

  /** Whether there is nothing to print. */
  public boolean empty() {
    return runs.isEmpty();
  }

  /** The text as it would be read aloud, a line to fill in as {@code ___}. */
  public String plain() {
    return runs.stream()
        .map(r -> r.kind() == Run.Kind.BLANK ? "___" : r.text())
        .collect(Collectors.joining());
  }
}
