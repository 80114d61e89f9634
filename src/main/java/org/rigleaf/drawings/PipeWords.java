package org.rigleaf.drawings;

import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.rigleaf.rig.Fact;

/**
 * Where the drawings of pipes take their words from.
 *
 * @param names of gear, by id
 * @param phrases by id, with values put in
 * @param amounts a known measure as the sheets print it
 */
public record PipeWords(
    Function<String, String> names,
    BiFunction<String, Map<String, String>, String> phrases,
    Function<Fact, String> amounts) {
  String name(String gear) {
    return names.apply(gear);
  }

  String say(String phrase) {
    return say(phrase, Map.of());
  }

  String say(String phrase, Map<String, String> values) {
    return phrases.apply("pipes-" + phrase, values);
  }

  /** The amount; nothing if nobody said. */
  String amount(Fact fact) {
    return fact.known() ? amounts.apply(fact) : "";
  }

  /** What is there, or a line to fill in. */
  String orBlank(java.util.Optional<String> words) {
    return words.orElseGet(() -> say("blank"));
  }
}
