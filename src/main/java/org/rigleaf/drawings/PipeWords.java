package org.rigleaf.drawings;

import java.util.Map;
import java.util.Optional;
import org.rigleaf.rig.Fact;

/** The words of the pipe drawings, whose phrases share a prefix. */
record PipeWords(NetWords words) {
  String name(String gear) {
    return words.name(gear);
  }

  String say(String phrase) {
    return say(phrase, Map.of());
  }

  String say(String phrase, Map<String, String> values) {
    return words.phrase("pipes-" + phrase, values);
  }

  /** The amount; nothing if nobody said. */
  String amount(Fact fact) {
    return fact.known() ? words.amount(fact) : "";
  }

  /** What is there, or a line to fill in. */
  String orBlank(Optional<String> said) {
    return said.orElseGet(() -> say("blank"));
  }
}
