package org.rigleaf.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rigleaf.sheets.Digests;

/**
 * The blocks of a finished piece of HTML: steps, rows, panels, paragraphs, drawings, photos. By
 * their digests one tells which of them changed. The number of a step is left out, so that a new
 * step does not mark all that follow.
 */
public final class Blocks {
  private static final Pattern TAG = Pattern.compile("<(/?)(\\w+)([^>]*?)(/?)>");
  private static final Set<String> NAMES = Set.of("li", "tr", "p");
  private static final Pattern CLASSES = Pattern.compile("class=\"(panel|drawn|photo)[ \"]");
  private static final Pattern NUMBER = Pattern.compile("<span class=\"n\">\\d+</span>");

  private Blocks() {}

  /** Where a block begins and ends, and where the name of its first tag ends. */
  private record Span(int from, int nameEnds, int to) {}

  /** A digest for each block, in order. */
  public static List<String> digests(String html) {
    return spans(html).stream().map(s -> digest(html, s)).toList();
  }

  /**
   * The HTML with {@code data-changed} on every block that is among these.
   *
   * @param changed digests of the blocks that the edition before does not have
   * @param edition number of the edition that changes them
   */
  public static String marked(String html, Set<String> changed, int edition) {
    StringBuilder out = new StringBuilder();
    int done = 0;
    for (Span span : spans(html)) {
      if (changed.contains(digest(html, span))) {
        out.append(html, done, span.nameEnds()).append(" data-changed=\"" + edition + "\"");
        done = span.nameEnds();
      }
    }
    return out.append(html.substring(done)).toString();
  }

  private static String digest(String html, Span span) {
    String block = html.substring(span.from(), span.to());
    return Digests.digest(NUMBER.matcher(block).replaceAll("")).substring(0, 16);
  }

  /**
   * The outermost blocks; the HTML is our own and well-formed, with no sign {@code >} in values.
   */
  private static List<Span> spans(String html) {
    List<Span> spans = new ArrayList<>();
    Matcher tag = TAG.matcher(html);
    int at = 0;
    while (tag.find(at)) {
      at = tag.end();
      boolean opens = tag.group(1).isEmpty() && tag.group(4).isEmpty();
      if (opens && block(tag)) {
        int to = closing(html, tag.group(2), tag.end());
        spans.add(new Span(tag.start(), tag.end(2), to));
        at = to;
      }
    }
    return spans;
  }

  private static boolean block(Matcher tag) {
    return NAMES.contains(tag.group(2)) || CLASSES.matcher(tag.group(3)).find();
  }

  private static int closing(String html, String name, int from) {
    Matcher tag = TAG.matcher(html);
    int open = 1;
    int at = from;
    while (open > 0 && tag.find(at)) {
      at = tag.end();
      if (tag.group(2).equals(name) && tag.group(4).isEmpty()) {
        open += tag.group(1).isEmpty() ? 1 : -1;
      }
    }
    return at;
  }
}
