package org.rigleaf.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.jsoup.select.Evaluator;
import org.jsoup.select.NodeFilter.FilterResult;
import org.jsoup.select.QueryParser;
import org.rigleaf.sheets.Digests;

/**
 * The blocks of a finished piece of HTML: steps, rows, panels, paragraphs, drawings, photos. By
 * their digests one tells which of them changed. The number of a step is left out, so that a new
 * step does not mark all that follow.
 */
public final class Blocks {
  private static final Evaluator BLOCK = QueryParser.parse("li, tr, p, .panel, .drawn, .photo");
  private static final Pattern NUMBER = Pattern.compile("<span class=\"n\">\\d+</span>");

  private Blocks() {}

  /** A digest for each block, in order. */
  public static List<String> digests(String html) {
    return outermost(html).stream().map(e -> digest(html, e)).toList();
  }

  /**
   * The HTML with {@code data-changed} on every block that is among these. Where the HTML prints
   * the same blocks as the edition keeps them but with other units, the place of a block tells.
   *
   * @param kept digests of the blocks as the edition keeps them
   * @param changed digests of the blocks that the edition before does not have
   * @param edition number of the edition that changes them
   */
  public static String marked(String html, List<String> kept, Set<String> changed, int edition) {
    List<Element> blocks = outermost(html);
    boolean alike = blocks.size() == kept.size();
    StringBuilder out = new StringBuilder();
    int done = 0;
    for (int i = 0; i < blocks.size(); i++) {
      Element block = blocks.get(i);
      if (changed.contains(alike ? kept.get(i) : digest(html, block))) {
        int nameEnds = block.sourceRange().startPos() + 1 + block.tagName().length();
        out.append(html, done, nameEnds).append(" data-changed=\"" + edition + "\"");
        done = nameEnds;
      }
    }
    return out.append(html.substring(done)).toString();
  }

  private static String digest(String html, Element block) {
    String text = html.substring(block.sourceRange().startPos(), block.endSourceRange().endPos());
    return Digests.digest(NUMBER.matcher(text).replaceAll("")).substring(0, 16);
  }

  private static List<Element> outermost(String html) {
    List<Element> blocks = new ArrayList<>();
    Jsoup.parse(html, "", Parser.xmlParser().setTrackPosition(true))
        .filter(
            (node, depth) -> {
              boolean block = node instanceof Element e && e.is(BLOCK) && blocks.add(e);
              return block ? FilterResult.SKIP_CHILDREN : FilterResult.CONTINUE;
            });
    return blocks;
  }
}
