package org.rigleaf.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.rigleaf.guidance.Run;
import org.rigleaf.guidance.Show;
import org.rigleaf.guidance.TopicText;
import org.rigleaf.guidance.Wording;
import org.rigleaf.guidance.Words;

/**
 * Sends the reader of a card to another card where the binder sends its reader to a page: who holds
 * the cards may not hold the binder. A page that no card tells stays a page.
 */
final class CardRefs {
  private final Map<String, List<Target>> targets = new LinkedHashMap<>(); // by topic
  private final String page;
  private final String card;

  /** A card of this rig, as others name it. */
  record Target(String title, String code, List<Show> shows) {
    private boolean tells(TopicText topic) {
      return shows.stream()
          .filter(s -> s instanceof Show.OfProcedure || s instanceof Show.OfFault)
          .anyMatch(topic.shows()::contains);
    }
  }

  CardRefs(Wording wording, List<Target> cards) {
    this.page = wording.phrase("ref-page") + " ";
    this.card = wording.phrase("ref-card") + " ";
    for (TopicText topic : wording.topics()) {
      targets.put(topic.id(), cards.stream().filter(c -> c.tells(topic)).toList());
    }
  }

  /** The same words, for a card. */
  Words onCard(Words words) {
    List<Run> runs = new ArrayList<>();
    for (Run run : words.runs()) {
      List<Target> told =
          run.kind() == Run.Kind.TOPIC ? targets.getOrDefault(run.key(), List.of()) : List.of();
      if (!told.isEmpty()) {
        int last = runs.size() - 1;
        if (last >= 0 && runs.get(last).text().endsWith(page)) {
          String before = runs.get(last).text();
          String kept = before.substring(0, before.length() - page.length());
          runs.set(last, Run.text(kept + card));
        }
      }
      runs.add(told.isEmpty() ? run : Run.topic(named(run.text(), told), run.key()));
    }
    return new Words(runs);
  }

  /** The title of the one card; that of the topic where it has several. */
  private static String named(String topic, List<Target> cards) {
    String codes = cards.stream().map(Target::code).collect(Collectors.joining(", "));
    String title =
        cards.size() == 1
            ? "'" + cards.get(0).title() + "'"
            : topic.replaceAll(" \\([^)]*\\)$", "");
    return title + " (" + codes + ")";
  }
}
