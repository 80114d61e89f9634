package org.rigleaf.guidance;

import java.util.ArrayList;
import java.util.List;
import org.rigleaf.source.Fields;
import org.rigleaf.source.Node;

/**
 * A topic of the binder as the wording has it.
 *
 * @param section key of its tab
 * @param emergency set large, with a black edge
 */
public record TopicText(
    String id, String section, String title, boolean emergency, List<Show> shows) {

  static TopicText read(String id, Fields entry, WordingCheck check) {
    TopicText topic =
        new TopicText(
            id,
            entry.text("section").map(Node.Text::value).orElse(""),
            entry.text("title").map(Node.Text::value).orElse(""),
            entry.text("emergency").isPresent(),
            shows(entry, check));
    entry.finish();
    return topic;
  }

  /** What stands under {@code shows}. */
  static List<Show> shows(Fields entry, WordingCheck check) {
    List<Show> shows = new ArrayList<>();
    for (Node node : entry.list("shows")) {
      entry.group(node, "shows").ifPresent(g -> shows.add(Show.read(g, check)));
    }
    return List.copyOf(shows);
  }

  /** A tab of the binder. */
  public record SectionText(String key, String letter, String title) {
    static SectionText read(String key, Fields entry) {
      SectionText section =
          new SectionText(
              key,
              entry.text("letter").map(Node.Text::value).orElse(""),
              entry.text("title").map(Node.Text::value).orElse(""));
      entry.finish();
      return section;
    }
  }
}
