package org.rigleaf.sheets;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Gives every topic its code, the letter of its section and a number. Before the first edition they
 * count from 1. Later an issued code stays with its topic, so that the pages of a binder need not
 * be printed again: a new topic between two others takes a small letter ({@code E-3a}), at the end
 * of its section the next number, and the code of a topic that is gone is not given again.
 */
final class TopicCodes {
  private TopicCodes() {}

  /** A topic that wants a code. */
  record Wanted(String id, String letter) {}

  /**
   * Codes by topic id.
   *
   * @param wanted the topics in the order of the binder
   * @param issued codes by topic id, those of topics that are gone included
   */
  static Map<String, String> assign(List<Wanted> wanted, Map<String, String> issued) {
    Map<String, String> codes = new HashMap<>();
    Set<String> taken = new HashSet<>(issued.values());
    Map<String, String> last = new HashMap<>(); // code given last, by letter
    for (int i = 0; i < wanted.size(); i++) {
      Wanted topic = wanted.get(i);
      String code = issued.get(topic.id());
      if (code == null) {
        boolean between =
            wanted.subList(i + 1, wanted.size()).stream()
                .anyMatch(w -> w.letter().equals(topic.letter()) && issued.containsKey(w.id()));
        String before = last.getOrDefault(topic.letter(), topic.letter() + "-0");
        code = between ? after(before, taken) : next(topic.letter(), taken);
      }
      taken.add(code);
      last.put(topic.letter(), code);
      codes.put(topic.id(), code);
    }
    return Map.copyOf(codes);
  }

  private static String after(String code, Set<String> taken) {
    String number = code.replaceFirst("[a-z]+$", "");
    return IntStream.rangeClosed('a', 'z')
        .mapToObj(letter -> number + (char) letter)
        .filter(c -> !taken.contains(c))
        .findFirst()
        .orElseGet(() -> next(code.substring(0, 1), taken));
  }

  private static String next(String letter, Set<String> taken) {
    int most =
        taken.stream()
            .filter(c -> c.startsWith(letter + "-"))
            .mapToInt(c -> Integer.parseInt(c.substring(2).replaceFirst("[a-z]+$", "")))
            .max()
            .orElse(0);
    return letter + "-" + (most + 1);
  }
}
